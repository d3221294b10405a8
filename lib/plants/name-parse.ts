// Plant names as people and lists write them, taken apart into plain tokens.

export type NameToken = {
  /** Lower case letters and digits, no marks. */
  readonly text: string;
  /** Written with a full stop: "Hydr.", "occ." stand for something longer. */
  readonly abbreviated: boolean;
  /** Perhaps the author of the name ("Mill.", "L."): counts where it fits, is not missed where it does not. */
  readonly optional: boolean;
  /** Stood in quotes: part of a cultivar epithet. */
  readonly quoted: boolean;
  /** Began with a capital. */
  readonly capital: boolean;
};

export type ParsedName = {
  readonly tokens: readonly NameToken[];
  /** "Limelight type", "Knock Out series": like it, not it. */
  readonly loose: boolean;
  /** The last token may still be going on: no space or quote follows it. */
  readonly open: boolean;
};

const RANKS = new Set(["var", "ssp", "subsp", "subvar", "forma", "fo", "cv", "cvs", "cultivar", "syn", "spp", "sp", "nothosubsp", "group", "gp", "grp"]);
const LOOSE = new Set(["type", "types", "series", "similar", "equal", "approved"]);
/** Short forms that begin a cultivar epithet: "Mt. St. Helens", "Mrs. Moon". */
const TITLES = new Set(["st", "mt", "ft", "dr", "mr", "mrs", "no", "gen"]);
const MARKS = /[™®©℠]|\((?:tm|r)\)/gi;
/** "PP12874", "USPP #20,670", "PPAF": plant patents stand on labels beside the name. */
const PATENTS = /\(?\b(?:us\s*)?(?:pp\s*#?\s*\d[\d,]*|ppaf|pbraf|cbraf)\b\)?/gi;
const QUOTED = /(^|[\s(,;/-])(['"])(?=\S)(.*?)(?:\2(?=$|[\s),;./-])|$)/g;
const LIGATURES: Record<string, string> = { æ: "ae", œ: "oe", ß: "ss", ø: "o", ł: "l", Æ: "Ae", Œ: "Oe", Ø: "O", Ł: "L" };

/** One kind of quote, no marks over letters, no trade marks, no patents, hybrid signs apart. */
function plainText(text: string): string {
  return text
    .replace(MARKS, " ")
    .replace(PATENTS, " ")
    .replace(/[‘’‚‛`´′]/g, "'")
    .replace(/[“”„«»″]/g, '"')
    .replace(/''/g, '"')
    .replace(/[æœßøłÆŒØŁ]/g, (letter) => LIGATURES[letter] ?? letter)
    .normalize("NFD")
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[×✕⨯]/g, " × ");
}

type Span = { text: string; quoted: boolean };

function quotedSpans(text: string): Span[] {
  const spans: Span[] = [];
  let at = 0;
  for (const match of text.matchAll(QUOTED)) {
    const start = match.index + (match[1]?.length ?? 0);
    spans.push({ text: text.slice(at, start), quoted: false }, { text: match[3] ?? "", quoted: true });
    at = match.index + match[0].length;
  }
  spans.push({ text: text.slice(at), quoted: false });
  return spans;
}

type Word = { text: string; raw: string; stop: boolean; quoted: boolean; after: string };

/** Words with what stood before them; "P.J.M." is one word, apostrophes vanish, hyphens part. */
function spanWords({ text, quoted }: Span): Word[] {
  const dotted = text.replace(/\b(?:[A-Za-z]\.){2,}/g, (initials) => initials.replace(/\./g, ""));
  const words: Word[] = [];
  let end = 0;
  for (const match of dotted.matchAll(/[A-Za-z0-9]+(?:'[A-Za-z0-9]+)*'?(\.?)/g)) {
    const raw = match[0].replace(/[.']/g, "");
    words.push({ text: raw.toLowerCase(), raw, stop: match[1] === ".", quoted, after: dotted.slice(end, match.index) });
    end = match.index + match[0].length;
  }
  return words;
}

const isLowerCase = (word: Word | undefined): boolean => word !== undefined && !word.quoted && /^[a-z]/.test(word.raw);

/** "Acer rubrum L.", "Nyssa sylvatica Marsh.", "(L.) Mill.", "Sieb. & Zucc.": a capitalized short form behind an epithet. */
function isAuthorLike(word: Word, before: Word | undefined, beforeIsAuthor: boolean): boolean {
  if (word.quoted || !before || !/^[A-Z]/.test(word.raw)) return false;
  if (beforeIsAuthor) return word.stop || /[&)]/.test(word.after);
  return word.stop && (isLowerCase(before) || word.after.includes("(")) && !TITLES.has(word.text);
}

function isNoise(word: Word, place: number, shouted: boolean): boolean {
  if (word.quoted) return false;
  if (word.text === "x") return true;
  if (place === 0) return false;
  // "f." is forma, and in a list all in capitals so is "F." behind a species; else it is an initial.
  if (word.stop && (word.raw === "f" || word.raw === "v" || word.text === "ex" || (shouted && place > 1 && word.raw === "F"))) return true;
  return RANKS.has(word.text) || LOOSE.has(word.text);
}

/**
 * Tokens of a name in any common writing: capitals, abbreviations, authors, trade marks, quotes of every kind, × or x,
 * rank words and "type". Rank words and hybrid signs are left out, since lists drop them at will. Never fails; no tokens for no letters.
 */
export function parseName(text: string): ParsedName {
  const words = quotedSpans(plainText(text)).flatMap(spanWords);
  const tokens: NameToken[] = [];
  let loose = false;
  let author = false;
  const shouted = !/[a-z]/.test(text);
  words.forEach((word, i) => {
    if (!word.quoted && i > 0 && LOOSE.has(word.text)) loose = true;
    if (isNoise(word, i, shouted)) return;
    author = isAuthorLike(word, words[i - 1], author);
    tokens.push({ text: word.text, abbreviated: word.stop && !word.quoted, optional: author, quoted: word.quoted, capital: /^[A-Z]/.test(word.raw) });
  });
  return { tokens, loose, open: /[\p{L}\p{N}]$/u.test(text) };
}

/** The tokens' texts, authors left out: the plain form by which writings of one name are told to be equal. */
export function nameWords(text: string): string[] {
  return parseName(text).tokens.flatMap((token) => (token.optional ? [] : [token.text]));
}
