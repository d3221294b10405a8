// Finds plants by name as one types: an inverted index makes the shortlist, Fuse.js and the words' likeness rank it.
import Fuse from "fuse.js";
import MiniSearch, { type Query } from "minisearch";
import { type AskedName, askedName, bestLikenesses, likenessSum, type NameTokens, nameLikeness, nameTokens, type OwnWord, wordRegister } from "./name-likeness";
import { nameWords, parseName } from "./name-parse";
import { type NameTable, nameTable } from "./name-table";
import { type NameKind, type PlantDoc, plantNames } from "./plant-names";
import { prefixDistance } from "./spelling";

type IndexedName = NameTokens & { readonly text: string; readonly kind: NameKind; readonly plain: string };
type IndexedPlant<T extends PlantDoc> = { readonly taxon: T; readonly names: readonly IndexedName[]; readonly words: readonly OwnWord[]; readonly pairs: readonly OwnWord[] };
type ShortlistRow = { readonly id: number; readonly words: string };

/** All plants ready to be searched; made by `plantIndex`. */
export type PlantIndex<T extends PlantDoc = PlantDoc> = {
  readonly plants: readonly IndexedPlant<T>[];
  readonly shortlist: MiniSearch<ShortlistRow>;
  /** Every word of every name by its first two letters, with the number of plants that have it. */
  readonly words: ReadonlyMap<string, ReadonlyMap<string, number>>;
  /** What `matchName` looks names up in; built on first use. */
  readonly table: () => NameTable<T>;
};

/** A plant found: its score (0–1, best first), the kind of name that matched, and that name. */
export type PlantHit<T extends PlantDoc = PlantDoc> = { readonly taxon: T; readonly score: number; readonly matched: NameKind; readonly matchedName: string };

const SHORTLIST = 60;
/** One word alone (a genus, "maple") fits many plants alike: look at more of them. */
const SHORTLIST_ONE_WORD = 240;
/** So many of the best are ranked by Fuse.js as well. */
const FUSED = 24;
/** Share of Fuse.js in the score; the rest is the likeness of words. */
const FUSE_SHARE = 0.15;
const LEAST_SCORE = 0.3;
/** Below it a second search forgives more. */
const DOUBTFUL = 0.6;
/** A plant whose words answer less than this share of the best one's is not looked at name by name. */
const WORTH_READING = 0.7;
const KIND_RANK: Record<NameKind, number> = { botanical: 0, trade: 1, common: 2, former: 3 };
const FUSE_OPTIONS = { keys: ["plain"], useTokenSearch: true, threshold: 0.4, ignoreLocation: true, includeScore: true };

function indexedPlant<T extends PlantDoc>(taxon: T, own: (text: string) => OwnWord, wordsOf: (run: string) => readonly string[]): IndexedPlant<T> {
  const names = new Map<string, IndexedName>();
  const words = new Set<OwnWord>();
  const pairs = new Set<OwnWord>();
  for (const { text, kind, runs } of plantNames(taxon)) {
    const tokens = nameTokens(runs.map(wordsOf), own);
    const plain = tokens.words.map((word) => word.text).join(" ");
    if (!plain || names.has(plain)) continue;
    names.set(plain, { ...tokens, text, kind, plain });
    for (const word of tokens.words) words.add(word);
    for (const pair of tokens.pairs) pairs.add(pair.word);
  }
  return { taxon, names: [...names.values()], words: [...words], pairs: [...pairs] };
}

/** Words of a run, each run parsed once: plants share genera, species and common names. */
function runWords(): (run: string) => readonly string[] {
  const parsed = new Map<string, readonly string[]>();
  return (run) => {
    const words = parsed.get(run) ?? nameWords(run);
    parsed.set(run, words);
    return words;
  };
}

