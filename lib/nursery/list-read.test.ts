import { describe, expect, it } from "vitest";
import { csvRows, listRead } from "./list-read";

const isName = (text: string): boolean => /^[A-Z][a-z]+ [a-z]+/.test(text);
const read = (csv: string) => listRead([{ name: "list", rows: csvRows(csv) }], isName);

describe("a list with a root in its title or headings", () => {
  it("gives the title's root to all lines", () => {
    const { lines } = read('Fall list - all B&B unless noted,,\nDescription,Size,Qty\nAcer rubrum,2",4\n');
    expect(lines.map(({ name, rootText }) => [name, rootText])).toEqual([["Acer rubrum", "B&B"]]);
  });

  it("changes it at each heading, and takes no heading for a plant", () => {
    const { lines, skipped } = read("Description,Size,Qty\nBARE ROOT TREES,,\nAcer rubrum,5-6',4\nB&B EVERGREENS,,\nPicea abies,6-7',9\n");
    expect(lines.map(({ name, rootText }) => [name, rootText])).toEqual([
      ["Acer rubrum", "bare root"],
      ["Picea abies", "B&B"],
    ]);
    expect(skipped.map(({ why }) => why)).toEqual(["header", "heading", "heading"]);
  });

  it("gives none where the title names two or explains abbreviations", () => {
    for (const title of ["Container and B&B stock", "BR = bare root"]) {
      expect(read(`${title},,\nDescription,Size,Qty\nAcer rubrum,5-6',4\n`).lines.map(({ rootText }) => rootText)).toEqual([""]);
    }
  });
});

describe("columns", () => {
  it("headed species hold whole names where no genus stands beside them", () => {
    const { lines } = read("Stock no.,Species,Age,Height,25-99,Inv.\nS1,Red Maple (Acer rubrum),2-0,18-24\",2.10,400\nS2,Gray Birch (Betula populifolia),2-0,2-3',2.20,90\n");
    expect(lines.map(({ name, quantityText }) => [name, quantityText])).toEqual([
      ["Red Maple (Acer rubrum)", "400"],
      ["Gray Birch (Betula populifolia)", "90"],
    ]);
  });

  it("headed Qt are quarts beside other sizes, and a price alone offers nothing where sizes have quantities", () => {
    const { lines } = read("Botanical,Qt,#1,#2,$ #1\nAjuga reptans,400,,,5.95\nPhlox subulata,350,120,,4.95\nHosta sieboldiana,,,55,9.95\n");
    expect(lines.map(({ name, sizeText, quantityText, prices }) => [name, sizeText, quantityText, prices.map(({ text }) => text).join()])).toEqual([
      ["Ajuga reptans", "Qt", "400", ""],
      ["Phlox subulata", "Qt", "350", ""],
      ["Phlox subulata", "#1", "120", "4.95"],
      ["Hosta sieboldiana", "#2", "55", ""],
    ]);
  });

  it("headed by a sentence and a word are headings", () => {
    const { lines } = read("WEEK 20 AVAILABILITY - reply with your order,Count\nHosta sieboldiana 1 gal,40\nPicea abies 6-7',12\n");
    expect(lines.map(({ name }) => name)).toEqual(["Hosta sieboldiana 1 gal", "Picea abies 6-7'"]);
  });
});
