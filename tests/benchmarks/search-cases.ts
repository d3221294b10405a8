// Seeded search cases: what people type for a plant, with the plants that are right answers.
import { nameWords } from "../../lib/plants/name-parse";
import type { PlantDoc } from "../../lib/plants/plant-names";
import { fairnessJudge, type Writing } from "./search-fairness";
import { drawn, seededRandom } from "./seeded";

export const CASE_KINDS = [
  "changed letter",
  "dropped letter",
  "doubled letter",
  "swapped letters",
  "two errors",
  "by ear",
  "word order",
  "abbreviated",
  "common name",
  "trade name",
  "former name",
  "joined or parted",
  "half typed",
  "half typed with an error",
] as const;
export type CaseKind = (typeof CASE_KINDS)[number];
export type SearchCase = {
  readonly kind: CaseKind;
  readonly query: string /** Ids that count as found: the plant, and plants shown under the very same name. */;
  readonly right: readonly string[];
  readonly wanted: string;
};

type Slip = (word: string, random: () => number) => string;
const LETTERS = "abcdefghijklmnopqrstuvwxyz";
const at = (word: string, random: () => number, from: number, spare: number): number => from + Math.floor(random() * Math.max(1, word.length - from - spare));

const changed: Slip = (word, random) => {
  const i = at(word, random, 1, 0);
  return (
    word.slice(0, i) +
    drawn(
      [...LETTERS].filter((letter) => letter !== word[i]),
      random,
    ) +
    word.slice(i + 1)
  );
};
const dropped: Slip = (word, random) => {
  const i = at(word, random, 1, 0);
  return word.slice(0, i) + word.slice(i + 1);
};
const doubled: Slip = (word, random) => {
  const i = at(word, random, 0, 0);
  return word.slice(0, i + 1) + word.slice(i);
};
const swapped: Slip = (word, random) => {
  const places = [...word].flatMap((letter, i) => (i > 0 && word[i + 1] !== undefined && word[i + 1] !== letter ? [i] : []));
  if (places.length === 0) return word;
  const i = drawn(places, random);
  return `${word.slice(0, i)}${word[i + 1] ?? ""}${word[i] ?? ""}${word.slice(i + 2)}`;
};
/** Written as heard. */
const SOUNDS: readonly (readonly [RegExp, string])[] = [
  [/ph/, "f"],
  [/y/, "i"],
  [/ae/, "e"],
  [/oe/, "e"],
  [/rh/, "r"],
  [/th/, "t"],
  [/ch/, "k"],
  [/ck/, "k"],
  [/c(?=[aou])/, "k"],
  [/c(?=[ei])/, "s"],
  [/qu/, "kw"],
  [/x/, "ks"],
  [/([lmnprst])\1/, "$1"],
  [/ii$/, "i"],
  [/ei/, "ie"],
  [/ou/, "u"],
  [/ea/, "ee"],
  [/z/, "s"],
  [/i(?=[bdlmnt])/, "e"],
  [/er/, "ar"],
];
const heard: Slip = (word, random) => {
  const fitting = SOUNDS.filter(([sound]) => sound.test(word));
  if (fitting.length === 0) return word;
  const [sound, written] = drawn(fitting, random);
  return word.replace(sound, written);
};
const SLIPS: readonly Slip[] = [changed, dropped, doubled, swapped];

/** One word of at least five letters with a slip of the hand in it. */
function withSlip(words: readonly string[], slip: Slip, random: () => number): string[] | null {
  const long = words.flatMap((word, i) => (/^[a-z]{5,}$/.test(word) ? [i] : []));
  if (long.length === 0) return null;
  const i = drawn(long, random);
  return words.map((word, j) => (j === i ? slip(word, random) : word));
}

function shuffled(words: readonly string[], random: () => number): string[] {
  const rest = [...words];
  const out: string[] = [];
  while (rest.length) out.push(...rest.splice(Math.floor(random() * rest.length), 1));
  return out;
}

const epithetText = (plant: PlantDoc): string | null => plant.cultivar ?? plant.tradeDesignation;

/** "Hydr. pan. Limelight type", "Acer rub. 'October Glory'". */
function abbreviated(plant: PlantDoc, random: () => number): string | null {
  const epithet = epithetText(plant);
  const [genus, ...rest] = plant.botanical.split(" ").filter((word) => word !== "×");
  if (!genus || !epithet || rest.length === 0 || genus.length < 5) return null;
  const short = (word: string, letters: number) => (/\.$/.test(word) || word.length <= letters + 1 ? word : `${word.slice(0, letters)}.`);
  const head = random() < 0.5 ? short(genus, 4) : genus;
  const quote = random() < 0.4 ? "'" : "";
  const text = `${head} ${rest.map((word) => short(word, 3)).join(" ")} ${quote}${epithet}${quote}${random() < 0.3 ? " type" : ""}`;
  return random() < 0.3 ? text.replace(/\./g, "").toLowerCase() : text;
}

