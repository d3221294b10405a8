import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GROUND_TAXA, groundTaxon } from "../../tests/fixtures/ground-taxa";
import type { Border, KeepClear } from "./border";
import { barrierNearest, type GroundPlan, groundPlan } from "./ground-plan";
import { type Layout, type LayoutInput, type LayoutRow, layoutFromSeed, layoutsOffered } from "./layout";
import { evergreensHidden, type StandingPlant } from "./layout-score";
import { type Point, pointInOutline, rectangleOutline } from "./outline";
import { planFromOutline } from "./plan-outline";
import { driftOutline } from "./plant-group";
import { barrierRoomFt } from "./room";
import { plantCellSqFt } from "./spacing";
import { rangeMiddle, taxonStratum } from "./stratum";

const { shadeTree, smallTree, spire, tallShrub, shrub, box, tallPerennial, perennial, edging } = GROUND_TAXA;
const row = (key: string, taxon: LayoutRow["taxon"], quantity: number, spacingFt = rangeMiddle(taxon.spreadFt)): LayoutRow => ({ key, taxon, quantity, spacingFt });

/** A border 40 × 12 ft, seen from its long front at y = 0; each edge's border as given: front, right, back, left. */
function border(edges: readonly Border[] = [], keepClear: readonly KeepClear[] = []): GroundPlan {
  return groundPlan(
    planFromOutline(rectangleOutline(40, 12)).map((edge, i) => ({ ...edge, border: edges[i] ?? edge.border })),
    keepClear,
  );
}
const MIXED = [row("tall", tallShrub, 5), row("shrub", shrub, 7), row("box", box, 5), row("per", tallPerennial, 15), row("low", perennial, 20), row("edge", edging, 40)];
const front = { kind: "one side", lookAngle: Math.PI / 2 } as const;
const input = (more: Partial<LayoutInput> = {}): LayoutInput => ({ plan: border(), rows: MIXED, fixed: [], standpoint: front, ...more });

function standing({ rows }: LayoutInput, layout: Layout): StandingPlant[] {
  return layout.placements.flatMap(({ key, at, group }) => {
    const own = rows.find((one) => one.key === key);
    return own ? [{ key, at, group, taxon: own.taxon }] : [];
  });
}
/** The least distance of any two plants of a layer as a share of what they need. */
function tightest({ rows }: LayoutInput, { placements, spacingShare }: Layout): number {
  let least = Number.POSITIVE_INFINITY;
  const plants = placements.flatMap(({ key, at }) => {
    const own = rows.find((one) => one.key === key);
    return own && taxonStratum(own.taxon) !== "canopy trees" ? [{ at, half: (own.spacingFt * spacingShare) / 2 }] : [];
  });
  for (const [i, a] of plants.entries()) for (const b of plants.slice(i + 1)) least = Math.min(least, Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1]) / (a.half + b.half));
  return least;
}
const middleY = (layout: Layout, key: string) => {
  const own = layout.placements.filter((p) => p.key === key);
  return own.reduce((sum, { at }) => sum + at[1], 0) / own.length;
};

