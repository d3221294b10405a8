// How far from a barrier a plant's middle has to be, for its size. Figures that have a source are checked in tests/outside/setbacks.test.ts.
import { type Border, type KeepClear, SHRUB_SHARE_OF_CLEAR } from "./border";
import type { Barrier } from "./ground-plan";
import type { PlantExtent } from "./starting-size";
import { type GroundTaxon, groundSpread, rangeMiddle, taxonStratum } from "./stratum";

/** A crown may hang over an edge by this much before anyone minds (common practice, no source): a clip of the shears. */
export const EDGE_TOLERANCE_FT = 0.5;
/** A tree's trunk from walk, curb or drive (Marshalltown IA, Ord. 15042, 2022; Corry PA): its crown goes over them. */
export const TRUNK_FROM_PAVING_FT = 3;
/** The crown of a plant higher than the sill stays so far from a window (common practice, no source). */
export const WINDOW_CLEAR_FT = 2;

/** A tree from a building, by mature height: 8–10 ft (taken as 9) to 30 ft, 15 ft to 70 ft, 20 ft above (Arbor Day Foundation, sizing chart). */
export function treeFromWallFt(matureHeightFt: number): number {
  if (matureHeightFt <= 30) return 9;
  return matureHeightFt < 70 ? 15 : 20;
}

function isTree(taxon: GroundTaxon): boolean {
  return taxonStratum(taxon) === "canopy trees";
}

function isWoody(taxon: GroundTaxon): boolean {
  return taxon.kind === "tree" || taxon.kind === "shrub" || taxon.kind === "conifer" || taxon.kind === "vine";
}

/** Half the spread over the ground at an extent. */
export function crownRadiusFt(taxon: GroundTaxon, extent: PlantExtent): number {
  return groundSpread(taxon, extent.spreadFt) / 2;
}

/** A crown against a wall: it may touch, not press; a tree's may rise over it, but the trunk keeps its distance. A climbing vine belongs on the wall. */
function wallRoomFt(taxon: GroundTaxon, radiusFt: number): number {
  if (taxon.kind === "vine") return 0;
  return isTree(taxon) ? Math.min(radiusFt, treeFromWallFt(rangeMiddle(taxon.heightFt))) : radiusFt;
}

/** Feet from a plant's middle to an edge that it needs at an extent; 0 where the border asks for nothing. A window in it is a barrier of its own. */
export function borderRoomFt(border: Border, taxon: GroundTaxon, extent: PlantExtent): number {
  const radiusFt = crownRadiusFt(taxon, extent);
  switch (border.what) {
    case "open":
    case "lawn":
    case "water":
      return 0;
    case "walk":
    case "drive":
      return isTree(taxon) ? TRUNK_FROM_PAVING_FT : radiusFt;
    case "house wall":
      return wallRoomFt(taxon, radiusFt);
    case "retaining wall":
      if (border.bedAt === "foot") return wallRoomFt(taxon, radiusFt);
      return isWoody(taxon) ? border.setbackFt : 0;
    case "street corner":
      return extent.heightFt > border.maxHeightFt ? border.withinFt : 0;
  }
}

/** Feet from a plant's middle to a window: none for what stays under the sill, for vines on the wall, and for trees, which are seen under. */
function windowRoomFt(sillFt: number, taxon: GroundTaxon, extent: PlantExtent): number {
  return extent.heightFt <= sillFt || isTree(taxon) || taxon.kind === "vine" ? 0 : crownRadiusFt(taxon, extent) + WINDOW_CLEAR_FT;
}

/** Feet from a plant's middle to a thing that it needs at an extent. For lines to the nearest point below or above; for round things to their middle. */
export function thingRoomFt(thing: KeepClear, taxon: GroundTaxon, extent: PlantExtent): number {
  switch (thing.what) {
    case "existing tree":
    case "boulder":
      return thing.radiusFt + thing.clearFt;
    case "well":
    case "spout":
    case "outlet":
      return thing.radiusFt + thing.clearFt + crownRadiusFt(taxon, extent);
    case "overhead line":
      return extent.heightFt > thing.heightFt - thing.clearFt ? thing.clearFt + crownRadiusFt(taxon, extent) : 0;
    case "buried line":
      if (isTree(taxon)) return thing.clearFt;
      return isWoody(taxon) ? SHRUB_SHARE_OF_CLEAR * thing.clearFt : 0;
  }
}

/** Feet from a plant's middle to a barrier that it needs at an extent. */
export function barrierRoomFt(barrier: Barrier, taxon: GroundTaxon, extent: PlantExtent): number {
  switch (barrier.kind) {
    case "edge":
      return borderRoomFt(barrier.border, taxon, extent);
    case "window":
      return windowRoomFt(barrier.window.sillFt, taxon, extent);
    case "thing":
      return thingRoomFt(barrier.thing, taxon, extent);
  }
}
