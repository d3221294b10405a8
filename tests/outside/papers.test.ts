// Papers read back by what did not write them: XLSX by read-excel-file, CSV by papaparse, codes by jsqr, PDFs by a reader of our own that needs no program on the machine.
import Papa from "papaparse";
import { readSheet } from "read-excel-file/node";
import { describe, expect, it } from "vitest";
import { type Paper, paperPlant } from "../../lib/papers/paper";
import { paperCsv } from "../../lib/papers/paper-table";
import type { Tag } from "../../lib/papers/tag-sheet";
import { paperPdf } from "../../lib/server/papers/paper-pdf";
import { PAPER_SIZES, type PaperSize, SHEET_PT } from "../../lib/server/papers/paper-size";
import { paperWorkbook } from "../../lib/server/papers/paper-workbook";
import { tagsPdf } from "../../lib/server/papers/tags-pdf";
import { pdfPages, plainText } from "../support/pdf-read";
import { pdfCodes } from "../support/qr-read";

const maple = { botanical: "Acer × freemanii", cultivar: "Jeffer's Red", tradeDesignation: "Autumn Blaze", commonNames: ["Freeman maple"] };
/** Signs that plant lists hold, and letters beyond western Europe. */
const SIGNS = "× ® ™ ' ’ – é ½ ″ ů Š";
const FORMULA = "=HYPERLINK(1)";

const paperOf = (rows: number): Paper => ({
  title: "Pull list",
  subtitle: "Clinic & court · all beds",
  fileName: "Clinic pull list",
  groupHead: "Place",
  columns: [
    { key: "tick", head: "Pulled", kind: "tick", width: 3 },
    { key: "qty", head: "Qty", kind: "number", width: 5, strong: true },
    { key: "plant", head: "Plant", kind: "plant", width: 25 },
    { key: "each", head: "Each", kind: "money", width: 8 },
    { key: "remarks", head: "Remarks", kind: "text", width: 20 },
  ],
  groups: [
    {
      key: "a",
      heading: "North field, row 3",
      note: "",
      rows: Array.from({ length: rows }, (_, i) => ({
        key: `r${i}`,
        cells: { qty: 1200 + i, plant: paperPlant(maple), each: 1950, remarks: i === 0 ? FORMULA : SIGNS },
        caution: "Fall-dig hazard.",
      })),
    },
  ],
  total: { qty: 1200 * rows },
  notes: ["Lift with two above 50 lb."],
  foot: [
    ["Job", "Clinic & court"],
    ["Pulled by", ""],
  ],
  empty: "Nothing.",
});

describe("a paper as XLSX", () => {
  it("is read back with real numbers, texts as texts, and a header of its own", async () => {
    const rows = await readSheet(Buffer.from(await paperWorkbook(paperOf(2), "letter")));
    expect(rows[0]?.[0]).toBe("Pull list · Clinic & court · all beds");
    const head = rows.findIndex((row) => row[0] === "Place");
    expect(rows[head]).toEqual(["Place", "Qty", "Botanical name", "Common name", "Each", "Remarks", "Caution"]);
    expect(rows[head + 1]).toEqual(["North field, row 3", 1200, "Acer × freemanii 'Jeffer's Red' AUTUMN BLAZE", "Freeman maple", 19.5, FORMULA, "Fall-dig hazard."]);
    expect(rows[head + 2]?.[5]).toBe(SIGNS);
  });
});

describe("a paper as CSV", () => {
  it("has the same cells, with formulas disarmed", () => {
    const [head, first] = Papa.parse<string[]>(paperCsv(paperOf(1)).slice(1)).data;
    expect(head).toEqual(["Place", "Qty", "Botanical name", "Common name", "Each", "Remarks", "Caution"]);
    expect(first).toEqual(["North field, row 3", "1200", "Acer × freemanii 'Jeffer's Red' AUTUMN BLAZE", "Freeman maple", "19.50", `'${FORMULA}`, "Fall-dig hazard."]);
  });
});

describe("a paper as PDF", () => {
  it.each(PAPER_SIZES)("repeats its header on each %s page, numbers the pages and says every row", async (size: PaperSize) => {
    const pages = pdfPages(await paperPdf(paperOf(30), size));
    const [short, long] = SHEET_PT[size];
    expect(pages.length).toBeGreaterThan(1);
    for (const [i, { width, height, text }] of pages.entries()) {
      expect([Math.abs(width - long) < 0.5, Math.abs(height - short) < 0.5]).toEqual([true, true]);
      expect(plainText(text)).toContain("Qty Plant Each Remarks");
      expect(plainText(text)).toContain(`page ${i + 1} of ${pages.length}`);
      expect(plainText(text)).toContain("Clinic & court");
      expect(text).not.toContain("\ufffd");
    }
    const all = plainText(pages.map(({ text }) => text).join("\n"));
    for (let i = 0; i < 30; i++) expect(all).toContain((1200 + i).toLocaleString("en-US"));
    expect(all).toContain("$19.50");
  });

  it("sets the signs and letters that names hold, with trade designations as capitals and no quotes", async () => {
    const text = plainText(pdfPages(await paperPdf(paperOf(2), "letter"))[0]?.text ?? "");
    for (const sign of SIGNS.split(" ")) expect(text).toContain(sign);
    expect(text).toContain("‘Jeffer’s Red’");
    expect(text).toContain("AUTUMN BLAZE");
    expect(text).not.toContain("‘AUTUMN BLAZE’");
  });

  it("says where to begin when there is nothing on it", async () => {
    const pages = pdfPages(await paperPdf({ ...paperOf(0), groups: [] }, "letter"));
    expect(pages).toHaveLength(1);
    expect(pages[0]?.text).toContain("Nothing.");
  });
});

describe("tags as PDF", () => {
  const tag = (i: number): Tag => ({
    key: `t${i}`,
    job: "Clinic",
    bed: "Entrance bed",
    letter: "C",
    plant: paperPlant(maple),
    size: "#3",
    count: `${i + 1} of 14`,
    place: "Yard, bay 1",
    code: `http://nursery.local:3000/jobs/587ea5e2401d451e/pull/field#line-${i}`,
  });

  it.each(PAPER_SIZES)("stand twelve a %s sheet, each with a code that is read back", async (size: PaperSize) => {
    const tags = Array.from({ length: 14 }, (_, i) => tag(i));
    const pages = pdfPages(await tagsPdf(tags, "Tags", size));
    expect(pages.map(({ width, height }) => [Math.round(width), Math.round(height)])).toEqual(Array(2).fill(SHEET_PT[size].map(Math.round)));
    expect(pages.flatMap(({ drawing }) => pdfCodes(drawing))).toEqual(tags.map(({ code }) => code));
    expect(plainText(pages[1]?.text ?? "")).toContain("14 of 14");
  });
});
