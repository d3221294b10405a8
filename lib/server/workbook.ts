// A supplier's list as rows of cells, from the bytes of a CSV or XLSX file.
import ExcelJS from "exceljs";
import { dateText, numberText } from "../nursery/cell-text";
import { csvRows, type ListSheet } from "../nursery/list-read";
import { zipDirectory } from "./zip-directory";

export const LIST_MAX_BYTES = 40e6;
const UNPACKED_MAX_BYTES = 400e6;
export const LINES_MAX = 20_000;
/** Rows read of one sheet; lists are shorter, and beyond stand sheets formatted to their last row. */
const ROWS_MAX = 60_000;
const COLUMNS_MAX = 200;

/** `notes` name what was left out: hidden sheets and rows. */
export type ListFile = { readonly kind: "list"; readonly sheets: readonly ListSheet[]; readonly notes: readonly string[] };
export type ListFileAnswer = ListFile | { readonly kind: "fault"; readonly message: string };

const fault = (message: string): ListFileAnswer => ({ kind: "fault", message });

/** Text of a list: UTF-8 or UTF-16 by its mark, else Windows-1252, as older spreadsheets write it. */
function listText(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    // Not UTF-8: every byte is a sign in Windows-1252.
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

/** What a cell shows: a formula its result, an error nothing. */
function valueText(value: ExcelJS.CellValue, format: string | undefined): string {
  if (value === null || value === undefined) return "";
  if (typeof value === "string") return value;
  if (typeof value === "number") return numberText(value, format);
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (value instanceof Date) return dateText(value, format);
  if ("richText" in value) return value.richText.map(({ text }) => text).join("");
  if ("hyperlink" in value) return typeof value.text === "string" ? value.text : valueText(value.text, format);
  if ("formula" in value || "sharedFormula" in value) return valueText(value.result, format);
  return "";
}

/** Of merged cells the first of each row has the text: a name merged down stands in every row, a title merged across once. */
function cellText(cell: ExcelJS.Cell): string {
  if (!cell.isMerged || cell.master === cell) return valueText(cell.value, cell.numFmt);
  const { master } = cell;
  return Number(cell.col) === Number(master.col) ? valueText(master.value, master.numFmt) : "";
}

function sheetRows(sheet: ExcelJS.Worksheet): { rows: string[][]; hidden: number } {
  const rows: string[][] = [];
  let hidden = 0;
  const hiddenColumns = new Set<number>();
  for (let c = 1; c <= Math.min(sheet.columnCount, COLUMNS_MAX); c++) if (sheet.getColumn(c).hidden) hiddenColumns.add(c);
  const last = Math.min(sheet.rowCount, ROWS_MAX);
  for (let r = 1; r <= last; r++) {
    const row = sheet.findRow(r);
    const cells: string[] = [];
    if (row && !row.hidden)
      row.eachCell({ includeEmpty: false }, (cell, c) => {
        if (c > COLUMNS_MAX || hiddenColumns.has(c)) return;
        while (cells.length < c - 1) cells.push("");
        cells[c - 1] = cellText(cell).replace(/[\r\n\t]+/g, " ");
      });
    else if (row?.hasValues) hidden++;
    rows.push(cells);
  }
  while (rows.length && (rows[rows.length - 1] ?? []).every((cell) => cell.trim() === "")) rows.pop();
  return { rows, hidden };
}

async function workbookRead(bytes: Uint8Array, fileName: string): Promise<ListFileAnswer> {
  const directory = zipDirectory(bytes);
  if (!directory) return fault(`${fileName} is cut off or damaged. Ask for it again, or download it anew.`);
  if (!directory.names.some((name) => /^xl\/workbook\.xml$/i.test(name)))
    return fault(`${fileName} is not a workbook that can be read. Open it in your spreadsheet program and save it as .xlsx or CSV.`);
  if (directory.unpackedBytes > UNPACKED_MAX_BYTES) return fault(`${fileName} is too large when unpacked. Save the sheet with the list as CSV.`);
  const book = new ExcelJS.Workbook();
  try {
    const whole = new ArrayBuffer(bytes.byteLength);
    new Uint8Array(whole).set(bytes);
    await book.xlsx.load(whole);
  } catch {
    return fault(`${fileName} is a damaged workbook. Open it in your spreadsheet program, save it again as .xlsx, and try that.`);
  }
  const sheets: ListSheet[] = [];
  const notes: string[] = [];
  for (const sheet of book.worksheets) {
    if (sheet.state !== "visible") {
      notes.push(`The hidden sheet “${sheet.name}” was left out.`);
      continue;
    }
    const { rows, hidden } = sheetRows(sheet);
    if (hidden) notes.push(`${hidden} hidden ${hidden === 1 ? "row" : "rows"} of “${sheet.name}” ${hidden === 1 ? "was" : "were"} left out.`);
    if (sheet.rowCount > ROWS_MAX && rows.length === ROWS_MAX) notes.push(`“${sheet.name}” was read to row ${ROWS_MAX.toLocaleString("en-US")} only.`);
    if (rows.length) sheets.push({ name: sheet.name, rows });
  }
  return sheets.length ? { kind: "list", sheets, notes } : fault(`${fileName} has no visible sheet with anything in it.`);
}

/** Whether an old compound file holds an encrypted workbook: its directory names the stream in UTF-16. */
const isEncrypted = (bytes: Uint8Array): boolean => Buffer.from(bytes.buffer, bytes.byteOffset, bytes.byteLength).includes(Buffer.from("EncryptedPackage", "utf16le"));

/** Sheets of a list file. Every fault says what is wrong with the file and what to do. Never throws on bad bytes. */
export async function listFileRead(bytes: Uint8Array, fileName: string): Promise<ListFileAnswer> {
  if (bytes.length === 0) return fault(`${fileName} is empty.`);
  if (bytes.length > LIST_MAX_BYTES) return fault(`${fileName} is larger than 40 MB; split the list.`);
  if (bytes[0] === 0xd0 && bytes[1] === 0xcf && bytes[2] === 0x11 && bytes[3] === 0xe0)
    return isEncrypted(bytes)
      ? fault(`${fileName} is protected by a password. Open it with the password and save it without one.`)
      : fault(`${fileName} is an old .xls workbook. Open it in your spreadsheet program and save it as .xlsx or CSV.`);
  if (bytes[0] === 0x50 && bytes[1] === 0x4b) return workbookRead(bytes, fileName);
  if (bytes[0] === 0x25 && bytes[1] === 0x50 && bytes[2] === 0x44 && bytes[3] === 0x46)
    return fault(`${fileName} is a PDF. Ask the supplier for the list as a spreadsheet (.xlsx or CSV).`);
  const wide = (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);
  if (!wide && bytes.subarray(0, 4000).includes(0)) return fault(`${fileName} is no text; a list is a .xlsx or CSV file.`);
  const rows = csvRows(listText(bytes));
  return rows.some((row) => row.some((cell) => cell.trim())) ? { kind: "list", sheets: [{ name: "list", rows }], notes: [] } : fault(`${fileName} is empty.`);
}
