// All published lists together, in the shape the cross-check takes.
import type { BloomOnset, PublishedLists } from "../../lib/plants/published-lists";
import { BAILEY_1910 } from "./bailey-1910";
import { FALL_COLOR_1921 } from "./fall-color";
import { GROWTH_MISSOURI } from "./growth-missouri";
import type { Publication } from "./publications";
import { PUBLISHED_HERBACEOUS } from "./published-herbaceous";
import { PUBLISHED_WOODY } from "./published-woody";
import { WEBSTER_1897, WEBSTER_PRESENT_NAMES } from "./webster-1897";
import { WINTER_FRUIT_1921, WINTER_LANDSCAPE_2009, WINTER_SHRUBS_1910 } from "./winter-interest";

const key = (publication: Publication): Publication => publication;

/** "Cornus Mas" as it is written today: "Cornus mas". */
const sentenceCase = (printed: string): string => {
  const [genus = "", ...rest] = printed.split(" ");
  return [genus, ...rest.map((w) => w.toLowerCase())].join(" ");
};

const WEBSTER_ROWS: readonly BloomOnset[] = Object.entries(WEBSTER_1897).flatMap(([month, printed]) =>
  printed.map((name) => ({ printed: name, names: WEBSTER_PRESENT_NAMES[name] ?? [sentenceCase(name)], startMonth: Number(month) })),
);

export const PUBLISHED_LISTS: PublishedLists = {
  sizes: [...PUBLISHED_WOODY, ...PUBLISHED_HERBACEOUS],
  growth: { source: key("mdc"), rows: GROWTH_MISSOURI },
  winter: [
    { source: key("taylor-1921"), rows: WINTER_FRUIT_1921 },
    { source: key("bailey-shrubs"), rows: WINTER_SHRUBS_1910 },
    { source: key("marion-winter"), rows: WINTER_LANDSCAPE_2009 },
  ],
  fall: [{ source: key("taylor-1921"), rows: FALL_COLOR_1921 }],
  bloom: [
    { source: key("bailey-1910"), rows: BAILEY_1910 },
    { source: key("webster-1897"), rows: WEBSTER_ROWS },
  ],
};
