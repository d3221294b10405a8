// A cultivar in quotes decides the plant by itself: an epithet may stand only once in a genus (ICNCP, International Code of Nomenclature for Cultivated Plants),
// so that a species written wrongly, formerly or in English beside it does not matter.
import { isLatinLike } from "../plants/misspelling";
import { nameWords } from "../plants/name-parse";
import type { PlantDoc } from "../plants/plant-names";

export type QuotedEpithets = {
  /** The one plant of the genus that the text names, in Latin or English, with the very epithet or trade designation that stands in quotes; null when none or several. */
  readonly plant: (text: string) => string | null;
  /** The same for what stands behind the comma of "Black-eyed Susan, Goldsturm", or in capitals behind a species: "Hibiscus moscheutos Luna Red". */
  readonly plantBehind: (text: string) => string | null;
};

const QUOTED = /(?<=^|[\s(,®™])['‘’"“]([^"“”]{2,40}?)['’"”](?=$|[\s,;.)®™])/gu;

const SPECIES_AND_MORE = /^(\p{Lu}\p{Ll}+\s+(?:[×x]\s*)?\p{Ll}[\p{Ll}.-]+)\s+(\p{Lu}[^'"‘“,()]{3,40})$/u;

/** Letters and figures only: 'Gold Mound' is 'Goldmound', "Sum & Substance" "Sum and Substance". */
const epithetKey = (text: string): string =>
  text
    .normalize("NFD")
    .replace(/\p{M}/gu, "")
    .toLowerCase()
    .replace(/&| ['’]?n['’]? /g, " and ")
    .replace(/\bmt\b\.?/g, "mount")
    .replace(/[^\p{L}\d]/gu, "");

/** "Fastigiata", "Nana alba": words that mean a form, which every species of a genus may have. */
const isForm = (text: string): boolean =>
  text
    .trim()
    .split(/\s+/)
    .every((word) => isLatinLike(word.toLowerCase()));

/** Built once for a set of plants. */
export function quotedEpithets(plants: readonly PlantDoc[]): QuotedEpithets {
  /** Genera by the words they go by: own name, former names, last words of common names. */
  const generaOf = new Map<string, Set<string>>();
  const called = (word: string, genus: string): void => {
    const key = word.toLowerCase();
    generaOf.set(key, (generaOf.get(key) ?? new Set()).add(genus));
  };
  const botanical = new Map(plants.map((plant) => [plant.id, nameWords(plant.botanical)]));
  const byGenus = new Map<string, Map<string, Set<string>>>();
  for (const { id, genus, cultivar, tradeDesignation, synonyms, commonNames } of plants) {
    called(genus, genus);
    for (const name of commonNames) called(nameWords(name).at(-1) ?? genus, genus);
    for (const name of synonyms) called(/^\p{Lu}\p{Ll}+(?=\s)/u.exec(name)?.[0] ?? genus, genus);
    const own = byGenus.get(genus) ?? new Map<string, Set<string>>();
    byGenus.set(genus, own);
    const former = synonyms.flatMap((name) => [...name.matchAll(QUOTED)].map((match) => match[1] ?? ""));
    for (const epithet of [cultivar, tradeDesignation, ...former]) {
      const key = epithet ? epithetKey(epithet) : "";
      if (key !== "") own.set(key, (own.get(key) ?? new Set()).add(id));
    }
  }

  function plantNamed(around: string, epithets: readonly string[]): string | null {
    const words = nameWords(around);
    const genera = new Set(words.flatMap((word) => [...(generaOf.get(word) ?? generaOf.get(word.replace(/s$/, "")) ?? [])]));
    const found = new Set<string>();
    for (const epithet of epithets) {
      const form = isForm(epithet);
      const ids = [...genera].flatMap((genus) => [...(byGenus.get(genus)?.get(epithetKey(epithet)) ?? [])]);
      // A form of a species counts only where that very species is written: "Acer palmatum dissectum 'Tamukeyama'".
      for (const id of ids) if (!form || botanical.get(id)?.every((word) => words.includes(word))) found.add(id);
    }
    const [only] = found;
    return found.size === 1 && only !== undefined ? only : null;
  }

  /** Shorthand before, the very epithet of two or three words at the end: JUN CHIN MINT JULEP. */
  function plantEnding(text: string): string | null {
    const words = text.split(/\s+/).filter(Boolean);
    const [genus = ""] = nameWords(text);
    if (words.length < 4 || words.length > 6 || genus.length < 3 || /['"‘“,()]/.test(text)) return null;
    const genera = [...byGenus.keys()].filter((own) => own.toLowerCase().startsWith(genus));
    for (const count of [3, 2]) {
      const epithet = words.slice(-count).join(" ");
      if (words.length - count < 2 || isForm(epithet)) continue;
      const ids = new Set(genera.flatMap((own) => [...(byGenus.get(own)?.get(epithetKey(epithet)) ?? [])]));
      const [only] = ids;
      if (ids.size === 1 && only !== undefined) return only;
    }
    return null;
  }

  return {
    plant: (text) => {
      const epithets = [...text.matchAll(QUOTED)].map((match) => match[1] ?? "");
      return epithets.length ? plantNamed(text.replace(QUOTED, " "), epithets) : null;
    },
    plantBehind: (text) => {
      const [, species = "", cultivar = ""] = SPECIES_AND_MORE.exec(text) ?? [];
      if (cultivar !== "") return plantNamed(species, [cultivar]);
      const named = plantEnding(text);
      if (named !== null) return named;
      const [head = "", tail = "", ...more] = text.split(/\s*,\s*/);
      return tail !== "" && more.length === 0 ? plantNamed(head, [tail]) : null;
    },
  };
}
