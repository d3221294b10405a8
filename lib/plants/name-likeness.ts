// How well a written name fits one name of a plant, word by word: 0 nothing, 1 the same words.
import type { NameToken } from "./name-parse";
import { editDistance, letterSet, lettersApart, prefixDistance } from "./spelling";

/** A word of the index, one object for each distinct word. */
export type OwnWord = { readonly id: number; readonly text: string; readonly letters: number; readonly weight: number };

/** A name ready for comparison: its words, and neighbors written as one ("blue star", "bluestar") with the place of the first. */
export type NameTokens = { readonly words: readonly OwnWord[]; readonly pairs: readonly { readonly word: OwnWord; readonly at: number }[]; readonly weight: number };

export type AskedWord = {
  readonly text: string;
  readonly letters: number;
  readonly abbreviated: boolean;
  /** The last word while it is being typed. */
  readonly open: boolean;
  /** Share in the score. */
  readonly weight: number;
  /** Edits forgiven. */
  readonly edits: number;
  /** Likeness to words met before, by their id, kept for one query. */
  readonly known: Map<number, number>;
};

export type AskedName = { readonly words: readonly AskedWord[]; readonly pairs: readonly AskedWord[]; readonly weight: number };

/** How one name answers: share of the asked words found, and share of its own words asked for, each 0–1. */
export type Likeness = { readonly asked: number; readonly named: number };

const LITTLE_WORDS = new Set(["of", "the", "and", "in", "a", "an", "with", "on", "de", "la", "le", "s", "n"]);
const LITTLE_WEIGHT = 0.3;
/** Below it two words have nothing to do with each other. */
export const LEAST_LIKENESS = 0.5;
/** A word found only in another name of the plant. */
const ELSEWHERE = 0.75;

/** Typing errors forgiven in a word of so many letters; `generous` where nothing was found otherwise. */
export const editsForgiven = (letters: number, generous: boolean): number => (letters < 4 ? 0 : letters < 6 ? (generous ? 2 : 1) : letters < 9 ? (generous ? 3 : 2) : 3);

/** Words of an index, each made once. */
export function wordRegister(): (text: string) => OwnWord {
  const made = new Map<string, OwnWord>();
  return (text) => {
    const there = made.get(text);
    if (there) return there;
    const word = { id: made.size, text, letters: letterSet(text), weight: LITTLE_WORDS.has(text) ? LITTLE_WEIGHT : 1 };
    made.set(text, word);
    return word;
  };
}

/** A name of runs of words; only neighbors in one run may be written as one word. */
export function nameTokens(runs: readonly (readonly string[])[], own: (text: string) => OwnWord): NameTokens {
  const words: OwnWord[] = [];
  const pairs: { word: OwnWord; at: number }[] = [];
  for (const run of runs) {
    run.forEach((text, i) => {
      if (i > 0) pairs.push({ word: own(`${run[i - 1] ?? ""}${text}`), at: words.length - 1 });
      words.push(own(text));
    });
  }
  return { words, pairs, weight: words.reduce((sum, word) => sum + word.weight, 0) };
}

const askedWord = (text: string, edits: number, abbreviated: boolean, open: boolean, weight: number): AskedWord => ({
  text,
  letters: letterSet(text),
  edits,
  abbreviated,
  open,
  weight,
  known: new Map(),
});

function tokenWeight(token: NameToken): number {
  if (token.optional) return 0.15;
  if (LITTLE_WORDS.has(token.text)) return LITTLE_WEIGHT;
  return token.abbreviated ? 0.6 : Math.min(1, 0.5 + token.text.length / 10);
}

/**
 * The words asked for, ready to be compared.
 * @param rarity 0 for a word that every plant has, 1 for a word of one plant
 * @param open the last word may be unfinished
 */
export function askedName(tokens: readonly NameToken[], open: boolean, generous: boolean, rarity: (word: string) => number): AskedName {
  const words = tokens.map((token, i) => {
    const weight = tokenWeight(token) * (0.5 + 0.5 * rarity(token.text));
    return askedWord(token.text, editsForgiven(token.text.length, generous), token.abbreviated, open && i === tokens.length - 1, weight);
  });
  const pairs = words.slice(1).map((word, i) => {
    const text = `${words[i]?.text ?? ""}${word.text}`;
    return askedWord(text, editsForgiven(text.length, false), false, word.open, (words[i]?.weight ?? 0) + word.weight);
  });
  return { words, pairs, weight: words.reduce((sum, word) => sum + word.weight, 0) };
}

/** "Rhdo.", "Vbrnm.": the letters stand in the word in this order, the first at its head. */
function isContraction(short: string, word: string): boolean {
  if (short.length < 3 || short.charCodeAt(0) !== word.charCodeAt(0)) return false;
  let at = 0;
  for (let i = 0; i < word.length && at < short.length; i++) if (word.charCodeAt(i) === short.charCodeAt(at)) at++;
  return at === short.length;
}

