import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { testTaxon } from "../../tests/fixtures/test-taxon";
import { stationsRead } from "../../tests/outside/dataset";
import { climateAt } from "../place/climate-at";
import { type PlaceYear, placeYear } from "../place/place-year";
import { REFERENCE_CLIMATE, REFERENCE_YEAR } from "../place/reference";
import type { Feature, Taxon } from "../plants/taxon";
import { taxonSeason } from "./taxon-season";
import type { SeasonWindow } from "./window";

const taxonWith = (features: Record<string, unknown>, over: Record<string, unknown> = {}): Taxon => testTaxon({ ...over, features });

const stations = stationsRead();
function yearAt(lat: number, lon: number, elevationFt?: number): PlaceYear {
  const answer = climateAt(stations, { lat, lon, elevationFt: elevationFt ?? null });
  if (answer.kind === "fault") throw new Error(answer.message);
  return placeYear(answer.climate);
}
const BURLINGTON = yearAt(44.48, -73.21);
const ATLANTA = yearAt(33.75, -84.39);
const ORLANDO = yearAt(28.54, -81.38);
const LEADVILLE = yearAt(39.25, -106.29, 10150);
const FAIRBANKS = yearAt(64.84, -147.72);
const PLACES = [BURLINGTON, ATLANTA, ORLANDO, LEADVILLE, FAIRBANKS, yearAt(32.72, -117.16), yearAt(47.6, -122.33), yearAt(33.45, -112.07)];

const FULL = taxonWith({
  bloom: { color: "white", from: "early May", to: "mid May", show: 2 },
  "summer foliage": { color: "burgundy", show: 2 },
  "fall color": { color: "red", from: "early Oct", to: "late Oct", show: 3 },
  fruit: { color: "red", from: "mid Sep", to: "late Jan", show: 2 },
  bark: { color: "red", show: 2 },
});

function windowOf(taxon: Taxon, place: PlaceYear, kind: Feature["kind"]): SeasonWindow {
  const found = taxonSeason(taxon, place).windows.find((w) => w.kind === kind);
  if (!found) throw new Error(`no ${kind}`);
  return found;
}
const lengthOf = (w: SeasonWindow): number => (w.endDay - w.startDay + 365) % 365;

describe("the year of a taxon at the reference climate", () => {
  it("is the dataset's own", () => {
    for (const kind of ["bloom", "fall color", "fruit"] as const) {
      const w = windowOf(FULL, REFERENCE_YEAR, kind);
      expect([w.startDay, w.endDay]).toEqual([w.feature.startDay, w.feature.endDay]);
    }
    expect(taxonSeason(FULL, REFERENCE_YEAR).leaves).toEqual(FULL.leaves);
    expect(taxonSeason(FULL, REFERENCE_YEAR)).toMatchObject({ basis: "computed", basisNote: null });
  });

  it("begins at the published degree days where the dataset has them, and names the figure", () => {
    const figured = taxonWith({ bloom: { color: "yellow", from: "mid Apr", to: "late Apr", show: 3, dd: 86 } });
    const w = windowOf(figured, REFERENCE_YEAR, "bloom");
    expect(w.degreeDays).toBe(86);
    expect(w.startDay).toBe(94);
    expect(lengthOf(w)).toBe(19);
    expect(windowOf(FULL, REFERENCE_YEAR, "bloom").degreeDays).toBeNull();
  });

  it("is at its best on the published degree days of full bloom, and moves as a whole where only those are known", () => {
    const both = windowOf(taxonWith({ bloom: { color: "pink", from: "late Apr", to: "mid May", show: 3, dd: 185, ddFull: 205 } }), REFERENCE_YEAR, "bloom");
    expect([both.degreeDays, both.degreeDaysFull, both.startDay, both.peakDay]).toEqual([185, 205, 112, 115]);
    const full = windowOf(taxonWith({ bloom: { color: "pink", from: "late May", to: "mid Jun", show: 3, ddFull: 205 } }), REFERENCE_YEAR, "bloom");
    expect([full.degreeDays, full.degreeDaysFull, full.peakDay]).toEqual([null, 205, 115]);
    expect(lengthOf(full)).toBe(30);
    expect(full.startDay).toBe(109);
  });

  it("says how sure the leaves' dates are", () => {
    const { leafSpread } = taxonSeason(FULL, BURLINGTON);
    expect(leafSpread?.onDays).toBeGreaterThan(2);
    expect(leafSpread?.offDays).toBeGreaterThan(2);
    expect(taxonSeason(taxonWith({ evergreen: { color: "green", show: 2 } }, { foliage: "evergreen", leaves: undefined }), BURLINGTON).leafSpread).toBeUndefined();
  });
});

