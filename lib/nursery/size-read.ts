// A size in the terms of the nursery stock standard, from a size cell or from what `sizeSplit` took out of a name.
import { type NurserySize, nurserySizeFromText, type RootForm } from "../ground/nursery-size";
import type { Kind } from "../plants/vocabulary";

type Span = readonly [low: number, high: number];

export type LineSize = {
  readonly root: RootForm;
  readonly containerClass: string | null;
  readonly containerGal: number | null;
  readonly caliperIn: Span | null;
  readonly heightIn: Span | null;
  readonly spreadIn: Span | null;
  readonly bulbCm: Span | null;
  readonly ballIn: number | null;
  /** Plants in a plug tray and in a flat. */
  readonly plugCount: number | null;
  readonly flatCount: number | null;
  /** Words left over: "clump", "2 yr"; "" where all was understood. */
  readonly other: string;
};

export const SIZE_UNKNOWN: LineSize = {
  root: "unknown",
  containerClass: null,
  containerGal: null,
  caliperIn: null,
  heightIn: null,
  spreadIn: null,
  bulbCm: null,
  ballIn: null,
  plugCount: null,
  flatCount: null,
  other: "",
};

/** From so many cells on a tray without a name is a plug tray, below it a flat (common practice, no source). */
const PLUG_TRAY_CELLS = 38;
/** Trays called by their cells alone: 72s, 128's. */
const TRAY_NAMED = /(?<![\w.#/"'-])(18|21|24|30|32|36|38|40|48|50|51|60|72|84|98|102|105|128|144|162|200|288)'?s\b/gi;
/** Widest caliper that a bare range without a unit stands for on a tree. */
const BARE_CALIPER_MAX_IN = 4.5;
/** Bare figures from here on are inches, below feet; trees and conifers are graded in feet up to 16 by steps of two. */
const BARE_INCHES_FROM = 12;
/** A dug plant is no lower than this: a smaller figure in inches is its caliper. */
const DUG_HEIGHT_MIN_IN = 7;

type Taken = { readonly text: string; readonly match: RegExpExecArray | null };

function taken(text: string, pattern: RegExp): Taken {
  const match = pattern.exec(text);
  return { match, text: match ? `${text.slice(0, match.index)} ${text.slice(match.index + match[0].length)}` : text };
}

/** Spellings that lists have and planting schedules have not. */
function spellingsPlain(text: string): string {
  return text
    .replace(/[’‘′´`]/g, "'")
    .replace(/[″“”]/g, '"')
    .replace(/[‐‑‒–—−]/g, "-")
    .replace(/\bb ?\/ ?b\b|\bbb\b|\bburlapped\b|\bwb\b/gi, "B&B")
    .replace(/\bb\/r\b/gi, "BR")
    .replace(/\bcg\b/gi, "cont")
    .replace(/(^|\s)c ?-?(\d{1,3})\b/gi, "$1#$2")
    .replace(/# ?(\d{1,3})(?:s|a)\b/gi, "#$1")
    .replace(/(#? ?\d{1,3} ?-?(?:gal|g)?\b\.?) ?(squat|bags?|can)\b/gi, "$1 , $2")
    .replace(/(\d) ?-?q(?:ts)?\b/gi, "$1 qt")
    .replace(/\b(?:lp|landscape plugs?) ?-?(\d{2,3})(?:'?s)?\b/gi, "$1 ct plug")
    .replace(TRAY_NAMED, "$1 ct")
    .replace(/\bdeep\b|\brd\b(?= ?pot)|\bazalea\b(?= ?pot)|\bpeat\b(?= ?pot)/gi, " ")
    .replace(/\b(?:tall|jumbo|grow|press)(?= ?pots?\b)/gi, " ")
    .replace(/\bbx\b/gi, "box")
    .replace(/(\d) ?pks?\b/gi, "$1 pack")
    .replace(/\bwidth\b/gi, "spread")
    .replace(
      /(?<!(?:["']|\b(?:in|ft|cm|mm|m)\b\.?|(?<!#\d{0,2})\d) ?)\b(cal(?:iper)?|ht|hgt|height|spd|spread)[.:]? ?((?:\d*\.)?\d+(?: ?(?:-|\/|to) ?(?:\d*\.)?\d+)? ?(?:"|'|in\b|ft\b)?)(?= |$)(?! ?(?:cal|ht|h|spd|spread|w)\b)/gi,
      "$2 $1",
    )
    .replace(/(\d ?["'])\s*x\s*(\d+(?:-\d+)? ?["'])(?! ?(?:ht|h|w|spd|spread|spr)\b)/gi, "$1 ht $2 spread")
    .replace(/\s+/g, " ")
    .trim();
}

/** Count a flat or a plug tray, with the text left. */
function countTaken(text: string): { text: string; plug: number | null; flat: number | null; root: "plug" | "container" | null } {
  const pattern =
    /(?<![\w.#])(?:(\d{1,3}) ?-?(?:\/|per|a|deep)? ?(cells?|ct|count|plugs?|liners?|flats?|trays?|packs?)\b\.?(?: ?(flats?|trays?|plugs?|packs?|liners?)\b)?|((?:plug ?|cell ?)?(?:flats?|trays?|plugs?|liners?|cell ?packs?))(?:(?: of| x|\/|-|:)? ?\(?(\d{1,3})(?:'?s\b)?(?! ?(?:["'#]|in\b|gal|qt|cm))\)?(?: ?(?:ct|count|cells?)\b\.?)?)?(?!\w))/i;
  const { match, text: rest } = taken(text, pattern);
  if (!match) return { text, plug: null, flat: null, root: null };
  const count = match[1] ?? match[5];
  const words = `${match[2] ?? ""} ${match[3] ?? ""} ${match[4] ?? ""}`.toLowerCase();
  const number = count === undefined ? null : Number(count);
  const isPlug = /plug|liner/.test(words) || (!/flat|pack/.test(words) && (number ?? 0) >= PLUG_TRAY_CELLS);
  return { text: rest, plug: isPlug ? number : null, flat: isPlug ? null : number, root: isPlug ? "plug" : "container" };
}

function ballTaken(text: string): { text: string; ballIn: number | null } {
  const { match, text: rest } = taken(
    text,
    /(\d{1,3}(?:\.\d+)?) ?(?:"|''|in\b\.?|inch(?:es)?\b) ?(?:dia\.? )?(?:root ?)?ball\b|(?:root ?ball|ball|\brb) ?:? ?(\d{1,3}(?:\.\d+)?) ?(?:"|''|in\b\.?)?/i,
  );
  const inches = match ? Number(match[1] ?? match[2]) : 0;
  return inches > 0 ? { text: rest, ballIn: inches } : { text, ballIn: null };
}

/** Age of a seedling or transplant, years in the seedbed and in the row: 2-0, 2+1, P-1. A first figure below the second is a range. */
const AGE = /(?<![\w.#/"'+-])((?:[1-4] ?[-+] ?0|([1-4]) ?[-+] ?([12])|P ?[-+] ?[0-2]))(?= ?(?:$|[\s,;)]))(?! ?(?:"|'|in\b|ft\b|cm\b|m\b|cal|ht\b|gal|qt|yr|b ?&))/i;
/** Height of the lowest branch of a street tree: 6' br ht, branched at 7 ft. */
const BRANCHED =
  /(\d{1,2}(?:\.\d+)?(?: ?- ?\d{1,2})?) ?(?:'|ft\b\.?) ?(?:br(?:anch(?:ed|ing)?)?\.? ?(?:ht|hgt|height)\b\.?|branched\b)|\b(?:branched|limbed)(?: up)?(?: at| to)? ?(\d{1,2}(?:\.\d+)?(?: ?- ?\d{1,2})?) ?(?:'|ft\b\.?)/i;

/** Eyes, fans and noses of a division: 2-3 eye, 1/2 fan. */
const EYES = /(?<![\w.#])\d{1,2}(?: ?[-/] ?\d{1,2})?\+? ?(?:eyes?|fans?|noses?|canes?|stems?)\b/i;

/** What is no length of the plant itself, in words: age, branch height, eyes. */
function asidesTaken(text: string): { text: string; age: string | null; branched: string | null; eyes: string | null } {
  const branch = taken(text.replace(/[’‘′´`]/g, "'").replace(/[‐‑‒–—−]/g, "-"), BRANCHED);
  const eyes = taken(branch.text, EYES);
  const age = AGE.exec(eyes.text);
  const isAge = age !== null && (age[2] === undefined || (Number(age[2]) >= Number(age[3]) && age[2] + (age[3] ?? "") !== "11"));
  return {
    text: isAge ? taken(eyes.text, AGE).text : eyes.text,
    eyes: eyes.match?.[0].trim().toLowerCase() ?? null,
    age: isAge ? (age[1]?.replace(/\s/g, "") ?? null) : null,
    branched: branch.match ? `branched at ${branch.match[1] ?? branch.match[2] ?? ""} ft` : null,
  };
}

const isUpright = (kind: Kind | undefined): boolean => kind === "tree" || kind === "conifer";

/** A bare range without a unit, with the unit that its kind of plant is graded by. */
function bareUnits(text: string, kind: Kind | undefined): string {
  if (kind === "bulb") return text;
  const unit = (low: number, high: number, decimals: boolean): string | null => {
    if (low > high || high === 0 || low === 0) return null;
    if (high <= BARE_CALIPER_MAX_IN && (kind === "tree" || decimals)) return "in cal";
    if (high < BARE_INCHES_FROM) return "ft";
    if (isUpright(kind) && high <= 16 && high - low === 2) return "ft";
    return low < BARE_INCHES_FROM - 4 ? "ft" : "in";
  };
  return text
    .replace(
      /(?<![\w.#/"'-])(\d{1,2}(?:\.\d+)?) ?[-/] ?(\d{1,2}(?:\.\d+)?)(\+?)(?= ?(?:$|[\s,;)]))(?! ?(?:-|"|'|in\b|ft\b|cm\b|mm\b|m\b|cal|ht\b|h\b|spd|spr|w\b|gal|qt|yr|pot|box|sq))/gi,
      (whole, low: string, high: string, more: string) => {
        const own = unit(Number(low), Number(high), /\./.test(low + high));
        return own ? `${low}-${high}${more} ${own}` : whole;
      },
    )
    .replace(/(?<![\w.#/"'-])(\d{1,2}(?:\.\d+)?)(?= ?B&B)/g, (whole, figure: string) => {
      const own = unit(Number(figure), Number(figure), /\./.test(figure));
      return own ? `${figure} ${own}` : whole;
    });
}

/** Liters as trade gallons: European pots on American lists (3 L is about a #1). */
function litersPlain(text: string): { text: string; gal: number | null; liters: string | null } {
  const { match, text: rest } = taken(text, /(\d{1,3}(?:\.\d+)?) ?-?(?:liters?|litres?|ltr?)\b\.?/i);
  return match ? { text: rest, gal: Math.round((Number(match[1]) / 2.8) * 100) / 100, liters: `${Number(match[1])} L` } : { text, gal: null, liters: null };
}

/** Hundredths of an inch are enough for sizes that were written in centimeters. */
const spanRounded = (span: Span | null): Span | null => span && [Math.round(span[0] * 100) / 100, Math.round(span[1] * 100) / 100];

/** A few inches of a dug plant, or of one in a big container, are its caliper. */
function caliperMended(size: NurserySize): Pick<NurserySize, "caliperIn" | "heightIn"> {
  const [heightIn, caliperIn] = [spanRounded(size.heightIn), spanRounded(size.caliperIn)];
  const big = size.root === "ball" || size.root === "bare root" || (size.containerGal ?? 0) >= 5;
  const small = heightIn !== null && !size.heightSaid && heightIn[1] < DUG_HEIGHT_MIN_IN;
  return big && small && !caliperIn ? { caliperIn: heightIn, heightIn: null } : { caliperIn, heightIn };
}

/** A second length left over in feet or inches beside a caliper is the height, which `nurserySizeFromText` has already taken; repeats of the container vanish. */
function otherWords(rest: string, containerClass: string | null): string {
  const words = rest
    .replace(/\bb&b\b|\bcont(?:ainer(?:ized)?)?\b\.?|\bpot(?:ted)?\b/g, " ")
    .replace(/["'.:;,@]+(?=\s|$)/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  return containerClass && words === containerClass ? "" : words;
}

/**
 * A size as suppliers write it. `kind`, where the plant is known, settles bare figures (a 2-2.5 of a tree is caliper, an 18-24 of a shrub height,
 * a 4 in of a perennial its pot). Lengths in inches, bulbs in cm. Never throws; what is not understood stands in `other`.
 */
export function sizeFromText(text: string, kind?: Kind): LineSize {
  if (text.trim() === "") return SIZE_UNKNOWN;
  const asides = asidesTaken(text.slice(0, 200));
  const ball = ballTaken(spellingsPlain(asides.text));
  const counts = countTaken(ball.text);
  const liters = litersPlain(counts.text);
  const size = nurserySizeFromText(bareUnits(liters.text, kind), kind);
  const flat = counts.root === "container" && size.containerClass === null;
  const lengths = caliperMended(size);
  // A few inches beside a count a flat are the pots that stand in it.
  const potIn = flat && lengths.heightIn && !size.heightSaid && lengths.heightIn[1] < DUG_HEIGHT_MIN_IN ? lengths.heightIn[1] : null;
  const root = size.root !== "unknown" ? size.root : ball.ballIn !== null ? "ball" : (counts.root ?? (liters.gal === null ? "unknown" : "container"));
  const rootless = root === "unknown" && size.containerClass === null;
  const containerClass = size.containerClass ?? liters.liters ?? (potIn !== null ? `${potIn} in pot` : flat ? "flat" : null);
  return {
    // Seedlings are sold by age and bare root, those in plugs say so (common practice, no source).
    root: counts.root === "plug" && root === "unknown" ? "plug" : rootless && asides.age !== null ? "bare root" : root,
    containerClass,
    containerGal: size.containerGal ?? liters.gal ?? (flat ? 0.03 : null),
    caliperIn: lengths.caliperIn,
    heightIn: potIn === null ? lengths.heightIn : null,
    spreadIn: spanRounded(size.spreadIn),
    bulbCm: size.bulbCm,
    ballIn: ball.ballIn,
    plugCount: counts.plug,
    flatCount: counts.flat,
    other: [asides.age, asides.branched, asides.eyes, otherWords(size.rest, containerClass)].filter(Boolean).join(", "),
  };
}

/** A size with the root that its list or section gives to all lines, where the line itself says none. @param rootText "B&B", "bare root", "plug" or "" */
export function rootAdded(text: string, rootText: string, kind?: Kind): string {
  if (rootText === "") return text;
  const size = sizeFromText(text, kind);
  const bareCount = rootText === "plug" && size.containerClass === "flat" && !/flat|pack/i.test(text);
  // Bare-root stock has grades where containers have classes: #1, #2.
  const grade = rootText === "bare root" && /^#[12]$/.test(size.containerClass ?? "") && /#/.test(text) && !/gal|cont|pot/i.test(text);
  return (size.root === "unknown" && size.containerClass === null) || bareCount || grade ? `${text} ${rootText}`.trim() : text;
}

const figure = (value: number): string => String(Math.round(value * 100) / 100);
const spanText = (span: Span): string => (span[0] === span[1] ? figure(span[0]) : `${figure(span[0])}-${figure(span[1])}`);

/** Everything of a size that is not root, container, caliper or height, in words: "spread 18-24 in, 32 a flat"; "" where there is nothing. */
export function sizeOtherText(size: LineSize): string {
  return [
    size.spreadIn && `spread ${spanText(size.spreadIn)} in`,
    size.ballIn !== null && `ball ${figure(size.ballIn)} in`,
    size.bulbCm && `bulb ${spanText(size.bulbCm)} cm`,
    size.plugCount !== null && `${size.plugCount} a plug tray`,
    size.flatCount !== null && `${size.flatCount} a flat`,
    size.other,
  ]
    .filter(Boolean)
    .join(", ");
}

/** Whether a text holds any size at all. */
export function sizeIsKnown(size: LineSize): boolean {
  return (
    size.root !== "unknown" ||
    [size.containerClass, size.caliperIn, size.heightIn, size.spreadIn, size.bulbCm, size.ballIn, size.plugCount, size.flatCount].some((value) => value !== null)
  );
}
