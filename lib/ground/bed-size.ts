import type { BedSize } from "./bed";
import { type Outline, type OutlineFault, outlineArea, outlineFault, rectangleOutline } from "./outline";
import { type PlanOutline, planArea, planFault, planFromOutline, planPerimeter, planSampled } from "./plan-outline";

/** A bed's outline in feet, whichever way its size was given. */
export function bedSizeOutline(size: BedSize): Outline {
  switch (size.by) {
    case "rectangle":
      return rectangleOutline(size.lengthFt, size.widthFt);
    case "outline":
      return size.points;
    case "drawing":
      return planSampled(size.edges).outline;
  }
}

/** A bed's edges: as drawn, else straight ones that border nothing in particular. */
export function bedSizeEdges(size: BedSize): PlanOutline {
  return size.by === "drawing" ? size.edges : planFromOutline(bedSizeOutline(size));
}

/** Feet round a bed: exact but for Bézier edges, which are within 0.1 %. */
export function bedSizePerimeter(size: BedSize): number {
  return planPerimeter(bedSizeEdges(size));
}

/** Ground of a bed in square feet. */
export function bedSizeArea(size: BedSize): number {
  switch (size.by) {
    case "rectangle":
      return size.lengthFt * size.widthFt;
    case "outline":
      return outlineArea(size.points);
    case "drawing":
      return planArea(size.edges);
  }
}

/** What keeps a size from being a bed, in plain words; null when it is sound. */
export function bedSizeFault(size: BedSize): OutlineFault | null {
  if (size.by === "outline") return outlineFault(size.points);
  if (size.by === "drawing") return planFault(size.edges);
  for (const [name, feet] of [
    ["length", size.lengthFt],
    ["width", size.widthFt],
  ] as const)
    if (!Number.isFinite(feet) || feet <= 0) return { kind: "no area", words: `The bed's ${name} must be more than zero.`, place: null };
  return null;
}
