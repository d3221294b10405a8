import { describe, expect, it } from "vitest";
import { testTaxon } from "../../tests/fixtures/test-taxon";
import type { Bed, BedRow } from "../ground/bed";
import { EMPTY_DRAWING, type PlacedPlant } from "../ground/bed-drawing";
import { bedSizeOutline } from "../ground/bed-size";
import { planDensity } from "../ground/plan-cover";
import { REFERENCE_YEAR } from "../place/reference";
import type { Taxon } from "../plants/taxon";
import { DEFAULT_TARGETS } from "../season/interest";
import { taxonSeason } from "../season/taxon-season";
import { type BedView, bedView } from "./bed-view";
import { areaAgainstDrawing, densityStep, groundDensities, groundPaper, offDrawingText, viewCrowding } from "./ground-view";

const shrub = testTaxon({ name: "Testa prima", height: [3, 5], spread: [4, 4] });
const herb = testTaxon({
  name: "Testa secunda",
  kind: "perennial",
  habit: "clump",
  height: [1, 2],
  spread: [2, 2],
  foliage: "dies back",
  wood: undefined,
  pruning: "cut back early spring",
});
const tree = testTaxon({ name: "Testa tertia", kind: "tree", height: [30, 30], spread: [20, 20] });
const taxa: Readonly<Record<string, Taxon>> = { shrub, herb, tree };
const row = (id: string, quantity: BedRow["quantity"], over: Partial<BedRow> = {}): BedRow => ({
  id,
  taxonId: taxa[id.replace(/\d/g, "")]?.id ?? "",
  taxonName: id,
  quantity,
  spacingFt: null,
  size: id === "tree" ? "2 in cal B&B" : "#1",
  remarks: "",
  existing: false,
  ...over,
});
const count = (n: number) => ({ by: "count", count: n }) as const;
function viewOf(rows: readonly BedRow[], plants: readonly PlacedPlant[] = [], widthFt = 10): { bed: Bed; view: BedView } {
  const bed: Bed = {
    name: "Bed",
    size: { by: "rectangle", lengthFt: 20, widthFt },
    site: { light: "sun", moisture: "average", ph: 6.5, salt: "none", deer: "none", faces: "" },
    notes: "",
    rows,
    drawing: { ...EMPTY_DRAWING, plants },
  };
  const placed = Object.fromEntries(Object.values(taxa).map((taxon) => [taxon.id, { taxon, season: taxonSeason(taxon, REFERENCE_YEAR) }]));
  return { bed, view: bedView(bed, placed, { zone: 5.5, state: "VT", lastFreezeDay: 120, firstFreezeDay: 280 }, DEFAULT_TARGETS) };
}
const at = (rowId: string, places: readonly (readonly [number, number])[]): PlacedPlant[] => places.map((place, i) => ({ id: `${rowId}-${i}`, rowId, at: place, group: 1 }));

describe("density at hand-over and when grown", () => {
  it("is 5 when grown for plants that just meet, and less on planting day", () => {
    // 200 sq ft ÷ (0.866 · 16) = 14.4 shrubs set at mature spread.
    const { view } = viewOf([row("shrub", count(14))]);
    const { atHandOver, atMaturity } = groundDensities(view);
    expect(atMaturity.raw).toBeCloseTo((5 * 14 * 0.8660254 * 16) / 200, 6);
    expect(atHandOver.raw).toBeGreaterThan(0);
    expect(atHandOver.raw).toBeLessThan(atMaturity.raw / 3);
  });
  it("is that of the drawing where all stands on it", () => {
    const { view } = viewOf(
      [row("shrub", { by: "drawing" }), row("tree", { by: "drawing" })],
      [
        ...at("shrub", [
          [4, 4],
          [9, 4],
        ]),
        ...at("tree", [[15, 5]]),
      ],
    );
    const { drawn } = view;
    if (!drawn) throw new Error("nothing drawn");
    const exact = planDensity({ areaSqFt: drawn.plan.areaSqFt, plants: drawn.plants });
    expect(groundDensities(view).atHandOver.raw).toBeCloseTo(exact.atHandOver.raw, 9);
    expect(groundDensities(view).atMaturity.raw).toBeCloseTo(exact.atMaturity.raw, 9);
  });
});

