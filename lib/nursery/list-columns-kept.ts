// The columns of a supplier's list as they were accepted, and how they are found again on the next list.
import { COLUMN_ROLES, type ColumnMap, type ColumnRole, columnsAt, columnsGuessed, type NameTest } from "./list-columns";

/** What is remembered: each heading with what its column holds; without headings the columns by their order. */
export type KeptColumns = {
  readonly hasHeader: boolean;
  readonly columns: readonly { readonly heading: string; readonly role: ColumnRole; readonly from: number | null }[];
};

const plain = (heading: string): string => heading.toLowerCase().replace(/\s+/g, " ").trim();
const HEADER_ROWS_MAX = 60;
/** Share of the remembered headings that a row must have to be their row again. */
const ALIKE = 0.6;

export const isColumnRole = (text: string): text is ColumnRole => COLUMN_ROLES.some((role) => role === text);

/** The columns of a sheet, to be remembered. */
export function columnsKept(map: ColumnMap): KeptColumns {
  return { hasHeader: map.headerRow !== null, columns: map.columns.map(({ heading, role, from }) => ({ heading, role, from })) };
}

/** The map of a new sheet by the columns remembered; new columns are guessed. Null where the sheet is a different one. */
export function columnsRecalled(kept: KeptColumns, rows: readonly (readonly string[])[], isName: NameTest): ColumnMap | null {
  if (!kept.hasHeader) {
    const width = Math.max(0, ...rows.slice(0, HEADER_ROWS_MAX).map((row) => row.length));
    return width === kept.columns.length ? { headerRow: null, headerRows: 0, columns: kept.columns } : null;
  }
  const known = new Map(kept.columns.filter(({ heading }) => heading !== "").map((column) => [plain(column.heading), column]));
  const holds = (map: ColumnMap): boolean => {
    const found = new Set(map.columns.map(({ heading }) => plain(heading)).filter((heading) => known.has(heading)));
    return known.size > 0 && found.size >= known.size * ALIKE;
  };
  let map = columnsGuessed(rows, isName);
  if (!holds(map)) {
    const row = rows.slice(0, HEADER_ROWS_MAX).findIndex((cells) => cells.filter((cell) => known.has(plain(cell))).length >= known.size * ALIKE);
    if (row < 0) return null;
    map = columnsAt(rows, row, isName);
    if (!holds(map)) return null;
  }
  return { ...map, columns: map.columns.map((column) => ({ ...column, ...(known.get(plain(column.heading)) ?? {}), heading: column.heading })) };
}
