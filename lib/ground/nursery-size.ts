// Size at planting, read from text as the trade writes it: #3, 2-2.5" B&B, 5-6 ft, bulb 14-16 cm. Text that says nothing known stays as it is.
import type { Kind } from "../plants/vocabulary";

export type RootForm = "container" | "ball" | "bare root" | "plug" | "bulb" | "unknown";
type Span = readonly [low: number, high: number];

export type NurserySize = {
  readonly root: RootForm;
  /** "#3", "qt", "4 in pot", "flat", "24 in box"; null where no container is named. */
  readonly containerClass: string | null;
  /** Nominal trade gallons of that container: 3 for #3, 0.25 for a quart; pots by their width. */
  readonly containerGal: number | null;
  readonly caliperIn: Span | null;
  /** Height above ground. `heightSaid` is false where the text gives a bare length, which for spreading plants is the spread. */
  readonly heightIn: Span | null;
  readonly heightSaid: boolean;
  readonly spreadIn: Span | null;
  /** Bulb circumference. */
  readonly bulbCm: Span | null;
  /** Words that were not read, lower case: "clump", "specimen". Empty where all was understood. */
  readonly rest: string;
};

const INCHES_PER = { in: 1, ft: 12, cm: 1 / 2.54, mm: 1 / 25.4, m: 100 / 2.54 } as const;
type SizeUnit = keyof typeof INCHES_PER;

const VULGAR: Readonly<Record<string, string>> = { "¼": ".25", "½": ".5", "¾": ".75", "⅛": ".125", "⅜": ".375", "⅝": ".625", "⅞": ".875" };
const UNIT = String.raw`(?:ft|in|cm|mm|m)\b\.?`;
const NUMBER = String.raw`(\d*\.?\d+)`;
/** A number or a range with its unit: groups low, high or undefined, unit. */
const SPAN = String.raw`${NUMBER} ?(?:${UNIT})? ?(?:(?:-|to) ?${NUMBER} ?)?\+? ?(${UNIT})`;
/** The same, unit left out. */
const BARE_SPAN = String.raw`${NUMBER} ?(?:(?:-|to) ?${NUMBER})? ?\+?`;
/** Widest inch figure without "cal" that on a balled or bare-root tree is still a caliper; from there it is a height. */
const CALIPER_MAX_IN = 8;
/** Width in inches of the pot that holds a trade gallon. */
const GALLON_POT_IN = 6.5;
/** Trade gallons that a 24 in wooden box stands for (common practice, no source). */
const BOX_24_GAL = 25;

