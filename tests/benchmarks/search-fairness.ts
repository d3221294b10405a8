// Whether a search case is fair: could a person tell which plant is meant? Brute force over all names, independent of the search.
import { nameWords } from "../../lib/plants/name-parse";
import { type PlantDoc, plantNames } from "../../lib/plants/plant-names";
import { editDistance, letterSet, lettersApart } from "../../lib/plants/spelling";

type Reading = { readonly names: readonly (readonly string[])[]; readonly words: readonly string[]; readonly epithets: readonly string[] };

const MOST_APART = 4;

/** The words with each two neighbors written as one, and as they are. */
const joinings = (words: readonly string[]): string[][] => [
  [...words],
  ...words.slice(1).map((word, i) => [...words.slice(0, i), `${words[i] ?? ""}${word}`, ...words.slice(i + 2)]),
];

/** All names of a plant as words, with genus and cultivar alone. */
function reading(plant: PlantDoc): Reading {
  const names = plantNames(plant).map((name) => nameWords(name.text));
  const epithets = [plant.cultivar, plant.tradeDesignation].filter((text) => text !== null);
  for (const epithet of epithets) names.push(nameWords(`${plant.genus} '${epithet}'`));
  return { names, words: [...new Set(names.flatMap((words) => joinings(words).flat()))], epithets: epithets.map((text) => nameWords(`'${text}'`).join(" ")) };
}

/** Letters amiss between what was typed and a name, word by word in any order; words left over in the name count half their length. */
function amiss(query: readonly string[], name: readonly string[], apart: (typed: string, word: string) => number): number {
  const free = [...name];
  let sum = 0;
  for (const typed of query) {
    let best = typed.length;
    let place = -1;
    free.forEach((word, i) => {
      const edits = apart(typed, word);
      if (edits < best) {
        best = edits;
        place = i;
      }
    });
    if (place >= 0) free.splice(place, 1);
    sum += best;
  }
  return sum + free.reduce((letters, word) => letters + word.length * 0.5, 0);
}

/** Letters amiss between two words, kept; a word cut short on purpose is not amiss from the word it begins. */
function wordsApart(isCut: (typed: string) => boolean): (typed: string, word: string) => number {
  const known = new Map<string, Map<string, number>>();
  return (typed, word) => {
    const of = known.get(typed) ?? new Map<string, number>();
    known.set(typed, of);
    const before = of.get(word);
    if (before !== undefined) return before;
    const far = lettersApart(letterSet(typed), letterSet(word)) > 2 * MOST_APART;
    const edits = isCut(typed) && word.startsWith(typed) ? 0 : Math.min(far ? MOST_APART + 1 : editDistance(typed, word, MOST_APART), typed.length);
    of.set(word, edits);
    return edits;
  };
}

/** How words of a case are written on purpose. */
export type Writing = { readonly isCut: (typed: string) => boolean; readonly joins: boolean };

/**
 * A judge over all plants. For a query and the plant meant it gives the ids that count as found, or null when the case is not fair:
 * when by letters amiss another plant is as near. A cultivar may be as near as its species when no cultivar is named; plants that are
 * as near and bear the same cultivar epithet or trade designation are right answers too.
 */
export function fairnessJudge(all: readonly PlantDoc[]): (query: string, plant: PlantDoc, writing: Writing) => string[] | null {
  const readings = all.map(reading);
  const place = new Map(all.map((plant, i) => [plant.id, i]));
  return (query, plant, { isCut, joins }) => {
    const words = nameWords(query);
    const queries = joins ? joinings(words) : [words];
    const apart = wordsApart(isCut);
    const nearest = (read: Reading) =>
      Math.min(...queries.flatMap((typed) => read.names.flatMap((name) => (joins ? joinings(name) : [name]).map((own) => amiss(typed, own, apart)))));
    // What no name of the plant can undercut.
    const least = (read: Reading) =>
      Math.min(...queries.map((typed) => typed.reduce((sum, word) => sum + read.words.reduce((best, own) => Math.min(best, apart(word, own)), word.length), 0)));
    const own = readings[place.get(plant.id) ?? -1];
    if (!own) return null;
    const mine = nearest(own);
    const isSpecies = own.epithets.length === 0;
    const right = [plant.id];
    for (const [i, other] of all.entries()) {
      const read = readings[i];
      if (!read || read === own || least(read) > mine) continue;
      const theirs = nearest(read);
      if (theirs > mine || (isSpecies && read.epithets.length > 0 && theirs === mine)) continue;
      if (!read.epithets.some((epithet) => own.epithets.includes(epithet))) return null;
      right.push(other.id);
    }
    return right;
  };
}
