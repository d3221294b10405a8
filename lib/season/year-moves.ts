// How a place's year moves with the spring and with a warmer climate, told by a few plants everybody knows.
import type { Climate } from "../place/climate";
import { placeYear } from "../place/place-year";
import { climateOfSetting, type PlaceSetting } from "../place/setting";
import type { Taxon } from "../plants/taxon";
import type { FeatureKind } from "../plants/vocabulary";
import { taxonSeason } from "./taxon-season";

/** An event of the year to look at: when this taxon's feature begins. */
export type YearMarker = { readonly label: string; readonly taxon: Taxon; readonly kind: FeatureKind };

/** Rows of one date a column; null where it does not come (no freeze, no such feature). */
export type YearMoves = {
  readonly columns: readonly string[];
  readonly rows: readonly { readonly label: string; readonly days: readonly (number | null)[] }[];
};

const COLUMNS: readonly (readonly [label: string, change: Partial<PlaceSetting>])[] = [
  ["mild spring", { spring: "mild" }],
  ["as springs go", {}],
  ["hard spring", { spring: "hard" }],
  ["+2 °F", { warmingF: 2 }],
  ["+4 °F", { warmingF: 4 }],
];

/**
 * Dates of freezes and markers at a site in a mild, a normal and a hard spring, and in a climate 2 and 4 °F warmer.
 * @param openClimate the normals of the point
 */
export function yearMoves(openClimate: Climate, microclimate: PlaceSetting["microclimate"], markers: readonly YearMarker[]): YearMoves {
  const climates = COLUMNS.map(([, change]) => climateOfSetting(openClimate, { microclimate, warmingF: 0, spring: "normal", ...change }));
  const years = climates.map(placeYear);
  const events = markers.map(({ label, taxon, kind }) => ({
    label,
    days: years.map((year) => taxonSeason(taxon, year).windows.find((w) => w.kind === kind)?.startDay ?? null),
  }));
  return {
    columns: COLUMNS.map(([label]) => label),
    rows: [{ label: "Last freeze", days: climates.map((c) => c.lastFreezeDay) }, ...events, { label: "First freeze", days: climates.map((c) => c.firstFreezeDay) }],
  };
}
