import { describe, expect, it } from "vitest";
import type { Feature } from "../plants/taxon";
import type { TaxonSeason } from "../season/window";
import { type SeasonedTaxon, substitutesRanked } from "./substitute";

function plant(id: string, startDay: number, endDay: number, heightFt = 4, color: Feature["color"] = "white"): SeasonedTaxon {
  const feature: Feature = {
    kind: "bloom",
    color,
    hex: "#ffffff",
    fade: null,
    winter: null,
    from: "",
    to: "",
    startDay,
    endDay,
    show: 3,
    drive: "heat",
    degreeDays: null,
    note: null,
    source: "practice",
  };
  const season: TaxonSeason = {
    windows: [{ kind: "bloom", feature, drive: "heat", startDay, endDay, peakDay: (startDay + endDay) / 2, spreadDays: 5, degreeDays: null, sources: ["practice"] }],
    leaves: null,
    basis: "computed",
    basisNote: null,
  };
  return {
    taxon: {
      id,
      name: id,
      kind: "shrub",
      habit: "rounded",
      foliage: "deciduous",
      heightFt: [heightFt, heightFt],
      spreadFt: [heightFt, heightFt],
      light: ["sun"],
      zoneLow: 4,
      zoneHigh: 8,
    },
    season,
  };
}
const growing = { lastFreezeDay: 120, firstFreezeDay: 290 };
const lost = plant("lost", 180, 220);

describe("substitutes", () => {
  it("are ranked by the season that is lost first, then by size", () => {
    const ranked = substitutesRanked(lost, [plant("other season", 130, 150), plant("same season, large", 180, 220, 12), plant("same season", 180, 220), lost], growing);
    expect(ranked.map(({ name }) => name)).toEqual(["same season", "same season, large", "other season"]);
    expect(ranked[0]).toMatchObject({ seasonShare: 1, sizeLikeness: 1, missing: [] });
  });

  it("say in which half-months the bed still misses the plant", () => {
    const [only] = substitutesRanked(lost, [plant("early", 130, 150)], growing);
    expect(only?.seasonShare).toBe(0);
    expect(only?.missing).toContain("early July");
  });

  it("weigh the half-months by how much the bed needs them", () => {
    const early = plant("early half", 180, 197);
    const late = plant("late half", 203, 220);
    const need = Array.from({ length: 24 }, (_, i) => (i <= 12 ? 5 : 0.1));
    expect(substitutesRanked(lost, [late, early], growing, need)[0]?.name).toBe("early half");
  });
});
