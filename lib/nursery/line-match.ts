// From a line of a supplier's list to the plant it offers, its size, quantity and price, with what is sure and what a person should look at.
import { isLatinLike } from "../plants/misspelling";
import { matchName } from "../plants/name-match";
import { nameWords } from "../plants/name-parse";
import type { PlantDoc } from "../plants/plant-names";
import { type PlantIndex, searchPlants } from "../plants/search";
import type { Kind } from "../plants/vocabulary";
import type { ColumnMap } from "./list-columns";
import { type ListLine, type ListRead, type ListSheet, listRead } from "./list-read";
import type { PriceBreak } from "./lot";
import { type NameEndings, nameEndings } from "./name-endings";
import { priceSplit, pricesJoined } from "./price-read";
import { type LineQuantity, quantityFromText, readyInText } from "./quantity-read";
import { type QuotedEpithets, quotedEpithets } from "./quoted-epithet";
import { type ShortIndex, shortIndex, shortReadings } from "./short-name";
import { type LineSize, rootAdded, sizeFromText } from "./size-read";
import { sizeSplit } from "./size-split";

/** What matching needs of a taxon; a Taxon satisfies it. */
export type ListedPlant = PlantDoc & { readonly kind: Kind };

export type NameReading = {
  readonly taxonId: string | null;
  /** Whether it may pass without a person looking. */
  readonly sure: boolean;
  /** Up to three plants, likeliest first; empty where the name is sure. */
  readonly candidates: readonly string[];
};

export type MatchedLine = {
  readonly sheet: string;
  readonly row: number;
  readonly text: string;
  /** The name as read from the line, sizes taken out. */
  readonly written: string;
  readonly reading: NameReading;
  readonly sizeText: string;
  readonly size: LineSize;
  readonly quantity: LineQuantity;
  readonly priceCents: number | null;
  readonly prices: readonly PriceBreak[];
  readonly ready: string | null;
  readonly remarks: readonly string[];
  /** The supplier's own number, and the grade; "" where none stands there. */
  readonly code: string;
  readonly grade: string;
};

/** Names confirmed before for this supplier: as written (`nameKey`) to taxon. */
export type LearnedNames = ReadonlyMap<string, string>;

