import { describe, expect, it } from "vitest";
import { SHRUB_SHARE_OF_CLEAR, STREET_CORNER, USUAL_CLEAR_FT } from "../../lib/ground/border";
import { pairRoomFt } from "../../lib/ground/crowding";
import { pairNeedFt } from "../../lib/ground/relax";
import { borderRoomFt, EDGE_TOLERANCE_FT, TRUNK_FROM_PAVING_FT, thingRoomFt, treeFromWallFt, WINDOW_CLEAR_FT } from "../../lib/ground/room";
import { spacingAimUsual, spacingForSpread } from "../../lib/ground/spacing";
import { groundTaxon } from "../fixtures/ground-taxa";
import {
  FROM_BUILDING,
  FROM_OVERHEAD_LINE,
  HALF_MATURE_WIDTH,
  HALF_SPREADS,
  PRACTICE,
  SIGHT_TRIANGLES,
  STREET_TREE,
  STREET_TREE_SPACING,
  TREE_FROM_BUILDING,
  TREE_PAIR,
} from "./setbacks";

const tree = (heightFt: number, spreadFt: number) => ({ taxon: groundTaxon("tree", heightFt, spreadFt), extent: { heightFt, spreadFt } });
const shrub = (heightFt: number, spreadFt: number) => ({ taxon: groundTaxon("shrub", heightFt, spreadFt), extent: { heightFt, spreadFt } });
const wall = { what: "house wall", windows: [] } as const;

