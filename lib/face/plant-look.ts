// What a plant wears on a day: color of leaves, flowers, fruit, seedheads and stems, from its season at the place.
import { COLORS, type ColorName } from "../plants/colors";
import type { Taxon } from "../plants/taxon";
import type { FeatureKind } from "../plants/vocabulary";
import type { SeasonWindow, TaxonSeason } from "../season/window";

export type Wear = { readonly hex: string /** 1–3. */; readonly show: number };
export type PlantLook = {
  /** Null: no leaves out. */
  readonly leafHex: string | null;
  readonly flower: Wear | null;
  readonly fruit: Wear | null;
  readonly seedhead: Wear | null;
  readonly stemHex: string;
};

const YEAR = 365;
/** Days into a window. */
const into = (w: SeasonWindow, day: number): number => (day - w.startDay + YEAR) % YEAR;
const lengthOf = (w: SeasonWindow): number => (w.endDay - w.startDay + YEAR) % YEAR;
const isOn = (w: SeasonWindow, day: number): boolean => into(w, day) <= lengthOf(w);
/** December to February. */
const isWinter = (day: number): boolean => day >= 335 || day <= 59;

/** Color on a day: the second color in the second half, the winter color of an evergreen in winter. */
function hexOn(w: SeasonWindow, day: number): string {
  const { hex, fade, winter } = w.feature;
  if (winter && isWinter(day)) return COLORS[winter];
  return fade && into(w, day) > lengthOf(w) / 2 ? COLORS[fade] : hex;
}

/** The strongest window of a kind on a day. */
function worn(season: TaxonSeason, kind: FeatureKind, day: number): Wear | null {
  const on = season.windows.filter((w) => w.kind === kind && isOn(w, day)).sort((a, b) => b.feature.show - a.feature.show);
  const [first] = on;
  return first ? { hex: hexOn(first, day), show: first.feature.show } : null;
}

const LEAF: Partial<Record<Taxon["kind"], ColorName>> = { conifer: "dark green", vine: "green", grass: "yellow-green", fern: "green" };
const STEM: Partial<Record<Taxon["kind"], ColorName>> = { tree: "gray-brown", shrub: "gray-brown", conifer: "brown", vine: "gray-brown" };

function inLeaf(taxon: Pick<Taxon, "foliage">, season: TaxonSeason, day: number): boolean {
  const { leaves } = season;
  if (!leaves) return taxon.foliage === "evergreen" || taxon.foliage === "wintergreen" || taxon.foliage === "semi-evergreen";
  const out = (day - leaves.onDay + YEAR) % YEAR <= (leaves.offDay - leaves.onDay + YEAR) % YEAR;
  return out;
}

/** What is worn on a day of year (1–365). */
export function plantLook(taxon: Pick<Taxon, "kind" | "foliage">, season: TaxonSeason, day: number): PlantLook {
  const wornLeaf = worn(season, "fall color", day) ?? worn(season, "spring foliage", day) ?? worn(season, "summer foliage", day) ?? worn(season, "evergreen", day);
  const plain = COLORS[LEAF[taxon.kind] ?? "green"];
  const leafHex = inLeaf(taxon, season, day) || (wornLeaf !== null && worn(season, "fall color", day) === null) ? (wornLeaf?.hex ?? plain) : null;
  const bark = season.windows.find((w) => w.kind === "bark");
  return {
    leafHex,
    flower: worn(season, "bloom", day),
    fruit: worn(season, "fruit", day),
    seedhead: worn(season, "seedhead", day) ?? (leafHex === null && taxon.foliage === "dies back" ? worn(season, "structure", day) : null),
    stemHex: bark?.feature.hex ?? COLORS[STEM[taxon.kind] ?? "olive"],
  };
}

export type LookDay = { readonly label: string; readonly day: number };

const LOOK_KINDS: readonly (readonly [FeatureKind, string])[] = [
  ["bloom", "In bloom"],
  ["spring foliage", "Spring leaves"],
  ["fruit", "In fruit"],
  ["fall color", "Fall color"],
  ["seedhead", "Seedheads"],
];

const SUMMER_DAY = 196;
const WINTER_DAY = 20;

/** Days worth a drawing, in the order of the year: the peak of each kind of feature, midsummer where nothing peaks near it, midwinter. */
export function lookDays(season: TaxonSeason): LookDay[] {
  const peaks = LOOK_KINDS.flatMap(([kind, label]): LookDay[] => {
    const [best] = season.windows.filter((w) => w.kind === kind).sort((a, b) => b.feature.show - a.feature.show);
    return best ? [{ label, day: best.peakDay }] : [];
  });
  const summer = peaks.some((p) => Math.abs(p.day - SUMMER_DAY) < 25) ? [] : [{ label: "Midsummer", day: SUMMER_DAY }];
  const winter = peaks.some((p) => Math.abs(p.day - WINTER_DAY) < 25) ? [] : [{ label: "Midwinter", day: WINTER_DAY }];
  return [...winter, ...[...peaks, ...summer].sort((a, b) => a.day - b.day)];
}
