// Parts a list's description into the plant's name and the size written into it: "Thuja occ. Smaragd 5-6' BB" → name, "5-6' BB".

export type SizeSplit = {
  /** The text without sizes, roots, grades and forms. */
  readonly name: string;
  /** What was taken out, in order, single spaces; "" where no size stands in the text. */
  readonly sizeText: string;
};

const NUMBER = String.raw`(?:\d{1,3}(?:\.\d+)?(?:[ -]\d\/\d{1,2}|[¼½¾⅛⅜⅝⅞])?|\d\/\d{1,2}(?!\d)|[¼½¾⅛⅜⅝⅞]|\.\d+)`;
const UNIT = String.raw`(?:''|["']|ft\b\.?|feet\b|foot\b|inch(?:es)?\b|in\b\.?|cm\b|mm\b|m\b)`;
/** A length or a range with a unit: 5-6', 18/24", 2 to 2.5 in. */
const LENGTH = String.raw`${NUMBER} ?${UNIT}?(?: ?(?:-|\/|to\b) ?${NUMBER})? ?\+? ?${UNIT}\+?`;
const POT = String.raw`(?: ?-?(?:(?:sq(?:uare)?|round|rd|deep|azalea|band|peat|tall|jumbo|grow|press)\b\.? ?)?(?:pots?|cont(?:ainers?)?|box|bx|sq(?:uare)?|round)\b\.?)`;
const MEASURE = String.raw`(?: ?(?:cal(?:iper)?|ht|hgt|height|h|tall|high|spr(?:ea)?d|spd|spr|w|wide|width|c\.?t\.?|clear trunk|o\.?a\.?|circ)\b\.?)`;
const START = String.raw`(?<![\w.#&])`;

/** Each kind of size, in the order in which they are looked for: what stands first may hold what stands later. */
const PATTERNS: readonly RegExp[] = [
  // Ball diameters.
  String.raw`${START}(?:${LENGTH} ?(?:dia\.? )?(?:root ?)?ball\b|(?:root ?ball|ball|rb) ?:? ?${LENGTH})`,
  // Eyes and fans of divisions, branch heights.
  String.raw`${START}\d{1,2}(?: ?[-\/] ?\d{1,2})?\+? ?(?:eyes?|fans?|noses?)(?![\w'])`,
  String.raw`${START}(?:${LENGTH} ?(?:br(?:anch(?:ed|ing)?)?\.? ?(?:ht|hgt|height)\b\.?|branched\b)|(?:branched|limbed up) (?:at |to )?${LENGTH})`,
  // Counts a flat, a tray, a plug.
  String.raw`${START}(?:lp|landscape plugs?) ?-?\d{2,3}(?:'?s)?(?![\w.])`,
  String.raw`${START}(?:18|21|24|30|32|36|38|40|48|50|51|60|72|84|98|102|105|128|144|162|200|288)'?s(?![\w'])`,
  String.raw`${START}\d{1,3} ?-?(?:\/|per|a|deep)? ?(?:cells?|ct|count|plugs?|liners?|flats?|trays?|packs?|pks?)\b\.?(?: ?(?:flats?|trays?|plugs?|packs?|liners?)\b)?`,
  String.raw`${START}(?:plug ?|cell ?)?(?:flats?|trays?|plugs?|liners?|cell ?packs?)(?:(?: of| x|\/|-|:)? ?\(?\d{1,3}(?:'?s\b)?(?! ?${UNIT})\)?(?: ?(?:ct|count|cells?)\b\.?)?)?(?![\w])`,
  // Containers.
  String.raw`${START}# ?(?:sp)?\d{1,3}(?:\.\d+)?(?: ?(?:gallons?|gal|g|cg|cont(?:ainers?)?|pots?|squat|bags?)\b\.?|[tsa]\b)?`,
  String.raw`${START}no\.? ?\d{1,2}(?: ?(?:gal|cont(?:ainer)?|can)\b\.?)?(?![\w.])`,
  String.raw`${START}\d{1,3}(?:\.\d+)? ?-?(?:trade )?(?:gallons?|gal|g|quarts?|qts?|q|pints?|pts?|liters?|litres?|ltr?)\b\.?(?: ?-?(?:cont(?:ainers?)?|pots?|squat|bags?|box)\b\.?)?`,
  String.raw`${START}c ?-?\d{1,3}\b(?! ?${UNIT})`,
  String.raw`${START}(?:${LENGTH}|\d{1,2}(?:\.\d+)?)${POT}`,
  String.raw`${START}(?:trade )?(?:gallon|gal|quart|qt|pint)\b\.?(?: ?(?:cont(?:ainers?)?|pots?)\b\.?)?`,
  // Lengths: 24" x 18", 10-12' ht, 2-2.5 cal.
  `${START}${LENGTH}${MEASURE}?(?: ?x ?${LENGTH}${MEASURE}?)?`,
  String.raw`${START}${NUMBER}(?: ?(?:-|\/|to\b) ?${NUMBER})? ?\+?${MEASURE}(?![\w'])`,
  String.raw`${START}(?:cal(?:iper)?|ht|hgt|height|spd|spread)\b[.:]? ?${NUMBER}(?: ?(?:-|\/|to\b) ?${NUMBER})? ?${UNIT}?`,
  // Bare figures before a ball: "2.5 BB", "2-2.5 BB".
  String.raw`${START}(?:\d{1,2}(?:\.\d+)? ?[-/] ?)?\d{1,2}(?:\.\d+)?\+? ?(?:b ?[&/] ?b|bb)(?![\w&'])\.?`,
  // Roots.
  String.raw`${START}(?:b ?(?:&|and|\+|n|\/) ?b|bb|balled(?: (?:and|&) burlapped)?|burlapped|wire baskets?|wb|b\.?\/?r\.?|bare ?-?root(?:ed)?|cont(?:ainer)?(?:ized|s)?|cg|potted|bulbs?|(?:root )?divisions?)(?![\w&'])\.?`,
  // Ages and bare ranges: 2-0, 2 yr, 18-24, 14/16.
  String.raw`${START}\d ?(?:yr|year)s?\b\.?(?: ?old)?`,
  String.raw`${START}(?:[1-4]\+[0-2]|P[-+][0-2])(?![\w./'"-])`,
  String.raw`${START}\d{1,2}(?:\.\d+)? ?[-\/] ?\d{1,2}(?:\.\d+)?\+?(?![\w./'"-])`,
  String.raw`${START}\d{1,2}(?:\.\d+)?\/?\+(?![\w.])`,
  String.raw`${START}\d{1,2} ?\/ ?up(?![\w'])`,
  // Forms and grades.
  String.raw`${START}(?:multi-?(?: ?(?:stem|trunk)(?:med|s)?)?|m\.?s\.?(?=$|[\s,\uE002])|clump|single[- ]?(?:stem|trunk)|(?:tree|bush|shrub|std)[ -]form|on (?:a )?standard|patio tree|top[- ]?graft(?:ed)?|(?:low|high)[- ]branched|limbed up|specimen|spec\b\.?|heavy|hvy|h\.d\.|stake[ds]?|trellis(?:ed)?|whips?|feathered|espalier(?:ed)?|sheared|pyramid(?=\s*(?:$|\uE002))|spiral|pom ?pom|\d ?-?(?:stem|cane|trunk)s?|field[- ]grown|fg)(?![\w'])`,
].map((source) => new RegExp(source, "gi"));

