import { describe, expect, it } from "vitest";
import { gardenTaxa } from "../../tests/fixtures/garden-taxa";
import { placeYear } from "../place/place-year";
import { REFERENCE_CLIMATE, REFERENCE_YEAR } from "../place/reference";
import { referenceFeature, referenceLeaves } from "./reference-window";
import { taxonSeason } from "./taxon-season";

/** The reference climate made warmer or colder all year, and moved north or south. */
const climate = (warmerF: number, lat: number) =>
  placeYear({ ...REFERENCE_CLIMATE, lat, tminF: REFERENCE_CLIMATE.tminF.map((t) => t + warmerF), tmaxF: REFERENCE_CLIMATE.tmaxF.map((t) => t + warmerF) });
const PLACES = [
  ["the reference climate", REFERENCE_YEAR],
  ["a colder place in the north", climate(-7, 45)],
  ["a warmer place in the south", climate(9, 36)],
] as const;
const apart = (a: number, b: number) => Math.abs(((((a - b + 182.5) % 365) + 365) % 365) - 182.5);

describe("what was seen at a place, brought to the reference climate", () => {
  it.each(PLACES)("comes back to the day, within one, when it is carried to %s again", (_, place) => {
    for (const taxon of gardenTaxa()) {
      const season = taxonSeason(taxon, place);
      const leaves = season.leaves && taxon.leaves ? referenceLeaves(season.leaves, place) : null;
      if (leaves && season.leaves) {
        const back = taxonSeason({ leaves, features: [] }, place).leaves;
        expect(apart(back?.onDay ?? 0, season.leaves.onDay)).toBeLessThanOrEqual(1);
        expect(apart(back?.offDay ?? 0, season.leaves.offDay)).toBeLessThanOrEqual(1);
      }
      for (const { feature, startDay, endDay } of season.windows) {
        const reference = referenceFeature({ ...feature, startDay, endDay }, leaves, place);
        const [back] = taxonSeason({ leaves, features: [reference] }, place).windows;
        expect(apart(back?.startDay ?? 0, startDay), `${taxon.name} ${feature.kind} start`).toBeLessThanOrEqual(1);
        expect(apart(back?.endDay ?? 0, endDay), `${taxon.name} ${feature.kind} end`).toBeLessThanOrEqual(1);
      }
    }
  });
  it("takes what was seen for more than a published figure", () => {
    const bloom = gardenTaxa()[0]?.features[0];
    expect(bloom?.degreeDays).toBe(1700);
    if (bloom) expect(referenceFeature(bloom, null, REFERENCE_YEAR).degreeDays).toBeNull();
  });
  it("leaves what shows all year as it is", () => {
    const evergreen = gardenTaxa().flatMap((t) => t.features.filter((f) => f.kind === "evergreen"))[0];
    if (evergreen) expect(referenceFeature(evergreen, null, climate(9, 36))).toMatchObject({ startDay: evergreen.startDay, endDay: evergreen.endDay });
  });
});
