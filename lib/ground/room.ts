// How far from a barrier a plant's middle has to be, for its size. Figures that have a source are checked in tests/outside/setbacks.test.ts.
import { type Border, type KeepClear, SHRUB_SHARE_OF_CLEAR, type Window } from "./border";
import type { Barrier } from "./ground-plan";
import type { PlantExtent } from "./starting-size";
import { type GroundTaxon, groundSpread, rangeMiddle, taxonStratum } from "./stratum";

/** A crown may hang over an edge by this much before anyone minds (common practice, no source): a clip of the shears. */
export const EDGE_TOLERANCE_FT = 0.5;
/** A tree's trunk from walk, curb or drive (Marshalltown IA, Ord. 15042, 2022; Corry PA): its crown goes over them. */
export const TRUNK_FROM_PAVING_FT = 3;
/** A plant higher than the sill takes a window's view and light nearer than this in front of it (common practice, no source). */
export const WINDOW_VIEW_FT = 4;

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

/** Feet from a plant's middle to an edge that it needs at an extent; 0 where the border asks for nothing. Windows are asked by `windowRoomFt`. */
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

/** Whether a plant at so many feet along a wall stands before one of its windows and is higher than the sill; the window, or null. */
export function windowHidden(windows: readonly Window[], alongFt: number, taxon: GroundTaxon, extent: PlantExtent): Window | null {
  if (isTree(taxon) || taxon.kind === "vine") return null;
  const radiusFt = crownRadiusFt(taxon, extent);
  return windows.find((window) => extent.heightFt > window.sillFt && alongFt + radiusFt > window.fromFt + EDGE_TOLERANCE_FT && alongFt - radiusFt < window.toFt - EDGE_TOLERANCE_FT) ?? null;
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

/** Feet from a plant's middle to a barrier that it needs at an extent, standing so many feet along it. */
export function barrierRoomFt(barrier: Barrier, taxon: GroundTaxon, extent: PlantExtent, alongFt: number): number {
  if (barrier.kind === "thing") return thingRoomFt(barrier.thing, taxon, extent);
  const { border } = barrier;
  const room = borderRoomFt(border, taxon, extent);
  if (border.what !== "house wall" || !windowHidden(border.windows, alongFt, taxon, extent)) return room;
  return Math.max(room, crownRadiusFt(taxon, extent) + WINDOW_VIEW_FT);
}
