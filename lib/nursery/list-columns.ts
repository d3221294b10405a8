// What the columns of a supplier's list hold, guessed from their headings and from what stands in them.

import { sizedCellsHold, sizeHeading, sizesCarried } from "./list-size-columns";
import { breakFrom } from "./price-read";
import { readyInText } from "./quantity-read";
import { sizeSplit } from "./size-split";

export const COLUMN_ROLES = [
  "botanical",
  "common",
  "name",
  "genus",
  "species",
  "cultivar",
  "size",
  "container",
  "root",
  "caliper",
  "height",
  "spread",
  "quantity",
  "later",
  "ready",
  "price",
  "sizedQuantity",
  "sizedPrice",
  "remarks",
  "location",
  "grade",
  "code",
  "ignore",
] as const;
export type ColumnRole = (typeof COLUMN_ROLES)[number];

/** One column: what it holds, its heading as written, and for a price the quantity from which it holds. Of a sized column the heading is the size of every plant in it. */
export type ListColumn = { readonly role: ColumnRole; readonly heading: string; readonly from: number | null };

/** How a sheet is read. It is a value: a person may change it, and it can be kept for the supplier. `headerRows` counts from the first header row. */
export type ColumnMap = { readonly headerRow: number | null; readonly headerRows: number; readonly columns: readonly ListColumn[] };

/** Tells whether a text is a plant's name: what `columnsGuessed` asks when headings say nothing. */
export type NameTest = (text: string) => boolean;

const HEADER_ROWS_MAX = 60;
const SAMPLE_ROWS = 80;
/** Share of filled cells that must look alike for contents to say what a column holds. */
const ALIKE = 0.6;