/** "bluestar" for Blue Star, "lime light" for Limelight. */
function joinedOrParted(plant: PlantDoc, random: () => number): string | null {
  const words = nameWords(`'${epithetText(plant) ?? ""}'`);
  if (words.length === 2) return `${plant.genus.toLowerCase()} ${words.join("")}`;
  const [word] = words;
  if (words.length !== 1 || !word || word.length < 8) return null;
  const cut = at(word, random, 3, 3);
  return `${word.slice(0, cut)} ${word.slice(cut)} ${plant.genus.toLowerCase()}`;
}

/** @param isShared whether several plants have this cultivar epithet or trade designation */
function caseText(kind: CaseKind, plant: PlantDoc, random: () => number, isShared: (epithet: string) => boolean): string | null {
  const epithet = epithetText(plant);
  // What people type: the genus and the selling name, or the whole botanical name.
  const asSold = epithet ? `${random() < 0.5 ? plant.genus : plant.botanical} ${plant.tradeDesignation && random() < 0.5 ? plant.tradeDesignation : epithet}` : plant.botanical;
  const slipped = (text: string, ...slips: readonly Slip[]): string | null =>
    slips.reduce<string[] | null>((words, slip) => words && withSlip(words, slip, random), nameWords(text))?.join(" ") ?? null;
  const called = drawn(plant.commonNames, random);
  switch (kind) {
    case "changed letter":
      return slipped(asSold, changed);
    case "dropped letter":
      return slipped(asSold, dropped);
    case "doubled letter":
      return slipped(asSold, doubled);
    case "swapped letters":
      return slipped(asSold, swapped);
    case "two errors":
      return slipped(asSold, drawn(SLIPS, random), drawn(SLIPS, random));
    case "by ear":
      return slipped(asSold, heard, heard);
    case "word order": {
      const words = nameWords(asSold);
      return words.length < 2 ? null : shuffled(words, random).join(" ");
    }
    case "abbreviated":
      return abbreviated(plant, random);
    case "common name": {
      const text = epithet ? `${epithet} ${random() < 0.5 ? called : called.slice(called.lastIndexOf(" ") + 1)}` : called;
      return random() < 0.5 ? text : slipped(text, drawn(SLIPS, random));
    }
    case "trade name":
      if (!plant.tradeDesignation) return null;
      return slipped(random() < 0.5 && !isShared(plant.tradeDesignation) ? plant.tradeDesignation : `${plant.tradeDesignation} ${plant.genus}`, drawn(SLIPS, random));
    case "former name": {
      if (plant.synonyms.length === 0) return null;
      const text = drawn(plant.synonyms, random);
      return random() < 0.5 ? text : slipped(text, drawn(SLIPS, random));
    }
    case "joined or parted":
      return joinedOrParted(plant, random);
    case "half typed": {
      const words = nameWords(asSold);
      const last = words.at(-1) ?? "";
      return last.length < 6 ? null : [...words.slice(0, -1), last.slice(0, Math.ceil(last.length * 0.6))].join(" ");
    }
    case "half typed with an error": {
      const words = nameWords(asSold);
      const last = words.at(-1) ?? "";
      if (last.length < 7) return null;
      return withSlip([...words.slice(0, -1), last.slice(0, Math.ceil(last.length * 0.7))], drawn(SLIPS, random), random)?.join(" ") ?? null;
    }
  }
}

function caseWriting(kind: CaseKind, query: string): Writing {
  const stops = new Set([...query.matchAll(/([A-Za-z]+)\./g)].map((match) => (match[1] ?? "").toLowerCase()));
  const last = kind === "half typed" || kind === "half typed with an error" ? nameWords(query).at(-1) : undefined;
  return { isCut: (typed) => stops.has(typed) || typed === last || (kind === "abbreviated" && typed.length < 5), joins: kind === "joined or parted" };
}

/**
 * Cases drawn over the plants, the same for the same seed. A case is kept only when a person could tell the answer: by letters amiss,
 * word by word (brute force over all names, the padding too), no other plant is as near. Plants that carry the very same name are all right.
 * @param plants those that cases are drawn from
 * @param all the plants of the index, padding included
 */
export function searchCases(plants: readonly PlantDoc[], all: readonly PlantDoc[], count: number, seed: number): { cases: SearchCase[]; unfair: number } {
  const random = seededRandom(seed);
  const judge = fairnessJudge(all);
  const epithets = new Map<string, number>();
  for (const { cultivar, tradeDesignation } of all) for (const text of new Set([cultivar, tradeDesignation])) if (text) epithets.set(text, (epithets.get(text) ?? 0) + 1);
  const isShared = (text: string) => (epithets.get(text) ?? 0) > 1;
  const cases: SearchCase[] = [];
  let unfair = 0;
  while (cases.length < count) {
    const kind = CASE_KINDS[cases.length % CASE_KINDS.length] ?? "changed letter";
    const plant = drawn(plants, random);
    const query = caseText(kind, plant, random, isShared);
    if (!query) continue;
    const right = judge(query, plant, caseWriting(kind, query));
    if (right) cases.push({ kind, query, right, wanted: plant.name });
    else unfair++;
  }
  return { cases, unfair };
}
