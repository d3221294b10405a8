// Area under round crowns where positions are known: the union of circles, clipped to a bed, without a grid of samples. The method is in circle-union.ts.
import type { Circle } from "./circle";
import { circleUnion } from "./circle-union";
import type { Outline } from "./outline";

/**
 * Square feet covered by circles, counted once where they overlap, clipped to an outline (null: not clipped). The outline is simple (`outlineFault` null),
 * convex or not, either way round. Circles without a size cover nothing. Relative error about 1e-12, the worse the smaller the part of a circle that counts.
 */
export function unionArea(all: readonly Circle[], outline: Outline | null): number {
  const radii = Float64Array.from(all, ({ radiusFt }) => radiusFt);
  return circleUnion(
    all.map(({ center }) => center),
    radii,
    outline,
  ).areaAt(radii);
}
