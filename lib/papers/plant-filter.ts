// What a designer asks of the plant list: the filter, how it stands in an address, what fits it, in which order.
import { plantSizeText } from "../ground/length";
import { COLOR_FAMILIES, type ColorFamily, colorFamily } from "../plants/color-family";
import type { ListedPlant } from "../plants/plant-list";
import { FEATURE_KINDS, type FeatureKind, KINDS, type Kind, LIGHTS, type Light } from "../plants/vocabulary";
import type { MonthColor } from "../season/month-colors";

/** A range in feet; null is open on that side. */
export type OpenRange = readonly [from: number | null, to: number | null];

export type PlantFilter = {
  readonly q: string;
  readonly kinds: readonly Kind[];
  /** Whole zone or half (5.5 is 5b): the plant must be hardy there and not suffer from its heat. */
  readonly zone: number | null;
  readonly light: Light | null;
  /** What it grows to: the high end of the mature range. */
  readonly height: OpenRange;
  readonly spread: OpenRange;
  /** 0–11. */
  readonly month: number | null;
  readonly colors: readonly ColorFamily[];
  readonly feature: FeatureKind | null;
  readonly evergreen: boolean;
  /** Native to the state of the place. */
  readonly native: boolean;
  /** Browsed at most so often. */
  readonly deer: "sometimes" | "rarely" | null;
  /** Stands at least so much salt. */
  readonly salt: "medium" | "high" | null;
  /** Stands water at the roots at least so long. */
  readonly wet: "brief" | "yes" | null;
  readonly toxicFree: boolean;
  /** Only the user's own plants and those corrected here. */
  readonly own: boolean;
  /** Only plants of which the firm has some on hand. */
  readonly onHand: boolean;
};

export const NO_FILTER: PlantFilter = {
  q: "",
  kinds: [],
  zone: null,
  light: null,
  height: [null, null],
  spread: [null, null],
  month: null,
  colors: [],
  feature: null,
  evergreen: false,
  native: false,
  deer: null,
  salt: null,
  wet: null,
  toxicFree: false,
  own: false,
  onHand: false,
};

const among = <T extends string>(words: readonly T[], text: string | null): T | null => words.find((w) => w === text) ?? null;
const listOf = <T extends string>(words: readonly T[], text: string | null): readonly T[] => words.filter((w) => (text ?? "").split(",").includes(w));
const numberOf = (text: string | undefined): number | null => {
  const n = Number(text);
  return text && Number.isFinite(n) && n > 0 ? n : null;
};
const rangeOf = (text: string | null): OpenRange => {
  const [from, to] = (text ?? "").split("~");
  return [numberOf(from), numberOf(to)];
};

/** The filter that an address holds; what cannot be read in it is left out. */
export function filterRead(params: { readonly get: (name: string) => string | null }): PlantFilter {
  const month = Number(params.get("month"));
  const zone = Number(params.get("zone"));
  return {
    q: (params.get("q") ?? "").slice(0, 120),
    kinds: listOf(KINDS, params.get("kind")),
    zone: zone >= 1 && zone < 14 && Number.isInteger(zone * 2) ? zone : null,
    light: among(LIGHTS, params.get("light")),
    height: rangeOf(params.get("height")),
    spread: rangeOf(params.get("spread")),
    month: Number.isInteger(month) && month >= 1 && month <= 12 ? month - 1 : null,
    colors: listOf(COLOR_FAMILIES, params.get("color")),
    feature: among(FEATURE_KINDS, params.get("show")),
    evergreen: params.get("evergreen") !== null,
    native: params.get("native") !== null,
    deer: among(["sometimes", "rarely"] as const, params.get("deer")),
    salt: among(["medium", "high"] as const, params.get("salt")),
    wet: among(["brief", "yes"] as const, params.get("wet")),
    toxicFree: params.get("harmless") !== null,
    own: params.get("own") !== null,
    onHand: params.get("onhand") !== null,
  };
}

const rangeText = ([from, to]: OpenRange): string => (from === null && to === null ? "" : `${from ?? ""}~${to ?? ""}`);

/** The address's part of a filter, "" for none: "kind=shrub&zone=5". */
export function filterWrite(filter: PlantFilter): string {
  const params = new URLSearchParams();
  const set = (name: string, value: string | null) => {
    if (value) params.set(name, value);
  };
  const mark = (name: string, on: boolean) => set(name, on ? "1" : null);
  set("q", filter.q.trim());
  set("kind", filter.kinds.join(","));
  set("zone", filter.zone === null ? null : String(filter.zone));
  set("light", filter.light);
  set("height", rangeText(filter.height));
  set("spread", rangeText(filter.spread));
  set("month", filter.month === null ? null : String(filter.month + 1));
  set("color", filter.colors.join(","));
  set("show", filter.feature);
  mark("evergreen", filter.evergreen);
  mark("native", filter.native);
  set("deer", filter.deer);
  set("salt", filter.salt);
  set("wet", filter.wet);
  mark("harmless", filter.toxicFree);
  mark("own", filter.own);
  mark("onhand", filter.onHand);
  return params.toString().replaceAll("%2C", ",").replaceAll("%7E", "~");
}

/** What the place and the firm add to the plants. */
export type FilterContext = {
  /** Symbols native to the place's state; null where that is not known. */
  readonly native: ReadonlySet<string> | null;
  /** A plant's colors by month at the place; asked for only when a month is. */
  readonly colorsAt: (plant: ListedPlant) => readonly MonthColor[];
  /** Plants in the firm's lots, by plant id. */
  readonly onHand: Readonly<Record<string, number>>;
};

