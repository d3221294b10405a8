// Looks up a written name: the plant it means, or nothing. Never another species, never another cultivar.
import { epithetLikeness, isLatinLike, wordsLikeness } from "./misspelling";
import { type NameToken, nameWords, parseName } from "./name-parse";
import { type BotanicalName, type NamedCultivar, type NamedPlant, type NameTable, nameFold } from "./name-table";
import type { PlantDoc } from "./plant-names";
import { type PlantIndex, searchPlants } from "./search";
import { editDistance } from "./spelling";

export type NameMatch = {
  readonly taxonId: string;
  /** 1 the accepted name as it stands, falling to about 0.4 for a doubtful reading. */
  readonly confidence: number;
  /** The name as written is one of the plant's names; no person need look. */
  readonly sure: boolean;
  /** The cultivar written is not in the dataset; its species stands in for it. */
  readonly fallback?: "species";
};

type Found<T extends PlantDoc> = { taxon: T; confidence: number; sure: boolean; fallback: boolean };

const CONFIDENCE = { botanical: 1, trade: 0.99, former: 0.98, common: 0.95 } as const;
const isCultivar = (taxon: PlantDoc): boolean => taxon.cultivar !== null || taxon.tradeDesignation !== null;

/** The one plant a list of namesakes means: the strongest kind of name decides, then the species before its cultivars. */
function oneMeant<T extends PlantDoc>(plants: readonly NamedPlant<T>[] | undefined): NamedPlant<T> | null {
  const kind = plants?.[0]?.kind;
  const strongest = (plants ?? []).filter((plant) => plant.kind === kind);
  if (strongest.length < 2) return strongest[0] ?? null;
  const species = strongest.filter(({ taxon }) => !isCultivar(taxon));
  return species.length === 1 ? (species[0] ?? null) : null;
}

const foundAs = <T extends PlantDoc>(plant: NamedPlant<T> | null, factor: number, sure: boolean): Found<T> | null =>
  plant && { taxon: plant.taxon, confidence: CONFIDENCE[plant.kind] * factor, sure, fallback: false };

/** The name as written, and the parts lists join to it: "Acer rubrum (Red Maple)", "Acer rubrum - Red Maple", "Maple, Red". */
function writings(text: string): string[] {
  const inside = [...text.matchAll(/\(([^()]+)\)/g)].map((match) => match[1] ?? "");
  const outside = text.replace(/\([^()]*\)/g, " ");
  const parts = outside.split(/\s[-–—]\s|[,;/|]/);
  return [...new Set([text, outside, ...parts, ...inside].map((part) => part.trim()).filter(Boolean))];
}

/** Whether a written name says which cultivar: "arborvitae" does not, "Steeplechase arborvitae" does. */
function namesCultivar(taxon: PlantDoc, words: readonly string[]): boolean {
  const own = new Set([taxon.cultivar, taxon.tradeDesignation].flatMap((text) => (text ? nameWords(`'${text}'`) : [])));
  return words.some((word) => own.has(word));
}

/** A common name that one cultivar alone carries, as "PeeGee hydrangea": not sure, and nothing when it is one bare word. */
function commonFound<T extends PlantDoc>(plant: NamedPlant<T> | null, words: readonly string[], factor: number): Found<T> | null {
  if (plant?.kind !== "common" || !isCultivar(plant.taxon) || namesCultivar(plant.taxon, words)) return foundAs(plant, factor, true);
  return words.length === 1 ? null : foundAs(plant, factor * 0.8, false);
}

