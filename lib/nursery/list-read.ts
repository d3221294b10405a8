// Reads a supplier's list as it comes: title rows, headings, names carried down, section headings, notes. What is a line and what is not.
import Papa from "papaparse";
import { sizeFromDate } from "./cell-text";
import { type ColumnMap, type ColumnRole, columnsGuessed, headingRole, type NameTest } from "./list-columns";
import { isOfferCell, sizeHeading } from "./list-size-columns";
import { pricesParted } from "./price-read";
import { sizeSplit } from "./size-split";

/** One sheet as rows of cells: what a CSV text or a workbook gives. Empty rows are kept, so that row numbers stay those of the file. */
export type ListSheet = { readonly name: string; readonly rows: readonly (readonly string[])[] };

/** One line on offer, its cells by what they hold. */
export type ListLine = {
  readonly sheet: string;
  /** Row in the file, from 1, header rows counted. */
  readonly row: number;
  /** The whole row as written, cells parted by " | ". */
  readonly text: string;
  /** Botanical or only name; "" where the row has none. */
  readonly name: string;
  /** Common name where it has a column of its own beside the botanical one. */
  readonly common: string;
  /** Section heading the line stands under: "SHADE TREES", "Acer". */
  readonly section: string;
  /** Size cells in order, with the words their columns' headings give ("2-2.5 cal"). */
  readonly sizeText: string;
  /** Root that the title or the section gives to all lines below: "B&B", "bare root", "plug"; "" where neither does. */
  readonly rootText: string;
  readonly quantityText: string;
  readonly prices: readonly { readonly from: number | null; readonly text: string }[];
  readonly readyText: string;
  readonly remarks: readonly string[];
  readonly code: string;
  readonly location: string;
  readonly grade: string;
};

export type SkippedRow = {
  readonly sheet: string;
  readonly row: number;
  readonly text: string;
  readonly why: "title" | "header" | "heading" | "note" | "total" | "nothing offered";
};
export type ListRead = {
  readonly lines: readonly ListLine[];
  readonly skipped: readonly SkippedRow[];
  readonly maps: readonly { readonly sheet: string; readonly map: ColumnMap }[];
};

/** Sums at the foot of a list or a page. */
const TOTAL = /^(?:sub ?-?|grand |page |list )?totals?\b/i;
const DELIMITERS = [",", ";", "\t", "|"] as const;
const NOTE =
  /^(?:page \d|continued|total|subtotal|grand total|prices?\b|terms|all (?:sizes|prices|plants|stock|orders)|subject to|note\b|\*|thank|fob\b|f\.o\.b|please|minimum|call (?:for|us)|phone|fax|e-?mail|www\.|effective|updated|as of|availability)/i;

/** Rows of a CSV text; the delimiter is the sign by which most rows have equally many cells. A byte order mark is dropped. */
export function csvRows(text: string): string[][] {
  const body = text.replace(/^\ufeff/, "");
  const start = body.slice(0, 60_000);
  let best: string = ",";
  let most = 0;
  for (const delimiter of DELIMITERS) {
    const widths = new Map<number, number>();
    for (const row of Papa.parse<string[]>(start, { delimiter }).data) if (row.length > 1) widths.set(row.length, (widths.get(row.length) ?? 0) + 1);
    for (const [width, count] of widths) {
      const score = count * Math.min(width, 8);
      if (score > most) [best, most] = [delimiter, score];
    }
  }
  const rows = Papa.parse<string[]>(body, { delimiter: best }).data;
  while (rows.length && (rows[rows.length - 1] ?? []).every((cell) => cell.trim() === "")) rows.pop();
  return rows;
}

/** Cells of one kind joined with a space, empty ones left out. */
type RowReader = (roles: readonly ColumnRole[]) => string;

