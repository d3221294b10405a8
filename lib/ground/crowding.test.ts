import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { GROUND_TAXA, groundTaxon } from "../../tests/fixtures/ground-taxa";
import { type Border, type KeepClear, STREET_CORNER } from "./border";
import { type Crowding, pairRoomFt, pairsCrowding, planCrowding, plantCrowding } from "./crowding";
import { crowdingSolutions, spreadBesideFt } from "./crowding-solution";
import { groundPlan } from "./ground-plan";
import { type Point, rectangleOutline } from "./outline";
import { planFromOutline } from "./plan-outline";
import { type GrownPlant, type PlanPlant, plantsGrown, radiusAtYear } from "./plan-plant";
import type { GroundTaxon } from "./stratum";

const { shadeTree, smallTree, spire, tallShrub, shrub, tallPerennial, perennial, edging, climber } = GROUND_TAXA;
const plant = (id: string, taxon: GroundTaxon, at: Point, more: Partial<PlanPlant> = {}): PlanPlant => ({ id, key: id, taxon, at, sizeText: "", existing: false, ...more });
const bed = (edges: readonly Border[] = [], keepClear: readonly KeepClear[] = []) =>
  groundPlan(
    planFromOutline(rectangleOutline(40, 12)).map((edge, i) => ({ ...edge, border: edges[i] ?? edge.border })),
    keepClear,
  );
const crowding = (plants: readonly PlanPlant[], plan = bed()) => planCrowding(plantsGrown(plants), plan);

describe("two plants", () => {
  it("crowd from the year in which the wider overgrows half the narrower's radius, not before", () => {
    const grown = plantsGrown([plant("a", tallShrub, [10, 6]), plant("b", shrub, [13, 6])]);
    const [one] = pairsCrowding(grown);
    expect(one?.ids).toEqual(["a", "b"]);
    const [a, b] = grown;
    if (!a || !b || !one) throw new Error("no pair");
    const room = (year: number) => pairRoomFt(radiusAtYear(a.growth, year), radiusAtYear(b.growth, year));
    expect(room(one.year)).toBeGreaterThan(3);
    expect(room(one.year - 1)).toBeLessThanOrEqual(3);
    expect(one.overFt).toBeCloseTo(room(20) - 3, 9);
  });

  it("set at their mature spread never crowd, nor at the usual 0.8 of it", () => {
    expect(crowding([plant("a", shrub, [10, 6]), plant("b", shrub, [14, 6])])).toEqual([]);
    expect(crowding([plant("a", shrub, [10, 6]), plant("b", shrub, [13.2, 6])])).toEqual([]);
  });

  it("do not mind where one is a bulb, where both are one mat, or where one stays under the other's branches", () => {
    expect(crowding([plant("a", edging, [10, 6]), plant("b", edging, [10.4, 6])])).toEqual([]);
    expect(crowding([plant("a", groundTaxon("bulb", 1, 0.5), [10, 6]), plant("b", shrub, [10.3, 6])])).toEqual([]);
    expect(crowding([plant("tree", shadeTree, [10, 6]), plant("low", perennial, [13, 6])])).toEqual([]);
    expect(crowding([plant("tree", spire, [10, 6], { taxon: groundTaxon("conifer", 40, 16) }), plant("low", perennial, [13, 6])]).length).toBe(1);
  });

  it("that both stand there already are left in peace; a new one beside an old one is not", () => {
    const old = { existing: true };
    expect(crowding([plant("a", tallShrub, [10, 6], old), plant("b", tallShrub, [12, 6], old)])).toEqual([]);
    expect(crowding([plant("a", tallShrub, [10, 6], old), plant("b", tallShrub, [12, 6])]).length).toBe(1);
  });
});

describe("a plant at an edge", () => {
  const what = (list: readonly Crowding[]) => list.map(({ kind, year }) => `${kind} ${year > 0 ? "later" : "at once"}`);

  it("outgrows walk, drive and wall, but not lawn or water", () => {
    for (const border of [{ what: "walk" }, { what: "drive" }, { what: "house wall", windows: [] }] as const) {
      expect(what(crowding([plant("a", tallShrub, [10, 1.5])], bed([border])))).toEqual(["barrier later"]);
      expect(crowding([plant("a", tallShrub, [10, 2.6])], bed([border]))).toEqual([]);
    }
    for (const border of [{ what: "lawn" }, { what: "water" }, { what: "open" }] as const) expect(crowding([plant("a", tallShrub, [10, 1.5])], bed([border]))).toEqual([]);
    expect(crowding([plant("a", climber, [10, 0.5])], bed([{ what: "house wall", windows: [] }]))).toEqual([]);
  });

  it("grows over a window's sill, beside the window not", () => {
    const wall: Border = { what: "house wall", windows: [{ fromFt: 8, toFt: 14, sillFt: 3 }] };
    expect(what(crowding([plant("a", tallShrub, [10, 4])], bed([wall])))).toEqual(["barrier later"]);
    expect(crowding([plant("a", tallShrub, [20, 4])], bed([wall]))).toEqual([]);
    expect(crowding([plant("a", tallPerennial, [10, 1.5], { taxon: groundTaxon("perennial", 2.5, 2) })], bed([wall]))).toEqual([]);
  });

  it("is too near a retaining wall's top at once, and takes the sight at a corner when it is higher than allowed", () => {
    const wall: Border = { what: "retaining wall", heightFt: 4, bedAt: "top", setbackFt: 3 };
    expect(what(crowding([plant("a", shrub, [10, 2])], bed([wall])))).toEqual(["barrier at once"]);
    expect(crowding([plant("a", perennial, [10, 2])], bed([wall]))).toEqual([]);
    expect(what(crowding([plant("a", shrub, [10, 6])], bed([STREET_CORNER])))).toEqual(["barrier later"]);
    expect(crowding([plant("a", perennial, [10, 6])], bed([STREET_CORNER]))).toEqual([]);
  });

  it("grows into a wire, stands on a pipe, and closes a well", () => {
    const wire: KeepClear = {
      what: "overhead line",
      path: [
        [0, 6],
        [40, 6],
      ],
      heightFt: 25,
      clearFt: 10,
    };
    expect(what(crowding([plant("a", smallTree, [10, 6])], bed([], [wire])))).toEqual(["barrier later"]);
    expect(crowding([plant("a", tallShrub, [10, 6])], bed([], [wire]))).toEqual([]);
    const pipe: KeepClear = {
      what: "buried line",
      path: [
        [0, 6],
        [40, 6],
      ],
      clearFt: 5,
    };
    expect(what(crowding([plant("a", smallTree, [10, 4])], bed([], [pipe])))).toEqual(["barrier at once"]);
    expect(crowding([plant("a", perennial, [10, 6])], bed([], [pipe]))).toEqual([]);
    const well: KeepClear = { what: "well", at: [10, 6], radiusFt: 1, clearFt: 3 };
    expect(what(crowding([plant("a", tallShrub, [15.5, 6])], bed([], [well])))).toEqual(["barrier later"]);
  });
});