/** Searchable index over accepted, former, common and trade names. Pure and free of any platform: it runs in the browser too. */
export function plantIndex<T extends PlantDoc>(taxa: readonly T[]): PlantIndex<T> {
  const own = wordRegister();
  const wordsOf = runWords();
  const plants = taxa.map((taxon) => indexedPlant(taxon, own, wordsOf));
  const shortlist = new MiniSearch<ShortlistRow>({ fields: ["words"], tokenize: (text) => text.split(" "), processTerm: (term) => term });
  const words = new Map<string, Map<string, number>>();
  plants.forEach((plant, id) => {
    const texts = [...new Set([...plant.words, ...plant.pairs])].map((word) => word.text);
    shortlist.add({ id, words: texts.join(" ") });
    for (const text of texts) {
      const head = text.slice(0, 2);
      const counts = words.get(head);
      if (counts) counts.set(text, (counts.get(text) ?? 0) + 1);
      else words.set(head, new Map([[text, 1]]));
    }
  });
  let table: NameTable<T> | null = null;
  return {
    plants,
    shortlist,
    words,
    table: () => {
      table ??= nameTable(taxa, wordsOf);
      return table;
    },
  };
}

const isWord = (index: PlantIndex, text: string): boolean => index.words.get(text.slice(0, 2))?.has(text) ?? false;

/** 1 for a word of one plant, 0 for a word of all; a word that stands in no name is taken for a fairly rare one. */
function wordRarity(index: PlantIndex): (text: string) => number {
  return (text) => {
    const plants = index.words.get(text.slice(0, 2))?.get(text);
    return plants === undefined ? 0.8 : 1 - Math.log(plants) / Math.log(index.plants.length + 1);
  };
}

/** Misspelt beginnings of a word that the inverted index cannot find by prefix or by distance. */
function begunWords(index: PlantIndex, text: string): string[] {
  if (text.length < 4) return [];
  const begun: string[] = [];
  for (const word of index.words.get(text.slice(0, 2))?.keys() ?? []) if (word.length > text.length && prefixDistance(text, word, 1) <= 1) begun.push(word);
  return begun.slice(0, 40);
}

/** The word with two neighbors swapped, at each of its first places. */
function swaps(text: string, places: number): string[] {
  const out: string[] = [];
  for (let i = 0; i + 1 < text.length && i < places; i++) if (text[i] !== text[i + 1]) out.push(`${text.slice(0, i)}${text[i + 1] ?? ""}${text[i] ?? ""}${text.slice(i + 2)}`);
  return out;
}

/** Two neighbors swapped cost the inverted index two edits; in a short word try them outright. */
const swappedWords = (index: PlantIndex, text: string): string[] => (text.length > 5 || text.length < 3 ? [] : swaps(text, 4).filter((word) => isWord(index, word)));

function shortlistQuery(index: PlantIndex, asked: AskedName, generous: boolean): Query {
  const single = asked.words.length === 1;
  const queries: Query[] = asked.words.flatMap((word): Query[] => {
    const { text } = word;
    if (text.length < 2 && !single) return [];
    if (word.abbreviated) return [{ queries: [text], prefix: true }];
    const prefix = word.open || text.length >= 3;
    // A word that stands in some name is not taken for a misspelling.
    if (isWord(index, text)) return [{ queries: [text], prefix }];
    const spare = [...swappedWords(index, text), ...(word.open ? begunWords(index, text) : [])];
    const begun = word.open && text.length > 4 ? swaps(text, 3) : [];
    return [
      { queries: [text], prefix, fuzzy: (generous ? word.edits : Math.min(2, word.edits)) || false },
      ...(spare.length ? [{ queries: spare, boostTerm: () => 0.5 }] : []),
      ...(begun.length ? [{ queries: begun, prefix: true, boostTerm: () => 0.5 }] : []),
    ];
  });
  const joined = asked.pairs.flatMap((pair): Query[] => {
    if (pair.text.length < 6) return [];
    if (isWord(index, pair.text)) return [{ queries: [pair.text] }];
    return single || asked.words.every((word) => isWord(index, word.text)) ? [] : [{ queries: [pair.text], fuzzy: 1 }];
  });
  return { combineWith: "OR", queries: [...queries, ...joined] };
}

type Ranked<T extends PlantDoc> = { readonly taxon: T; readonly name: IndexedName; readonly own: number };

/** The name of a plant that answers best; words found only in another of its names count for less. */
function plantRanked<T extends PlantDoc>(asked: AskedName, plant: IndexedPlant<T>, anywhere: readonly number[]): Ranked<T>[] {
  let best: Ranked<T> | null = null;
  for (const name of plant.names) {
    const likeness = nameLikeness(asked, name, anywhere);
    const own = likeness.asked * Math.sqrt(likeness.asked) * (0.8 + 0.2 * likeness.named) - 0.003 * KIND_RANK[name.kind];
    if (!best || own > best.own) best = { taxon: plant.taxon, name, own };
  }
  return best && best.own > 0 ? [best] : [];
}

