import type { BedSize } from "./bed";
import { type Outline, type OutlineFault, outlineArea, outlineFault, rectangleOutline } from "./outline";

/** A bed's outline in feet, whichever way its size was given. */
export function bedSizeOutline(size: BedSize): Outline {
  return size.by === "rectangle" ? rectangleOutline(size.lengthFt, size.widthFt) : size.points;
}

/** Ground of a bed in square feet. */
export function bedSizeArea(size: BedSize): number {
  return size.by === "rectangle" ? size.lengthFt * size.widthFt : outlineArea(size.points);
}

/** What keeps a size from being a bed, in plain words; null when it is sound. */
export function bedSizeFault(size: BedSize): OutlineFault | null {
  if (size.by === "outline") return outlineFault(size.points);
  for (const [name, feet] of [
    ["length", size.lengthFt],
    ["width", size.widthFt],
  ] as const)
    if (!Number.isFinite(feet) || feet <= 0) return { kind: "no area", words: `The bed's ${name} must be more than zero.`, place: null };
  return null;
}
