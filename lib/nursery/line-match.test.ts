import { describe, expect, it } from "vitest";
import { LISTED_PLANTS } from "../../tests/benchmarks/listed-plants";
import { plantIndex } from "../plants/search";
import { lineMatcher, listMatch, nameKey, namesAuthored } from "./line-match";
import { csvRows, listRead } from "./list-read";

const index = plantIndex(LISTED_PLANTS);
const nameOf = (id: string | null) => LISTED_PLANTS.find((plant) => plant.id === id)?.name ?? null;
const matcher = lineMatcher(index);
const read = (name: string, common = "", section = "") => {
  const { taxonId, sure } = matcher.nameRead(name, common, section);
  return [nameOf(taxonId), sure];
};
const matched = (csv: string) =>
  listMatch(index, [{ name: "list", rows: csvRows(csv) }]).matched.map(({ row, reading, size, quantity, priceCents }) => ({
    row,
    name: nameOf(reading.taxonId),
    sure: reading.sure,
    container: size.containerClass,
    caliper: size.caliperIn,
    count: quantity.count,
    priceCents,
  }));

describe("a name on a list", () => {
  it.each<[string, string]>([
    ["HYDR PAN LIMELT TM", "Hydrangea paniculata 'Limelight'"],
    ["HYDR PAN LTL LIME", "Hydrangea paniculata 'Jane'"],
    ["Thuja occ. Smaragd", "Thuja occidentalis 'Smaragd'"],
    ["ACER RUB OCT GLRY", "Acer rubrum 'October Glory'"],
    ["MAPLE OCT GLORY", "Acer rubrum 'October Glory'"],
    ["QUER ALB", "Quercus alba"],
    ["Aster novae-angliae Purple Dome", "Symphyotrichum novae-angliae 'Purple Dome'"],
    ["1042 - Acer rubrum 'October Glory'", "Acer rubrum 'October Glory'"],
    ["Acer rubrum var. ignotum 'October Glory'", "Acer rubrum 'October Glory'"],
    ["Acer rubrum (L.) Somebody 'October Glory'", "Acer rubrum 'October Glory'"],
  ])("passes as sure: %s", (written, name) => {
    expect(read(written)).toEqual([name, true]);
  });

  it("is not sure when it fits two plants, and offers both", () => {
    const reading = matcher.nameRead("ACER SACC", "", "");
    expect(reading.sure).toBe(false);
    expect(reading.candidates.map(nameOf)).toEqual(expect.arrayContaining(["Acer saccharum", "Acer saccharinum"]));
    expect(reading.candidates.length).toBeLessThanOrEqual(3);
  });

  it("is never read as another cultivar, nor a cultivar as its species", () => {
    expect(read("Acer rubrum 'Autumn Flame'")).toEqual([null, false]);
    expect(read("HYDR PAN LIMELT PRIME")[1]).toBe(false);
    expect(read("Black-eyed Susan, Goldsturm")[0]).not.toBe("Rudbeckia fulgida");
    expect(read("Quercus rubra")).toEqual([null, false]);
  });

  it("takes the cultivar from the common name's column, and the genus from the heading above", () => {
    expect(read("Acer rubrum", "October Glory Red Maple")).toEqual(["Acer rubrum 'October Glory'", true]);
    expect(read("rubrum 'October Glory'", "", "ACER (Maple)")).toEqual(["Acer rubrum 'October Glory'", true]);
  });

  it("is learned once confirmed", () => {
    const id = LISTED_PLANTS[4]?.id ?? "";
    const taught = lineMatcher(index, { learned: new Map([[nameKey("  WHITE  thing "), id]]) });
    expect(taught.nameRead("White thing", "", "")).toEqual({ taxonId: id, sure: true, candidates: [] });
  });

  it("may carry authors where the whole list does", () => {
    expect(namesAuthored(["Acer rubrum L.", "Quercus alba L."])).toBe(true);
    expect(namesAuthored(["Acer rubrum October Glory", "Quercus alba"])).toBe(false);
    const authored = lineMatcher(index, { authored: true });
    expect(nameOf(authored.nameRead("Acer saccharum Someauthor", "", "").taxonId)).toBe("Acer saccharum");
    expect(matcher.nameRead("Acer saccharum Someauthor", "", "").sure).toBe(false);
  });
});

