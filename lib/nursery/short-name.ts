// Reads plant names in the shorthand of stock lists: HYDR PAN LIMELT, ACER RUB OCT GLRY, MAPLE OCT GLORY. Every word must stand for a word of the
// plant's names, and the cultivar must be named in full; what fits two plants is not sure.
import { nameWords, parseName } from "../plants/name-parse";
import type { PlantDoc } from "../plants/plant-names";
import type { PlantIndex } from "../plants/search";
import { editDistance } from "../plants/spelling";

export type ShortReading = { readonly taxonId: string; readonly score: number; readonly sure: boolean };

type ShortWord = { readonly text: string; readonly stop: boolean };
type Form = {
  /** Words that must all be written: cultivar or trade designation, or the epithets of a species, or a whole common name. */
  readonly needed: readonly string[];
  /** Words that may be: genus, epithets, common nouns. */
  readonly allowed: readonly string[];
  /** One of these must be written. */
  readonly anchors: readonly string[];
  readonly named: "species" | "cultivar" | "common";
};
type ShortPlant<T extends PlantDoc> = { readonly taxon: T; readonly genus: string; readonly forms: readonly Form[] };
export type ShortIndex<T extends PlantDoc> = {
  /** Genus and common nouns to the plants that go by them, by first letter. */
  readonly anchors: ReadonlyMap<string, ReadonlyMap<string, readonly ShortPlant<T>[]>>;
  /** Whether a word is a name by itself: it stands in this genus, or in two others. */
  readonly isKnown: (word: string, genus: string) => boolean;
};

/** How well a written word stands for a word of a name. */
const FIT = { same: 1, stopped: 0.95, begun: 0.9, squeezed: 0.78, misspelt: 0.74, twoLetters: 0.7, initial: 0.6 } as const;
/** A reading must be better than the next plant's by this much to be sure. */
const LEAD = 0.04;
const LEAST_SURE = 0.72;

/** Short forms of the trade that drop letters from the middle (common practice, no source). */
const CUSTOMARY: Readonly<Record<string, readonly string[]>> = {
  mt: ["mount", "mountain"],
  mtn: ["mountain"],
  dbl: ["double"],
  dwf: ["dwarf"],
  var: ["variegata", "variegated"],
  wht: ["white"],
  blk: ["black"],
  yel: ["yellow"],
  yw: ["yellow"],
  pk: ["pink"],
  rd: ["red"],
  gld: ["gold", "golden"],
  gr: ["green"],
  comp: ["compacta", "compactum", "compactus"],
  fast: ["fastigiata", "fastigiatum"],
  pend: ["pendula", "pendulum"],
};

/** Letters of `short` stand in `word` in order, from the first: "wntrgrn" in "wintergreen". At most two vowels of the short form may be consonant-free luck. */
function isSqueezed(short: string, word: string): boolean {
  if (short.length < 3 || short.length >= word.length || short.charCodeAt(0) !== word.charCodeAt(0)) return false;
  let at = 0;
  for (let i = 0; i < word.length && at < short.length; i++) if (word.charCodeAt(i) === short.charCodeAt(at)) at++;
  if (at < short.length) return false;
  // Shorthand drops vowels first: the consonants that are written must come one after the other, but for the end of the word.
  const consonants = (text: string) => text.slice(1).replace(/[aeiouy]/g, "");
  const [own, whole] = [consonants(short).replace(/(.)\1+/g, "$1"), consonants(word).replace(/(.)\1+/g, "$1")];
  return whole.startsWith(own) || (short.length >= 4 && short.length >= word.length * 0.45);
}

function wordFit(written: ShortWord, word: string, isKnown: (word: string) => boolean, latin: boolean): number {
  const { text, stop } = written;
  if (text === word) return FIT.same;
  if (text.charCodeAt(0) !== word.charCodeAt(0)) return 0;
  if (stop && word.startsWith(text)) return FIT.stopped;
  if (CUSTOMARY[text]?.includes(word)) return FIT.begun;
  // A word that is a name by itself does not abbreviate another cultivar; epithets are cut to real words all the same ("GRAND", "ROSE").
  const known = isKnown(text);
  if (text.length >= 2 && text.length < word.length && word.startsWith(text) && (!known || latin)) return text.length === 2 && !latin ? FIT.twoLetters : FIT.begun;
  if (text.length === 1 && !latin) return FIT.initial;
  if (known) return 0;
  if (isSqueezed(text, word)) return FIT.squeezed;
  const most = text.length >= 9 && word.length >= 9 ? 2 : text.length >= 6 && word.length >= 6 ? 1 : 0;
  if (most === 0 || latin) return 0;
  const edits = editDistance(text, word, most);
  return edits > 0 && edits <= most ? FIT.misspelt : 0;
}

