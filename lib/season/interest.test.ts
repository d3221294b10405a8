import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Feature } from "../plants/taxon";
import { bedInterest, DEFAULT_TARGETS, dayIsGrowing, type InterestPlant, kindCounts, plantInterest, restingOnOne, windowWeight, yearScore } from "./interest";
import type { SeasonWindow, TaxonSeason } from "./window";

const season = { lastFreezeDay: 125, firstFreezeDay: 280 };
const noColor = () => "#888888";

function window(kind: Feature["kind"], startDay: number, endDay: number, show: 1 | 2 | 3): SeasonWindow {
  const feature: Feature = {
    kind,
    color: "white",
    hex: "#ffffff",
    fade: null,
    winter: null,
    from: "",
    to: "",
    startDay,
    endDay,
    show,
    drive: "heat",
    degreeDays: null,
    note: null,
    source: "practice",
  };
  return { kind, feature, drive: "heat", startDay, endDay, peakDay: startDay, spreadDays: 5, sources: ["practice"], degreeDays: null };
}
const plant = (key: string, areaSqFt: number, ...windows: SeasonWindow[]): InterestPlant => ({
  key,
  areaSqFt,
  season: { windows, leaves: null, basis: "computed", basisNote: null } satisfies TaxonSeason,
});
const anyPlant = fc
  .record({
    area: fc.double({ min: 0, max: 300, noNaN: true }),
    start: fc.integer({ min: 1, max: 365 }),
    length: fc.integer({ min: 0, max: 360 }),
    show: fc.constantFrom<(1 | 2 | 3)[]>(1, 2, 3),
    kind: fc.constantFrom<Feature["kind"][]>("bloom", "evergreen", "bark", "fruit", "fall color"),
  })
  .map(
    ({ area, start, length, show, kind }) =>
      (key: string) =>
        plant(key, area, window(kind, start, ((start - 1 + length) % 365) + 1, show)),
  );

describe("windowWeight", () => {
  it("is a trapezoid whose ramps of a week are centered on start and end", () => {
    const w = { startDay: 150, endDay: 180 };
    expect(windowWeight(w, 165)).toBe(1);
    expect(windowWeight(w, 150)).toBeCloseTo(0.5);
    expect(windowWeight(w, 180)).toBeCloseTo(0.5);
    expect(windowWeight(w, 146)).toBe(0);
    expect(windowWeight(w, 184)).toBe(0);
  });
  it("runs over New Year", () => {
    const w = { startDay: 300, endDay: 60 };
    expect(windowWeight(w, 365)).toBe(1);
    expect(windowWeight(w, 1)).toBe(1);
    expect(windowWeight(w, 180)).toBe(0);
  });
  it("is one all year for a window of the whole year", () => {
    expect(windowWeight({ startDay: 1, endDay: 365 }, 1)).toBe(1);
    expect(windowWeight({ startDay: 1, endDay: 365 }, 365)).toBe(1);
  });
});

describe("plantInterest", () => {
  it("joins features as 1 − Π(1 − show/3 · w)", () => {
    const two = plant("a", 1, window("bloom", 100, 300, 2), window("fruit", 100, 300, 1)).season;
    expect(plantInterest(two, 200, true)).toBeCloseTo(1 - (1 / 3) * (2 / 3));
  });
  it("leaves evergreen, bark, seedheads and structure out of the growing season, and counts them in winter", () => {
    const evergreen = plant("a", 1, window("evergreen", 1, 365, 3)).season;
    expect(plantInterest(evergreen, 200, true)).toBe(0);
    expect(plantInterest(evergreen, 20, false)).toBe(1);
    expect(kindCounts("seedhead", true)).toBe(false);
    expect(kindCounts("bloom", false)).toBe(true);
  });
});