describe("a list", () => {
  it("is read under title rows, by headings in any order and wording", () => {
    const csv = `Spring availability,,,\nPrices may change,,,\n,,,\nEach,On Hand,Item Description,Code\n$18.50,250+,HYDR PAN LIMELT TM #3,HPL3\ncall,"1,200","Acer rub. 'October Glory' 2-2.5""",ARO\n`;
    expect(matched(csv)).toEqual([
      { row: 5, name: "Hydrangea paniculata 'Limelight'", sure: true, container: "#3", caliper: null, count: 250, priceCents: 1850 },
      { row: 6, name: "Acer rubrum 'October Glory'", sure: true, container: null, caliper: [2, 2.5], count: 1200, priceCents: null },
    ]);
  });

  it("is read without any headings, by what stands in the columns", () => {
    expect(matched(`Quercus alba 2" BB;40;$145.00\nAcer rubrum 3" BB;12;$245.00\n`)).toMatchObject([
      { row: 1, name: "Quercus alba", count: 40, priceCents: 14500 },
      { row: 2, name: "Acer rubrum", caliper: [3, 3], count: 12 },
    ]);
  });

  it("carries names down, and tells headings, repeated headers and notes from lines", () => {
    const csv = `Plant,Size,Qty\nSHADE TREES,,\nQuercus alba,"2"" B&B",5\n,"3"" B&B",7\nPlant,Size,Qty\nPage 2,,\nMystery plant,#3,1\nThank you for your order.,,\n`;
    const list = listRead([{ name: "s", rows: csvRows(csv) }], matcher.isName);
    expect(list.lines.map(({ row, name, section }) => [row, name, section])).toEqual([
      [3, "Quercus alba", "SHADE TREES"],
      [4, "Quercus alba", "SHADE TREES"],
      [7, "Mystery plant", "SHADE TREES"],
    ]);
    expect(list.skipped.map(({ row, why }) => [row, why])).toEqual([
      [1, "header"],
      [2, "heading"],
      [5, "header"],
      [6, "note"],
      [8, "note"],
    ]);
  });

  it("joins genus, species and cultivar, sizes of several columns, and price breaks", () => {
    const csv = `Genus,Species,Variety,Cont,Cal,Avail,1-9,10+\nAcer,rubrum,October Glory,,2-2.5,9,$150,$140\nHydrangea,paniculata,Limelight,3,,80,$18,$16\n`;
    const lines = listMatch(index, [{ name: "s", rows: csvRows(csv) }]).matched;
    expect(lines.map(({ reading, size, prices }) => [nameOf(reading.taxonId), size.containerClass, size.caliperIn, prices.map(({ from, cents }) => [from, cents])])).toEqual([
      [
        "Acer rubrum 'October Glory'",
        null,
        [2, 2.5],
        [
          [1, 15000],
          [10, 14000],
        ],
      ],
      [
        "Hydrangea paniculata 'Limelight'",
        "#3",
        null,
        [
          [1, 1800],
          [10, 1600],
        ],
      ],
    ]);
  });

  it("follows a corrected column map", () => {
    const rows = csvRows("a,b\n7,Quercus alba\n");
    const map = {
      headerRow: 0,
      headerRows: 1,
      columns: [
        { role: "quantity" as const, heading: "a", from: null },
        { role: "name" as const, heading: "b", from: null },
      ],
    };
    const [line] = listMatch(index, [{ name: "s", rows }], { maps: new Map([["s", map]]) }).matched;
    expect([nameOf(line?.reading.taxonId ?? null), line?.quantity.count]).toEqual(["Quercus alba", 7]);
  });

  it("loses no row, and does not fail on an empty or ragged file", () => {
    expect(matched("")).toEqual([]);
    const csv = 'x\n,,,\nQuercus alba,#3\n\n,9,,"un\nclosed\n';
    const list = listRead([{ name: "s", rows: csvRows(csv) }], matcher.isName);
    expect(list.lines.length + list.skipped.length).toBe(csvRows(csv).filter((row) => row.some((cell) => cell.trim())).length);
  });
});