const bare = (text: string): boolean => /^[\d.,/ \u00bc-\u00be+-]+$|^\d+(?:[ -]\d\/\d)?/.test(text) && !/["'a-z]/i.test(text);

/** A size cell with the word or unit that its column's heading stands for. */
function sizeCell(role: ColumnRole, heading: string, written: string): string {
  const text = sizeFromDate(written);
  if (text === "" || /^(?:-|n\/?a|x)$/i.test(text)) return role === "root" && /^x$/i.test(text) && /b ?& ?b/i.test(heading) ? "B&B" : "";
  const unit = /\bft\b|feet|'/i.test(heading) ? " ft" : /\bin\b|inch|"/i.test(heading) ? " in" : "";
  switch (role) {
    case "container":
      return /^#? ?\d{1,3}(?:\.\d+)?$/.test(text) ? `#${text.replace(/^# ?/, "")}` : text;
    case "caliper":
      return /cal/i.test(text) ? text : bare(text) ? `${text}${unit || " in"} cal` : /["]|in\b/i.test(text) && !/ft|'|ht/i.test(text) ? `${text} cal` : text;
    case "height": {
      const high = Math.max(...[...text.matchAll(/\d+(?:\.\d+)?/g)].map((match) => Number(match[0])), 0);
      return bare(text) ? `${text}${unit || (high >= 15 ? " in" : " ft")} ht` : /\b(?:ht|h|height)\b/i.test(text) || !/\d/.test(text) ? text : `${text} ht`;
    }
    case "spread":
      return bare(text) ? `${text}${unit || " in"} spread` : /\d/.test(text) ? `${text} spread` : text;
    default:
      return /\bbulb/i.test(heading) && /\d/.test(text) && !/bulb/i.test(text) ? `${text} bulb` : text;
  }
}

const SIZE_ROLES: ReadonlySet<ColumnRole> = new Set(["size", "container", "root", "caliper", "height", "spread"]);

type Carried = { name: string; common: string; genus: string; species: string; section: string; root: string };

const ROOT_WORDS: readonly (readonly [root: string, words: RegExp])[] = [
  ["B&B", /\bb ?(?:&|and|\/) ?b\b|\bballed\b/i],
  ["bare root", /\bbare ?-?root(?:ed)?\b/i],
  ["plug", /\b(?:plugs?|liners?)\b/i],
  ["container", /\bcont(?:ainers?)?\b|\bpot(?:s|ted)?\b|\bgal(?:lons?)?\b|#\d/i],
];

/** The one root that a title or heading names; null where it names none, several, or explains abbreviations. Containers have sizes of their own and are left out. */
function rootOfHeading(text: string): string | null {
  const named = ROOT_WORDS.filter(([, words]) => words.test(text));
  const [only] = named;
  return named.length === 1 && only && only[0] !== "container" && !/=/.test(text) ? only[0] : null;
}

function rowLine(sheet: string, row: number, cells: readonly string[], map: ColumnMap, carried: Carried): ListLine {
  const at = (role: ColumnRole): string[] => map.columns.flatMap((column, c) => (column.role === role ? [(cells[c] ?? "").replace(/\s+/g, " ").trim()] : [])).filter(Boolean);
  const joined: RowReader = (roles) => roles.flatMap(at).join(" ");
  const genus = joined(["genus"]) || (joined(["species", "cultivar"]) ? carried.genus : "");
  const species = joined(["species"]) || (joined(["genus"]) === "" && joined(["cultivar"]) ? carried.species : "");
  const cultivar = joined(["cultivar"]);
  const parted =
    (genus || (species && cultivar)) &&
    [genus, species, cultivar && (/['"‘]/.test(cultivar) || (!species && /^[a-z]/.test(cultivar)) ? cultivar : `'${cultivar}'`)].filter(Boolean).join(" ");
  const own = parted || joined(["botanical"]) || joined(["name"]);
  const ownCommon = [...at("common"), ...(parted || joined(["botanical"]) ? at("name") : [])].join(" ");
  const blank = own === "" && ownCommon === "";
  const name = blank ? carried.name : own || ownCommon;
  const common = blank ? carried.common : own ? ownCommon : "";
  Object.assign(carried, { name, common, genus: genus || carried.genus, species: species || carried.species });
  return {
    sheet,
    row,
    text: cells
      .map((cell) => cell.replace(/\s+/g, " ").trim())
      .filter(Boolean)
      .join(" | "),
    name,
    common,
    section: carried.section,
    sizeText: map.columns
      .flatMap(({ role, heading }, c) => (SIZE_ROLES.has(role) ? [sizeCell(role, heading, (cells[c] ?? "").replace(/\s+/g, " ").trim())] : []))
      .filter(Boolean)
      .join(" "),
    rootText: carried.root,
    quantityText: at("quantity")[0] ?? "",
    prices: map.columns.flatMap(({ role, heading, from }, c) => {
      const text = (cells[c] ?? "").trim();
      return role === "price" && text ? (pricesParted(heading, text) ?? [{ from, text }]) : [];
    }),
    readyText: joined(["ready"]),
    remarks: [
      ...at("remarks"),
      ...map.columns.flatMap(({ role, heading }, c) => {
        const text = (cells[c] ?? "").trim();
        return role === "later" && text ? [`${heading}: ${text}`] : [];
      }),
    ],
    code: joined(["code"]),
    location: joined(["location"]),
    grade: joined(["grade"]),
  };
}

const filledCells = (cells: readonly string[]): string[] => cells.map((cell) => cell.trim()).filter(Boolean);

/** Whether a row repeats the headings, as lists do at the top of every page. */
function repeatsHeader(cells: readonly string[], header: readonly string[] | undefined): boolean {
  if (!header) return false;
  const own = filledCells(cells);
  if (own.length < 2) return false;
  const same = cells.filter((cell, c) => cell.trim() !== "" && cell.trim().toLowerCase() === (header[c] ?? "").trim().toLowerCase()).length;
  return same >= 2 && same >= own.length * 0.6;
}

/** A column that, filled, makes a row a line on offer. */
const OFFER_ROLES: ReadonlySet<ColumnRole> = new Set([...SIZE_ROLES, "quantity", "price", "code", "later", "ready", "sizedQuantity", "sizedPrice"]);

const isSized = (role: ColumnRole): boolean => role === "sizedQuantity" || role === "sizedPrice";

function isOffer(cells: readonly string[], map: ColumnMap): boolean {
  return map.columns.some(({ role }, c) => OFFER_ROLES.has(role) && (isSized(role) ? isOfferCell(cells[c] ?? "") : (cells[c] ?? "").trim() !== ""));
}

/** One line as several: a line for each size that a filled cell stands under. A row of a list without such columns is its one line. */
function linesBySize(line: ListLine, cells: readonly string[], map: ColumnMap): ListLine[] {
  const sizes = new Map<string, { quantity: string; prices: { from: number | null; text: string }[] }>();
  // A price stands for its size in every row; where sizes have quantities of their own, an empty one is not on offer.
  const quantities = map.columns.flatMap(({ role, heading }, c) => (role === "sizedQuantity" ? [{ size: sizeHeading(heading)?.size ?? heading, cell: cells[c] ?? "" }] : []));
  const columned = new Set(quantities.map(({ size }) => size));
  const offered = new Set(quantities.filter(({ cell }) => isOfferCell(cell)).map(({ size }) => size));
  const counted = offered.size > 0;
  for (const [c, { role, heading }] of map.columns.entries()) {
    const cell = (cells[c] ?? "").trim();
    if (!isSized(role) || !isOfferCell(cell)) continue;
    const size = sizeHeading(heading)?.size ?? heading;
    if (role === "sizedPrice" && counted && !offered.has(size) && columned.has(size)) continue;
    const held = sizes.get(size) ?? { quantity: "", prices: [] };
    sizes.set(size, held);
    if (role === "sizedPrice") held.prices.push({ from: null, text: cell });
    else held.quantity = held.quantity || cell;
  }
  return [...sizes].map(([size, { quantity, prices }]) => ({
    ...line,
    sizeText: [size, line.sizeText].filter(Boolean).join(" "),
    quantityText: quantity || line.quantityText,
    prices: prices.length ? prices : line.prices,
  }));
}

const hasName = (cells: readonly string[], map: ColumnMap): boolean =>
  map.columns.some(({ role }, c) => ["botanical", "common", "name", "genus", "species", "cultivar"].includes(role) && (cells[c] ?? "").trim() !== "");

/** One sheet, read by its map. */
function sheetRead({ name: sheet, rows }: ListSheet, map: ColumnMap, isName: NameTest): { lines: ListLine[]; skipped: SkippedRow[] } {
  const lines: ListLine[] = [];
  const skipped: SkippedRow[] = [];
  const carried: Carried = { name: "", common: "", genus: "", species: "", section: "", root: "" };
  const first = map.headerRow === null ? 0 : map.headerRow + map.headerRows;
  const header = map.headerRow === null ? undefined : rows[map.headerRow];
  const offers = map.columns.some(({ role }) => OFFER_ROLES.has(role));
  const sized = map.columns.some(({ role }) => isSized(role));
  for (const [i, cells] of rows.entries()) {
    const filled = filledCells(cells);
    if (filled.length === 0) continue;
    const skip = (why: SkippedRow["why"]): void => {
      skipped.push({ sheet, row: i + 1, text: filled.join(" | "), why });
    };
    if (i < first) {
      if (map.headerRow !== null && i < map.headerRow) carried.root = rootOfHeading(filled.join(" ")) ?? carried.root;
      skip(map.headerRow !== null && i >= map.headerRow ? "header" : "title");
      continue;
    }
    if (repeatsHeader(cells, header)) {
      skip("header");
      continue;
    }
    const text = filled.join(" ");
    const named = hasName(cells, map);
    const [only = ""] = filled;
    const lone = filled.length === 1;
    if (TOTAL.test(only)) {
      skip("total");
      continue;
    }
    const headingRoot = lone && !/\d/.test(only) ? rootOfHeading(only) : null;
    if (headingRoot !== null && offers && !isName(sizeSplit(only).name)) {
      Object.assign(carried, { name: "", common: "", section: only, root: headingRoot });
      skip("heading");
      continue;
    }
    if (NOTE.test(only) && (lone || !named) && sizeSplit(only).sizeText === "") {
      skip("note");
      continue;
    }
    if (offers && lone && !/^\d/.test(only)) {
      const split = sizeSplit(only);
      const next = rows.slice(i + 1).find((row) => filledCells(row).length > 0);
      const plain = split.sizeText === "" || split.name === "";
      const nameless = next !== undefined && isOffer(next, map) && !hasName(next, map);
      if (plain && (nameless || !isName(split.name))) {
        // A heading: of a section, of a genus, or the name for the sizes below it.
        Object.assign(carried, nameless ? { name: only, common: "", section: carried.section } : { name: "", common: "", section: only });
        skip(/[.!]$/.test(only) || only.split(/\s+/).length > 9 ? "note" : "heading");
        continue;
      }
    }
    if (!named && !isOffer(cells, map)) {
      skip("note");
      continue;
    }
    if (offers && !named && carried.name === "" && filled.every((cell) => headingRole(cell) !== null)) {
      skip("header");
      continue;
    }
    const [longest = ""] = [...filled].sort((a, b) => b.length - a.length);
    if (map.headerRow === null && lines.length === 0 && !lone && !isName(longest) && filled.every((cell) => cell === longest || (headingRole(cell) !== null && !/\d/.test(cell)))) {
      skip("header");
      continue;
    }
    const line = rowLine(sheet, i + 1, cells, map, carried);
    if (line.name === "" || (lone && text.length > 90)) {
      skip("note");
      continue;
    }
    const own = sized ? linesBySize(line, cells, map) : [line];
    if (own.length === 0 && line.quantityText === "" && line.prices.length === 0) skip("nothing offered");
    else if (own.length === 0) lines.push(line);
    else lines.push(...own);
  }
  return { lines, skipped };
}

/**
 * All sheets of a list. @param maps column maps kept or corrected, by sheet; others are guessed.
 * Nothing is lost: every filled row is a line or stands among the skipped with the reason.
 */
export function listRead(sheets: readonly ListSheet[], isName: NameTest, maps: ReadonlyMap<string, ColumnMap> = new Map()): ListRead {
  const read = sheets.map((sheet) => {
    const map = maps.get(sheet.name) ?? columnsGuessed(sheet.rows, isName);
    return { sheet: sheet.name, map, ...sheetRead(sheet, map, isName) };
  });
  return {
    lines: read.flatMap(({ lines }) => lines),
    skipped: read.flatMap(({ skipped }) => skipped),
    maps: read.map(({ sheet, map }) => ({ sheet, map })),
  };
}