/** A name that stands in the table word for word, sorted, or in another Latin spelling. */
function exactFound<T extends PlantDoc>(table: NameTable<T>, words: readonly string[]): Found<T> | null {
  const [first] = words;
  const isGenus = table.genera.has(first ?? "");
  if (words.length === 1 && isGenus) return null;
  const exact = oneMeant(table.exact.get(words.join(" ")));
  if (exact) return commonFound(exact, words, 1);
  const sorted = oneMeant(table.sorted.get([...words].sort().join(" ")));
  // "Delphinium belladonna" is a species, not the belladonna delphinium: behind a genus only an order that names the cultivar.
  if (sorted && (!isGenus || !isCultivar(sorted.taxon) || namesCultivar(sorted.taxon, words))) return commonFound(sorted, words, 0.97);
  const folded = table.folded.get(nameFold(words));
  return folded?.length === 1 || words.length > 1 ? foundAs(oneMeant(folded), 0.96, false) : null;
}

/** A bare genus means a plant only where the genus has one: a single entry, or a single species with its cultivars. */
function genusFound<T extends PlantDoc>(table: NameTable<T>, genus: string): Found<T> | null {
  const plants = table.ofGenus.get(genus) ?? [];
  const species = plants.filter((taxon) => !isCultivar(taxon));
  const only = plants.length === 1 ? plants[0] : species.length === 1 && plants.every((taxon) => taxon.botanical === species[0]?.botanical) ? species[0] : undefined;
  return only ? { taxon: only, confidence: 0.8, sure: false, fallback: false } : null;
}

/** Genera a first word may stand for, with the likeness of the reading. */
function genusReadings<T extends PlantDoc>(table: NameTable<T>, word: NameToken): { genus: string; likeness: number }[] {
  if (table.genera.has(word.text)) return [{ genus: word.text, likeness: 1 }];
  const readings: { genus: string; likeness: number }[] = [];
  for (const genus of table.genera.keys()) {
    if (genus.startsWith(word.text) && (word.abbreviated || word.text.length >= 3)) readings.push({ genus, likeness: word.abbreviated ? 0.92 : 0.85 });
    else if (!word.abbreviated && word.text.length >= 5 && genus.charCodeAt(0) === word.text.charCodeAt(0)) {
      const most = word.text.length < 8 ? 1 : 2;
      const edits = editDistance(word.text, genus, most);
      if (edits <= most) readings.push({ genus, likeness: edits === 1 ? 0.9 : 0.8 });
    }
  }
  return readings;
}

/** How many words behind the genus a botanical name takes up, and how well they fit; null when they do not. */
function epithetsReading(name: { epithets: readonly string[] }, rest: readonly NameToken[], isKnown: (word: string) => boolean): { used: number; likeness: number } | null {
  const { epithets } = name;
  const whole = epithets.join("");
  let best: { used: number; likeness: number } | null = null;
  for (let used = 1; used <= Math.min(epithets.length + 1, rest.length); used++) {
    const written = rest.slice(0, used);
    const joined = written.map((token) => token.text).join("");
    let likeness = epithetLikeness(joined, whole, isKnown);
    if (used === epithets.length) {
      const each = epithets.map((epithet, i) => {
        const token = written[i];
        if (!token || token.quoted) return 0;
        const short = token.text.length < epithet.length && epithet.startsWith(token.text);
        return short && token.abbreviated ? 0.92 : short && token.text.length >= 3 && !isKnown(token.text) ? 0.6 : epithetLikeness(token.text, epithet, isKnown);
      });
      likeness = Math.max(likeness, Math.min(...each));
    }
    if (likeness > (best?.likeness ?? 0)) best = { used, likeness };
  }
  return best;
}

/** The cultivar of a list that the words name, with likeness; ambiguous names give null. */
function cultivarNamed<T extends PlantDoc>(
  cultivars: readonly NamedCultivar<T>[],
  written: readonly NameToken[],
  isKnown: (word: string) => boolean,
): { plant: NamedCultivar<T>; likeness: number } | null {
  const words = written.map((token) => token.text);
  const joined = words.join("");
  const known = (word: string) => isKnown(word) || cultivars.some((other) => other.joined === word);
  let best: { plant: NamedCultivar<T>; likeness: number } | null = null;
  let twin = false;
  for (const plant of cultivars) {
    const short =
      written.some((token) => token.abbreviated) &&
      words.length === plant.words.length &&
      written.every((token, i) => (token.abbreviated ? plant.words[i]?.startsWith(token.text) : plant.words[i] === token.text));
    const likeness = plant.joined === joined ? 1 : short ? 0.9 : wordsLikeness(words, plant.words, known);
    if (likeness === 0 || likeness < (best?.likeness ?? 0)) continue;
    if (best && likeness === best.likeness) twin = twin || plant.taxon.id !== best.plant.taxon.id;
    else {
      best = { plant, likeness };
      twin = false;
    }
  }
  return twin ? null : best;
}

