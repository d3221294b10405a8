// The dataset as the browser searches it: only what a search, a filter and a year strip need, column by column so that it packs small.
import { COLOR_NAMES, COLORS, type ColorName } from "./colors";
import type { PlantDoc } from "./plant-names";
import type { Feature, Taxon } from "./taxon";
import { thirdOfDay } from "./thirds";
import { DEER, DRIVES, FEATURE_KINDS, FOLIAGES, KINDS, LEVELS, LIGHTS, type Light, WET_FEET } from "./vocabulary";

/** Where a plant comes from: the open dataset, the same with values corrected here, or the user's own. */
export const ORIGINS = ["dataset", "corrected", "own"] as const;
export type Origin = (typeof ORIGINS)[number];

type Facts = "group" | "kind" | "heightFt" | "spreadFt" | "zoneLow" | "zoneHigh" | "light" | "foliage" | "deer" | "salt" | "wetFeet" | "usda" | "leaves" | "features";

/** A plant of the list. Its features carry all that dates them; notes and sources stay on the plant's own page. */
export type ListedPlant = PlantDoc & Pick<Taxon, Facts> & { readonly toxicFree: boolean; readonly origin: Origin };

/** The list as it travels. One entry a plant in every column, one a feature in the feature columns; a letter string holds one base-36 digit a plant. */
export type PlantListFile = {
  readonly version: 1;
  /** Distinct botanical names, and their genera; `of` points into them. */
  readonly botanical: readonly string[];
  readonly genus: readonly string[];
  readonly of: readonly number[];
  readonly id: readonly string[];
  readonly cultivar: readonly string[];
  readonly trade: readonly string[];
  /** Sparse: [plant, group, …]. */
  readonly group: readonly (number | string)[];
  /** Names joined by "|". */
  readonly former: readonly string[];
  readonly common: readonly string[];
  readonly usda: readonly string[];
  readonly kind: string;
  readonly light: string;
  readonly foliage: string;
  readonly deer: string;
  readonly salt: string;
  readonly wet: string;
  readonly toxicFree: string;
  readonly origin: string;
  /** Low and high of height and spread (ft) and zone, and leaf days (0 0 for none), two a plant. */
  readonly height: readonly number[];
  readonly spread: readonly number[];
  readonly zones: readonly number[];
  readonly leaves: readonly number[];
  readonly features: string;
  readonly featureKind: string;
  readonly show: string;
  readonly drive: string;
  readonly color: readonly number[];
  /** Place in the color table + 1; 0 for none. */
  readonly fade: readonly number[];
  readonly winter: readonly number[];
  readonly from: readonly number[];
  readonly to: readonly number[];
  /** Sparse: [feature, degree days, …]. */
  readonly degreeDays: readonly number[];
  readonly degreeDaysFull: readonly number[];
};

const digit = (n: number): string => n.toString(36);
const letters = <T>(items: readonly T[], value: (item: T) => number): string => items.map((item) => digit(value(item))).join("");
const lightBits = (light: readonly Light[]): number => light.reduce((bits, l) => bits | (1 << LIGHTS.indexOf(l)), 0);
const colorNumber = (color: ColorName | null): number => (color ? COLOR_NAMES.indexOf(color) + 1 : 0);

/** No part of it is poisonous to people, pets or horses, as far as is known; what is unknown is not free. */
export function isToxicFree(taxon: Pick<Taxon, "toxic">): boolean {
  return taxon.toxic.people === "none" && taxon.toxic.pets === "none" && taxon.toxic.horses === "none";
}

/** What the list needs to know beside the taxa. */
export type ListContext = { readonly originOf: (taxon: Taxon) => Origin; readonly symbolOf: (taxon: Taxon) => string | null };

/** Packs taxa for the browser, in the order given. */
export function plantListEncode(taxa: readonly Taxon[], { originOf, symbolOf }: ListContext): PlantListFile {
  const genera = new Map(taxa.map((t) => [t.botanical, t.genus]));
  const botanical = [...genera.keys()];
  const place = new Map(botanical.map((name, i) => [name, i]));
  const features = taxa.flatMap((t) => t.features);
  return {
    version: 1,
    botanical,
    genus: [...genera.values()],
    of: taxa.map((t) => place.get(t.botanical) ?? 0),
    id: taxa.map((t) => t.id),
    cultivar: taxa.map((t) => t.cultivar ?? ""),
    trade: taxa.map((t) => t.tradeDesignation ?? ""),
    group: taxa.flatMap((t, i) => (t.group ? [i, t.group] : [])),
    former: taxa.map((t) => t.synonyms.join("|")),
    common: taxa.map((t) => t.commonNames.join("|")),
    usda: taxa.map((t) => symbolOf(t) ?? ""),
    kind: letters(taxa, (t) => KINDS.indexOf(t.kind)),
    light: letters(taxa, (t) => lightBits(t.light)),
    foliage: letters(taxa, (t) => FOLIAGES.indexOf(t.foliage)),
    deer: letters(taxa, (t) => DEER.indexOf(t.deer)),
    salt: letters(taxa, (t) => LEVELS.indexOf(t.salt)),
    wet: letters(taxa, (t) => WET_FEET.indexOf(t.wetFeet)),
    toxicFree: letters(taxa, (t) => Number(isToxicFree(t))),
    origin: letters(taxa, (t) => ORIGINS.indexOf(originOf(t))),
    height: taxa.flatMap((t) => t.heightFt),
    spread: taxa.flatMap((t) => t.spreadFt),
    zones: taxa.flatMap((t) => [t.zoneLow, t.zoneHigh]),
    leaves: taxa.flatMap((t) => (t.leaves ? [t.leaves.onDay, t.leaves.offDay] : [0, 0])),
    features: letters(taxa, (t) => t.features.length),
    featureKind: letters(features, (f) => FEATURE_KINDS.indexOf(f.kind)),
    show: letters(features, (f) => f.show),
    drive: letters(features, (f) => DRIVES.indexOf(f.drive)),
    color: features.map((f) => colorNumber(f.color)),
    fade: features.map((f) => colorNumber(f.fade)),
    winter: features.map((f) => colorNumber(f.winter)),
    from: features.map((f) => f.startDay),
    to: features.map((f) => f.endDay),
    degreeDays: features.flatMap((f, i) => (f.degreeDays === null ? [] : [i, f.degreeDays])),
    degreeDaysFull: features.flatMap((f, i) => (f.degreeDaysFull === undefined ? [] : [i, f.degreeDaysFull])),
  };
}

