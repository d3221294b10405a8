// The verb "match": a supplier's list matched without the browser, by the functions the import screens use.
import { readFileSync, statSync } from "node:fs";
import { listMatch, type MatchedLine } from "../nursery/line-match";
import { csvRows } from "../nursery/list-read";
import { sizeOtherText } from "../nursery/size-read";
import { type TaxaHeld, taxaHeld } from "./taxa";

const LIST_MAX_BYTES = 40e6;
const LINES_MAX = 20_000;

export type MatchAnswer = { readonly kind: "answer"; readonly value: unknown } | { readonly kind: "fault"; readonly message: string };

/** Text of a list: UTF-8 or UTF-16 by its mark, else Windows-1252, as older spreadsheets write it. */
function listText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    // Not UTF-8: every byte is a sign in Windows-1252.
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

const nameOf = (held: TaxaHeld, id: string | null): string | null => (id === null ? null : (held.byId.get(id)?.name ?? null));

function lineValue(held: TaxaHeld, line: MatchedLine): unknown {
  const { size, quantity, reading } = line;
  const remarks = [...line.remarks, ...(line.ready ? [`ready ${line.ready}`] : []), ...(quantity.orMore ? ["or more"] : [])];
  return {
    row: line.row,
    text: line.text,
    name: nameOf(held, reading.taxonId),
    sure: reading.sure,
    candidates: reading.candidates.map((id) => nameOf(held, id)),
    size: {
      root: size.root === "unknown" ? null : size.root,
      containerClass: size.containerClass,
      caliperIn: size.caliperIn,
      heightIn: size.heightIn,
      other: sizeOtherText(size) || null,
    },
    quantity: quantity.count,
    priceCents: line.priceCents,
    remarks: remarks.join("; ") || null,
  };
}

/** match FILE: every line on offer of a CSV list, with the plant it means, its size, quantity and price. */
export async function matchVerb(words: readonly string[]): Promise<MatchAnswer> {
  const [path, ...more] = words;
  if (path === undefined || more.length) return { kind: "fault", message: "match takes one file." };
  let bytes: Uint8Array;
  try {
    if (path !== "-" && statSync(path).size > LIST_MAX_BYTES) return { kind: "fault", message: `file: ${path} is larger than 40 MB; split the list.` };
    bytes = readFileSync(path === "-" ? 0 : path);
  } catch (error) {
    return { kind: "fault", message: `file: ${path} cannot be read (${error instanceof Error ? error.message : String(error)}).` };
  }
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return { kind: "fault", message: "file: a workbook cannot be read yet; save the sheet as CSV and match that." };
  if (bytes.subarray(0, 2000).includes(0) && !(bytes[0] === 0xff && bytes[1] === 0xfe)) return { kind: "fault", message: "file: this is no text; a list is a CSV file." };
  const rows = csvRows(listText(bytes));
  const held = await taxaHeld();
  const list = listMatch(held.index, [{ name: "list", rows }]);
  if (list.matched.length > LINES_MAX) return { kind: "fault", message: `file: ${list.matched.length} lines; at most 20,000 are matched at once.` };
  return { kind: "answer", value: { lines: list.matched.map((line) => lineValue(held, line)) } };
}
