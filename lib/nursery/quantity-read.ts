// A quantity as lists write it: 250, 250+, 1,200, 10 flats, call, Spring 26.

export type LineQuantity = {
  /** Whole plants or whole units (flats, bundles) on offer; 0 for sold out; null where the list gives no number. */
  readonly count: number | null;
  /** "250+": so many or more. */
  readonly orMore: boolean;
  /** What is counted when it is not single plants: "flat", "tray", "bundle", "case", "rack", "pallet". */
  readonly unit: string | null;
  /** When it will be there, as written: "Spring 26". */
  readonly ready: string | null;
  /** Other words of the cell: "call", "limited". */
  readonly note: string;
};

const SEASON = "(?:early |mid |mid-|late )?(?:spring|spr|summer|sum|fall|autumn|winter|win)";
const MONTH = "(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)";
const READY = new RegExp(
  String.raw`\b(?:ready |avail(?:able|\.)? ?|from )?(?:${SEASON}\.?(?: ?'?(?:20)?\d{2})?|[sfw]p?'?\d{2}|${MONTH}\.?(?: \d{1,2}(?:st|nd|rd|th)?\b)?(?:,? ?'?(?:20)?\d{2})?|(?:week|wk)\.? ?\d{1,2}|\d{1,2}\/\d{1,2}\/(?:\d{2}|\d{4})|\d{4}-\d{2}-\d{2}|next (?:year|spring|fall|week))(?![a-z])`,
  "i",
);
const UNITS = /\b(flat|tray|bundle|bdl|case|rack|pallet|shelf|cart)(?:s|es)?\b\.?/i;
const NONE = /^(?:-+|–|—|0|none|nil|out|sold(?: ?out)?|s\/?o|out of stock|n\/?a|unavailable|not available)$/i;
const NUMBER = /(\d{1,3}(?:[,. ’']\d{3})+|\d+(?:\.\d+)?)( ?k\b)?/i;

function wholeNumber(text: string, thousands: boolean): number {
  const grouped = /^\d{1,3}(?:[,. ’']\d{3})+$/.test(text);
  const value = grouped ? Number(text.replace(/\D/g, "")) : Number(text);
  return Math.floor(value * (thousands ? 1000 : 1) + 1e-6);
}

/** A season or date of availability in a text, as written; null where there is none. */
export function readyInText(text: string): string | null {
  return READY.exec(text)?.[0].trim() ?? null;
}

/**
 * What a quantity cell says. A range gives its low end; an empty cell and words without a number give count null, "sold out" gives 0.
 * Never throws.
 */
export function quantityFromText(text: string): LineQuantity {
  const plain = text.replace(/\s+/g, " ").trim().slice(0, 120);
  if (plain === "") return { count: null, orMore: false, unit: null, ready: null, note: "" };
  if (NONE.test(plain)) return { count: 0, orMore: false, unit: null, ready: null, note: /^[\d–—-]+$/.test(plain) ? "" : plain.toLowerCase() };
  const ready = readyInText(plain);
  const unitMatch = UNITS.exec(plain);
  const unit = unitMatch ? (unitMatch[1] ?? "").toLowerCase().replace("bdl", "bundle") : null;
  let rest = plain.replace(READY, " ");
  const number = NUMBER.exec(rest);
  const count = number ? wholeNumber(number[1] ?? "", number[2] !== undefined) : null;
  const orMore = number ? /^ ?(?:\+|plus|& ?up|or more)/i.test(rest.slice(number.index + number[0].length)) || /(?:>|over|min\.?) ?$/i.test(rest.slice(0, number.index)) : false;
  if (number) rest = rest.replace(number[0], " ");
  const note = rest
    .replace(UNITS, " ")
    .replace(/\b(?:ea|each|pcs?|plants?|qty|avail(?:able)?|now|ready|plus|or more|over|approx|about|ca)\b\.?|& ?up/gi, " ")
    .replace(/[+~≈<>()[\],;:@/–-]|\b\d+\b/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  return { count, orMore, unit, ready, note: note.toLowerCase() };
}
