import type { Point } from "./outline";

/** A round crown seen from above. Feet. */
export type Circle = { readonly center: Point; readonly radiusFt: number };
