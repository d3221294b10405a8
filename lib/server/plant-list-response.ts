// The compact list as an answer: packed once a state of the plants, then sent from memory (Next compresses what it sends).
import { plantListEncode } from "../plants/plant-list";
import { usdaSymbol } from "./native-states";
import { originOf, taxaHeld } from "./taxa";

const memory = globalThis as { twelvemonthList?: { readonly mark: string; readonly body: string } };

/** Where the browser fetches the present list: the address changes with its content, so that a browser may keep it for good. */
export async function plantListAddress(): Promise<string> {
  return `/api/plants/list?mark=${(await taxaHeld()).mark}`;
}

/** The list. @param mark the one in the address; an old one is answered with the present list, not to be kept */
export async function plantListResponse(mark: string | null, etagHeld: string | null): Promise<Response> {
  const held = await taxaHeld();
  const etag = `"${held.mark}"`;
  const cache = mark === held.mark ? "public, max-age=31536000, immutable" : "no-cache";
  const headers = { "Cache-Control": cache, ETag: etag };
  if (etagHeld === etag) return new Response(null, { status: 304, headers });
  if (memory.twelvemonthList?.mark !== held.mark) {
    const file = plantListEncode(held.taxa, { originOf: (taxon) => originOf(held, taxon), symbolOf: usdaSymbol });
    memory.twelvemonthList = { mark: held.mark, body: JSON.stringify(file) };
  }
  return new Response(memory.twelvemonthList.body, { headers: { ...headers, "Content-Type": "application/json; charset=utf-8" } });
}
