import ExcelJS from "exceljs";
import { describe, expect, it } from "vitest";
import { commandForTests } from "../support/command";

const { run, file } = commandForTests();
const matched = (name: string, content: string | Uint8Array) => run(["match", file(name, content), "--json"]);

describe("twelvemonth match", () => {
  it("gives every line of a list with its plant, size, quantity and price", () => {
    const csv = `Fall list,,\nItem,Avail,Price\nHYDR PAN LIMELT TM #3,250+,$18.50\nThuja occ. Smaragd 5-6' BB,call,"$1,062.00"\n"Acer rub. 'October Glory' 2-2.5""",Spring 26,185\nWholly unknown thing #1,10 flats,4\n`;
    const { code, out } = matched("list.csv", csv);
    expect(code).toBe(0);
    const size = { root: null, containerClass: null, caliperIn: null, heightIn: null, other: null };
    expect(JSON.parse(out)).toEqual({
      lines: [
        {
          row: 3,
          text: "HYDR PAN LIMELT TM #3 | 250+ | $18.50",
          name: "Hydrangea paniculata 'Limelight'",
          sure: true,
          candidates: [],
          size: { ...size, root: "container", containerClass: "#3" },
          quantity: 250,
          priceCents: 1850,
          remarks: "or more",
        },
        {
          row: 4,
          text: "Thuja occ. Smaragd 5-6' BB | call | $1,062.00",
          name: "Thuja occidentalis 'Smaragd'",
          sure: true,
          candidates: [],
          size: { ...size, root: "ball", heightIn: [60, 72] },
          quantity: null,
          priceCents: 106200,
          remarks: "call",
        },
        {
          row: 5,
          text: `Acer rub. 'October Glory' 2-2.5" | Spring 26 | 185`,
          name: "Acer rubrum 'October Glory'",
          sure: true,
          candidates: [],
          size: { ...size, caliperIn: [2, 2.5] },
          quantity: null,
          priceCents: 18500,
          remarks: "ready Spring 26",
        },
        expect.objectContaining({ row: 6, name: null, sure: false, quantity: 10, priceCents: 400 }),
      ],
    });
  });

  it("reads a workbook: rows as in the sheet, sizes as column headings, money by its format, hidden sheets left out", async () => {
    const book = new ExcelJS.Workbook();
    const sheet = book.addWorksheet("Shrubs");
    sheet.addRows([
      ["Fall list"],
      [],
      ["Plant", "#1", "#3", "Notes"],
      ["HYDR PAN LIMELT", 120, 45, "in bud"],
      ["Ilex glabra 'Shamrock'", null, { formula: "B4/4", result: 30 }, ""],
    ]);
    const trees = book.addWorksheet("Trees");
    trees.addRows([
      ["Plant", "Size", "Price"],
      ["Quercus bicolor", '2" BB', 180],
    ]);
    trees.getCell("C2").numFmt = '"$"#,##0.00';
    book.addWorksheet("Old", { state: "hidden" }).addRow(["Acer rubrum", "#3", 12]);
    const { code, out } = matched("book.xlsx", new Uint8Array(await book.xlsx.writeBuffer()));
    expect(code).toBe(0);
    const { lines } = JSON.parse(out) as { lines: { row: number; name: string; size: { containerClass: string | null }; quantity: number | null; priceCents: number | null }[] };
    expect(lines.map(({ row, name, size, quantity, priceCents }) => [row, name, size.containerClass, quantity, priceCents])).toEqual([
      [4, "Hydrangea paniculata 'Limelight'", "#1", 120, null],
      [4, "Hydrangea paniculata 'Limelight'", "#3", 45, null],
      [5, "Ilex glabra 'Shamrock'", "#3", 30, null],
      [2, "Quercus bicolor", null, null, 18000],
    ]);
  });

  it.each([
    ["cut.xlsx", new Uint8Array([0x50, 0x4b, 3, 4]), "cut off or damaged"],
    ["old.xls", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1]), "old .xls workbook"],
    ["locked.xlsx", new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, ...Buffer.from("EncryptedPackage", "utf16le")]), "protected by a password"],
    ["list.pdf", "%PDF-1.7", "is a PDF"],
    ["empty.csv", "", "is empty"],
  ])("says in plain words why %s is not read", (name, content, words) => {
    const { code, err } = matched(name, content);
    expect(code).toBe(2);
    expect(err).toContain(words);
  });
});
