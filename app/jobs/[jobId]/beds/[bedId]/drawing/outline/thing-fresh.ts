import { type KeepClear, type LineKind, SPOT_KINDS, type SpotKind, USUAL_CLEAR_FT } from "@/lib/ground/border";
import type { Point } from "@/lib/ground/outline";

/** Radius of a thing before anyone has measured it, in feet (common sizes, no source): a 16 in trunk, a 3 ft stone, a 6 in well cap, a 4 in spout, a 1 ft outlet. */
const USUAL_RADIUS_FT: Readonly<Record<SpotKind, number>> = { "existing tree": 8 / 12, boulder: 1.5, well: 0.25, spout: 2 / 12, outlet: 0.5 };
/** Height of an overhead line before anyone has asked the utility (common practice, no source): the low wires along a street. */
const USUAL_WIRE_FT = 20;

const isSpot = (what: SpotKind | LineKind): what is SpotKind => SPOT_KINDS.some((kind) => kind === what);

/** A thing to keep clear of as it is first put down: its usual size and clearance. */
export function thingFresh(what: SpotKind | LineKind, places: readonly Point[]): KeepClear {
  const clearFt = USUAL_CLEAR_FT[what];
  if (isSpot(what)) return { what, at: places[0] ?? [0, 0], radiusFt: USUAL_RADIUS_FT[what], clearFt };
  return what === "overhead line" ? { what, path: places, heightFt: USUAL_WIRE_FT, clearFt } : { what, path: places, clearFt };
}
