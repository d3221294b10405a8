import { describe, expect, it } from "vitest";
import { columnsKept, columnsRecalled } from "./list-columns-kept";
import { csvRows, listRead } from "./list-read";
import { sizeHeading } from "./list-size-columns";

const isName = (text: string): boolean => /^[A-Z][a-z]+ [a-z]+/.test(text);
const read = (csv: string) => listRead([{ name: "list", rows: csvRows(csv) }], isName);
const told = (csv: string) => read(csv).lines.map(({ row, name, sizeText, quantityText, prices }) => [row, name, sizeText, quantityText, prices.map(({ text }) => text).join(" ")]);

describe("sizes as column headings", () => {
  it.each([
    ["#3", "#3", null],
    ["3 gal qty", "3 gal", "quantity"],
    ['2-2.5" cal price', '2-2.5" cal', "price"],
    ["5-6' BB", "5-6' BB", null],
  ])("%s is a size", (heading, size, holds) => {
    expect(sizeHeading(heading)).toEqual({ size, holds });
  });
  it.each(["1-9", "25+", "Price", "2026", "Size (in)", "Qty 3"])("%s is none", (heading) => {
    expect(sizeHeading(heading)).toBeNull();
  });
  it("give a line for each filled cell; dashes and sums give none", () => {
    expect(told("Plant,#1,#3,Notes\nAcer rubrum,120,-,\nAcer griseum,,call,new\nBetula nigra,,,\nTotal,120,,\n")).toEqual([
      [2, "Acer rubrum", "#1", "120", ""],
      [3, "Acer griseum", "#3", "call", ""],
    ]);
    expect(read("Plant,#1,#3,Notes\nAcer rubrum,120,-,\nBetula nigra,,,\nTotal,120,,\n").skipped.map(({ why }) => why)).toEqual(["header", "nothing offered", "total"]);
  });
  it("hold prices where money stands in them", () => {
    expect(told('Plant,"2"" cal","3"" cal"\nAcer rubrum,$120.00,$180.00\n').map((line) => [line[2], line[4]])).toEqual([
      ['2" cal', "$120.00"],
      ['3" cal', "$180.00"],
    ]);
  });
  it("may span a quantity and a price each", () => {
    expect(told(",#3,,#5,\nPlant,Qty,Price,Qty,Price\nAcer rubrum,20,$18,30,$29\n")).toEqual([
      [3, "Acer rubrum", "#3", "20", "$18"],
      [3, "Acer rubrum", "#5", "30", "$29"],
    ]);
  });
});

describe("columns remembered of the last list", () => {
  const first = csvRows("Plant,Size,A,B\nAcer rubrum,#3,12,5\n");
  const map = read("Plant,Size,A,B\nAcer rubrum,#3,12,5\n").maps[0]?.map;
  const kept = map && columnsKept({ ...map, columns: map.columns.map((column, c) => (c === 2 ? { ...column, role: "price" } : column)) });
  it("are found again in another order and below other title rows", () => {
    const recalled = kept && columnsRecalled(kept, csvRows("Spring list,,,\nB,A,Size,Plant\n4,13,#5,Acer rubrum\n"), isName);
    expect(recalled?.columns.map(({ heading, role }) => [heading, role])).toContainEqual(["A", "price"]);
    expect(kept && columnsRecalled(kept, first, isName)?.columns[2]?.role).toBe("price");
  });
  it("are not forced on another kind of sheet", () => {
    expect(kept && columnsRecalled(kept, csvRows("Botanical,Height,Net\nAcer rubrum,6-7',99\n"), isName)).toBeNull();
  });
});