/** Quotes as units, vulgar and slashed fractions as decimals, "18/24" as a range, lower case, single spaces. */
function sizePlain(text: string): string {
  return text
    .slice(0, 200)
    .toLowerCase()
    .replace(/[‐‑‒–—−]/g, "-")
    .replace(/(\d*) ?([¼½¾⅛⅜⅝⅞])/g, (_, whole: string, sign: string) => `${whole}${VULGAR[sign] ?? ""}`)
    .replace(/['’‘′]{2}|[″”“"]/g, " in ")
    .replace(/[’‘′']/g, " ft ")
    .replace(/\b(\d+)[ -](\d)\/(2|4|8)(?!\d)/g, (_, whole: string, top: string, bottom: string) => String(Number(whole) + Number(top) / Number(bottom)))
    .replace(/\b(\d+) ?\/ ?(\d+)(?= ?f)/g, "$1-$2")
    .replace(/\b([1357])\/(2|4|8|16)(?!\d)/g, (_, top: string, bottom: string) => String(Number(top) / Number(bottom)))
    .replace(/(\d) ?\/ ?(?=[\d+])/g, "$1-")
    .replace(/-\+/g, "+")
    .replace(/\b(?:inches|inch)\b|(?<=\d ?)inches|(?<=\d)in(?=\s|\.|$)/g, " in")
    .replace(/(\d) ?(?:feet|foot|ft)\b/g, "$1 ft")
    .replace(/(\d)(cm|mm|m)\b/g, "$1 $2")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/(?<!\d ?- ?)\b(\d+) ft\.? (\d*\.?\d+) in\b/g, (_, feet: string, inches: string) => `${Number(feet) + Number(inches) / 12} ft`);
}

/** Takes one pattern out of the text that is still unread. */
type Reader = { take: (pattern: RegExp) => RegExpExecArray | null; rest: () => string };

function textReader(plain: string): Reader {
  let unread = plain;
  return {
    take: (pattern) => {
      const match = pattern.exec(unread);
      if (match) unread = `${unread.slice(0, match.index)} ${unread.slice(match.index + match[0].length)}`;
      return match;
    },
    rest: () =>
      unread
        .replace(/[,;()|]| x /g, " ")
        .replace(/\s+/g, " ")
        .trim(),
  };
}

function spanOf(low: string | undefined, high: string | undefined, factor = 1): Span | null {
  if (low === undefined) return null;
  const [a, b] = [Number(low) * factor, Number(high ?? low) * factor];
  return Number.isFinite(a) && Number.isFinite(b) && Math.max(a, b) > 0 ? [Math.min(a, b), Math.max(a, b)] : null;
}

function unitOf(word: string | undefined): SizeUnit {
  const bare = (word ?? "in").replace(".", "");
  return bare === "ft" || bare === "cm" || bare === "mm" || bare === "m" ? bare : "in";
}

/** The span of a SPAN match, in inches. */
function spanInches(match: RegExpExecArray | null): Span | null {
  return match ? spanOf(match[1], match[2], INCHES_PER[unitOf(match[3])]) : null;
}

function rootTaken(reader: Reader): RootForm {
  if (reader.take(/\bb ?(?:&|and|\+|n) ?b\b|\bbnb\b|\bballed(?: and burlapped)?\b|\b(?:wire )?basket\b/)) return "ball";
  if (reader.take(/\bbare ?-?root(?:ed)?\b|\bb\.?r\b\.?/)) return "bare root";
  if (reader.take(/\b(?:plug|liner|plugs|liners)\b/)) return "plug";
  if (reader.take(/\b(?:bulb|corm|tuber|rhizome)s?\b/)) return "bulb";
  return "unknown";
}

type Container = { readonly class: string; readonly gal: number };

function potContainer(widthIn: number): Container {
  return { class: `${widthIn} in pot`, gal: (widthIn / GALLON_POT_IN) ** 3 };
}

function containerTaken(reader: Reader): Container | null {
  const words = /\b(?:cont|container|containers|pot|pots)\b\.?/;
  const box = reader.take(new RegExp(String.raw`${NUMBER} ?-?(?:in\.?)? box\b`));
  if (box) return { class: `${Number(box[1])} in box`, gal: BOX_24_GAL * (Number(box[1]) / 24) ** 3 };
  const pot =
    reader.take(new RegExp(String.raw`${NUMBER} ?-?in\b\.?,? ?(?:sq\.?|square|round)? ?(?:pots?|cont|container)\b\.?`)) ??
    reader.take(new RegExp(String.raw`${NUMBER} ?-?in\b\.? (?:square|round)\b`));
  if (pot) return potContainer(Number(pot[1]));
  const gallons =
    reader.take(/(?:#|\bno\.? ?) ?(\d*\.?\d+)(?: ?(?:gal|gallon|gallons|g)\b\.?)?t?(?![\w.])/) ??
    reader.take(/(\d*\.?\d+) ?-?(?:trade )?(?:gallons|gallon|gal|g)\b\.?/) ??
    reader.take(/\b(?:trade )?(gallon|gal)\b\.?/);
  if (gallons) {
    const count = gallons[1]?.startsWith("g") ? 1 : Number(gallons[1]);
    reader.take(words);
    return { class: `#${count}`, gal: count };
  }
  const quarts = reader.take(/(?:(\d*\.?\d+) ?-?)?(?:qt|quart|quarts)\b\.?/);
  if (quarts) {
    reader.take(words);
    const count = Number(quarts[1] ?? 1);
    return { class: count === 1 ? "qt" : `${count} qt`, gal: count / 4 };
  }
  if (reader.take(/\b(?:1 ?)?(?:pt|pint)\b\.?/)) {
    reader.take(words);
    return { class: "pt", gal: 0.125 };
  }
  if (reader.take(/\b(?:flats?|cell ?packs?|trays?)\b/)) return { class: "flat", gal: 0.03 };
  return null;
}

function caliperTaken(reader: Reader): Span | null {
  const withUnit = spanInches(reader.take(new RegExp(String.raw`${SPAN} ?cal(?:iper)?\b\.?`)));
  if (withUnit) return withUnit;
  const bare = reader.take(new RegExp(String.raw`${BARE_SPAN} ?cal(?:iper)?\b\.?`));
  return bare ? spanOf(bare[1], bare[2]) : null;
}

/** Bulb circumference in cm: 14-16 cm, 14/+, 14 up; not the figures of a pot or a grade. */
function bulbTaken(reader: Reader): Span | null {
  const match = reader.take(new RegExp(String.raw`(?<![#\d.] ?)${BARE_SPAN}(?: ?cm\b)?(?: ?up\b)?(?![\d.]| ?-? ?(?:in|ft|gal|gallon|g|qt|count|mm)\b)`));
  return match ? spanOf(match[1], match[2]) : null;
}

/** A bare length, in inches, with whether it was written in inches; "18-24" without unit is inches, as shrubs are graded. */
function lengthTaken(reader: Reader): { span: Span; inInches: boolean } | null {
  const open = reader.take(new RegExp(SPAN));
  const span = spanInches(open);
  if (span) return { span, inInches: unitOf(open?.[3]) === "in" };
  const graded = reader.take(/(?<![#\d.])(\d{2}) ?- ?(\d{2})(?![\d.])/);
  const inches = spanOf(graded?.[1], graded?.[2]);
  return inches ? { span: inches, inInches: true } : null;
}

/** Kinds sold in small pots, for which a bare "4 in" is the pot. */
function kindIsHerbaceous(kind: Kind | undefined): boolean {
  return kind === "perennial" || kind === "grass" || kind === "fern" || kind === "groundcover" || kind === "annual";
}

/**
 * What a size at planting says. The kind of plant, where known, settles what a bare figure means (a 2-in tree is a caliper, a 4-in perennial a pot).
 * Never throws; what is not understood is returned in `rest` and everything else null.
 */
export function nurserySizeFromText(text: string, kind?: Kind): NurserySize {
  const reader = textReader(sizePlain(text));
  let root = rootTaken(reader);
  const caliper = caliperTaken(reader);
  const bulb = root === "bulb" || (kind === "bulb" && root === "unknown") ? bulbTaken(reader) : null;
  if (bulb) root = "bulb";
  const grade = root === "bare root" || root === "bulb" ? reader.take(/(?:#|\bno\.? ?) ?\d\b/) : null;
  let container = bulb ? null : containerTaken(reader);
  const spread = spanInches(reader.take(new RegExp(String.raw`${SPAN} ?(?:spd|sprd|spr|spread|wide|w)\b\.?`)));
  const labelled = spanInches(reader.take(new RegExp(String.raw`${SPAN} ?(?:ht|hgt|height|tall|high|h)\b\.?`)));
  const open = labelled ? null : lengthTaken(reader);
  const small = open?.inInches && open.span[1] <= CALIPER_MAX_IN ? open.span : null;
  const dug = root === "ball" || root === "bare root";
  const openIsCaliper = small !== null && !caliper && (kind === "tree" || (kind === undefined && dug));
  // Beside a caliper the other length is the height, whichever comes first: 2" 10-12' or 10-12' 2".
  const isTree = kind === "tree" || (kind === undefined && dug);
  const second = openIsCaliper || (isTree && open !== null && small === null && !caliper) ? lengthTaken(reader) : null;
  const secondIsCaliper = second?.inInches === true && second.span[1] <= CALIPER_MAX_IN && !openIsCaliper;
  const openIsPot = small !== null && kindIsHerbaceous(kind) && (root === "unknown" || root === "container");
  if (openIsPot && !container) container = potContainer(small[1]);
  if (!container && root === "unknown" && reader.take(/\b(?:cont|container|pot|potted)\b\.?/)) root = "container";
  if (container && root === "unknown") root = "container";
  return {
    root,
    containerClass: container?.class ?? null,
    containerGal: container?.gal ?? null,
    caliperIn: caliper ?? (openIsCaliper ? small : secondIsCaliper ? (second?.span ?? null) : null),
    heightIn: labelled ?? (openIsPot ? null : openIsCaliper ? (second?.span ?? null) : (open?.span ?? null)),
    heightSaid: labelled !== null,
    spreadIn: spread,
    bulbCm: bulb,
    rest: [grade?.[0].replace(/\s|no\.?/g, "").replace(/^(?=\d)/, "#"), reader.rest()].filter(Boolean).join(" "),
  };
}

/** One key for all spellings of a size: "3 gal" and "#3" are the same size on a pull list. Text that is not understood keeps its own words. */
export function nurserySizeKey(text: string, kind?: Kind): string {
  const size = nurserySizeFromText(text, kind);
  const span = (name: string, value: Span | null) => (value ? `${name} ${value.map((v) => v.toFixed(2)).join("-")}` : null);
  const parts = [
    size.root === "unknown" ? null : size.root,
    size.containerClass,
    span("cal", size.caliperIn),
    span(size.heightSaid ? "ht" : "size", size.heightIn),
    span("spread", size.spreadIn),
    span("cm", size.bulbCm),
  ];
  return [...parts, size.rest].filter(Boolean).join(" | ");
}

/** Order of sizes on a list, small to large: by caliper, else container, else height, else bulb; unknown text last. */
export function nurserySizeRank(text: string, kind?: Kind): number {
  const size = nurserySizeFromText(text, kind);
  if (size.caliperIn) return 1000 + size.caliperIn[1];
  if (size.heightIn ?? size.spreadIn) return 500 + ((size.heightIn ?? size.spreadIn)?.[1] ?? 0) / 12;
  if (size.containerGal !== null) return 100 + size.containerGal;
  if (size.bulbCm) return size.bulbCm[1];
  return size.root === "unknown" ? 9999 : 0;
}