const WORDINGS: readonly (readonly [ColumnRole, RegExp])[] = [
  [
    "ignore",
    /\b(?:your |my )?order(?:ed)?\b(?! min)|\bmin(?:imum)?\b|\bextended\b|\bext\b|\btotals?\b|\bline total\b|\bretail\b|\bmsrp\b|\bsrp\b|\bweight\b|\bzones?\b|\bimage\b|\bphoto\b|\blight\b|\bper (?:flat|tray|rack|pallet|cart)\b|\bpack\b|\bpatent\b|\broyalty\b|\bunit\b(?! ?(?:price|cost))|\buom\b|\bpulled\b/,
  ],
  ["later", /\b(?:future|coming|on order|next (?:year|season))\b/],
  ["botanical", /\b(?:botanical|botanic|latin|scientific)\b/],
  ["common", /\bcommon\b|\benglish\b|\bvernacular\b/],
  ["genus", /^genus$/],
  ["species", /^species$|^sp$|^specific epithet$/],
  ["cultivar", /^cultivar(?: name)?$|^cv$|^selection$|^epithet$|^variety ?\/ ?cultivar$/],
  ["code", /\b(?:code|sku|upc|barcode|item (?:no|number|id)|stock (?:no|number)|plant id|product id|id|line)\b|^(?:no|#|key)$|\b(?:item|stock|plant|product|part) ?#/],
  ["remarks", /\b(?:remarks?|comments?|notes?|special|info(?:rmation)?)\b/],
  ["location", /\b(?:locations?|loc|block|field|row|bay|yard|farm|site|house|section)\b/],
  ["ready", /\b(?:ready (?:date|from)|date|when|week|wk|eta|ship|ready)\b(?! (?:now|qty))/],
  ["price", /\b(?:prices?|cost|wholesale|net|each|ea|your price|rate|usd|amount)\b|[$€£]/],
  ["caliper", /\bcal(?:iper)?\b/],
  ["height", /\b(?:height|ht|hgt)\b/],
  ["spread", /\b(?:spread|spd|spr|width)\b/],
  ["quantity", /\b(?:qty|quantity|avail(?:able|ability)?|on hand|in stock|stock|inventory|inv|count|units|pcs|pieces|number|amt|ats)\b/],
  ["container", /\b(?:container|cont|pot|can|gal(?:lons?)?)\b/],
  ["root", /\b(?:root(?:s|ing)?|b ?& ?b|root type|finish|how grown|production|form|type)\b/],
  ["size", /\b(?:sizes?|spec(?:ification)?s?|dimensions?)\b/],
  ["grade", /\b(?:grade|quality)\b/],
  ["name", /\b(?:name|plants?|description|desc|variety|product|material|item|crop|stock|taxon)s?\b/],
];

const headingPlain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[*_:.()[\]"']/g, " ")
    .replace(/\s+/g, " ")
    .trim();

/** What a heading's wording says; null when it says nothing known. A bare "1-9", "25+" is a price break, a season a later quantity. */
export function headingRole(heading: string): { readonly role: ColumnRole; readonly from: number | null } | null {
  const plain = headingPlain(heading);
  if (plain === "" || plain.length > 40) return null;
  const from = breakFrom(plain);
  if (from !== null && /^(?:prices?|qty|\$|each|ea)?[ @/-]*\d+ ?(?:\+|- ?\d+|& ?up|up|or more|to \d+)?(?: ?(?:ea|each|prices?|plants?|pcs|\$))*$/.test(plain))
    return { role: "price", from };
  const sized = sizeHeading(heading);
  if (sized) return { role: sized.holds === "price" ? "sizedPrice" : "sizedQuantity", from: null };
  for (const [role, pattern] of WORDINGS) if (pattern.test(plain)) return { role, from: role === "price" ? from : null };
  return readyInText(plain) !== null && plain.length < 20 ? { role: "later", from: null } : null;
}

const cellText = (row: readonly string[] | undefined, column: number): string => (row?.[column] ?? "").trim();
const NAME_ROLES: ReadonlySet<ColumnRole> = new Set(["botanical", "common", "name", "genus", "species", "cultivar"]);

/** How much a row looks like headings: kinds of columns it names; 0 when figures stand in it. */
function headerScore(row: readonly string[]): number {
  const filled = row.map((cell) => cell.trim()).filter(Boolean);
  const roles = new Set<ColumnRole>();
  let strange = 0;
  for (const cell of filled) {
    const role = headingRole(cell);
    if (role) {
      // Several sizes side by side are headings as surely as two words are.
      if (role.role === "sizedQuantity" && roles.has(role.role)) roles.add("sizedPrice");
      roles.add(role.role);
    } else if (/\d/.test(cell) && !/^\d{1,5}$/.test(cell)) strange += 2;
    else if (cell.length > 25) strange += 1;
  }
  const several =
    roles.size >= 2 &&
    [...roles].some(
      (role) => NAME_ROLES.has(role) || role === "size" || role === "code" || (role === "sizedPrice" && filled.length > 2 && !filled.some((cell) => cell.length > 25)),
    );
  return several && strange <= roles.size ? roles.size + filled.length / 100 - strange * 0.6 : 0;
}

function headerFound(rows: readonly (readonly string[])[]): number | null {
  let best: number | null = null;
  let most = 0;
  for (const [i, row] of rows.slice(0, HEADER_ROWS_MAX).entries()) {
    const score = headerScore(row);
    if (score > most) [best, most] = [i, score];
  }
  if (best !== null) return best;
  // A list of one column: a heading is a lone known word above names.
  const first = rows.findIndex((row) => row.some((cell) => cell.trim()));
  const words = (rows[first] ?? []).filter((cell) => cell.trim());
  const [only] = words;
  return words.length === 1 && only && only.length < 25 && headingRole(only) && rows.slice(first + 1, first + 10).every((row) => row.filter((cell) => cell.trim()).length <= 1)
    ? first
    : null;
}

type Contents = {
  readonly filled: number;
  readonly price: number;
  readonly whole: number;
  readonly size: number;
  readonly words: number;
  readonly code: number;
  readonly letters: number;
};

function contentsOf(cells: readonly string[]): Contents {
  const filled = cells.filter(Boolean);
  const share = (test: (cell: string) => boolean) => (filled.length ? filled.filter(test).length / filled.length : 0);
  return {
    filled: filled.length,
    price: share((cell) => /^(?:US|C)? ?[$€£]|[$€£]$|^\d{1,4}[.,]\d{2}(?: ?(?:ea|each))?\.?$/i.test(cell)),
    whole: share((cell) => /^[~>]? ?\d{1,3}(?:,?\d{3})* ?(?:\+|plus|ea\.?|flats?|trays?|pcs)?$|^(?:call|sold out|limited|out|-|n\/a)$/i.test(cell)),
    size: share((cell) => {
      const { name, sizeText } = sizeSplit(cell);
      return sizeText !== "" && name.replace(/[^a-z]/gi, "").length <= 3;
    }),
    words: share((cell) => /\p{L}{3,}/u.test(cell)),
    code: share((cell) => /^[A-Z0-9][A-Z0-9.\-/]{2,14}$/.test(cell) && /\d|^[A-Z]{4,10}$/.test(cell)),
    letters: filled.length ? filled.reduce((sum, cell) => sum + cell.length, 0) / filled.length : 0,
  };
}

/** Role from contents alone, for a column whose heading says nothing. */
function contentsRole(contents: Contents, taken: ReadonlySet<ColumnRole>): ColumnRole | null {
  if (contents.filled === 0) return "ignore";
  if (contents.price >= ALIKE) return "price";
  if (contents.size >= ALIKE) return taken.has("size") ? "container" : "size";
  if (contents.whole >= ALIKE && !taken.has("quantity")) return "quantity";
  if (contents.code >= ALIKE) return "code";
  return null;
}

function isLikeHeading(row: readonly string[] | undefined): boolean {
  const filled = (row ?? []).map((cell) => cell.trim()).filter(Boolean);
  return filled.length > 1 && filled.every((cell) => (headingRole(cell) !== null && cell.length < 25) || /^\(?(?:\d{1,5}[+]?|in|ft|inches|feet|each|\$)\)?$/i.test(cell));
}

/** The columns of a sheet from a given header row on; the next row joins it where it still holds headings ("Price" over "1-9", "10+"). */
export function columnsAt(rows: readonly (readonly string[])[], headerRow: number | null, isName: NameTest): ColumnMap {
  const under = headerRow === null ? undefined : rows[headerRow + 1];
  const headerRows = headerRow === null ? 0 : isLikeHeading(under) ? 2 : 1;
  const body = rows.slice(headerRow === null ? 0 : headerRow + headerRows);
  const width = Math.max(0, ...body.slice(0, SAMPLE_ROWS).map((row) => row.length), ...(headerRow === null ? [] : [rows[headerRow]?.length ?? 0]));
  const sampled = body.filter((row) => row.filter((cell) => cell.trim()).length > 1);
  const step = Math.max(1, Math.floor(sampled.length / SAMPLE_ROWS));
  const sample = (sampled.length ? sampled : body).filter((_, i) => i % step === 0).slice(0, SAMPLE_ROWS);
  const cells = Array.from({ length: width }, (_, c) => sample.map((row) => cellText(row, c)));
  const contents = cells.map(contentsOf);
  const headings = cells.map((_, c) => (headerRow === null ? "" : [cellText(rows[headerRow], c), headerRows === 2 ? cellText(under, c) : ""].filter(Boolean).join(" ")));
  const said = headings.map((heading, c) => {
    const role = headingRole(heading) ?? (headerRows === 2 ? headingRole(cellText(under, c)) : null);
    const what = contents[c];
    // "Item", "Stock", "Plant" may head codes as well as names, "Type" and "Form" anything.
    if (role?.role === "name" && what && (what.words < 0.5 || what.code >= ALIKE)) return what.code >= ALIKE || what.filled === 0 ? { role: "code" as const, from: null } : null;
    if (role?.role === "code" && what && what.code < 0.3 && what.words >= 0.8 && what.letters > 12) return { role: "name" as const, from: null };
    if (role?.role === "quantity" && what && what.filled > 0 && what.words > 0.7 && what.whole < 0.3 && what.letters > 12) return null;
    if (role?.role === "grade" && what && what.size >= ALIKE) return { role: "size" as const, from: null };
    if (role?.role === "root" && what && what.size < 0.3) return { role: "remarks" as const, from: null };
    if ((role?.role === "price" || role?.role === "ready") && what && what.filled > 0 && what.size >= 0.8 && what.price < 0.2) return { role: "size" as const, from: null };
    return role;
  });
  // Bare figures over columns of prices are their quantities: "1 | 10 | 100".
  headings.forEach((heading, c) => {
    const figure = /^(?:price )?(\d{1,5})$/i.exec(heading)?.[1];
    if (figure !== undefined && (contents[c]?.price ?? 0) >= ALIKE) said[c] = { role: "price", from: Number(figure) };
  });
  sizedColumns(said, headings, cells, headerRow === null ? [] : (rows[headerRow] ?? []), headerRow ? (rows[headerRow - 1] ?? []) : []);
  const taken = new Set(said.flatMap((one) => (one ? [one.role] : [])));
  const roles = said.map((one, c): { role: ColumnRole | null; from: number | null } => {
    if (one) return one;
    const role = contents[c] ? contentsRole(contents[c], taken) : null;
    if (role) taken.add(role);
    return { role, from: null };
  });
  speciesSettled(roles, cells);
  namesFound(roles, cells, contents, isName);
  const columns = roles.map(({ role, from }, c): ListColumn => ({ role: role ?? "remarks", heading: headings[c] ?? "", from }));
  return { headerRow, headerRows, columns };
}

/** Settles columns headed by sizes: what they hold, sizes that span several columns, and a lone size among ordinary columns, which is none. Changes `said` and `headings`. */
function sizedColumns(
  said: ({ readonly role: ColumnRole; readonly from: number | null } | null)[],
  headings: string[],
  cells: readonly (readonly string[])[],
  header: readonly string[],
  above: readonly string[],
): void {
  // "#1 | | #3 |" over "Qty | Price | Qty | Price", in the header row or in the one above it.
  for (const over of [header, above]) {
    if (over.filter((cell) => sizeHeading(cell)).length < 2) continue;
    const sizes = sizesCarried(over, headings.length);
    const plain = said.map((one, c) => (one && sizeHeading(headings[c] ?? "") === null ? one.role : null));
    const spanned = sizes.filter((size, c) => size !== "" && (plain[c] === "quantity" || plain[c] === "price"));
    if (spanned.length < 2) continue;
    for (const [c, size] of sizes.entries()) {
      const role = plain[c];
      if (size === "" || (role !== "quantity" && role !== "price")) continue;
      said[c] = { role: role === "price" ? "sizedPrice" : "sizedQuantity", from: null };
      headings[c] = size;
    }
    break;
  }
  // "Qt" and "Gal" are sizes beside other sizes.
  const others = said.filter((one) => one?.role === "sizedQuantity" || one?.role === "sizedPrice").length;
  if (others > 0)
    for (const [c, heading] of headings.entries()) if (/^(?:qts?|quarts?|gals?|gallons?|pts?|pints?)\.?$/i.test(heading)) said[c] = { role: "sizedQuantity", from: null };
  const sized = said.flatMap((one, c) => (one?.role === "sizedQuantity" || one?.role === "sizedPrice" ? [c] : []));
  const hasSize = said.some((one) => one?.role === "size");
  if (sized.length === 1 && hasSize) {
    for (const c of sized) said[c] = null;
    return;
  }
  const silent = sized.filter(
    (c) => !sizeHeading(headings[c] ?? "")?.holds && said[c]?.role === "sizedQuantity" && !sized.some((other) => other !== c && headings[other] === headings[c]),
  );
  const hold = sizedCellsHold(silent.flatMap((c) => cells[c] ?? []));
  if (hold === "price") for (const c of silent) said[c] = { role: "sizedPrice", from: null };
}

/** "Species" over whole names, or under genera as headings, is the name; only beside a genus or a cultivar is it the epithet. */
function speciesSettled(roles: { role: ColumnRole | null; from: number | null }[], cells: readonly (readonly string[])[]): void {
  const has = (role: ColumnRole): boolean => roles.some((one) => one.role === role);
  for (const [c, one] of roles.entries()) {
    if (one.role !== "species") continue;
    const filled = (cells[c] ?? []).filter(Boolean);
    const whole = filled.filter((cell) => /^["'“]?\p{Lu}.*\s/u.test(cell)).length >= filled.length * ALIKE;
    if (!has("genus") && !has("cultivar")) one.role = has("botanical") ? "remarks" : whole || !has("name") ? "botanical" : "species";
  }
}

/** Sees to it that a column of names is found: of those without a role, or with "remarks", the one in which most cells are plants' names. */
function namesFound(roles: { role: ColumnRole | null; from: number | null }[], cells: readonly (readonly string[])[], contents: readonly Contents[], isName: NameTest): void {
  const hasName = roles.some(({ role }) => role !== null && NAME_ROLES.has(role) && role !== "common" && role !== "cultivar");
  if (hasName) {
    // "Variety" beside genus and species is the cultivar.
    if (roles.some(({ role }) => role === "genus")) for (const one of roles) if (one.role === "name") one.role = "cultivar";
    return;
  }
  const shares = roles.map(({ role }, c) => {
    if (role !== null && role !== "remarks" && role !== "common" && role !== "size") return 0;
    const filled = (cells[c] ?? []).filter(Boolean);
    return filled.length ? filled.filter((text) => isName(sizeSplit(text).name)).length / filled.length + (contents[c]?.words ?? 0) * 0.1 : 0;
  });
  const best = shares.indexOf(Math.max(...shares));
  const chosen = roles[best];
  if (chosen && (shares[best] ?? 0) > 0.05) chosen.role = chosen.role === "common" ? "common" : "name";
}

/** The column map of a sheet, guessed. Never fails: a sheet that says nothing has columns of remarks. */
export function columnsGuessed(rows: readonly (readonly string[])[], isName: NameTest): ColumnMap {
  return columnsAt(rows, headerFound(rows), isName);
}