describe("the year of a taxon at a place", () => {
  it("comes later in Vermont and earlier in Georgia in spring, the other way round in fall", () => {
    for (const kind of ["bloom", "summer foliage"] as const) {
      const [north, here, south] = [BURLINGTON, REFERENCE_YEAR, ATLANTA].map((p) => windowOf(FULL, p, kind).startDay);
      expect(north).toBeGreaterThan((here ?? 0) + 3);
      expect(south).toBeLessThan((here ?? 0) - 14);
    }
    const [north, here, south] = [BURLINGTON, REFERENCE_YEAR, ATLANTA].map((p) => windowOf(FULL, p, "fall color").startDay);
    expect(north).toBeLessThan(here ?? 0);
    expect(south).toBeGreaterThan((here ?? 0) + 7);
  });

  it("gives foliage and bare stems the leaves' own dates", () => {
    for (const place of PLACES) {
      const { leaves } = taxonSeason(FULL, place);
      const [foliage, bark] = [windowOf(FULL, place, "summer foliage"), windowOf(FULL, place, "bark")];
      expect([foliage.startDay, foliage.endDay]).toEqual([leaves?.onDay, leaves?.offDay]);
      expect([bark.startDay, bark.endDay]).toEqual([leaves?.offDay, leaves?.onDay]);
    }
  });

  it("ends fall color with the leaves", () => {
    for (const place of PLACES) {
      const { leaves } = taxonSeason(FULL, place);
      const past = (windowOf(FULL, place, "fall color").endDay - (leaves?.offDay ?? 0) + 365) % 365;
      expect(past === 0 || past > 300).toBe(true);
    }
  });

  it("lets fruit that lasts into winter end by the calendar", () => {
    for (const place of PLACES) expect(windowOf(FULL, place, "fruit").endDay).toBe(31);
  });

  it("lets a bloom that lasts to frost last longer in the south", () => {
    const rose = taxonWith({ bloom: { color: "red", from: "late May", to: "late Oct", show: 3 } });
    expect(windowOf(rose, ATLANTA, "bloom").endDay).toBeGreaterThan(windowOf(rose, REFERENCE_YEAR, "bloom").endDay + 7);
    expect(windowOf(rose, BURLINGTON, "bloom").endDay).toBeLessThan(windowOf(rose, REFERENCE_YEAR, "bloom").endDay);
  });

  it("lets leaves that die down in June go by warmth, not by the fall", () => {
    const bulb = taxonWith({ bloom: { color: "blue", from: "early Apr", to: "mid Apr", show: 2 } }, { kind: "bulb", foliage: "dies back", leaves: ["mid Mar", "early Jun"] });
    expect(taxonSeason(bulb, ATLANTA).leaves?.offDay).toBeLessThan(taxonSeason(bulb, BURLINGTON).leaves?.offDay ?? 0);
  });

  it("has no leaves to come and go on an evergreen", () => {
    const holly = taxonWith({ evergreen: { color: "dark green", show: 2 } }, { foliage: "evergreen", leaves: undefined });
    expect(taxonSeason(holly, ATLANTA).leaves).toBeNull();
    expect(windowOf(holly, ATLANTA, "evergreen")).toMatchObject({ startDay: 1, endDay: 365, spreadDays: 0 });
  });

  it("shows a wider spread the farther a date was carried", () => {
    expect(windowOf(FULL, ATLANTA, "bloom").spreadDays).toBeGreaterThan(windowOf(FULL, REFERENCE_YEAR, "bloom").spreadDays);
    expect(windowOf(FULL, REFERENCE_YEAR, "bloom").spreadDays).toBeGreaterThanOrEqual(5);
  });

  it("is never empty, never more than the year, and has its peak inside, for any window and drive", () => {
    const months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const;
    const third = fc.tuple(fc.constantFrom("early", "mid", "late"), fc.constantFrom(...months)).map((parts) => parts.join(" "));
    const kind = fc.constantFrom("bloom", "spring foliage", "summer foliage", "fall color", "fruit", "seedhead", "bark", "structure");
    const drive = fc.constantFrom("heat", "light", "cooling", "dormancy", "always");
    fc.assert(
      fc.property(kind, drive, third, third, fc.constantFrom(...PLACES), (k, d, from, to, place) => {
        const taxon = taxonWith({ [k]: { color: "red", from, to, show: 1, drive: d } });
        const w = windowOf(taxon, place, k as Feature["kind"]);
        for (const day of [w.startDay, w.endDay, w.peakDay]) {
          expect(Number.isInteger(day)).toBe(true);
          expect(day).toBeGreaterThanOrEqual(1);
          expect(day).toBeLessThanOrEqual(365);
        }
        const reference = (w.feature.endDay - w.feature.startDay + 365) % 365;
        expect(lengthOf(w)).toBeGreaterThanOrEqual(Math.min(reference, 3));
        expect((w.peakDay - w.startDay + 365) % 365).toBeLessThanOrEqual(lengthOf(w));
      }),
      { numRuns: 400, examples: PLACES.map((place) => ["bloom", "heat", "early Feb", "mid Nov", place]) },
    );
  });
});

describe("places without a basis", () => {
  it("show the reference's months, and say why", () => {
    const miami = taxonSeason(FULL, yearAt(25.77, -80.19));
    expect(miami.basis).toBe("reference months");
    expect(miami.basisNote).toMatch(/reference months/);
    expect(miami.windows[0]).toMatchObject({ startDay: FULL.features[0]?.startDay, endDay: FULL.features[0]?.endDay });
    expect(miami.leaves).toEqual(FULL.leaves);
    expect(taxonSeason(FULL, placeYear({ ...REFERENCE_CLIMATE, lat: -34 })).basis).toBe("reference months");
    expect(taxonSeason(FULL, yearAt(18.4, -66.1)).basis).toBe("reference months");
  });
});
