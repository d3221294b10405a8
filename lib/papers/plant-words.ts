// The values of a taxon in the trade's words.
import { plantSizeRangeText } from "../ground/length";
import type { Range, Taxon } from "../plants/taxon";
import type { Flag } from "../plants/vocabulary";

const list = (words: readonly string[]): string => (words.length ? words.join(", ") : "none known");
const range = ([low, high]: Range): string => (low === high ? String(low) : `${low}–${high}`);

const LIGHT = { sun: "full sun", part: "part shade", shade: "shade" } as const;
const LEVEL = { low: "low", medium: "medium", high: "high" } as const;
const DEER = { rarely: "rarely browsed", sometimes: "sometimes browsed", often: "often browsed" } as const;
const WET = { no: "does not stand water at the roots", brief: "stands it for a day or two", yes: "stands it for weeks" } as const;
const JUGLONE = { tolerant: "grows near black walnut", sensitive: "suffers near black walnut", unknown: "not known" } as const;
const SEX = { both: "both sexes on one plant", male: "male", female: "female", dioecious: "sexes on separate plants", sterile: "sterile" } as const;
const WOOD = { old: "last year's wood", new: "this year's wood", both: "last year's and this year's wood" } as const;
const FOLIAGE = {
  evergreen: "evergreen",
  "semi-evergreen": "half evergreen: drops leaves in a hard winter",
  deciduous: "drops its leaves",
  "dies back": "dies to the ground in winter",
  wintergreen: "green through winter, new leaves in spring",
} as const;

/** Flags that are not cautions. */
const GOOD_FLAGS: Partial<Record<Flag, string>> = {
  fragrant: "fragrant",
  "fragrant-foliage": "fragrant leaves",
  reblooms: "blooms again",
  "summer-dormant": "gone by summer",
  "salt-spray": "stands salt spray",
};

/** Facts shown on a taxon's page, by the name of its field; each in words. */
export const FACT_WORDS = {
  kind: (t) => t.kind,
  habit: (t) => t.habit,
  heightFt: (t) => plantSizeRangeText(t.heightFt),
  spreadFt: (t) => plantSizeRangeText(t.spreadFt),
  matureYears: (t) => `${t.matureYears} ${t.matureYears === 1 ? "year" : "years"}`,
  growthRate: (t) => t.growthRate,
  zoneLow: (t) => range([t.zoneLow, t.zoneHigh]),
  light: (t) => list(t.light.map((l) => LIGHT[l])),
  moisture: (t) => list(t.moisture),
  ph: (t) => range(t.ph),
  salt: (t) => LEVEL[t.salt],
  drought: (t) => LEVEL[t.drought],
  deer: (t) => DEER[t.deer],
  wetFeet: (t) => WET[t.wetFeet],
  juglone: (t) => JUGLONE[t.juglone],
  foliage: (t) => FOLIAGE[t.foliage],
  roots: (t) => t.roots,
  pruning: (t) => t.pruning,
  wood: (t) => (t.wood ? WOOD[t.wood] : ""),
  maintenance: (t) => LEVEL[t.maintenance],
  sex: (t) => SEX[t.sex],
  partner: (t) => t.partner ?? "",
  wildlife: (t) => list(t.wildlife),
  flags: (t) => t.flags.flatMap((f) => GOOD_FLAGS[f] ?? []).join(", "),
} as const satisfies Partial<Record<keyof Taxon, (taxon: Taxon) => string>>;

export type FactField = keyof typeof FACT_WORDS;

export const FACT_LABELS: Record<FactField, string> = {
  kind: "Kind",
  habit: "Habit",
  heightFt: "Height",
  spreadFt: "Spread",
  matureYears: "Mature in",
  growthRate: "Growth",
  zoneLow: "Hardy in zones",
  light: "Light",
  moisture: "Soil moisture",
  ph: "Soil pH",
  salt: "Salt tolerance",
  drought: "Drought tolerance",
  deer: "Deer",
  wetFeet: "Wet feet",
  juglone: "Juglone",
  foliage: "Leaves",
  roots: "Roots",
  pruning: "Pruning",
  wood: "Blooms on",
  maintenance: "Upkeep",
  sex: "Flowers",
  partner: "Pollination partner",
  wildlife: "Wildlife",
  flags: "Also",
};

/** Named in the dataset's files, where reasons for a departure (`why`) are kept. */
export const FILE_FIELDS: Partial<Record<FactField, string>> = { heightFt: "height", spreadFt: "spread", matureYears: "age", growthRate: "rate", zoneLow: "zones", wetFeet: "wet" };
