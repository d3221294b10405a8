import { nameText } from "../plants/botanical-name";
import type { PullList } from "../pulls/pull-list";
import { type CsvCell, csvText } from "./csv";

/** The pull list as a sheet: one row a taxon and size, the total, then one column a bed. No total rows, so that sums in the sheet come out right. */
export function pullListRows(list: PullList): CsvCell[][] {
  const head = ["Kind", "Botanical name", "Common name", "Size", "Quantity", ...list.beds.map((bed) => bed.bedName), "Remarks"];
  const lines = list.groups.flatMap((group) =>
    group.lines.map(({ taxon, sizeText, quantity, split, remarks }): CsvCell[] => [
      group.heading,
      nameText(taxon),
      taxon.commonNames[0] ?? "",
      sizeText,
      quantity,
      ...list.beds.map((bed) => split.find((part) => part.bedId === bed.bedId)?.quantity ?? null),
      remarks.join("; "),
    ]),
  );
  return [head, ...lines];
}

/** The pull list as CSV for a spreadsheet. */
export function pullListCsv(list: PullList): string {
  return csvText(pullListRows(list), { byteOrderMark: true });
}
