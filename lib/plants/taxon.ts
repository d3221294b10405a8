import type { ColorName } from "./colors";
import type {
  DEER,
  Drive,
  FeatureKind,
  Flag,
  Foliage,
  Habit,
  Hazard,
  JUGLONE,
  Kind,
  Level,
  Light,
  Moisture,
  PRUNINGS,
  RATES,
  ROOTS,
  SEXES,
  WET_FEET,
  WILDLIFE,
  WOODS,
} from "./vocabulary";

/** Low–high. */
export type Range = readonly [number, number];

/** Source keys of prisma/plants/sources.yaml, by field name; `features.bloom` for one kind of feature. */
export type SourceMap = Readonly<Record<string, string>>;

/**
 * One seasonal feature. The window is at the reference climate (Wooster, Ohio), in days of year 1–365;
 * a window over New Year has startDay > endDay.
 */
export type Feature = {
  readonly kind: FeatureKind;
  readonly color: ColorName;
  readonly hex: string;
  /** Color it turns to while it lasts (many hydrangeas, crabapples, fall leaves). */
  readonly fade: ColorName | null;
  /** Evergreen foliage only: its color in the cold months, where it bronzes. */
  readonly winter: ColorName | null;
  /** "early Apr": the words of the dataset. */
  readonly from: string;
  readonly to: string;
  readonly startDay: number;
  readonly endDay: number;
  /** 1 slight, 2 good, 3 outstanding. */
  readonly show: 1 | 2 | 3;
  readonly drive: Drive;
  /** Published degree days (base 50 °F) of the onset, where there are any. */
  readonly degreeDays: number | null;
  /** Published degree days of full bloom; few have any. */
  readonly degreeDaysFull?: number;
  readonly note: string | null;
  readonly source: string;
};

export type Regulation = { readonly states: readonly string[]; readonly what: string; readonly law: string; readonly date: string; readonly exempt: string | null };

/** What the trade sells under one name, with everything the tool knows of it. Lengths in feet. */
export type Taxon = {
  readonly id: string;
  /** Botanical name with 'Cultivar' in single quotes, without the trade designation. */
  readonly name: string;
  readonly genus: string;
  /** The botanical part before cultivar and Group: "Acer × freemanii". */
  readonly botanical: string;
  readonly cultivar: string | null;
  readonly group: string | null;
  readonly tradeDesignation: string | null;
  readonly synonyms: readonly string[];
  readonly commonNames: readonly string[];
  readonly family: string;
  readonly kind: Kind;
  readonly habit: Habit;
  readonly heightFt: Range;
  readonly spreadFt: Range;
  readonly matureYears: number;
  readonly growthRate: (typeof RATES)[number];
  readonly zoneLow: number;
  readonly zoneHigh: number;
  readonly light: readonly Light[];
  readonly moisture: readonly Moisture[];
  readonly ph: Range;
  readonly salt: Level;
  readonly deer: (typeof DEER)[number];
  readonly juglone: (typeof JUGLONE)[number];
  readonly drought: Level;
  readonly wetFeet: (typeof WET_FEET)[number];
  readonly roots: (typeof ROOTS)[number];
  readonly foliage: Foliage;
  /** Days of year at the reference climate when leaves are out and gone; null for evergreens. */
  readonly leaves: { readonly onDay: number; readonly offDay: number } | null;
  readonly features: readonly Feature[];
  readonly toxic: { readonly people: Hazard; readonly pets: Hazard; readonly horses: Hazard; readonly parts: string | null };
  readonly sex: (typeof SEXES)[number];
  readonly partner: string | null;
  readonly wood: (typeof WOODS)[number] | null;
  readonly pruning: (typeof PRUNINGS)[number];
  readonly maintenance: Level;
  readonly wildlife: readonly (typeof WILDLIFE)[number][];
  readonly flags: readonly Flag[];
  readonly regulated: readonly Regulation[];
  /** Symbol of the USDA PLANTS table, for cross-checks and nativity. */
  readonly usda: string | null;
  readonly note: string | null;
  /** Reasons for departing from a public table, by field. */
  readonly why: Readonly<Record<string, string>>;
  readonly sources: SourceMap;
};