/** Words that only repeat what a plant is called in plain English: "Limelight panicle hydrangea". */
function commonWords(taxon: PlantDoc): Set<string> {
  return new Set([taxon.genus, ...taxon.commonNames].flatMap(nameWords));
}

/** Whether the words are a common name, or the end of one: "red maple", but not "red" and not "chameleon" for the chameleon plant. */
function isCalled(taxon: PlantDoc, rest: readonly NameToken[]): boolean {
  const extra = commonWords(taxon);
  const nouns = new Set(taxon.commonNames.flatMap((name) => nameWords(name).slice(-1)));
  return rest.every((token) => !token.quoted && extra.has(token.text)) && rest.some((token) => nouns.has(token.text));
}

/**
 * The words behind the botanical name, read as a cultivar of it.
 * @param below whether an unknown lower rank may stand before the quotes: "Euonymus fortunei var. radicans 'Coloratus'"
 */
function cultivarReading<T extends PlantDoc>(
  cultivars: readonly NamedCultivar<T>[],
  rest: readonly NameToken[],
  isKnown: (word: string) => boolean,
  below: boolean,
): { plant: NamedCultivar<T>; likeness: number; exact: boolean } | null {
  const all = cultivarNamed(cultivars, rest, isKnown);
  if (all) return { ...all, exact: all.likeness === 1 };
  const quoted = rest.filter((token) => token.quoted);
  if (quoted.length > 0 && quoted.length < rest.length) {
    const named = cultivarNamed(cultivars, quoted, isKnown);
    const extra = named ? commonWords(named.plant.taxon) : new Set<string>();
    const whole = rest.every((token) => token.quoted || extra.has(token.text));
    if (named && (whole || below)) return { ...named, likeness: named.likeness * 0.9, exact: named.likeness === 1 && whole };
  }
  for (let length = rest.length - 1; length > 0; length--) {
    for (const head of [rest.slice(0, length), rest.slice(rest.length - length)]) {
      const named = cultivarNamed(cultivars, head, isKnown);
      if (!named) continue;
      const extra = commonWords(named.plant.taxon);
      if (rest.every((token) => head.includes(token) || extra.has(token.text))) return { ...named, likeness: named.likeness * 0.97, exact: named.likeness === 1 };
    }
  }
  return null;
}

/** Lists leave the lower rank out: "Rudbeckia fulgida 'Goldsturm'" is the cultivar of var. sullivantii. */
function speciesShort<T extends PlantDoc>(name: BotanicalName<T>, words: readonly NameToken[], isKnown: (word: string) => boolean): Found<T> | null {
  if (name.epithets.length < 2) return null;
  const reading = epithetsReading({ epithets: name.epithets.slice(0, 1) }, words, isKnown);
  const rest = words.slice(reading?.used);
  const cultivar = reading && reading.used < words.length ? cultivarReading(name.cultivars, rest, isKnown, false) : null;
  return reading && cultivar?.exact ? foundAs(cultivar.plant, 0.97 * reading.likeness * cultivar.likeness, reading.likeness === 1) : null;
}

/** A trade designation, or one with its cultivar. */
function isTelling({ taxon, joined }: NamedCultivar<PlantDoc>): boolean {
  const trade = taxon.tradeDesignation ? nameWords(`'${taxon.tradeDesignation}'`).join("") : "";
  return trade !== "" && joined.includes(trade);
}