function likenessAfresh(asked: AskedWord, own: OwnWord): number {
  const { text } = asked;
  const word = own.text;
  if (text === word) return 1;
  if (word.startsWith(text)) {
    const share = text.length / word.length;
    if (asked.abbreviated) return 0.88 + 0.07 * share;
    if (asked.open) return 0.86 + 0.12 * share;
    return text.length < 3 ? 0.5 + 0.2 * share : 0.7 + 0.25 * share;
  }
  if (asked.abbreviated) return isContraction(text, word) ? 0.65 : 0;
  const most = asked.edits;
  if (most === 0) return 0;
  const start = text.charCodeAt(0) === word.charCodeAt(0) ? 0 : 0.04;
  if (lettersApart(asked.letters, own.letters) <= 2 * most) {
    const edits = editDistance(text, word, most);
    if (edits <= most) return 1 - (edits * 1.15) / Math.max(text.length, word.length) - start;
  }
  if (!asked.open || word.length < text.length || (start > 0 && text.charCodeAt(0) !== word.charCodeAt(1))) return 0;
  const begun = prefixDistance(text, word, Math.min(most, 2));
  return begun <= Math.min(most, 2) ? 0.9 - (begun * 1.3) / text.length : 0;
}

/** Likeness of an asked word and a word of a name, 0–1; 0 below LEAST_LIKENESS. */
export function wordLikeness(asked: AskedWord, own: OwnWord): number {
  const before = asked.known.get(own.id);
  if (before !== undefined) return before;
  const likeness = likenessAfresh(asked, own);
  const kept = likeness < LEAST_LIKENESS ? 0 : likeness;
  asked.known.set(own.id, kept);
  return kept;
}

/** For each asked word its best likeness among words in any order; `pairs` are neighbors written as one. */
export function bestLikenesses(asked: AskedName, words: readonly OwnWord[], pairs: readonly OwnWord[]): number[] {
  const best = asked.words.map((word) => {
    let most = 0;
    for (const own of words) most = Math.max(most, wordLikeness(word, own));
    if (most < 0.9 && word.text.length >= 5) for (const own of pairs) most = Math.max(most, wordLikeness(word, own));
    return most;
  });
  asked.pairs.forEach((pair, i) => {
    if ((best[i] ?? 0) + (best[i + 1] ?? 0) > 1.7 || pair.text.length < 6) return;
    for (const own of words) {
      const likeness = wordLikeness(pair, own);
      if (likeness < 0.8) continue;
      best[i] = Math.max(best[i] ?? 0, likeness);
      best[i + 1] = Math.max(best[i + 1] ?? 0, likeness);
    }
  });
  return best;
}

/** Asked words found at all, 0–1, from their best likenesses: what no single name of the plant can exceed. */
export const likenessSum = (asked: AskedName, best: readonly number[]): number =>
  asked.weight ? asked.words.reduce((sum, word, i) => sum + word.weight * (best[i] ?? 0), 0) / asked.weight : 0;

/**
 * The best free word of a name for each asked word, joined and parted writings included; order does not matter.
 * @param anywhere best likeness of each asked word in all names of the plant: a word missing here counts for less there
 */
export function nameLikeness(asked: AskedName, name: NameTokens, anywhere: readonly number[]): Likeness {
  const taken: number[] = name.words.map(() => 0);
  const found: number[] = asked.words.map((word) => {
    let best = 0;
    let place = -1;
    for (let j = 0; j < name.words.length; j++) {
      const own = name.words[j];
      if (!own || taken[j]) continue;
      const likeness = wordLikeness(word, own);
      if (likeness > best) {
        best = likeness;
        place = j;
      }
    }
    if (place >= 0) taken[place] = best;
    return best;
  });
  // "lime light" for Limelight.
  asked.pairs.forEach((pair, i) => {
    const apart = (found[i] ?? 0) + (found[i + 1] ?? 0);
    if (apart > 1 || pair.text.length < 6) return;
    name.words.forEach((own, j) => {
      if (taken[j] && apart === 0) return;
      const likeness = wordLikeness(pair, own);
      if (likeness < 0.8 || likeness * 2 <= apart) return;
      taken[j] = likeness;
      found[i] = likeness * 0.98;
      found[i + 1] = likeness * 0.98;
    });
  });
  // "bluestar" for Blue Star.
  asked.words.forEach((word, i) => {
    if ((found[i] ?? 0) >= 0.9 || word.text.length < 5) return;
    for (const pair of name.pairs) {
      const likeness = wordLikeness(word, pair.word);
      if (likeness <= (found[i] ?? 0)) continue;
      taken[pair.at] = likeness;
      taken[pair.at + 1] = likeness;
      found[i] = likeness * 0.98;
    }
  });
  let sum = 0;
  let here = 0;
  asked.words.forEach((word, i) => {
    const likeness = found[i] ?? 0;
    here += likeness;
    sum += word.weight * (likeness || ELSEWHERE * (anywhere[i] ?? 0));
  });
  if (here === 0) return { asked: 0, named: 0 };
  let own = 0;
  name.words.forEach((word, j) => {
    own += word.weight * (taken[j] ?? 0);
  });
  return { asked: asked.weight ? sum / asked.weight : 0, named: name.weight ? own / name.weight : 0 };
}
