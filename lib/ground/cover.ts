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

/** A plant without a size stands somewhere all the same. */
const LEAST_RADIUS_FT = 1e-3;

/** The value from 0 to 1 at which something that rises with it reaches a level; bisected to the last digit that matters. */
function risingReached(at: (value: number) => number, level: number): number {
  let [low, high] = [0, 1];
  for (let i = 0; i < 44; i++) {
    const middle = (low + high) / 2;
    if (at(middle) < level) low = middle;
    else high = middle;
  }
  return low;
}

/**
 * Spacings in feet at which rows that ask for more ground than there is fit it, closed up where it costs least cover. First those set wider than their
 * crowns touch, all by one factor, which costs nothing; then all whose crowns meet, so that a square foot given to any of them would cover as much more:
 * on an endless grid a cell gains d cover ÷ d cell = √3 · √(4r² − s²) ÷ s, from 0 where crowns touch (s = 2r) to 1 where they close (s = √3 · r), hence
 * s = 2r ÷ √(1 + gain² ÷ 3). If even closed they ask for more, all shrink alike and the bed is covered whole. So a row more never takes cover away.
 */
function spacingsFitted(rows: readonly GrownRow[], radiiFt: readonly number[], areaSqFt: number): number[] {
  const asked = (spacings: readonly number[]) => rows.reduce((sum, row, i) => sum + row.quantity * plantCellSqFt(spacings[i] ?? row.spacingFt, "triangular"), 0);
  const own = rows.map((row) => row.spacingFt);
  if (asked(own) <= areaSqFt) return own;
  const gaining = (gain: number) => own.map((spacingFt, i) => Math.min(spacingFt, (2 * Math.max(LEAST_RADIUS_FT, radiiFt[i] ?? 0)) / Math.sqrt(1 + gain ** 2 / 3)));
  const touching = gaining(0);
  const loosened = (share: number) => own.map((spacingFt, i) => Math.max(touching[i] ?? 0, share * spacingFt));
  if (asked(touching) <= areaSqFt) return loosened(risingReached((share) => asked(loosened(share)), areaSqFt));
  const closed = gaining(1);
  if (asked(closed) <= areaSqFt) return gaining(risingReached((gain) => -asked(gaining(gain)), -areaSqFt));
  const shrink = Math.sqrt(areaSqFt / asked(closed));
  return closed.map((spacingFt) => spacingFt * shrink);
}

/**
 * Share of the bed that rows standing side by side cover together. Each row has its own share of the ground, quantity · √3/2 · s²; where the shares
 * add up to more than the bed, the spacings close up until they fit (see above). Within its share a row covers what circles on an endless grid cover (exact);
 * what its outer plants reach beyond it falls evenly over the rest of the bed, on ground that is open or already covered alike.
 * Exact for a single row inside its bed; never over 1.
 */
function shareCovered(rows: readonly GrownRow[], areaSqFt: number, year: number): number {
  if (areaSqFt <= 0 || rows.length === 0) return 0;
  const radii = rows.map((row) => row.radiusFt(year));
  const spacings = spacingsFitted(rows, radii, areaSqFt);
  const parts = rows.map((row, i) => {
    const spacingFt = spacings[i] ?? row.spacingFt;
    const radiusFt = radii[i] ?? 0;
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