describe("bedInterest", () => {
  it("is the area share of what shows", () => {
    const halves = bedInterest([plant("a", 30, window("bloom", 100, 300, 3))], 100, DEFAULT_TARGETS, season, noColor);
    expect(halves[13]?.interest).toBeCloseTo(0.3);
    expect(halves[13]?.bare).toBe(false);
    expect(halves[0]?.interest).toBe(0);
    expect(halves[0]?.bare).toBe(true);
  });
  it("takes the growing-season target between the freezes, the winter target outside, and days of each in between", () => {
    const halves = bedInterest([], 100, { growing: 0.3, winter: 0.2 }, season, noColor);
    expect(halves[13]?.target).toBeCloseTo(0.3);
    expect(halves[0]?.target).toBeCloseTo(0.2);
    expect(halves[8]?.target).toBeGreaterThan(0.2);
    expect(halves[8]?.target).toBeLessThan(0.3);
  });
  it("never exceeds the ground, does not mind the order, and never falls when a plant is added", () => {
    fc.assert(
      fc.property(fc.array(anyPlant, { maxLength: 6 }), anyPlant, (makers, more) => {
        const plants = makers.map((make, i) => make(`p${i}`));
        const before = bedInterest(plants, 120, DEFAULT_TARGETS, season, noColor);
        const turned = bedInterest([...plants].reverse(), 120, DEFAULT_TARGETS, season, noColor);
        const after = bedInterest([...plants, more("more")], 120, DEFAULT_TARGETS, season, noColor);
        before.forEach((half, i) => {
          expect(half.interest).toBeLessThanOrEqual(1 + 1e-9);
          expect(half.parts.reduce((sum, p) => sum + p.share, 0)).toBeLessThanOrEqual(1 + 1e-6);
          expect(turned[i]?.interest).toBeCloseTo(half.interest, 9);
          expect(after[i]?.interest ?? 0).toBeGreaterThanOrEqual(half.interest - 1e-9);
        });
      }),
      { numRuns: 40 },
    );
  });
  it("splits the counted interest into its kinds without loss", () => {
    const halves = bedInterest(
      [plant("a", 20, window("bloom", 100, 300, 3), window("fruit", 150, 300, 2)), plant("b", 10, window("bark", 1, 365, 2))],
      100,
      DEFAULT_TARGETS,
      season,
      noColor,
    );
    for (const half of halves) expect(half.parts.filter((p) => p.counted).reduce((sum, p) => sum + p.share, 0)).toBeCloseTo(half.interest, 3);
  });
});

describe("yearScore and restingOnOne", () => {
  it("scores the mean of min(1, interest ÷ target)", () => {
    expect(
      yearScore([
        { interest: 0.4, target: 0.2 },
        { interest: 0.1, target: 0.2 },
      ]),
    ).toBeCloseTo(0.75);
    expect(yearScore([])).toBe(0);
  });
  it("names the one plant a time rests on, and nobody where two share it", () => {
    const alone = plant("alone", 40, window("bloom", 180, 230, 3));
    expect(restingOnOne([alone, plant("green", 20, window("evergreen", 1, 365, 3))], 100, DEFAULT_TARGETS, season).some((r) => r.key === "alone" && r.index === 13)).toBe(true);
    const shared = [1, 2, 3].map((i) => plant(`p${i}`, 10, window("bloom", 180, 230, 3)));
    expect(restingOnOne(shared, 100, DEFAULT_TARGETS, season).filter((r) => r.index === 13)).toEqual([]);
  });
  it("says the same, to the last half-month, as a whole year worked out anew without each plant in turn", () => {
    const byTheYear = (plants: readonly InterestPlant[], groundSqFt: number, place: typeof season) => {
      const whole = bedInterest(plants, groundSqFt, DEFAULT_TARGETS, place, noColor);
      return plants.flatMap(({ key }) => {
        const others = plants.filter((p) => p.key !== key);
        const rest = bedInterest(others, groundSqFt, DEFAULT_TARGETS, place, noColor);
        return whole.flatMap((half, i) =>
          !half.bare && rest[i]?.bare && half.interest - rest[i].interest >= 0.5 * half.interest ? [{ index: half.index, label: half.label, key }] : [],
        );
      });
    };
    const place = fc.record({ lastFreezeDay: fc.integer({ min: 60, max: 160 }), firstFreezeDay: fc.integer({ min: 230, max: 330 }) });
    // Round areas, the same windows and shared keys, so that many plants give just half, or leave just the target.
    const evenPlant = fc
      .record({
        area: fc.constantFrom(0, 13.5, 20, 27, 40, 120),
        start: fc.constantFrom(100, 180, 350),
        length: fc.constantFrom(20, 90, 364),
        key: fc.constantFrom("a", "b", "c", "d"),
      })
      .map(({ area, start, length, key }) => plant(key, area, window("bloom", start, ((start - 1 + length) % 365) + 1, 3), window("bark", 1, 365, 2)));
    const anyBed = fc.oneof(
      fc.array(anyPlant, { maxLength: 9 }).map((makers) => makers.map((make, i) => make(`p${i}`))),
      fc.array(evenPlant, { maxLength: 6 }),
    );
    let named = 0;
    fc.assert(
      fc.property(anyBed, fc.constantFrom(50, 100, 400), place, (plants, groundSqFt, where) => {
        const resting = restingOnOne(plants, groundSqFt, DEFAULT_TARGETS, where);
        named += resting.length;
        expect(resting).toEqual(byTheYear(plants, groundSqFt, where));
      }),
      { numRuns: 150 },
    );
    expect(named).toBeGreaterThan(100);
  });
  it("holds a place without frost to be growing all year", () => {
    expect(dayIsGrowing({ lastFreezeDay: null, firstFreezeDay: null }, 10)).toBe(true);
    expect(dayIsGrowing(season, 125)).toBe(false);
    expect(dayIsGrowing(season, 126)).toBe(true);
  });
});
