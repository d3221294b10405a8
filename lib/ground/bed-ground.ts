import { type Cover, coverAtYear, type GroundRow, rowCoverSqFt, rowsGrown } from "./cover";
import { bedDensity } from "./density";
import { YEARS_AHEAD } from "./growth";

export type BedGround = {
  readonly plantableSqFt: number;
  /** 1–10. */
  readonly density: number;
  readonly densityRaw: number;
  readonly densityWords: string;
  /** Square feet that everything but canopy trees takes when grown. */
  readonly takenSqFt: number;
  /** Years 0 (planting day) to 20, in order. */
  readonly coverByYear: readonly Cover[];
};

/** What a bed's ground comes to: density and cover by year, from its area in square feet and its rows. Independent of the order of the rows. */
export function bedGround({ areaSqFt, rows }: { readonly areaSqFt: number; readonly rows: readonly GroundRow[] }): BedGround {
  const plantableSqFt = Math.max(0, areaSqFt);
  const density = bedDensity(plantableSqFt, rows);
  const grown = rowsGrown(rows);
  return {
    plantableSqFt,
    density: density.label,
    densityRaw: density.raw,
    densityWords: density.words,
    takenSqFt: density.takenSqFt,
    coverByYear: Array.from({ length: YEARS_AHEAD + 1 }, (_, year) => coverAtYear(plantableSqFt, grown, year)),
  };
}

/** Square feet under the crowns of each row by itself at a year, in the order of the rows; at most the bed each. For interest on the ground. */
export function bedRowAreas({ areaSqFt, rows }: { readonly areaSqFt: number; readonly rows: readonly GroundRow[] }, year: number): number[] {
  return rows.map((row) => {
    const [grown] = rowsGrown([row]);
    return grown ? rowCoverSqFt(grown, Math.max(0, areaSqFt), year) : 0;
  });
}