/** A cultivar epithet in quotes, apostrophes inside allowed: 'Walker's Low'. */
const EPITHET = /(^|[\s(,;])(['"])(?=[\p{L}\d])((?:(?!\2(?:$|[\s,;.)])).)*?\p{L}[^'"]*?|[^'"]*\p{L}(?:'\p{L}+)*[^'"]*)\2(?=$|[\s,;.)®™])/gu;

/** Typographic quotes, primes and dashes as plain ones, sign for sign. */
function quotesPlain(text: string): string {
  return text
    .replace(/[’‘′´`]/g, "'")
    .replace(/[″“”]/g, '"')
    .replace(/[‐‑‒–—−]/g, "-")
    .replace(/[\s\u00a0]/g, " ")
    .replace(/\uE001|\uE002/g, " ");
}

/** The text with epithets in quotes blanked out, sign for sign, so that nothing in them is taken for a size. */
function epithetsMasked(text: string): string {
  return text.replace(EPITHET, (whole, before: string) => before + "\uE001".repeat(whole.length - before.length));
}

/**
 * Takes sizes out of a description. What stands in quotes is the plant's name whatever it looks like.
 * A text without sizes comes back whole. Never throws; at most 300 characters are read.
 */
export function sizeSplit(text: string): SizeSplit {
  const plain = quotesPlain(text.slice(0, 300));
  let masked = epithetsMasked(plain);
  const found: { start: number; end: number }[] = [];
  for (const pattern of PATTERNS) {
    masked = masked.replace(pattern, (match: string, ...rest: unknown[]) => {
      const start = rest.find((value): value is number => typeof value === "number") ?? 0;
      if (match.trim() === "") return match;
      found.push({ start, end: start + match.length });
      return "\uE002".repeat(match.length);
    });
  }
  found.sort((a, b) => a.start - b.start);
  const sizeText = found.map(({ start, end }) => plain.slice(start, end).trim()).join(" ");
  const name = [...masked]
    .map((sign, i) => (sign === "\uE002" ? " " : (plain[i] ?? "")))
    .join("")
    .replace(/\(\s*\)|\[\s*\]/g, " ")
    .replace(/\s+/g, " ")
    .replace(/(?:\s*[-,;:/|@](?=\s|$)|\s+[x.](?=\s|$))+\s*$/i, "")
    .replace(/^(?:\s*[-,;:/|](?=\s))+/, "")
    .replace(/\s[-,;:/|](?:\s[-,;:/|])+\s/g, " - ")
    .trim();
  return { name, sizeText: sizeText.replace(/\s+/g, " ") };
}
