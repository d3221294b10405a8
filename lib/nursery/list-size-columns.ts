// Columns headed by a size: #1 | #3 | #5, or 2" | 2.5" | 3", with quantities or prices in the cells.
import { sizeSplit } from "./size-split";

export type SizeHeading = {
  /** The size as the heading writes it: `2-2.5" cal`. */
  readonly size: string;
  /** What the heading says the cells hold; null where it says nothing. */
  readonly holds: "quantity" | "price" | null;
};

const QUANTITY_WORDS = /\b(?:qty|quantity|avail(?:able|ability)?|on hand|in stock|stock|inventory|count|units|pcs|ats)\b\.?/gi;
const PRICE_WORDS = /\b(?:prices?|cost|wholesale|net|each|ea|usd)\b\.?|[$€£]/gi;
/** A figure alone is a price break or a year; a size has a unit, a number sign or a root beside its figure. */
const UNIT =
  /["'″′’”]|#|\d ?-?(?:gal|g|qt|pt|in|ft|cm|mm|l)\b|\b(?:gallons?|quarts?|pints?|inch(?:es)?|feet|foot|pots?|flats?|plugs?|cal(?:iper)?|ht|cont|b ?[&/] ?b|bb|cells?|ct)\b|\b(?:no\.? ?|c ?-?)\d{1,3}\b/i;

/** Whether a heading is a size, with or without the word for what stands below it; null for any other. */
export function sizeHeading(heading: string): SizeHeading | null {
  const plain = heading.replace(/\s+/g, " ").trim();
  if (plain.length > 32 || !/\d|[¼½¾]/.test(plain) || !UNIT.test(plain)) return null;
  const holds = plain.search(PRICE_WORDS) >= 0 ? "price" : plain.search(QUANTITY_WORDS) >= 0 ? "quantity" : null;
  const bare = plain
    .replace(PRICE_WORDS, " ")
    .replace(QUANTITY_WORDS, " ")
    .replace(/\s+/g, " ")
    .replace(/^[\s:;,–-]+|[\s:;,–-]+$/g, "");
  const { name, sizeText } = sizeSplit(bare);
  return sizeText !== "" && name.replace(/[^\p{L}\d]/gu, "").length <= 1 ? { size: bare, holds } : null;
}

const PRICE_CELL = /^(?:US|C)? ?[$€£]|[$€£]$|^\d{1,5}[.,]\d{2}(?: ?(?:ea|each))?\.?$/i;
/** What the cells under size headings hold, where the headings do not say. @param cells filled cells of all such columns */
export function sizedCellsHold(cells: readonly string[]): "quantity" | "price" {
  const filled = cells.filter((cell) => /\d/.test(cell));
  return filled.length > 0 && filled.filter((cell) => PRICE_CELL.test(cell)).length >= filled.length * 0.6 ? "price" : "quantity";
}

/** Whether a cell under a size heading offers something: a figure, "call", "sold out", a season; a dash offers nothing. */
export function isOfferCell(cell: string): boolean {
  const plain = cell.trim();
  return plain !== "" && !/^(?:[-–—.]+|n\/?a|x|none)$/i.test(plain);
}

/** Sizes above columns of quantities and prices, each standing over the columns to its right up to the next: "#1 | | #3 |" over "Qty | Price | Qty | Price". */
export function sizesCarried(above: readonly string[], width: number): string[] {
  let held = "";
  return Array.from({ length: width }, (_, c) => {
    const cell = (above[c] ?? "").trim();
    if (cell !== "") held = sizeHeading(cell)?.size ?? "";
    return held;
  });
}