/** One key for a name as a list writes it, whatever its capitals and spaces. */
export function nameKey(written: string): string {
  return written
    .toLowerCase()
    .replace(/[’‘`´]/g, "'")
    .replace(/\s+/g, " ")
    .trim();
}

const CANDIDATES = 3;
/** Share of a genus that must be of one kind for the genus to tell it. */
const KIND_SHARE = 0.8;
/** A doubtful reading of the name as a whole beats the shorthand reading only from here on. */
const WHOLE_NAME_MIN = 0.9;

/** Remarks that stand behind names or in brackets among them and are part of none: sex, origin, habit of growing, novelty. */
const REMARK =
  "(?:male|female|native|natives|nativar|new|new item|hot|sale|improved stock|limited|seedlings?|seed grown|own root|grafted|assorted|mixed|native ecotype|local ecotype|std|cl|clp|ms|multi)";
const REMARK_BRACKETED = new RegExp(String.raw`\s*[([]\s*${REMARK}!?(?:\s*[,/]\s*${REMARK}!?)*\s*[)\]]`, "gi");
/** Without brackets only words that no name ends with. */
const REMARK_BEHIND = /(?:\s+[-–/]?\s*(?:male|female|native|new!|new|nativar|std|stnd|cl|clp|multi|ms|seedlings?|grafted|own[- ]root|hot!?|improved stock|tree[- ]form|tf))+\s*$/i;

/** What stands on labels and is no part of a name: trade mark letters, stars, item numbers, "new". */
function labelsCleared(text: string): string {
  return text
    .replace(/^\s*#?\d{3,}\s*[-–:.]?\s+(?=\p{L})/u, "")
    .replace(/(?<=\S)\s+(?:TM|SM|\(TM\)|PPAF|PBR|NEW!?)(?=\s|$|[,;)])/g, " ")
    .replace(/\*+|^new!?\s+(?=[A-Z])|\s+\(?(?:new|natives?|improved stock)!?\)?\s*$/gi, " ")
    .replace(REMARK_BRACKETED, " ")
    .replace(/\s+/g, " ")
    .trim()
    .replace(REMARK_BEHIND, "");
}

/** A species, with or without a lower rank, and behind it capitalized words up to a quote or the end. */
const AUTHORED =
  /^(\p{Lu}\p{Ll}+\s+(?:[×x]\s*)?\p{Ll}[\p{Ll}-]+(?:\s+(?:var|subsp|ssp|f)\.\s+\p{Ll}[\p{Ll}-]+)?)\s+((?:\([^()]*\.?\)\s*)?(?:(?:\p{Lu}[\p{L}.]*|&|ex|et)\s*)+)(?=$|['"‘“])/u;
/** "(L.) Moench", "(Michx.) Nash", "Acer rubrum L.": what no name has that is not followed by its author. */
const AUTHOR_MARK = /\(\p{Lu}[\p{L}. &]*\.\)\s*\p{Lu}|\p{Ll}\s+L\.(?:\s|$)/u;
/** From this share of such names on, a list gives authors throughout. */
const AUTHORED_LIST = 0.1;

/** Whether a list writes the authors of names, so that capitalized words behind a species are no cultivar. */
export function namesAuthored(names: readonly string[]): boolean {
  return names.filter((name) => AUTHOR_MARK.test(name)).length >= Math.max(1, names.length * AUTHORED_LIST);
}

/** The name without its authors. */
function authorsCleared(text: string): string {
  return text.replace(AUTHORED, (_, species: string) => `${species} `).trim();
}

/** The kind of nearly all plants of a genus, where there is one: what a size means when the plant itself is not known. */
function genusKinds(index: PlantIndex<ListedPlant>): ReadonlyMap<string, Kind> {
  const counts = new Map<string, Map<Kind, number>>();
  for (const { taxon } of index.plants) {
    const own = counts.get(taxon.genus.toLowerCase()) ?? new Map<Kind, number>();
    counts.set(taxon.genus.toLowerCase(), own.set(taxon.kind, (own.get(taxon.kind) ?? 0) + 1));
  }
  return new Map(
    [...counts].flatMap(([genus, own]) => {
      const all = [...own.values()].reduce((sum, count) => sum + count, 0);
      const most = [...own].find(([, count]) => count >= all * KIND_SHARE);
      return most ? [[genus, most[0]] as const] : [];
    }),
  );
}

export type LineMatcher = {
  /** @param common the common name where it has a column of its own. @param section heading above: a genus completes names that leave it out. */
  readonly nameRead: (name: string, common: string, section: string) => NameReading;
  readonly lineMatch: (line: ListLine) => MatchedLine;
  /** Whether a text is a plant's name: for guessing columns. */
  readonly isName: (text: string) => boolean;
};

type Reading = { taxonId: string; sure: boolean; fallback: boolean; confidence: number };

/** Words of cultivars and trade designations by genus. */
function cultivarWords(index: PlantIndex<ListedPlant>): ReadonlyMap<string, ReadonlySet<string>> {
  const words = new Map<string, Set<string>>();
  for (const { taxon } of index.plants) {
    const own = words.get(taxon.genus) ?? new Set<string>();
    words.set(taxon.genus, own);
    for (const text of [taxon.cultivar, taxon.tradeDesignation]) if (text) for (const word of nameWords(`'${text}'`)) own.add(word);
  }
  return words;
}

/** "Black-eyed Susan, Goldsturm" is not the plain species: a word that only a cultivar of the genus has is left over. */
function leavesCultivar(taxon: ListedPlant, text: string, epithets: ReadonlyMap<string, ReadonlySet<string>>): boolean {
  if (taxon.cultivar !== null || taxon.tradeDesignation !== null) return false;
  const own = new Set([taxon.botanical, ...taxon.synonyms, ...taxon.commonNames].flatMap(nameWords));
  return nameWords(text).some((word) => word.length > 3 && !own.has(word) && epithets.get(taxon.genus)?.has(word));
}

/** "Acer palmatum var. dissectum 'Crimson Queen'": species and quoted epithet are the plant's own, and a rank that the accepted name leaves out stands between. */
function quotesCultivar(taxon: ListedPlant, text: string): boolean {
  const quoted = /\s['‘]([^'‘’].*?)['’](?=$|[\s,;)])/.exec(text);
  if (!quoted) return false;
  const words = nameWords(`'${quoted[1] ?? ""}'`);
  const before = nameWords(text.slice(0, quoted.index));
  const species = nameWords(taxon.botanical).slice(0, 2);
  const own = [taxon.cultivar, taxon.tradeDesignation].some((name) => name !== null && nameWords(`'${name}'`).join(" ") === words.join(" "));
  return own && species.length === 2 && species.every((word, i) => before[i] === word) && !(words.length === 1 && isLatinLike(words[0] ?? ""));
}

/**
 * Matches lines against plants. Built once for a list, since names repeat from size to size and are read once.
 * A name passes as sure when it is one of a plant's names, or shorthand that no other plant explains; a species that is not among the plants
 * is never read as another, nor a cultivar as its species.
 */
export function lineMatcher<T extends ListedPlant>(
  index: PlantIndex<T>,
  { learned = new Map(), authored = false }: { readonly learned?: LearnedNames; readonly authored?: boolean } = {},
): LineMatcher {
  const epithets = cultivarWords(index);
  const byId = new Map(index.plants.map(({ taxon }) => [taxon.id, taxon]));
  let short: ShortIndex<T> | null = null;
  let endings: NameEndings | null = null;
  let quoted: QuotedEpithets | null = null;
  const kinds = genusKinds(index);
  const read = new Map<string, NameReading>();

  function textRead(text: string): { best: Reading | null; others: string[] } {
    const match = matchName(index, text);
    const taxon = match ? byId.get(match.taxonId) : undefined;
    const part = taxon !== undefined && match !== null && match.fallback === undefined && leavesCultivar(taxon, text, epithets);
    const whole: Reading | null = match && {
      taxonId: match.taxonId,
      sure: !match.fallback && !part && (match.sure || (taxon !== undefined && quotesCultivar(taxon, text))),
      fallback: match.fallback !== undefined || part,
      confidence: part ? match.confidence / 2 : match.confidence,
    };
    if (whole?.sure) return { best: whole, others: [] };
    short ??= shortIndex(index);
    const readings = shortReadings(short, text);
    const [first] = readings;
    const agree = first && whole && !whole.fallback && whole.taxonId === first.taxonId;
    const weak = !whole || whole.fallback || whole.confidence < WHOLE_NAME_MIN;
    const others = readings.map(({ taxonId }) => taxonId);
    if (first?.sure && (agree || weak)) return { best: { taxonId: first.taxonId, sure: true, fallback: false, confidence: first.score }, others };
    return { best: whole ?? (first ? { taxonId: first.taxonId, sure: false, fallback: false, confidence: first.score } : null), others };
  }

  /** A species in one column and its cultivar in the other: the cultivar is meant. */
  function moreTold(botanical: Reading, common: Reading | null): Reading {
    const own = byId.get(botanical.taxonId);
    const other = common?.sure ? byId.get(common.taxonId) : undefined;
    const isSpecies = own && own.cultivar === null && own.tradeDesignation === null;
    return isSpecies && other && other.botanical === own.botanical && (other.cultivar !== null || other.tradeDesignation !== null) && common ? common : botanical;
  }

  /** What the cultivar in quotes settles, where the name as a whole is doubtful or says another plant of the genus; null where it settles nothing. */
  function quotedRead(text: string, best: Reading | null, others: readonly string[]): Reading | null {
    quoted ??= quotedEpithets(index.plants.map(({ taxon }) => taxon));
    const id = quoted.plant(text) ?? (best?.sure ? null : quoted.plantBehind(text));
    const sure = (taxonId: string): Reading => ({ taxonId, sure: true, fallback: false, confidence: 1 });
    if (id !== null) return best?.sure && byId.get(best.taxonId)?.genus !== byId.get(id)?.genus ? null : sure(id);
    // Two letters behind a cultivar that stand for no word of a name are a line's or a patent holder's.
    const [, rest = ""] = /^(.*\S\s+\S+)\s+[A-Z]{2}$/.exec(text) ?? [];
    if (best?.sure || others.length > 0 || rest === "") return null;
    const cut = textRead(rest).best;
    const plant = cut?.sure ? byId.get(cut.taxonId) : undefined;
    return cut && plant && (plant.cultivar !== null || plant.tradeDesignation !== null) ? cut : null;
  }

  function fresh(name: string, common: string, section: string): NameReading {
    const known = learned.get(nameKey(name));
    if (known !== undefined && byId.has(known)) return { taxonId: known, sure: true, candidates: [] };
    const cleared = labelsCleared(name);
    const text = authored || AUTHOR_MARK.test(cleared) ? authorsCleared(cleared) : cleared;
    let { best, others } = textRead(text);
    const told = quotedRead(text, best, others);
    if (told) best = told;
    const called = common ? textRead(labelsCleared(common)).best : null;
    if (best?.sure) best = moreTold(best, called);
    else if (called?.sure && (!best || best.fallback || best.taxonId === called.taxonId) && !best?.fallback) best = called;
    if (!best?.sure && section) {
      const genus = /\p{L}{3,}/u.exec(section)?.[0] ?? "";
      if (index.table().genera.has(genus.toLowerCase()) && !text.toLowerCase().startsWith(genus.toLowerCase())) {
        const under = textRead(`${genus} ${text}`);
        if (under.best?.sure || !best) ({ best, others } = under);
      }
    }
    if (!best?.sure) {
      endings ??= nameEndings(index.plants.map(({ taxon }) => taxon));
      const id = endings.alike(text);
      if (id !== null) best = { taxonId: id, sure: true, fallback: false, confidence: 1 };
      for (const other of best?.sure ? [] : endings.underPresentGenus(text)) {
        const under = textRead(other).best;
        if (under?.sure) best = under;
      }
    }
    if (best?.sure) return { taxonId: best.taxonId, sure: true, candidates: [] };
    const offered = [...new Set([...(best ? [best.taxonId] : []), ...others])];
    const searched = offered.length < CANDIDATES ? searchPlants(index, text, CANDIDATES).map(({ taxon }) => taxon.id) : [];
    const candidates = [...new Set([...offered, ...searched])].slice(0, CANDIDATES);
    return { taxonId: best && !best.fallback ? best.taxonId : null, sure: false, candidates };
  }

  function nameRead(name: string, common: string, section: string): NameReading {
    const key = `${name}\u0000${common}\u0000${section}`;
    const known = read.get(key);
    if (known) return known;
    const made = fresh(name, common, section);
    read.set(key, made);
    return made;
  }

  function lineMatch(line: ListLine): MatchedLine {
    const priced = priceSplit(line.name);
    const own = sizeSplit(priced.rest);
    const written = own.name || priced.rest;
    const reading = nameRead(written, line.common, line.section);
    const genusKind = (text: string): Kind | undefined => kinds.get(/\p{L}{3,}/u.exec(text)?.[0].toLowerCase() ?? "");
    const plant = byId.get(reading.taxonId ?? "");
    const kind = plant?.kind ?? genusKind(written) ?? genusKind(line.section) ?? byId.get(reading.candidates[0] ?? "")?.kind;
    const said = [line.sizeText, own.name ? own.sizeText : ""].filter(Boolean).join(" ");
    const sizeText = rootAdded(said, line.rootText, kind);
    const price = pricesJoined(line.prices.length === 0 && priced.priceText !== "" ? [{ from: null, text: priced.priceText }] : line.prices);
    const quantity = quantityFromText(line.quantityText);
    const remarks = [...line.remarks, ...(line.grade ? [line.grade] : []), ...[quantity.note, price.note].filter(Boolean), ...(quantity.unit ? [`by the ${quantity.unit}`] : [])];
    return {
      sheet: line.sheet,
      row: line.row,
      text: line.text,
      written,
      reading,
      sizeText,
      size: sizeFromText(sizeText, kind),
      quantity,
      priceCents: price.cents,
      prices: price.breaks,
      ready: quantity.ready ?? (line.readyText || readyInText(line.remarks.join(" "))),
      remarks: [...new Set(remarks)],
      code: line.code,
      grade: line.grade,
    };
  }

  const isName = (text: string): boolean => {
    const match = matchName(index, labelsCleared(text));
    return match !== null && (match.sure || match.confidence >= 0.85);
  };
  return { nameRead, lineMatch, isName };
}

/** A whole list: columns guessed (or as kept in `maps`), every line matched. */
export function listMatch<T extends ListedPlant>(
  index: PlantIndex<T>,
  sheets: readonly ListSheet[],
  { maps, learned }: { readonly maps?: ReadonlyMap<string, ColumnMap>; readonly learned?: LearnedNames } = {},
): ListRead & { readonly matched: readonly MatchedLine[] } {
  const list = listRead(sheets, lineMatcher(index).isName, maps);
  const matcher = lineMatcher(index, { learned, authored: namesAuthored(list.lines.map(({ name }) => name)) });
  return { ...list, matched: list.lines.map(matcher.lineMatch) };
}