describe("a bed set out", () => {
  it("is the same for the same seed and another for another", () => {
    expect(layoutFromSeed(input(), 7)).toEqual(layoutFromSeed(input(), 7));
    expect(layoutFromSeed(input(), 7).placements).not.toEqual(layoutFromSeed(input(), 8).placements);
  });

  it("has every plant in the bed at its spacing", () => {
    for (const seed of [1, 2, 3]) {
      const layout = layoutFromSeed(input(), seed);
      expect(layout.unplaced).toEqual([]);
      expect(layout.placements.length).toBe(92);
      expect(tightest(input(), layout)).toBeGreaterThanOrEqual(0.98 - 1e-9);
      for (const { at } of layout.placements) expect(pointInOutline(at, border().outline)).toBe(true);
    }
  });

  it("stands tall behind and low in front, and turns with the standpoint", () => {
    const layout = layoutFromSeed(input(), 1);
    expect(middleY(layout, "tall")).toBeGreaterThan(middleY(layout, "shrub"));
    for (const low of ["low", "edge"]) expect(middleY(layout, "shrub")).toBeGreaterThan(middleY(layout, low));
    expect(middleY(layout, "tall") - middleY(layout, "edge")).toBeGreaterThan(5);
    const behind = layoutFromSeed(input({ standpoint: { kind: "one side", lookAngle: -Math.PI / 2 } }), 1);
    expect(middleY(behind, "edge") - middleY(behind, "tall")).toBeGreaterThan(5);
    expect(layout.score.order).toBeGreaterThan(0.55);
    const easy = input({ rows: MIXED.map((one) => ({ ...one, quantity: Math.round(0.6 * one.quantity) })) });
    expect(layoutsOffered(easy, [1, 2, 3])[0]?.score.order).toBeGreaterThan(0.9);
  });

  it("stands from the middle out where it is seen all round", () => {
    const plan = groundPlan(planFromOutline(driftOutline([0, 0], 30, 20, 0.3)));
    const layout = layoutFromSeed(input({ plan, standpoint: { kind: "all round" } }), 4);
    const edgeFt = (key: string) => {
      const own = layout.placements.filter((p) => p.key === key);
      return own.reduce((sum, { at }) => sum + Math.min(...plan.barriers.map((barrier) => barrierNearest(at, barrier).awayFt)), 0) / own.length;
    };
    expect(edgeFt("tall")).toBeGreaterThan(edgeFt("per"));
    expect(edgeFt("per")).toBeGreaterThan(edgeFt("edge"));
  });

  it("has its groups in odd numbers and its repeats spread along the bed", () => {
    const layout = layoutFromSeed(input(), 1);
    const sizes = new Map<number, number>();
    for (const { group } of layout.placements) sizes.set(group, (sizes.get(group) ?? 0) + 1);
    for (const size of sizes.values()) if (size <= 9) expect(size % 2).toBe(1);
    const xs = layout.placements.filter(({ key }) => key === "per").map(({ at }) => at[0]);
    expect(Math.max(...xs) - Math.min(...xs)).toBeGreaterThan(20);
  });

  it("keeps what walls, windows, walks, wells and lines ask for a grown plant", () => {
    const keepClear: KeepClear[] = [
      { what: "boulder", at: [20, 5], radiusFt: 1.5, clearFt: 0.5 },
      {
        what: "overhead line",
        path: [
          [0, 9],
          [40, 9],
        ],
        heightFt: 16,
        clearFt: 10,
      },
      {
        what: "buried line",
        path: [
          [30, 0],
          [30, 12],
        ],
        clearFt: 5,
      },
      { what: "spout", at: [3, 11], radiusFt: 0.3, clearFt: 1.5 },
    ];
    const plan = border([{ what: "walk" }, { what: "open" }, { what: "house wall", windows: [{ fromFt: 10, toFt: 16, sillFt: 2.5 }] }, { what: "lawn" }], keepClear);
    const given = input({ plan });
    for (const seed of [1, 2]) {
      const layout = layoutFromSeed(given, seed);
      for (const { at, taxon } of standing(given, layout)) {
        const mature = { heightFt: rangeMiddle(taxon.heightFt), spreadFt: rangeMiddle(taxon.spreadFt) };
        for (const barrier of plan.barriers) expect(barrierNearest(at, barrier).awayFt).toBeGreaterThanOrEqual(barrierRoomFt(barrier, taxon, mature) - 0.5);
      }
      expect(layout.placements.filter(({ key }) => key === "tall")).toEqual([]);
      expect(layout.unplaced.find(({ key }) => key === "tall")?.words).toContain("far enough");
    }
  });

  it("does not hide an evergreen in winter behind a bare shrub if it can be helped", () => {
    const rows = [row("bare", shrub, 6), row("green", groundTaxon("shrub", 4, 4, { foliage: "evergreen" }), 6), row("spire", spire, 2), row("low", perennial, 30)];
    const given = input({ rows });
    const [best] = layoutsOffered(given, [1, 2, 3, 4, 5]);
    if (!best) throw new Error("no layout");
    expect(evergreensHidden(standing(given, best), front, [20, 6]).length).toBeLessThanOrEqual(1);
  });

  it("sets a list that is too much for the bed closer, says by how much, and names what is left out", () => {
    const given = input({ rows: [row("shrub", shrub, 60), row("per", tallPerennial, 60)] });
    const layout = layoutFromSeed(given, 1);
    expect(layout.spacingShare).toBe(0.75);
    const missing = layout.unplaced.reduce((sum, { quantity }) => sum + quantity, 0);
    expect(missing).toBeGreaterThan(0);
    expect(layout.placements.length + missing).toBe(120);
    expect(tightest(given, layout)).toBeGreaterThanOrEqual(0.98 - 1e-9);
  });

  it("fills a bed to 86 % of its ground, set at most six in a hundred closer, of one size or many", () => {
    for (const mix of [[tallPerennial], [shrub, perennial], [tallShrub, tallPerennial, edging]]) {
      const share = (0.86 * 480) / mix.length;
      const rows = mix.map((taxon, i) => row(`r${i}`, taxon, Math.floor(share / plantCellSqFt(rangeMiddle(taxon.spreadFt), "triangular"))));
      const layout = layoutFromSeed(input({ rows }), 1);
      const missing = layout.unplaced.reduce((sum, { quantity }) => sum + quantity, 0);
      expect(layout.spacingShare).toBeGreaterThanOrEqual(0.94);
      expect(missing / (missing + layout.placements.length)).toBeLessThan(0.03);
    }
  });

  it("lets plants grow under a tree but keeps trees apart from each other, and leaves standing plants where they are", () => {
    const fixed = [{ key: "old", taxon: shadeTree, spacingFt: 30, at: [10, 8] as Point }];
    const given = input({ rows: [row("tree", smallTree, 1), ...MIXED], fixed });
    const layout = layoutFromSeed(given, 3);
    const tree = layout.placements.find(({ key }) => key === "tree");
    expect(Math.hypot((tree?.at[0] ?? 0) - 10, (tree?.at[1] ?? 0) - 8)).toBeGreaterThan(0.98 * 22.5);
    expect(layout.placements.some(({ key, at }) => key !== "tree" && Math.hypot(at[0] - 10, at[1] - 8) < 5)).toBe(true);
    for (const { key, at } of layout.placements) if (key !== "tree") expect(Math.hypot(at[0] - 10, at[1] - 8)).toBeGreaterThan(1);
  });

  it("offers several seeds, the best first, and nothing for an empty list", () => {
    const offered = layoutsOffered(input(), [1, 2, 3]);
    expect(offered.map(({ seed }) => seed).sort()).toEqual([1, 2, 3]);
    for (const [i, layout] of offered.entries()) if (i > 0) expect(layout.score.overall).toBeLessThanOrEqual(offered[i - 1]?.score.overall ?? 0);
    expect(layoutFromSeed(input({ rows: [] }), 1).placements).toEqual([]);
  });

  it("accounts for every plant of any list in any bed", () => {
    const taxa = Object.values(GROUND_TAXA);
    const rows = fc.array(fc.record({ taxon: fc.constantFrom(...taxa), quantity: fc.integer({ min: 0, max: 25 }) }), { maxLength: 6 });
    fc.assert(
      fc.property(rows, fc.integer({ min: 3, max: 40 }), fc.integer({ min: 3, max: 20 }), fc.integer(), (list, length, width, seed) => {
        const given = input({ plan: groundPlan(planFromOutline(rectangleOutline(length, width))), rows: list.map(({ taxon, quantity }, i) => row(`k${i}`, taxon, quantity)) });
        const layout = layoutFromSeed(given, seed);
        for (const { key, quantity } of given.rows) {
          const placed = layout.placements.filter((p) => p.key === key).length;
          expect(placed + (layout.unplaced.find((u) => u.key === key)?.quantity ?? 0)).toBe(quantity);
        }
        for (const { at } of layout.placements) expect(pointInOutline(at, given.plan.outline)).toBe(true);
        expect(tightest(given, layout)).toBeGreaterThanOrEqual(0.98 - 1e-9);
        for (const part of [layout.score.order, layout.score.evergreensSeen, layout.score.spread, layout.score.room]) {
          expect(part).toBeGreaterThanOrEqual(0);
          expect(part).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 25 },
    );
  });
});
