// What a bed's edge borders, and the things on the ground that plants keep clear of.
import type { Point } from "./outline";

/** A window over an edge: from–to in feet along the edge from its first corner, and the height of its sill over the bed's ground. */
export type Window = { readonly fromFt: number; readonly toFt: number; readonly sillFt: number };

export type Border =
  | { readonly what: "open" | "lawn" | "water" | "walk" | "drive" }
  | { readonly what: "house wall"; readonly windows: readonly Window[] }
  /** The bed lies at the wall's top or at its foot: tiers are beds that share such an edge. No woody plant within the setback, which is the wall's own (grid, drain). */
  | { readonly what: "retaining wall"; readonly heightFt: number; readonly bedAt: "top" | "foot"; readonly setbackFt: number }
  /** Drivers look across this edge: within so many feet of it nothing is higher than maxHeightFt but a clear trunk. */
  | { readonly what: "street corner"; readonly withinFt: number; readonly maxHeightFt: number };

export const OPEN: Border = { what: "open" };

/**
 * Sight at a corner where no ordinance is given: 25 ft along the street lines (Norfolk NE Sec. 27-290; Elizabethtown KY on local streets; Burtchville Township MI)
 * and nothing above 30 in (Burtchville; El Segundo CA; Elizabethtown). The local ordinance always goes before.
 */
export const STREET_CORNER: Border = { what: "street corner", withinFt: 25, maxHeightFt: 2.5 };

export const SPOT_KINDS = ["existing tree", "boulder", "well", "spout", "outlet"] as const;
export type SpotKind = (typeof SPOT_KINDS)[number];
export const LINE_KINDS = ["overhead line", "buried line"] as const;
export type LineKind = (typeof LINE_KINDS)[number];

export type KeepClear =
  /** A round thing so wide (trunk, stone, cap) with so many feet kept clear all round it. */
  | { readonly what: SpotKind; readonly at: Point; readonly radiusFt: number; readonly clearFt: number }
  /** heightFt: the lowest wire over the bed's ground; clearFt: kept free round it in every direction. */
  | { readonly what: "overhead line"; readonly path: readonly Point[]; readonly heightFt: number; readonly clearFt: number }
  /** clearFt: no tree's trunk nearer; other woody plants keep `SHRUB_SHARE_OF_CLEAR` of it. */
  | { readonly what: "buried line"; readonly path: readonly Point[]; readonly clearFt: number };

/** Share of a buried line's clearance that shrubs keep (common practice, no source: 2 ft of the trees' 5). */
export const SHRUB_SHARE_OF_CLEAR = 0.4;

/** Feet kept clear where nothing else is said. Buried lines: 5 ft for trees (City of Syracuse Parks: sewer, water, gas, electric); the rest common practice, no source. */
export const USUAL_CLEAR_FT = {
  "existing tree": 2,
  boulder: 0.5,
  well: 5,
  spout: 1.5,
  outlet: 3,
  "overhead line": 10,
  "buried line": 5,
} as const satisfies Record<SpotKind | LineKind, number>;

/** The name of a border as a sentence has it. */
export function borderText(border: Border): string {
  switch (border.what) {
    case "open":
      return "the open edge";
    case "lawn":
    case "water":
    case "walk":
    case "drive":
    case "house wall":
    case "retaining wall":
    case "street corner":
      return `the ${border.what}`;
  }
}
