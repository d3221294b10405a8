// A paper as a workbook: one sheet, real numbers, header row frozen, repeated on every printed page and filterable.
import ExcelJS from "exceljs";
import type { Paper } from "../../papers/paper";
import { type PaperTable, paperTable, type TableColumn } from "../../papers/paper-table";
import type { PaperSize } from "./paper-size";

/** Code of A4 in OOXML's page set-up; a sheet without a code is Letter (ECMA-376 Part 1, 18.3.1.63, default 1; from memory). */
const A4_CODE = 9;
const WIDTH_MIN = 6;
const WIDTH_MAX = 48;
const THIN = { style: "thin", color: { argb: "FF2A2F2B" } } as const;

/** Width in characters of the longest text of a column, within reason. */
function columnWidth({ columns, rows }: PaperTable, index: number): number {
  const shown = (cell: string | number | null | undefined): number =>
    typeof cell === "number" && columns[index]?.kind === "money" ? cell.toFixed(2).length + 3 : String(cell ?? "").length;
  const longest = Math.max(columns[index]?.head.length ?? 0, ...rows.map((row) => shown(row[index])));
  return Math.min(WIDTH_MAX, Math.max(WIDTH_MIN, longest + 2));
}

/** A text stays a text when it is edited ("@"): no cell is ever run as a formula. */
const numberFormat = ({ kind }: TableColumn): string => (kind === "money" ? '"$"#,##0.00' : kind === "number" ? "#,##0.##" : "@");

/** Names of sheets: at most 31 characters, none of these signs (Excel's rule, from memory). */
const sheetName = (title: string): string => title.replace(/[\\/*?:[\]]/g, " ").slice(0, 31);

/** The paper as XLSX: title, job and date over the table. */
export async function paperWorkbook(paper: Paper, size: PaperSize): Promise<Uint8Array<ArrayBuffer>> {
  const table = paperTable(paper);
  const book = new ExcelJS.Workbook();
  book.creator = "Twelvemonth";
  const sheet = book.addWorksheet(sheetName(paper.title), {
    pageSetup: {
      ...(size === "a4" ? { paperSize: A4_CODE } : {}),
      orientation: "landscape",
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      margins: { left: 0.5, right: 0.5, top: 0.5, bottom: 0.6, header: 0.3, footer: 0.3 },
    },
    headerFooter: { oddFooter: `&L${paper.title.replaceAll("&", "&&")} · ${paper.subtitle.replaceAll("&", "&&")}&RPage &P of &N` },
  });
  const facts = paper.foot.filter(([, value]) => value !== "").map(([label, value]) => `${label}: ${value}`);
  for (const text of [`${paper.title} · ${paper.subtitle}`, facts.join("   ")]) {
    const cell = sheet.addRow([text]).getCell(1);
    cell.numFmt = "@";
    cell.font = { name: "Calibri", size: text.startsWith(paper.title) ? 14 : 10, bold: text.startsWith(paper.title) };
  }
  const head = sheet.addRow(table.columns.map((column) => column.head));
  const headRow = head.number;
  head.eachCell((cell) => {
    cell.font = { bold: true };
    cell.border = { bottom: THIN };
    cell.alignment = { wrapText: true, vertical: "bottom" };
  });
  for (const row of table.rows) sheet.addRow([...row]);
  for (const [index, column] of table.columns.entries()) {
    const own = sheet.getColumn(index + 1);
    own.width = columnWidth(table, index);
    for (let row = headRow + 1; row <= headRow + table.rows.length; row++) {
      const cell = sheet.getRow(row).getCell(index + 1);
      cell.numFmt = numberFormat(column);
      cell.alignment = { vertical: "top", wrapText: column.kind === "text" };
    }
  }
  sheet.views = [{ state: "frozen", ySplit: headRow }];
  sheet.pageSetup.printTitlesRow = `${headRow}:${headRow}`;
  if (table.rows.length > 0) sheet.autoFilter = { from: { row: headRow, column: 1 }, to: { row: headRow + table.rows.length, column: table.columns.length } };
  const notes = paper.notes.map((note) => [note]);
  if (notes.length > 0) sheet.addRow([]);
  for (const note of notes) sheet.addRow(note).getCell(1).numFmt = "@";
  return new Uint8Array(await book.xlsx.writeBuffer());
}
