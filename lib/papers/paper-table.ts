// A paper as a plain table, for CSV and XLSX: the group as a column of its own, names in plain characters, money in dollars, no totals, so that sums come out right.
import { type CsvCell, csvText } from "./csv";
import type { Paper, PaperCell, PaperColumn } from "./paper";

export type TableColumn = { readonly head: string; readonly kind: "text" | "number" | "money" };
export type PaperTable = { readonly columns: readonly TableColumn[]; readonly rows: readonly (readonly (string | number | null)[])[] };

const isPlant = ({ kind }: PaperColumn): boolean => kind === "plant";

function columnHeads({ head, kind }: PaperColumn): TableColumn[] {
  if (kind === "tick") return [];
  if (kind === "plant")
    return [
      { head: "Botanical name", kind: "text" },
      { head: "Common name", kind: "text" },
    ];
  return [{ head, kind }];
}

function cellValues(column: PaperColumn, cell: PaperCell | undefined): (string | number | null)[] {
  if (column.kind === "tick") return [];
  const plant = cell !== null && typeof cell === "object" ? cell : null;
  if (isPlant(column)) return plant ? [plant.text, plant.common] : [typeof cell === "string" ? cell : null, null];
  const value = cell === undefined || cell === null ? null : typeof cell === "object" ? cell.text : cell;
  return [column.kind === "money" && typeof value === "number" ? value / 100 : value];
}

/** The paper's rows with their group first; the last column holds cautions where there are any. */
export function paperTable(paper: Paper): PaperTable {
  const cautions = paper.groups.some(({ rows }) => rows.some(({ caution }) => caution));
  const columns: TableColumn[] = [
    { head: paper.groupHead, kind: "text" },
    ...paper.columns.flatMap(columnHeads),
    ...(cautions ? [{ head: "Caution", kind: "text" as const }] : []),
  ];
  const rows = paper.groups.flatMap(({ heading, rows: own }) =>
    own.map(({ cells, caution }) => [heading, ...paper.columns.flatMap((column) => cellValues(column, cells[column.key])), ...(cautions ? [caution ?? null] : [])]),
  );
  return { columns, rows };
}

/** The paper as CSV for a spreadsheet; money with two decimals. */
export function paperCsv(paper: Paper): string {
  const { columns, rows } = paperTable(paper);
  const cells = rows.map((row) => row.map((cell, i): CsvCell => (columns[i]?.kind === "money" && typeof cell === "number" ? cell.toFixed(2) : cell)));
  return csvText([columns.map(({ head }) => head), ...cells], { byteOrderMark: true });
}