/** One botanical name of a genus against the words behind the genus. */
function botanicalReading<T extends PlantDoc>(name: BotanicalName<T>, siblings: readonly NamedCultivar<T>[], words: readonly NameToken[], table: NameTable<T>): Found<T> | null {
  const isKnown = (word: string) => table.knownWords.has(word);
  const reading = name.epithets.length ? epithetsReading(name, words, isKnown) : { used: 0, likeness: 1 };
  if (!reading) return speciesShort(name, words, isKnown);
  const rest = words.slice(reading.used);
  // An epithet cut short without a full stop ("pan") is believed only where a cultivar confirms it.
  const cut = reading.likeness < 0.7;
  const { species } = name;
  if (rest.length === 0) return species && !cut ? foundAs(species, reading.likeness, reading.likeness === 1) : null;
  const cultivar = cultivarReading(name.cultivars, rest, isKnown, name.epithets.length > 0);
  if (cultivar) {
    if (cut && !cultivar.exact) return null;
    return foundAs(cultivar.plant, reading.likeness * cultivar.likeness, cultivar.exact && reading.likeness === 1);
  }
  if (!species || cut) return null;
  if (isCalled(species.taxon, rest)) return foundAs(species, reading.likeness * 0.98, reading.likeness === 1);
  // A trade designation is given once: under a sibling's name it is still that plant ("Acer rubrum Autumn Blaze"). Epithets recur ('Morton').
  const alone = cultivarNamed(siblings.filter(isTelling), rest, () => true);
  if (alone?.likeness === 1) return foundAs(alone.plant, reading.likeness * 0.8, false);
  return { taxon: species.taxon, confidence: 0.5 * reading.likeness, sure: false, fallback: true };
}

/** A name that begins with a genus, read part by part. */
function partsFound<T extends PlantDoc>(table: NameTable<T>, tokens: readonly NameToken[]): Found<T> | null {
  const [first, ...rest] = tokens;
  if (!first || first.quoted) return null;
  const found: Found<T>[] = [];
  for (const { genus, likeness } of genusReadings(table, first)) {
    const names = table.genera.get(genus) ?? [];
    if (rest.length === 0) {
      const only = likeness === 1 ? genusFound(table, genus) : null;
      if (only) found.push(only);
      continue;
    }
    const all = names.flatMap((name) => name.cultivars);
    for (const name of names) {
      const reading = botanicalReading(name, all, rest, table);
      if (reading) found.push({ ...reading, confidence: reading.confidence * likeness, sure: reading.sure && likeness === 1 });
    }
    // Genus and cultivar without the species: "Hydrangea 'Limelight'".
    const [only] = rest;
    const latin = rest.length === 1 && only && !only.quoted && (table.epithets.has(only.text) || (!only.capital && isLatinLike(only.text)));
    const cultivar = latin ? null : cultivarReading(all, rest, (word) => table.knownWords.has(word), false);
    if (!cultivar) continue;
    // 'Compacta' may belong to another species of the genus that is not in the index.
    const recurs = cultivar.plant.words.every((word) => table.epithets.has(word) || (isLatinLike(word) && !isTelling(cultivar.plant)));
    if (recurs && rest.length > cultivar.plant.words.length) continue;
    found.push({
      taxon: cultivar.plant.taxon,
      confidence: (recurs ? 0.8 : 0.96) * likeness * cultivar.likeness,
      sure: cultivar.exact && likeness === 1 && !recurs,
      fallback: false,
    });
  }
  found.sort((a, b) => b.confidence - a.confidence);
  const [best, ...others] = found;
  const rival = others.find((other) => other.taxon.id !== best?.taxon.id);
  return best && rival && rival.confidence === best.confidence && !best.sure ? null : (best ?? null);
}

