// Names that differ from a plant's only in what time or grammar changes: the ending of an epithet (alata, alatus), a genus that was split off, the order of a common name.
import { nameWords, parseName } from "../plants/name-parse";
import type { PlantDoc } from "../plants/plant-names";

export type NameEndings = {
  /** The one plant whose name is the text but for Latin endings, or whose own common name has the very words; null when none or several. */
  readonly alike: (text: string) => string | null;
  /** The text under the genus that a former genus is part of now: "Azalea schlippenbachii" under Rhododendron. */
  readonly underPresentGenus: (text: string) => readonly string[];
};

const stem = (word: string): string => (word.length > 4 ? word.replace(/(?:us|um|a|is|e|ii|i|ensis|ense)$/, "") : word);
const stemmed = (text: string): string => {
  const [genus = "", ...words] = nameWords(text);
  return [genus, ...words.map(stem)].join(" ");
};
const commonKey = (text: string): string => [...new Set(nameWords(text))].sort().join(" ");

/** Letters of a common name in the order in which it is spoken: "Cedar, Eastern Red" is "eastern redcedar". */
const spokenKey = (text: string): string =>
  text
    .replace(/^([^,]+),\s*([^,]+)$/, "$2 $1")
    .toLowerCase()
    .replace(/[^\p{L}]/gu, "");

type One = { readonly id: string; readonly species: boolean; readonly botanical: string };
/** Keys that stand for one plant each; null where two plants share one. */
type Singles = Map<string, One | null>;

/** A species goes before its own cultivars; two different plants leave the key to nobody. */
function singleAdd(singles: Singles, key: string, { id, cultivar, tradeDesignation, botanical }: PlantDoc): void {
  const own: One = { id, species: cultivar === null && tradeDesignation === null, botanical };
  const held = singles.get(key);
  if (held === undefined) singles.set(key, own);
  else if (held !== null && held.id !== id) singles.set(key, held.botanical === botanical && held.species !== own.species ? (own.species ? own : held) : null);
}

/** Built once for a set of plants. */
export function nameEndings(plants: readonly PlantDoc[]): NameEndings {
  const latin: Singles = new Map();
  const common: Singles = new Map();
  const spoken: Singles = new Map();
  /** Species by the last word of a common name, with all words of their common names. */
  const byNoun = new Map<string, { id: string; words: ReadonlySet<string> }[]>();
  const presentOf = new Map<string, Set<string>>();
  for (const plant of plants) {
    for (const name of [plant.name, ...plant.synonyms]) {
      const key = stemmed(name);
      if (key.includes(" ")) singleAdd(latin, key, plant);
      const genus = /^\p{Lu}\p{Ll}+(?=\s)/u.exec(name)?.[0];
      if (genus && genus !== plant.genus) presentOf.set(genus.toLowerCase(), (presentOf.get(genus.toLowerCase()) ?? new Set()).add(plant.genus));
    }
    for (const name of plant.commonNames) {
      if (nameWords(name).length > 1) singleAdd(common, commonKey(name), plant);
      if (/\s/.test(name)) singleAdd(spoken, spokenKey(name), plant);
    }
    if (plant.cultivar === null && plant.tradeDesignation === null) {
      const words = new Set(plant.commonNames.flatMap(nameWords));
      for (const noun of new Set(plant.commonNames.flatMap((name) => nameWords(name).slice(-1)))) byNoun.set(noun, [...(byNoun.get(noun) ?? []), { id: plant.id, words }]);
    }
  }
  /** "Colorado Blue Spruce" of a plant called Colorado spruce and blue spruce: every word is of its common names, and of no other species'. */
  function ofSeveralNames(text: string): string | null {
    const words = [...new Set(nameWords(text))];
    if (words.length < 3) return null;
    const fitting = new Set(words.flatMap((noun) => byNoun.get(noun) ?? []).flatMap((one) => (words.every((word) => one.words.has(word)) ? [one.id] : [])));
    const [only] = fitting;
    return fitting.size === 1 && only !== undefined ? only : null;
  }

  return {
    alike: (text) => (parseName(text).loose ? null : (latin.get(stemmed(text))?.id ?? common.get(commonKey(text))?.id ?? spoken.get(spokenKey(text))?.id ?? ofSeveralNames(text))),
    underPresentGenus: (text) => {
      const [first = ""] = text.split(/\s+/);
      return [...(presentOf.get(first.toLowerCase()) ?? [])].slice(0, 3).map((genus) => `${genus}${text.slice(first.length)}`);
    },
  };
}
