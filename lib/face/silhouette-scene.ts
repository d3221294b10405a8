// A plant beside a person on one scale, with a rule of feet: everything a drawing needs to be set out.
import type { FaceMark } from "./face-mark";
import { PERSON_FT, personMarks } from "./person";
import type { PlantLook } from "./plant-look";
import type { SilhouettePlant } from "./plant-shape";
import { silhouette } from "./silhouette";

/** Marks moved to the right by `atFt`. */
export type PlacedMarks = { readonly atFt: number; readonly marks: readonly FaceMark[] };

export type SilhouetteScene = {
  /** Left edge, width and height above ground of the drawing, ft. */
  readonly leftFt: number;
  readonly widthFt: number;
  readonly heightFt: number;
  readonly plants: readonly PlacedMarks[];
  readonly person: PlacedMarks;
  /** Heights to rule, ft, ground first. */
  readonly rules: readonly number[];
  readonly plantCount: number;
};

/** Small plants are drawn in a row, set at mature spread, as many as fit about so wide. */
const ROW_FT = 7;
const ROW_MOST = 7;
const PERSON_WIDE_FT = 1.8;

/** A round step that gives three to six rules. */
function ruleStep(heightFt: number): number {
  return [1, 2, 5, 10, 20, 50, 100].find((step) => heightFt / step <= 6) ?? 100;
}

/** Odd numbers look planted. */
function rowCount(spreadFt: number): number {
  const fits = Math.floor(ROW_FT / spreadFt);
  return fits < 3 ? 1 : Math.min(ROW_MOST, fits % 2 ? fits : fits - 1);
}

/**
 * The scene: plants from the left, the person at the right.
 * @param seed the plant's id: every plant of the row differs a little, and stays the same
 */
export function silhouetteScene(plant: SilhouettePlant, look: PlantLook, seed: string): SilhouetteScene {
  const { spreadFt, heightFt } = plant;
  const count = rowCount(spreadFt);
  const plants = Array.from({ length: count }, (_, i) => ({ atFt: i * spreadFt, marks: silhouette(plant, look, `${seed}/${i}`) }));
  const rowEnd = (count - 1) * spreadFt + spreadFt / 2;
  const tallest = Math.max(heightFt, PERSON_FT);
  const gap = Math.max(1.2, spreadFt * 0.06);
  const personAt = rowEnd + gap + PERSON_WIDE_FT / 2;
  const margin = Math.max(0.4, tallest * 0.05);
  const leftFt = -spreadFt / 2 - margin;
  const step = ruleStep(tallest);
  return {
    leftFt,
    widthFt: personAt + PERSON_WIDE_FT / 2 + margin - leftFt,
    heightFt: tallest * 1.06,
    plants,
    person: { atFt: personAt, marks: personMarks() },
    rules: Array.from({ length: Math.floor(tallest / step) + 1 }, (_, i) => i * step),
    plantCount: count,
  };
}
