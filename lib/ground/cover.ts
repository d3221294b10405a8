import { growthCurve } from "./growth";
import { cellCover, patchCover } from "./patch-cover";
import { plantCellSqFt } from "./spacing";
import { type GroundTaxon, groundSpread, matureGroundSpread, STRATA, type Stratum, taxonStratum } from "./stratum";

/** A group of plants in a bed. spacingFt: on center, null for mature spread. */
export type GroundRow = {
  readonly taxon: GroundTaxon;
  readonly quantity: number;
  readonly spacingFt: number | null;
  readonly sizeText: string;
  readonly existing: boolean;
};

/** Shares of the plantable ground under crowns at the height of the season, 0–1. */
export type Cover = { readonly year: number; readonly overall: number; readonly byStratum: Readonly<Record<Stratum, number>> };

/** A row ready to be looked at in any year: radius in feet by year. */
export type GrownRow = { readonly quantity: number; readonly spacingFt: number; readonly stratum: Stratum; readonly radiusFt: (year: number) => number };

/** Rows with something in them, with their growth worked out once. */
export function rowsGrown(rows: readonly GroundRow[]): GrownRow[] {
  return rows
    .filter((row) => row.quantity > 0)
    .map(({ taxon, quantity, spacingFt, sizeText, existing }) => {
      const curve = growthCurve(taxon, sizeText, existing);
      return {
        quantity,
        spacingFt: spacingFt !== null && spacingFt > 0 ? spacingFt : matureGroundSpread(taxon),
        stratum: taxonStratum(taxon),
        radiusFt: (year) => groundSpread(taxon, curve(year).spreadFt) / 2,
      };
    });
}

/** Square feet under the crowns of one row by itself at a year, at most the bed. */
export function rowCoverSqFt(row: GrownRow, areaSqFt: number, year: number): number {
  return Math.min(areaSqFt, patchCover(row.quantity, row.spacingFt, row.radiusFt(year)));
}

/**
 * Share of the bed that rows standing side by side cover together. Each row has its own share of the ground, quantity · √3/2 · s²; where the shares
 * add up to more than the bed, all spacings shrink alike until they fit. Within its share a row covers what circles on an endless grid cover (exact);
 * what its outer plants reach beyond it falls evenly over the rest of the bed, on ground that is open or already covered alike.
 * Exact for a single row inside its bed; never over 1.
 */
function shareCovered(rows: readonly GrownRow[], areaSqFt: number, year: number): number {
  if (areaSqFt <= 0 || rows.length === 0) return 0;
  const asked = rows.reduce((sum, row) => sum + row.quantity * plantCellSqFt(row.spacingFt, "triangular"), 0);
  const shrink = Math.min(1, Math.sqrt(areaSqFt / asked));
  const parts = rows.map((row) => {
    const spacingFt = row.spacingFt * shrink;
    const radiusFt = row.radiusFt(year);
    const share = row.quantity * plantCellSqFt(spacingFt, "triangular");
    const inside = row.quantity * cellCover(spacingFt, radiusFt);
    const beyond = Math.max(0, patchCover(row.quantity, spacingFt, radiusFt) - inside);
    const elsewhere = areaSqFt - share;
    return { bare: Math.max(0, share - inside), share, missed: elsewhere > 1e-9 * areaSqFt ? 1 - Math.min(1, beyond / elsewhere) : 1 };
  });
  const missedBy = (skip: number) => parts.reduce((product, part, i) => (i === skip ? product : product * part.missed), 1);
  const open = Math.max(0, areaSqFt - parts.reduce((sum, part) => sum + part.share, 0));
  const bare = open * missedBy(-1) + parts.reduce((sum, part, i) => sum + part.bare * missedBy(i), 0);
  return Math.min(1, Math.max(0, 1 - bare / areaSqFt));
}

/**
 * Cover of a bed at a year, for a bed known by its area and counts (no drawn positions). Per layer: that layer's rows side by side (see above).
 * Overall: shrubs, herbs and groundcover stand beside each other and are taken together; trees stand over them, and what is bare under them is taken to
 * be bare elsewhere too: overall = 1 − (1 − trees) · (1 − all else). Plants that stay count like the others; none are taken out for crowding.
 */
export function coverAtYear(areaSqFt: number, rows: readonly GrownRow[], year: number): Cover {
  const of = (chosen: (stratum: Stratum) => boolean) =>
    shareCovered(
      rows.filter((row) => chosen(row.stratum)),
      areaSqFt,
      year,
    );
  const [trees, tall, low, herbs] = STRATA;
  const byStratum = {
    "canopy trees": of((s) => s === trees),
    "tall shrubs": of((s) => s === tall),
    "low shrubs": of((s) => s === low),
    "herbs and groundcover": of((s) => s === herbs),
  } satisfies Record<Stratum, number>;
  return { year, overall: 1 - (1 - byStratum[trees]) * (1 - of((s) => s !== trees)), byStratum };
}