/** A common or trade name with typing errors: every word must have its counterpart, and no word may be left over. */
function misspeltFound<T extends PlantDoc>(index: PlantIndex<T>, text: string, words: readonly string[]): Found<T> | null {
  const isKnown = (word: string) => index.table().knownWords.has(word);
  const found = searchPlants(index, text, 12).flatMap(({ taxon, matchedName, matched }) => {
    if (matched === "botanical" || matched === "former") return [];
    const likeness = wordsLikeness([...words].sort(), [...nameWords(matchedName)].sort(), isKnown) || wordsLikeness(words, nameWords(matchedName), isKnown);
    return likeness > 0 ? [{ taxon, kind: matched, likeness }] : [];
  });
  const best = Math.max(0, ...found.map((one) => one.likeness));
  return foundAs(oneMeant(found.filter((one) => one.likeness === best)), 0.9 * best, false);
}

/** "Cornus kousa × florida": a hybrid is neither of its parents. */
const isHybridFormula = (text: string): boolean => /\p{Ll}{3,}\s*[×✕]\s*\p{L}|\p{Ll}{3,}\s+x\s+\p{L}/u.test(text.replace(/^\s*\p{L}+\.?\s+/u, ""));

/** "Quercus alba" by its letters: a capital genus and a lower case epithet; such a name means that species and no other. */
const isBotanicalWriting = (text: string): boolean => /^\s*[^\p{L}]*\p{Lu}\p{Ll}+\.?\s+(?:[×x]\s*)?\p{Ll}/u.test(text);

function textFound<T extends PlantDoc>(index: PlantIndex<T>, text: string): Found<T> | null {
  const table = index.table();
  const all = writings(text).flatMap((writing) => {
    const { tokens, loose } = parseName(writing);
    const kept = tokens.filter((token) => !token.optional);
    // What looks like an author may be an epithet's initials: "Calluna vulgaris H. E. Beale".
    return (kept.length < tokens.length ? [kept, tokens] : [kept]).map((read) => ({ writing, tokens: read, words: read.map((token) => token.text), loose }));
  });
  const [whole] = all;
  if (!whole) return null;
  const doubt = (found: Found<T> | null, loose: boolean) => found && (loose ? { ...found, sure: false, confidence: found.confidence * 0.95 } : found);
  const exact = exactFound(table, whole.words);
  if (exact) return doubt(exact, whole.loose);

  const botanical = all.filter(({ words }) => table.genera.has(words[0] ?? ""));
  let best: Found<T> | null = null;
  for (const { words, tokens, loose } of [...botanical, whole]) {
    const found = doubt(exactFound(table, words) ?? partsFound(table, tokens), loose);
    if (found && (!best || (found.sure && !best.sure) || (found.sure === best.sure && found.confidence > best.confidence))) best = found;
  }
  if (best) return best.fallback && isHybridFormula(text) ? null : best;
  if (botanical.some(({ writing, words }) => words.length > 1 && isBotanicalWriting(writing))) return null;

  for (const { words, loose } of all) {
    const found = doubt(exactFound(table, words), loose);
    if (found) return found;
  }
  const epithet = oneMeant(table.ofEpithet.get(whole.words.join("")));
  if (epithet && !isLatinLike(whole.words[0] ?? "")) return foundAs(epithet, 0.85, false);
  for (const { writing, words } of all) {
    const found = misspeltFound(index, writing, words);
    if (found) return found;
  }
  return null;
}

/**
 * The plant a written name means, or null when none fits well. An accepted, former, trade or unambiguous common name in any
 * writing (capitals, × or x, quotes or none, authors, trade marks) is sure. A species that is not in the index is never
 * read as another; a cultivar that is not in the index falls back to its species, marked so.
 */
export function matchName<T extends PlantDoc>(index: PlantIndex<T>, text: string): NameMatch | null {
  const found = textFound(index, text);
  if (!found) return null;
  const match = { taxonId: found.taxon.id, confidence: Math.round(found.confidence * 1000) / 1000, sure: found.sure };
  return found.fallback ? { ...match, fallback: "species" } : match;
}