const inRange = (value: number, [from, to]: OpenRange): boolean => (from === null || value >= from) && (to === null || value <= to);

/** Whether something of the plant shows the wanted kind and color, in the wanted month. */
function showsFit(plant: ListedPlant, { month, colors, feature }: PlantFilter, context: FilterContext): boolean {
  if (month === null && colors.length === 0 && feature === null) return true;
  const fits = (kind: FeatureKind, family: ColorFamily) => (feature === null || kind === feature) && (colors.length === 0 || colors.includes(family));
  if (month !== null) return context.colorsAt(plant).some((c) => (c.months & (1 << month)) !== 0 && fits(c.kind, c.family));
  return plant.features.some(
    (f) => fits(f.kind, colorFamily(f.color)) || (f.fade !== null && fits(f.kind, colorFamily(f.fade))) || (f.winter !== null && fits(f.kind, colorFamily(f.winter))),
  );
}

/** Whether a plant fits a filter, its words (`q`) apart. */
export function plantFits(plant: ListedPlant, filter: PlantFilter, context: FilterContext): boolean {
  const { zone } = filter;
  if (filter.kinds.length && !filter.kinds.includes(plant.kind)) return false;
  if (zone !== null && (zone < plant.zoneLow || zone >= plant.zoneHigh + 1)) return false;
  if (filter.light && !plant.light.includes(filter.light)) return false;
  if (!inRange(plant.heightFt[1], filter.height) || !inRange(plant.spreadFt[1], filter.spread)) return false;
  if (filter.evergreen && plant.foliage !== "evergreen") return false;
  if (filter.native && !(plant.usda && context.native?.has(plant.usda))) return false;
  if (filter.deer && plant.deer !== "rarely" && plant.deer !== filter.deer) return false;
  if (filter.salt && plant.salt !== "high" && plant.salt !== filter.salt) return false;
  if (filter.wet && plant.wetFeet !== "yes" && plant.wetFeet !== filter.wet) return false;
  if (filter.toxicFree && !plant.toxicFree) return false;
  if (filter.own && plant.origin === "dataset") return false;
  if (filter.onHand && !context.onHand[plant.id]) return false;
  return showsFit(plant, filter, context);
}

/**
 * Plants without a query: most used first, then by name.
 * @param plants in the order of their names
 * @param uses rows of beds by plant id
 */
export function plantsByUse(plants: readonly ListedPlant[], uses: Readonly<Record<string, number>>): readonly ListedPlant[] {
  const used = plants.filter((p) => uses[p.id]);
  if (used.length === 0) return plants;
  used.sort((a, b) => (uses[b.id] ?? 0) - (uses[a.id] ?? 0));
  return [...used, ...plants.filter((p) => !uses[p.id])];
}

/** One part of a filter in words, and the filter without it. */
export type FilterPart = { readonly words: string; readonly without: PlantFilter };

const sizeWords = (what: string, [from, to]: OpenRange): string =>
  from !== null && to !== null
    ? `${what} ${plantSizeText(from)} to ${plantSizeText(to)}`
    : from !== null
      ? `${what} ${plantSizeText(from)} or more`
      : `${what} ${plantSizeText(to ?? 0)} at most`;

const MONTH_NAMES = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"] as const;
export const monthName = (month: number): string => MONTH_NAMES[month] ?? "";
export const zoneWords = (zone: number): string => (Number.isInteger(zone) ? `zone ${zone}` : `zone ${Math.floor(zone)}b`);

/** The parts of a filter that are set, the query apart. */
export function filterParts(filter: PlantFilter, stateName: string | null): FilterPart[] {
  const parts: FilterPart[] = filter.kinds.map((kind) => ({ words: kind, without: { ...filter, kinds: filter.kinds.filter((k) => k !== kind) } }));
  const add = (set: boolean, words: () => string, off: Partial<PlantFilter>) => {
    if (set) parts.push({ words: words(), without: { ...filter, ...off } });
  };
  add(filter.zone !== null, () => zoneWords(filter.zone ?? 0), { zone: null });
  add(filter.light !== null, () => (filter.light === "sun" ? "full sun" : filter.light === "part" ? "part shade" : "shade"), { light: null });
  add(
    filter.height.some((v) => v !== null),
    () => sizeWords("height", filter.height),
    { height: [null, null] },
  );
  add(
    filter.spread.some((v) => v !== null),
    () => sizeWords("spread", filter.spread),
    { spread: [null, null] },
  );
  add(filter.month !== null, () => `color in ${monthName(filter.month ?? 0)}`, { month: null });
  for (const color of filter.colors) parts.push({ words: color, without: { ...filter, colors: filter.colors.filter((c) => c !== color) } });
  add(filter.feature !== null, () => filter.feature ?? "", { feature: null });
  add(filter.evergreen, () => "evergreen leaves", { evergreen: false });
  add(filter.native, () => `native to ${stateName ?? "the state"}`, { native: false });
  add(filter.deer !== null, () => (filter.deer === "rarely" ? "deer rarely browse it" : "deer browse it sometimes at most"), { deer: null });
  add(filter.salt !== null, () => (filter.salt === "high" ? "stands much salt" : "stands some salt"), { salt: null });
  add(filter.wet !== null, () => (filter.wet === "yes" ? "stands water for weeks" : "stands water for a day or two"), { wet: null });
  add(filter.toxicFree, () => "free of toxic parts", { toxicFree: false });
  add(filter.own, () => "own and corrected", { own: false });
  add(filter.onHand, () => "on hand", { onHand: false });
  return parts;
}