describe("setbacks against published figures", () => {
  it("keep a tree from a wall by its height as the Arbor Day chart has it", () => {
    for (const { heightFt, wallFt } of TREE_FROM_BUILDING.rows) {
      const height = (heightFt[0] + heightFt[1]) / 2;
      expect(treeFromWallFt(height)).toBeGreaterThanOrEqual(wallFt[0]);
      expect(treeFromWallFt(height)).toBeLessThanOrEqual(wallFt[1]);
    }
  });

  it("keep a shrub half its mature width from a wall; the flat 3 ft of Toronto is a shrub of 6 ft, the 2 ft of the foundation bed one of 4 ft", () => {
    for (const spread of [2, 4, 6, 9]) {
      const { taxon, extent } = shrub(4, spread);
      expect(borderRoomFt(wall, taxon, extent)).toBeCloseTo(HALF_MATURE_WIDTH.share * spread, 12);
    }
    const flat = FROM_BUILDING.filter(({ what }) => what !== "tree").map(({ buildingFt }) => 2 * buildingFt);
    expect(flat).toEqual([6, 4]);
  });

  it("keep a small tree's trunk nearly the 10 ft of Toronto from a building: one foot less, by the middle of Arbor Day's 8–10", () => {
    const { taxon, extent } = tree(25, 20);
    expect((FROM_BUILDING[0]?.buildingFt ?? 0) - borderRoomFt(wall, taxon, extent)).toBe(1);
  });

  it("keep a trunk from curb and walk at least as far as every street-tree rule in hand asks", () => {
    const asked = STREET_TREE.flatMap(({ curbFt, sidewalkFt }) => [curbFt, sidewalkFt].flatMap((feet) => feet ?? []));
    expect(TRUNK_FROM_PAVING_FT).toBe(Math.max(...asked));
    const { taxon, extent } = tree(50, 40);
    expect(borderRoomFt({ what: "walk" }, taxon, extent)).toBe(3);
  });

  it("ask less of a tree beside a drive than street rules do: those are for the street, and stay with the local ordinance", () => {
    const asked = STREET_TREE.flatMap(({ drivewayFt }) => drivewayFt ?? []);
    expect(asked.filter((feet) => feet <= TRUNK_FROM_PAVING_FT)).toEqual([]);
  });

  it("keep a tree from buried lines as Syracuse does; the rules in hand run from 3 to 10 ft", () => {
    const asked = STREET_TREE.flatMap(({ buriedFt }) => buriedFt ?? []).sort((a, b) => a - b);
    expect(asked).toEqual([3, 5, 6, 10]);
    expect(USUAL_CLEAR_FT["buried line"]).toBe(5);
    const { taxon, extent } = tree(30, 20);
    expect(thingRoomFt({ what: "buried line", path: [], clearFt: USUAL_CLEAR_FT["buried line"] }, taxon, extent)).toBe(5);
  });

  it("keep trees from an overhead line at least as far as Duck River asks, where they grow up to it", () => {
    const line = { what: "overhead line", path: [], heightFt: 30, clearFt: USUAL_CLEAR_FT["overhead line"] } as const;
    const [duckRiver] = FROM_OVERHEAD_LINE;
    for (const [heightFt, spreadFt] of [
      [25, 20],
      [38, 30],
      [60, 60],
    ] as const) {
      const { taxon, extent } = tree(heightFt, spreadFt);
      const asked = duckRiver.rows.find(({ toHeightFt }) => toHeightFt === null || heightFt <= toHeightFt)?.awayFt ?? 0;
      expect(thingRoomFt(line, taxon, extent)).toBeGreaterThanOrEqual(asked);
    }
    const low = shrub(8, 8);
    expect(thingRoomFt(line, low.taxon, low.extent)).toBe(0);
  });

  it("are silent for a tree that stays under the wire: Duck River asks 10 ft all the same, the two others nothing", () => {
    const { taxon, extent } = tree(18, 15);
    expect(thingRoomFt({ what: "overhead line", path: [], heightFt: 30, clearFt: 10 }, taxon, extent)).toBe(0);
    expect(FROM_OVERHEAD_LINE.map(({ rows }) => rows[0].awayFt)).toEqual([10, 0, 0]);
  });

  it("take the sight at a corner from the middle of ten ordinances: 25 ft and 30 in", () => {
    if (STREET_CORNER.what !== "street corner") throw new Error("not a corner");
    const middle = (list: readonly number[]) => {
      const sorted = [...list].sort((a, b) => a - b);
      return ((sorted[Math.floor((sorted.length - 1) / 2)] ?? 0) + (sorted[Math.ceil((sorted.length - 1) / 2)] ?? 0)) / 2;
    };
    expect(middle(SIGHT_TRIANGLES.map(({ legFt }) => legFt))).toBe(STREET_CORNER.withinFt);
    expect(middle(SIGHT_TRIANGLES.flatMap(({ maxHeightFt }) => maxHeightFt ?? []))).toBe(STREET_CORNER.maxHeightFt);
    const high = shrub(3, 3);
    const low = shrub(2.5, 3);
    expect(borderRoomFt(STREET_CORNER, high.taxon, high.extent)).toBe(25);
    expect(borderRoomFt(STREET_CORNER, low.taxon, low.extent)).toBe(0);
  });

  it("let two crowns overlap by half the narrower's radius, as Palisades Beautiful has it for street trees", () => {
    expect(pairRoomFt(20, 8)).toBe(TREE_PAIR.widerShare * 20 + TREE_PAIR.narrowerShare * 8);
    expect(pairRoomFt(8, 20)).toBe(pairRoomFt(20, 8));
  });

  it("space trees at the sum of half their mature spreads, as Marshalltown asks; large ones of 40 to 60 ft so stand as Syracuse and Des Plaines have them", () => {
    const touching = (a: number, b: number) => pairNeedFt({ halfFt: a / 2, trunkFt: 1 }, { halfFt: b / 2, trunkFt: 1 });
    expect(touching(40, 24)).toBe(HALF_SPREADS.share * (40 + 24));
    for (const { size, leastFt, idealFt } of STREET_TREE_SPACING) {
      if (size !== "large") continue;
      for (const spread of [40, 50]) {
        expect(spacingForSpread(spread, spacingAimUsual("tree"))).toBeGreaterThanOrEqual(leastFt);
        expect(spacingForSpread(spread, spacingAimUsual("tree"))).toBeLessThanOrEqual(idealFt);
      }
    }
  });

  it("are practice, and marked so, for what no publication in hand gives", () => {
    expect(USUAL_CLEAR_FT).toMatchObject(PRACTICE.clearFt);
    expect([EDGE_TOLERANCE_FT, WINDOW_CLEAR_FT]).toEqual([PRACTICE.edgeToleranceFt, PRACTICE.windowClearFt]);
    expect(SHRUB_SHARE_OF_CLEAR * USUAL_CLEAR_FT["buried line"]).toBeCloseTo(PRACTICE.shrubFromPipeFt, 12);
  });
});
