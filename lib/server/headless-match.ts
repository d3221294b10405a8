// The verb "match": a supplier's list matched without the browser, by the functions the import screens use.
import { readFileSync, statSync } from "node:fs";
import { listMatch, type MatchedLine } from "../nursery/line-match";
import { sizeOtherText } from "../nursery/size-read";
import { type TaxaHeld, taxaHeld } from "./taxa";
import { LINES_MAX, LIST_MAX_BYTES, listFileRead } from "./workbook";

export type MatchAnswer = { readonly kind: "answer"; readonly value: unknown } | { readonly kind: "fault"; readonly message: string };

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

/** match FILE: every line on offer of a CSV or XLSX list, with the plant it means, its size, quantity and price. */
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
  const file = await listFileRead(bytes, path === "-" ? "the list" : path);
  if (file.kind === "fault") return { kind: "fault", message: `file: ${file.message}` };
  const held = await taxaHeld();
  const list = listMatch(held.index, file.sheets);
  if (list.matched.length > LINES_MAX) return { kind: "fault", message: `file: ${list.matched.length} lines; at most 20,000 are matched at once.` };
  return { kind: "answer", value: { lines: list.matched.map((line) => lineValue(held, line)) } };
}