describe("crowding of a whole bed", () => {
  const taxa = fc.constantFrom<GroundTaxon>(smallTree, tallShrub, shrub, tallPerennial, perennial, edging);
  const places = fc.tuple(fc.double({ min: 0.5, max: 39.5, noNaN: true }), fc.double({ min: 0.5, max: 11.5, noNaN: true }));
  const lists = fc.array(fc.record({ taxon: taxa, at: places }), { maxLength: 14 }).map((list) => list.map(({ taxon, at }, i) => plant(`p${i}`, taxon, at)));

  it("is the same in any order, and dragging one plant finds what the whole finds for it", () => {
    fc.assert(
      fc.property(lists, (plants) => {
        const plan = bed([{ what: "walk" }, { what: "open" }, { what: "house wall", windows: [] }]);
        const whole = crowding(plants, plan);
        const key = (one: Crowding) => (one.kind === "pair" ? [...one.ids].sort().join(" ") : `${one.id} ${one.barrier}`);
        expect(
          crowding([...plants].reverse(), plan)
            .map(key)
            .sort(),
        ).toEqual(whole.map(key).sort());
        const grown = plantsGrown(plants);
        for (const own of grown) {
          const mine = whole.filter((one) => (one.kind === "pair" ? one.ids.includes(own.id) : one.id === own.id));
          expect(plantCrowding(own, grown, plan).map(key).sort()).toEqual(mine.map(key).sort());
        }
      }),
      { numRuns: 60 },
    );
  });

  it("is solved by every suggestion that is made", () => {
    fc.assert(
      fc.property(lists, (plants) => {
        const plan = bed(
          [{ what: "walk" }, { what: "open" }, { what: "house wall", windows: [{ fromFt: 5, toFt: 9, sillFt: 2 }] }],
          [
            {
              what: "overhead line",
              path: [
                [0, 3],
                [40, 3],
              ],
              heightFt: 20,
              clearFt: 6,
            },
          ],
        );
        const grown = plantsGrown(plants);
        const same = (a: Crowding, b: Crowding) =>
          a.kind === "pair" ? b.kind === "pair" && a.ids.every((id) => b.ids.includes(id)) : b.kind === "barrier" && a.id === b.id && a.barrier === b.barrier;
        for (const one of planCrowding(grown, plan).slice(0, 4)) {
          const solutions = crowdingSolutions(one, grown, plan);
          expect(solutions.at(-1)?.kind).toBe("drop");
          for (const solution of solutions) {
            const changed = grown.flatMap((own): GrownPlant[] => {
              if (own.id !== solution.id) return [own];
              if (solution.kind === "drop") return [];
              if (solution.kind === "move") return [{ ...own, at: solution.to }];
              const spread = solution.maxSpreadFt ?? 2 * radiusAtYear(own.growth, 20);
              const height = solution.maxHeightFt ?? own.growth.heightFt[20] ?? 0;
              return [{ ...own, growth: { heightFt: own.growth.heightFt.map((h) => Math.min(h, height)), radiusFt: own.growth.radiusFt.map((r) => Math.min(r, spread / 2)) } }];
            });
            const left = planCrowding(changed, plan);
            expect(left.some((other) => same(one, other) && other.overFt > 1e-6)).toBe(false);
            if (solution.kind === "move") expect(left.filter((other) => (other.kind === "pair" ? other.ids.includes(solution.id) : other.id === solution.id))).toEqual([]);
          }
        }
      }),
      { numRuns: 60 },
    );
  });

  it("begins no later where plants stand nearer", () => {
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 8, noNaN: true }), fc.double({ min: 0.1, max: 1, noNaN: true }), (apart, share) => {
        const year = (feet: number) => crowding([plant("a", tallShrub, [10, 6]), plant("b", shrub, [10 + feet, 6])])[0]?.year ?? 99;
        expect(year(apart * share)).toBeLessThanOrEqual(year(apart));
      }),
    );
  });

  it("gives the widest plant that still fits beside another", () => {
    expect(spreadBesideFt(3, 5)).toBeCloseTo(7, 9);
    expect(spreadBesideFt(3, 4)).toBeCloseTo(4, 9);
    expect(spreadBesideFt(3, 3)).toBeNull();
  });
});