describe("a step of the density", () => {
  const list = [row("shrub", count(5)), row("herb", count(30)), row("tree", count(3)), row("shrub2", count(1)), row("herb2", count(9), { existing: true })];
  it("is within half a small plant of one step, either way", () => {
    for (const direction of [1, -1] as const) {
      const step = densityStep(viewOf(list).view, direction, () => null);
      if (!step) throw new Error("no step");
      expect(Math.abs(step.after.raw - step.before.raw - direction)).toBeLessThan(0.1);
      expect(Math.sign(step.plants)).toBe(direction);
    }
  });
  it("leaves trees, single specimens and standing plants alone, and keeps small groups odd", () => {
    const step = densityStep(viewOf(list).view, 1, () => null);
    expect(step?.rows.every(({ rowId }) => rowId === "shrub" || rowId === "herb")).toBe(true);
    for (const one of step?.rows ?? []) if (one.to <= 9) expect(one.to % 2).toBe(1);
  });
  it("costs what the prices say, names rows without one, and claims no money where none is known", () => {
    const price = (rowId: string) => (rowId === "herb" ? 1000 : null);
    const step = densityStep(viewOf(list).view, 1, price);
    const herbs = step?.rows.find(({ rowId }) => rowId === "herb");
    expect(step?.cents).toBe(1000 * ((herbs?.to ?? 0) - (herbs?.from ?? 0)));
    expect(step?.unpriced).toEqual(step?.rows.some(({ rowId }) => rowId === "shrub") ? ["A"] : []);
    expect(densityStep(viewOf(list).view, 1, () => null)?.cents).toBeNull();
  });
  it("follows price breaks, where more plants may cost less each", () => {
    const step = densityStep(viewOf([row("herb", count(20))]).view, 1, (_row, quantity) => (quantity > 20 ? 800 : 1000));
    const to = step?.rows[0]?.to ?? 0;
    expect(step?.cents).toBe(to * 800 - 20 * 1000);
  });
  it("is nothing for an empty list or one of specimens alone", () => {
    expect(densityStep(viewOf([]).view, 1, () => null)).toBeNull();
    expect(densityStep(viewOf([row("shrub", count(1)), row("tree", count(2))]).view, -1, () => null)).toBeNull();
  });
});

describe("area and drawing", () => {
  it("names what is not on the drawing", () => {
    const { view } = viewOf(
      [row("shrub", count(3)), row("herb", count(2))],
      [
        ...at("shrub", [[3, 3]]),
        ...at("herb", [
          [8, 3],
          [10, 3],
          [12, 3],
        ]),
      ],
    );
    expect(offDrawingText(view)).toBe("2 of A; 1 too many of B");
  });
  it("states the edge effect where a row fills the bed, and none where it fills a part", () => {
    const whole = viewOf([row("herb", { by: "area", areaSqFt: 200 })], at("herb", [[3, 3]]));
    const [full] = areaAgainstDrawing(whole.view, bedSizeOutline(whole.bed.size));
    expect(full?.byArea).toBeCloseTo(200 / (0.8660254 * 4), 4);
    expect(full?.edge).toBeCloseTo((0.3 * 60) / 2 + 1, 6);
    const part = viewOf([row("herb", { by: "area", areaSqFt: 40 })], at("herb", [[3, 3]]));
    expect(areaAgainstDrawing(part.view, bedSizeOutline(part.bed.size))[0]?.edge).toBeNull();
  });
});

describe("the ground as data", () => {
  it("tells crowding by letters, with the feet and the plants", () => {
    const { view } = viewOf([row("shrub", { by: "drawing" }), row("shrub2", { by: "drawing" })], [...at("shrub", [[5, 5]]), ...at("shrub2", [[7, 5]])]);
    expect(viewCrowding(view)).toHaveLength(1);
    const paper = groundPaper(view);
    expect(paper).toMatchObject({ by: "drawing", crowding: [{ rows: ["A", "B"], against: null, plants: 2 }] });
    // Grown 4 ft wide and 2 ft apart: 3 ft would be tolerated; at 20 years a hair is left to grow.
    expect(paper.crowding[0]?.overFt).toBeCloseTo(1, 1);
    expect(paper.crowding[0]?.year).toBeGreaterThan(0);
  });
  it("has no crowding and goes by area where nothing is drawn", () => {
    expect(groundPaper(viewOf([row("shrub", count(3))]).view)).toMatchObject({ by: "area", crowding: [] });
  });
});
