// The one writer of CSV (RFC 4180).
import Papa from "papaparse";

export type CsvCell = string | number | boolean | null;

/**
 * Starts of a cell that a spreadsheet may run as a formula: = + - @, also after blanks and control characters (tab, carriage return), which spreadsheets
 * drop, and in the full-width forms ＝ ＋ － ＠, which some take for the plain ones.
 */
const FORMULA_START = /^[\s\p{Cc}\p{Cf}]*[=+\-@＝＋－＠]|^[\t\r\n]/u;

/** Text that no spreadsheet runs: an apostrophe is set before what could be a formula. Numbers as numbers need none. */
function cellGuarded(cell: CsvCell): CsvCell {
  return typeof cell === "string" && FORMULA_START.test(cell) ? `'${cell}` : cell;
}

/**
 * CSV of rows of cells: comma, quotes where needed, CRLF after every row, formulas disarmed, null as an empty cell.
 * `byteOrderMark` makes spreadsheets read the signs × and ½ as UTF-8.
 */
export function csvText(rows: readonly (readonly CsvCell[])[], { byteOrderMark = false }: { readonly byteOrderMark?: boolean } = {}): string {
  const body = Papa.unparse(
    rows.map((row) => row.map(cellGuarded)),
    { newline: "\r\n", escapeFormulae: false },
  );
  return `${byteOrderMark ? "\ufeff" : ""}${rows.length > 0 ? `${body}\r\n` : ""}`;
}