function pairsOf<T>(sparse: readonly (number | string)[], read: (value: number | string) => T): Map<number, T> {
  const out = new Map<number, T>();
  for (let i = 0; i + 1 < sparse.length; i += 2) out.set(Number(sparse[i]), read(sparse[i + 1] ?? ""));
  return out;
}

const at = <T>(words: readonly T[], digits: string, i: number, fallback: T): T => words[Number.parseInt(digits.charAt(i), 36)] ?? fallback;
const colorAt = (number: number | undefined): ColorName | null => (number ? (COLOR_NAMES[number - 1] ?? null) : null);
const namesOf = (joined: string | undefined): readonly string[] => (joined ? joined.split("|") : []);

function featuresDecode(file: PlantListFile): Feature[] {
  const degreeDays = pairsOf(file.degreeDays, Number);
  const degreeDaysFull = pairsOf(file.degreeDaysFull, Number);
  return file.color.map((number, i): Feature => {
    const color = colorAt(number) ?? "green";
    const [startDay, endDay] = [file.from[i] ?? 1, file.to[i] ?? 1];
    const show = Number(file.show.charAt(i));
    const full = degreeDaysFull.get(i);
    return {
      kind: at(FEATURE_KINDS, file.featureKind, i, "structure"),
      color,
      hex: COLORS[color],
      fade: colorAt(file.fade[i]),
      winter: colorAt(file.winter[i]),
      from: thirdOfDay(startDay),
      to: thirdOfDay(endDay),
      startDay,
      endDay,
      show: show === 3 ? 3 : show === 2 ? 2 : 1,
      drive: at(DRIVES, file.drive, i, "always"),
      degreeDays: degreeDays.get(i) ?? null,
      ...(full === undefined ? {} : { degreeDaysFull: full }),
      note: null,
      source: "",
    };
  });
}

/** The accepted name from its parts, as the dataset writes it. */
function nameOf(botanical: string, cultivar: string, group: string | null, trade: string): string {
  const withGroup = group ? `${botanical} (${group})` : botanical;
  return cultivar ? `${withGroup} '${cultivar}'` : trade ? `${withGroup} ${trade.toUpperCase()}` : botanical;
}

/** The plants of a list, in its order. The inverse of `plantListEncode` for what a list holds. */
export function plantListDecode(file: PlantListFile): ListedPlant[] {
  const groups = pairsOf(file.group, String);
  const features = featuresDecode(file);
  let used = 0;
  return file.id.map((id, i): ListedPlant => {
    const of = file.of[i] ?? 0;
    const botanical = file.botanical[of] ?? "";
    const cultivar = file.cultivar[i] ?? "";
    const trade = file.trade[i] ?? "";
    const group = groups.get(i) ?? null;
    const bits = Number.parseInt(file.light.charAt(i), 36);
    const pair = (column: readonly number[]) => [column[2 * i] ?? 0, column[2 * i + 1] ?? 0] as const;
    const [zoneLow, zoneHigh] = pair(file.zones);
    const [onDay, offDay] = pair(file.leaves);
    const from = used;
    used += Number.parseInt(file.features.charAt(i), 36);
    return {
      id,
      name: nameOf(botanical, cultivar, group, trade),
      genus: file.genus[of] ?? "",
      botanical,
      cultivar: cultivar || null,
      group,
      tradeDesignation: trade || null,
      synonyms: namesOf(file.former[i]),
      commonNames: namesOf(file.common[i]),
      kind: at(KINDS, file.kind, i, "perennial"),
      heightFt: pair(file.height),
      spreadFt: pair(file.spread),
      zoneLow,
      zoneHigh,
      light: LIGHTS.filter((_, bit) => bits & (1 << bit)),
      foliage: at(FOLIAGES, file.foliage, i, "deciduous"),
      deer: at(DEER, file.deer, i, "often"),
      salt: at(LEVELS, file.salt, i, "low"),
      wetFeet: at(WET_FEET, file.wet, i, "no"),
      usda: file.usda[i] || null,
      leaves: onDay ? { onDay, offDay } : null,
      features: features.slice(from, used),
      toxicFree: file.toxicFree.charAt(i) === "1",
      origin: at(ORIGINS, file.origin, i, "dataset"),
    };
  });
}