/** Likeness by Fuse.js (1 best) of the shortlisted names, by their place in the list. */
function fuseScores(names: readonly { readonly plain: string }[], asked: AskedName): Map<number, number> {
  const fuse = new Fuse(names, FUSE_OPTIONS);
  return new Map(fuse.search(asked.words.map((word) => word.text).join(" ")).map((hit) => [hit.refIndex, 1 - (hit.score ?? 1)]));
}

const isCultivar = (taxon: PlantDoc): boolean => taxon.cultivar !== null || taxon.tradeDesignation !== null;

function byScore(a: { score: number; taxon: PlantDoc }, b: { score: number; taxon: PlantDoc }): number {
  return b.score - a.score || Number(isCultivar(a.taxon)) - Number(isCultivar(b.taxon)) || (a.taxon.name < b.taxon.name ? -1 : a.taxon.name > b.taxon.name ? 1 : 0);
}

function hitsFound<T extends PlantDoc>(index: PlantIndex<T>, asked: AskedName, room: number, generous: boolean): PlantHit<T>[] {
  const read = index.shortlist
    .search(shortlistQuery(index, asked, generous))
    .slice(0, room)
    .flatMap(({ id }) => {
      const plant = index.plants[Number(id)];
      if (!plant) return [];
      const anywhere = bestLikenesses(asked, plant.words, plant.pairs);
      return [{ plant, anywhere, bound: likenessSum(asked, anywhere) }];
    });
  const bound = Math.max(0, ...read.map((one) => one.bound)) * WORTH_READING;
  const ranked = read.flatMap((one) => (one.bound >= bound ? plantRanked(asked, one.plant, one.anywhere) : []));
  ranked.sort((a, b) => b.own - a.own);
  const fuse = fuseScores(
    ranked.slice(0, FUSED).map(({ name }) => name),
    asked,
  );
  return ranked
    .map(({ taxon, name, own }, i) => ({
      taxon,
      score: Math.max(0, Math.min(1, (1 - FUSE_SHARE) * own + FUSE_SHARE * (fuse.get(i) ?? 0))),
      matched: name.kind,
      matchedName: name.text,
    }))
    .sort(byScore);
}

/** One letter typed: the plants whose botanical name begins with it, by the alphabet. */
function letterHits<T extends PlantDoc>(index: PlantIndex<T>, letter: string): PlantHit<T>[] {
  return index.plants
    .filter(({ names }) => names[0]?.plain.startsWith(letter))
    .map(({ taxon, names }) => ({ taxon, score: 0.5, matched: names[0]?.kind ?? "botanical", matchedName: names[0]?.text ?? taxon.name }))
    .sort(byScore);
}

/**
 * Plants whose names fit what was typed, best first; [] for an empty query or when nothing fits.
 * Typing errors, dropped letters, word order, abbreviations with a full stop, and an unfinished last word are forgiven;
 * a plant that answers all words comes before one that answers some; a species before its cultivars when no cultivar is named.
 * @param limit most hits to return
 */
export function searchPlants<T extends PlantDoc>(index: PlantIndex<T>, query: string, limit = 20): PlantHit<T>[] {
  const { tokens, open } = parseName(query);
  const [first] = tokens;
  if (!first || limit < 1) return [];
  if (tokens.length === 1 && first.text.length === 1) return letterHits(index, first.text).slice(0, limit);
  const room = Math.max(limit, tokens.length === 1 ? SHORTLIST_ONE_WORD : SHORTLIST);
  const rarity = wordRarity(index);
  let hits = hitsFound(index, askedName(tokens, open, false, rarity), room, false);
  if ((hits[0]?.score ?? 0) < DOUBTFUL && tokens.some((token) => token.text.length > 3)) {
    const generous = hitsFound(index, askedName(tokens, open, true, rarity), room, true);
    if ((generous[0]?.score ?? 0) > (hits[0]?.score ?? 0)) hits = generous;
  }
  const least = Math.max(LEAST_SCORE, (hits[0]?.score ?? 0) * 0.5);
  return hits.filter((hit) => hit.score >= least).slice(0, limit);
}
