// Written names by their exact plain words, and plants by genus and epithets: what matching looks things up in.
import { nameWords } from "./name-parse";
import { type NameKind, type PlantDoc, plantNames } from "./plant-names";
import { latinFold } from "./spelling";

export type NamedPlant<T extends PlantDoc> = { readonly taxon: T; readonly kind: NameKind };

/** A cultivar under one botanical name by its epithet, its trade designation, or both: its words, and they as one run of letters. */
export type NamedCultivar<T extends PlantDoc> = NamedPlant<T> & { readonly words: readonly string[]; readonly joined: string };

/** One botanical name, accepted or former, with what stands under it. */
export type BotanicalName<T extends PlantDoc> = {
  readonly epithets: readonly string[];
  /** The species (or variety) itself, where the dataset has it as an entry of its own. */
  species: NamedPlant<T> | null;
  readonly cultivars: NamedCultivar<T>[];
};

export type NameTable<T extends PlantDoc> = {
  /** Plain words of a name to the plants that carry it. */
  readonly exact: ReadonlyMap<string, readonly NamedPlant<T>[]>;
  /** Common names with their words sorted: "maple, red" is red maple. */
  readonly sorted: ReadonlyMap<string, readonly NamedPlant<T>[]>;
  /** Names without a cultivar by `nameFold`: other endings, doubled letters, parted words. */
  readonly folded: ReadonlyMap<string, readonly NamedPlant<T>[]>;
  readonly genera: ReadonlyMap<string, readonly BotanicalName<T>[]>;
  /** Plants by genus, the accepted one only. */
  readonly ofGenus: ReadonlyMap<string, readonly T[]>;
  /** Plants by their epithet or trade designation alone, as one run of letters. */
  readonly ofEpithet: ReadonlyMap<string, readonly NamedPlant<T>[]>;
  /** Every epithet of a botanical name. */
  readonly epithets: ReadonlySet<string>;
  /** Every word of every name: a known word is not a misspelling of another. */
  readonly knownWords: ReadonlySet<string>;
};

const KIND_ORDER: readonly NameKind[] = ["botanical", "trade", "former", "common"];

/** Words of a name folded to one run of letters. */
export const nameFold = (words: readonly string[]): string => words.map(latinFold).join("");

function entryAdd<T extends PlantDoc>(map: Map<string, NamedPlant<T>[]>, key: string, entry: NamedPlant<T>): void {
  const list = map.get(key);
  if (!list) map.set(key, [entry]);
  else if (!list.some((other) => other.taxon.id === entry.taxon.id)) list.push(entry);
}

/** "Aster novae-angliae 'Purple Dome'" in two: botanical words, and the run of letters behind. */
function formerParts(text: string): { botanical: string[]; cultivar: string[] } {
  const quote = text.search(/['‘"]/);
  if (quote >= 0) return { botanical: nameWords(text.slice(0, quote)), cultivar: nameWords(text.slice(quote)) };
  // Without quotes the first capital behind the genus begins the epithet: "Syringa Miss Kim".
  const capital = text.slice(1).search(/\s[A-Z0-9]/);
  if (capital < 0) return { botanical: nameWords(text), cultivar: [] };
  return { botanical: nameWords(text.slice(0, capital + 1)), cultivar: nameWords(text.slice(capital + 1)) };
}

/** Epithet, trade designation, and both in either order, each as words. */
function cultivarForms(taxon: PlantDoc): string[][] {
  const epithet = taxon.cultivar ? nameWords(`'${taxon.cultivar}'`) : [];
  const trade = taxon.tradeDesignation ? nameWords(`'${taxon.tradeDesignation}'`) : [];
  const forms = [epithet, trade, [...epithet, ...trade], [...trade, ...epithet]];
  return (epithet.length && trade.length ? forms : forms.slice(0, 2)).filter((form) => form.length > 0);
}

/**
 * Everything `matchName` needs, built once for a set of plants.
 * @param wordsOf plain words of a run of a name (`nameWords`, perhaps kept)
 */
export function nameTable<T extends PlantDoc>(taxa: readonly T[], wordsOf: (run: string) => readonly string[]): NameTable<T> {
  const exact = new Map<string, NamedPlant<T>[]>();
  const sorted = new Map<string, NamedPlant<T>[]>();
  const folded = new Map<string, NamedPlant<T>[]>();
  const genera = new Map<string, BotanicalName<T>[]>();
  const ofGenus = new Map<string, T[]>();
  const ofEpithet = new Map<string, NamedPlant<T>[]>();
  const epithets = new Set<string>();
  const knownWords = new Set<string>();

  const botanicalName = (words: readonly string[]): BotanicalName<T> | null => {
    const [genus, ...epithets] = words;
    if (!genus) return null;
    const list = genera.get(genus) ?? [];
    genera.set(genus, list);
    const there = list.find((name) => name.epithets.join("") === epithets.join(""));
    if (there) return there;
    const made: BotanicalName<T> = { epithets, species: null, cultivars: [] };
    list.push(made);
    return made;
  };
  const register = (taxon: T, kind: NameKind, botanical: readonly string[], cultivars: readonly (readonly string[])[]) => {
    const name = botanicalName(botanical);
    if (!name) return;
    for (const epithet of name.epithets) epithets.add(epithet);
    if (cultivars.length === 0) {
      if (!name.species || name.species.kind === "former") name.species = { taxon, kind };
    }
    for (const words of cultivars) name.cultivars.push({ taxon, kind, words, joined: words.join("") });
  };

  for (const taxon of taxa) {
    const isCultivar = taxon.cultivar !== null || taxon.tradeDesignation !== null;
    const add = (words: readonly string[], kind: NameKind) => {
      if (words.length === 0) return;
      entryAdd(exact, words.join(" "), { taxon, kind });
      if (!isCultivar) entryAdd(folded, nameFold(words), { taxon, kind });
    };
    const genus = wordsOf(taxon.genus).join(" ");
    const list = ofGenus.get(genus);
    if (list) list.push(taxon);
    else ofGenus.set(genus, [taxon]);
    for (const { kind, runs } of plantNames(taxon)) {
      const words = runs.flatMap(wordsOf);
      add(words, kind);
      if (kind === "common" || kind === "trade") entryAdd(sorted, [...words].sort().join(" "), { taxon, kind });
      for (const word of words) knownWords.add(word);
    }
    const forms = cultivarForms(taxon);
    for (const form of forms) entryAdd(ofEpithet, form.join(""), { taxon, kind: "common" });
    register(taxon, taxon.tradeDesignation && !taxon.cultivar ? "trade" : "botanical", wordsOf(taxon.botanical), forms);
    for (const synonym of taxon.synonyms) {
      const { botanical, cultivar } = formerParts(synonym);
      register(taxon, "former", botanical, cultivar.length ? [cultivar, ...forms] : forms);
    }
  }
  for (const list of exact.values()) list.sort((a, b) => KIND_ORDER.indexOf(a.kind) - KIND_ORDER.indexOf(b.kind));
  return { exact, sorted, folded, genera, ofGenus, ofEpithet, epithets, knownWords };
}