const nothingKnown = (): boolean => false;
const unique = (words: readonly string[]): string[] => [...new Set(words)];

/** "Aster novae-angliae 'Purple Dome'" in its words before and in the quotes. */
function quotedParts(text: string): { botanical: string[]; cultivar: string[] } {
  const quote = text.search(/ ['‘"]/);
  return quote < 0 ? { botanical: nameWords(text), cultivar: [] } : { botanical: nameWords(text.slice(0, quote)), cultivar: nameWords(text.slice(quote)) };
}

function plantForms(taxon: PlantDoc): Form[] {
  const forms: Form[] = [];
  const commons = unique(taxon.commonNames.flatMap(nameWords));
  const nouns = unique(taxon.commonNames.flatMap((name) => nameWords(name).slice(-1)));
  const epithet = taxon.cultivar ? nameWords(`'${taxon.cultivar}'`) : [];
  const trade = taxon.tradeDesignation ? nameWords(`'${taxon.tradeDesignation}'`) : [];
  const botanical = nameWords(taxon.botanical);
  const isCultivar = epithet.length > 0 || trade.length > 0;
  const cultivarForm = (needed: readonly string[], words: readonly string[], other: readonly string[]): Form => ({
    needed: unique(needed),
    allowed: unique([...words, ...other, ...commons]),
    anchors: unique([words[0] ?? "", ...nouns]),
    named: "cultivar",
  });
  if (isCultivar) {
    if (epithet.length) forms.push(cultivarForm(epithet, botanical, trade));
    if (trade.length) forms.push(cultivarForm(trade, botanical, epithet));
  } else if (botanical.length > 1) forms.push({ needed: botanical, allowed: commons, anchors: botanical.slice(0, 1), named: "species" });
  for (const synonym of taxon.synonyms) {
    const { botanical: former, cultivar } = quotedParts(synonym);
    if (cultivar.length) forms.push(cultivarForm(cultivar, former, []));
    else if (isCultivar) {
      for (const needed of [epithet, trade]) if (needed.length) forms.push(cultivarForm(needed, former, []));
    } else if (former.length > 1) forms.push({ needed: former, allowed: commons, anchors: former.slice(0, 1), named: "species" });
  }
  if (!isCultivar)
    for (const name of taxon.commonNames) {
      const words = nameWords(name);
      if (words.length > 1) forms.push({ needed: unique(words), allowed: [], anchors: words.slice(-1), named: "common" });
    }
  return forms;
}

/** Built once for a set of plants; a list of any length is read with it. */
export function shortIndex<T extends PlantDoc>(index: PlantIndex<T>): ShortIndex<T> {
  const anchors = new Map<string, Map<string, ShortPlant<T>[]>>();
  const genera = new Map<string, Set<string>>();
  for (const { taxon } of index.plants) {
    const genus = taxon.genus.toLowerCase();
    const plant: ShortPlant<T> = { taxon, genus, forms: plantForms(taxon) };
    for (const word of new Set(plant.forms.flatMap(({ needed, allowed }) => [...needed, ...allowed]))) {
      const own = genera.get(word);
      if (own) own.add(genus);
      else genera.set(word, new Set([genus]));
    }
    for (const anchor of unique(plant.forms.flatMap((form) => form.anchors))) {
      if (!anchor) continue;
      const head = anchor.slice(0, 1);
      const byWord = anchors.get(head) ?? new Map<string, ShortPlant<T>[]>();
      anchors.set(head, byWord);
      const plants = byWord.get(anchor);
      if (plants) plants.push(plant);
      else byWord.set(anchor, [plant]);
    }
  }
  return { anchors, isKnown: (word, genus) => (genera.get(word)?.size ?? 0) > 1 || (genera.get(word)?.has(genus) ?? false) };
}

/** Words written as one or parted: "grolow" for gro low; tries each run of the needed words as one. */
function joinedNeeded(needed: readonly string[], written: readonly ShortWord[]): readonly string[] {
  if (needed.length < 2) return needed;
  const joined = needed.join("");
  return written.some(({ text }) => text === joined || (text.length >= 5 && joined.startsWith(text) && text.length > (needed[0]?.length ?? 0) + 1)) ? [joined] : needed;
}

/** Score of one form, 0 when a written word has no place in it or a needed word is missing. */
function formScore(form: Form, written: readonly ShortWord[], isKnown: (word: string) => boolean): { score: number; letters: number; weakest: number } {
  const none = { score: 0, letters: 0, weakest: 0 };
  const needed = joinedNeeded(form.needed, written);
  const free = new Set(written.map((_, i) => i));
  const isLatin = form.named === "species";
  let sum = 0;
  let letters = 0;
  let weakest = 1;
  const take = (words: readonly string[], latin: boolean, must: boolean): boolean => {
    const open = new Set(words);
    // The best fits first, so that an exact word is not spent on a cut one.
    const fits = [...free]
      .flatMap((i) => words.map((word) => ({ i, word, fit: wordFit(written[i] ?? { text: "", stop: false }, word, isKnown, latin) })))
      .filter(({ fit }) => fit > 0);
    fits.sort((a, b) => b.fit - a.fit || a.i - b.i);
    for (const { i, word, fit } of fits) {
      if (!free.has(i) || !open.has(word)) continue;
      free.delete(i);
      open.delete(word);
      sum += fit;
      if (must) {
        letters += written[i]?.text.length ?? 0;
        weakest = Math.min(weakest, fit);
      }
    }
    return !must || open.size === 0;
  };
  if (!take(needed, isLatin, true)) return none;
  if (!take(form.allowed, true, false)) return none;
  if (free.size > 0) return none;
  return { score: sum / written.length, letters, weakest };
}

/** Whether the genus stands first, or a noun of its common names anywhere. */
function isAnchored(form: Form, written: readonly ShortWord[]): boolean {
  const [genus = "", ...nouns] = form.named === "common" ? ["", ...form.anchors] : form.anchors;
  const stands = (word: ShortWord, anchor: string) => anchor !== "" && wordFit(word, anchor, nothingKnown, true) > 0;
  return written.some((word, i) => (i === 0 && stands(word, genus)) || (word.text === genus && !word.stop) || nouns.some((noun) => stands(word, noun)));
}

/**
 * Plants that a shorthand name may stand for, best first; [] when no plant explains every word. Only the first may be sure: no other plant comes near,
 * the cultivar's words are more than an initial, and no single word is stretched too far.
 */
export function shortReadings<T extends PlantDoc>(index: ShortIndex<T>, text: string): ShortReading[] {
  const { tokens, loose } = parseName(text);
  const written = tokens.filter(({ optional }) => !optional).map(({ text: word, abbreviated }) => ({ text: word, stop: abbreviated }));
  if (written.length < 2 || written.length > 10) return [];
  const plants = new Set<ShortPlant<T>>();
  for (const word of written) {
    for (const [anchor, own] of index.anchors.get(word.text.slice(0, 1)) ?? []) {
      if (wordFit(word, anchor, nothingKnown, true) > 0) for (const plant of own) plants.add(plant);
    }
  }
  const found: { taxonId: string; score: number; sure: boolean }[] = [];
  for (const { taxon, genus, forms } of plants) {
    const isKnown = (word: string) => index.isKnown(word, genus);
    let best: { score: number; sure: boolean } | null = null;
    for (const form of forms) {
      const { score, letters, weakest } = formScore(form, written, isKnown);
      if (score <= (best?.score ?? 0) || !isAnchored(form, written)) continue;
      const told = form.named === "species" ? letters >= 6 : letters >= 4;
      // Initials and cuts to two letters are believed beside a long word of the cultivar: "K FOERSTER".
      best = { score, sure: told && (weakest >= FIT.misspelt || letters >= 7) && score >= LEAST_SURE && !loose };
    }
    if (best) found.push({ taxonId: taxon.id, ...best });
  }
  found.sort((a, b) => b.score - a.score || (a.taxonId < b.taxonId ? -1 : 1));
  const [first, second] = found;
  return found
    .slice(0, 6)
    .map((reading, i) => ({ ...reading, score: Math.round(reading.score * 1000) / 1000, sure: i === 0 && reading.sure && (first?.score ?? 0) - (second?.score ?? 0) >= LEAD }));
}
