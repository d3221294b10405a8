import { z } from "zod";
import { searchPlants } from "@/lib/plants/search";
import type { Taxon } from "@/lib/plants/taxon";
import { taxaHeld } from "@/lib/server/taxa";

/** A plant found by name alone. */
export type NameHit = Pick<Taxon, "id" | "name" | "botanical" | "cultivar" | "group" | "tradeDesignation" | "commonNames"> & {
  /** The former name that was typed, if it was one. */
  readonly formerName: string | null;
};

const query = z.object({ q: z.string().max(120) });
const LIMIT = 10;

/** GET ?q=…: the best matches first. */
export async function GET(request: Request): Promise<Response> {
  const parsed = query.safeParse(Object.fromEntries(new URL(request.url).searchParams));
  if (!parsed.success) return Response.json([], { status: 400 });
  const held = await taxaHeld();
  const hits: NameHit[] = searchPlants(held.index, parsed.data.q, LIMIT).map(({ taxon, matched, matchedName }) => {
    const { id, name, botanical, cultivar, group, tradeDesignation, commonNames } = taxon;
    return { id, name, botanical, cultivar, group, tradeDesignation, commonNames, formerName: matched === "former" ? matchedName : null };
  });
  return Response.json(hits);
}
