// A price as lists write it: $12.50, 12,50 €, 1-9 $12.00 / 10+ $10.50, call. Money is whole cents.
import type { PriceBreak } from "./lot";

export type LinePrice = {
  /** Cents for one plant or unit at the smallest quantity; null where the list gives no number. */
  readonly cents: number | null;
  /** Every price of the cell, ascending by quantity; the first is `cents`. */
  readonly breaks: readonly PriceBreak[];
  /** ISO code where a mark says so. */
  readonly currency: "USD" | "CAD" | "EUR" | "GBP" | null;
  /** Words without a figure: "call". */
  readonly note: string;
};

const AMOUNT = String.raw`(?:\d{1,3}(?:[, ’']\d{3})+(?:\.\d{1,2})?|\d{1,3}(?:\.\d{3})+,\d{2}|\d+[.,]\d{1,2}(?!\d)|\d+(?:\.\d+)?|\.\d{2})`;
const MARK = String.raw`(?:US ?\$|C(?:A|AD)? ?\$|USD|CAD|EUR|GBP|\$|€|£)`;

function currencyOf(text: string): LinePrice["currency"] {
  if (/€|EUR/i.test(text)) return "EUR";
  if (/£|GBP/i.test(text)) return "GBP";
  if (/CAD|CA? ?\$/i.test(text.replace(/US ?\$/gi, ""))) return "CAD";
  return /\$|USD/i.test(text) ? "USD" : null;
}

/** Whole cents of one amount, half a cent rounded up; null when it is no number. */
function amountCents(text: string): number | null {
  const plain = text.replace(/[ ’']/g, "");
  const comma = plain.lastIndexOf(",");
  const decimalComma = comma >= 0 && plain.length - comma - 1 <= 2;
  const value = Number(decimalComma ? plain.replace(/[.,](?=.*,)/g, "").replace(",", ".") : plain.replace(/,/g, ""));
  return Number.isFinite(value) ? Math.floor(value * 100 + 0.5 + 1e-6) : null;
}

/** "1-9", "10+", "10 up", "25 or more", "50-99": the quantity from which a price holds; null for other text. */
export function breakFrom(text: string): number | null {
  const match = /(?:^|[^\d.])(\d{1,5}) ?(?:\+|&? ?up\b|or more|- ?\d{1,5}(?![\d.])|to ?\d{1,5}(?![\d.]))/i.exec(text);
  return match ? Number(match[1]) : null;
}

function breaksOrdered(breaks: readonly PriceBreak[]): PriceBreak[] {
  const byFrom = new Map<number, PriceBreak>();
  for (const step of breaks) if (!byFrom.has(step.from)) byFrom.set(step.from, step);
  return [...byFrom.values()].sort((a, b) => a.from - b.from);
}

/** Breaks named beside their amounts: "1-9 $12 10+ $11", "$12.00 (10+ $11.00)", "10 @ 8.50". */
const NAMED = new RegExp(String.raw` ?(?:(\d{1,5}) ?(?:\+|&? ?up\b|or more|- ?\d{1,5}(?=[ :@=$])|to \d{1,5}(?=[ :@=$])|(?= ?[@=]))[ :@=]*)?(${MARK})? ?(${AMOUNT})`, "gi");

/** What a price cell says. Amounts parted by slashes without quantities keep their order, the first at 1, the others unknown and left out. Never throws. */
export function priceFromText(text: string): LinePrice {
  const plain = text.replace(/\s+/g, " ").trim().slice(0, 200);
  const currency = currencyOf(plain);
  const found = [...plain.matchAll(NAMED)].flatMap((match) => {
    const cents = amountCents(match[3] ?? "");
    return cents === null ? [] : [{ from: match[1] === undefined ? null : Number(match[1]), cents }];
  });
  const [first] = found;
  if (!first) return { cents: null, breaks: [], currency, note: plain.toLowerCase() };
  const breaks = breaksOrdered(found.flatMap(({ from, cents }, i) => (from !== null ? [{ from: Math.max(1, from), cents }] : i === 0 ? [{ from: 1, cents }] : [])));
  return { cents: breaks[0]?.cents ?? first.cents, breaks, currency, note: "" };
}

/** Prices of several columns as one: each column's own quantity, else 1 for the first. */
export function pricesJoined(cells: readonly { readonly from: number | null; readonly text: string }[]): LinePrice {
  const read = cells.map(({ from, text }) => ({ from, price: priceFromText(text) }));
  const breaks = breaksOrdered(read.flatMap(({ from, price }) => (price.cents === null ? [] : from === null ? price.breaks : [{ from: Math.max(1, from), cents: price.cents }])));
  return {
    cents: breaks[0]?.cents ?? null,
    breaks,
    currency: read.find(({ price }) => price.currency)?.price.currency ?? null,
    note: breaks.length ? "" : (read.find(({ price }) => price.note)?.price.note ?? ""),
  };
}

/** "12.50 / 11.75" under "Price (1-9 / 10+)": each amount with the quantity that the heading names in its place; null where they do not pair. */
export function pricesParted(heading: string, text: string): { from: number; text: string }[] | null {
  const quantities = [...heading.matchAll(/(?<![\d.])(\d{1,5}) ?(?:-|to) ?\d{1,5}|(?<![\d.])(\d{1,5}) ?(?:\+|&? ?up\b|or more)/gi)].map((match) => Number(match[1] ?? match[2]));
  const amounts = text.split(/\s*[/|]\s*/);
  const pairs = quantities.length > 1 && amounts.length === quantities.length && amounts.every((amount) => /\d/.test(amount));
  return pairs ? amounts.map((amount, i) => ({ from: quantities[i] ?? 1, text: amount })) : null;
}

const IN_TEXT = new RegExp(
  String.raw`(?:^|[\s,;(@-])\s*(?:@ ?)?(?:US ?|CA? ?)?[$€£] ?${AMOUNT}(?: ?(?:/|-|,|or) ?[$€£]? ?${AMOUNT})*(?: ?(?:/ ?)?(?:ea|each|net|per \w+)\b\.?)?\)?`,
  "i",
);

/** Takes the price with a currency mark out of a description: "Hosta Patriot 1 gal $7.95". A text without one comes back whole. */
export function priceSplit(text: string): { readonly rest: string; readonly priceText: string } {
  const match = IN_TEXT.exec(text.slice(0, 300));
  if (!match) return { rest: text, priceText: "" };
  const rest = `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}`
    .replace(/\s+/g, " ")
    .replace(/\s*[-,;:/|@]\s*$/, "")
    .trim();
  return { rest, priceText: match[0].replace(/^[\s,;(@-]+|\)$/g, "").trim() };
}
