// What the ground tells, beyond the figures of the bed's view: density at hand-over, what a step of it costs, crowding by row, area against drawing.
import { type CrowdingGroup, crowdingGroups } from "../ground/crowding-group";
import { bedDensity, type Density, densityOfTaken, plantTakenSqFt } from "../ground/density";
import { growthCurve } from "../ground/growth";
import type { Outline } from "../ground/outline";
import { fillEdgeEffect, fillExpected } from "../ground/placement";
import { areaForQuantity, plantCellSqFt } from "../ground/spacing";
import { groundSpread, taxonStratum } from "../ground/stratum";
import type { BedView, BedViewRow, PlacedTaxon } from "./bed-view";

type FullRow = BedViewRow & { readonly placed: PlacedTaxon };
const rowsKnown = (view: Pick<BedView, "rows">): FullRow[] => view.rows.flatMap((r) => (r.placed && r.quantity > 0 ? [{ ...r, placed: r.placed }] : []));

export type GroundDensities = { readonly atHandOver: Density; readonly atMaturity: Density };

/** Planting density on planting day, by the spreads that are delivered, and by mature spread. By the whole list, whether or not it is on the drawing. */
export function groundDensities(view: Pick<BedView, "rows" | "ground">): GroundDensities {
  const rows = rowsKnown(view);
  const startSqFt = rows.reduce((sum, { row, placed: { taxon }, quantity }) => {
    if (taxonStratum(taxon) === "canopy trees") return sum;
    const spread = groundSpread(taxon, growthCurve(taxon, row.size, row.existing)(0).spreadFt);
    return spread > 0 ? sum + quantity * plantCellSqFt(spread, "triangular") : sum;
  }, 0);
  return {
    atHandOver: densityOfTaken(view.ground.plantableSqFt, startSqFt),
    atMaturity: bedDensity(
      view.ground.plantableSqFt,
      rows.map(({ placed: { taxon }, quantity }) => ({ taxon, quantity })),
    ),
  };
}

export type StepRow = {
  readonly rowId: string;
  readonly letter: string;
  readonly from: number;
  readonly to: number;
  /** What the difference costs (less than nothing: saves); null where no price is known. */
  readonly cents: number | null;
};
export type DensityStep = {
  /** Rows of which the number changes, in the order of the list. */
  readonly rows: readonly StepRow[];
  /** Plants more, or with a minus fewer. */
  readonly plants: number;
  /** Of the rows whose price is known; null where none is. */
  readonly cents: number | null;
  /** Letters of changed rows that have no price. */
  readonly unpriced: readonly string[];
  readonly before: Density;
  readonly after: Density;
};

/** Groups up to this many plants are seen as a number, and odd ones look the less lined up (common practice, no source). */
const ODD_UP_TO = 9;
/** Turns after which the remainder is left as it is; each turn closes some of it. */
const STEP_TURNS = 400;

/** The count nearest to an exact one that a planter would set: odd in small groups, at least one. */
function quantityInGroup(exact: number): number {
  if (exact > ODD_UP_TO) return Math.round(exact);
  return Math.max(1, 2 * Math.round((exact - 1) / 2) + 1);
}

/**
 * What one step of the density scale, up or down, takes of the plant list: every row that is not standing there already, is no tree and no single specimen
 * gains or loses in proportion, in odd groups where groups are small; what rounding leaves over goes where a row then departs
 * least from its share. Null where there is nothing to change.
 * @param priceCents what one plant of a row costs when so many are taken; null: not known
 */
export function densityStep(view: Pick<BedView, "rows" | "ground">, direction: 1 | -1, priceCents: (rowId: string, quantity: number) => number | null): DensityStep | null {
  const known = rowsKnown(view);
  const open = known.filter(({ row, placed, quantity }) => !row.existing && quantity > 1 && taxonStratum(placed.taxon) !== "canopy trees");
  const cells = open.map(({ placed }) => plantTakenSqFt(placed.taxon));
  const taken = open.reduce((sum, { quantity }, i) => sum + quantity * (cells[i] ?? 0), 0);
  const wantedSqFt = (direction * view.ground.plantableSqFt) / 5;
  if (taken <= 0 || wantedSqFt === 0 || taken + wantedSqFt <= 0) return null;
  const share = (taken + wantedSqFt) / taken;
  const to = open.map(({ quantity }) => {
    const set = quantityInGroup(quantity * share);
    return direction === 1 ? Math.max(quantity, set) : Math.min(quantity, set);
  });
  const missing = () => wantedSqFt - to.reduce((sum, count, i) => sum + (count - (open[i]?.quantity ?? 0)) * (cells[i] ?? 0), 0);
  // What rounding leaves is closed plant by plant where a row then departs least from its share.
  const ideal = open.map(({ quantity }) => quantity * share);
  const stepOf = (count: number, sign: number) => count + sign * (count < ODD_UP_TO || (count === ODD_UP_TO && sign < 0) ? 2 : 1);
  for (let turn = 0; turn < STEP_TURNS; turn++) {
    const left = missing();
    let best: { i: number; next: number; off: number } | null = null;
    for (const [i, { quantity }] of open.entries()) {
      const count = to[i] ?? quantity;
      const next = stepOf(count, Math.sign(left));
      if (next < 1 || (direction === 1 ? next < quantity : next > quantity)) continue;
      if (Math.abs(left - (next - count) * (cells[i] ?? 0)) >= Math.abs(left) - 1e-9) continue;
      const off = Math.abs(next - (ideal[i] ?? 0)) / Math.max(1, ideal[i] ?? 1);
      if (best === null || off < best.off) best = { i, next, off };
    }
    if (best === null) break;
    to[best.i] = best.next;
  }
  const rows = open.flatMap(({ row, letter, quantity }, i): StepRow[] => {
    const count = to[i] ?? quantity;
    if (count === quantity) return [];
    const [now, then] = [priceCents(row.id, quantity), priceCents(row.id, count)];
    return [{ rowId: row.id, letter, from: quantity, to: count, cents: now === null || then === null ? null : count * then - quantity * now }];
  });
  if (rows.length === 0) return null;
  const priced = rows.flatMap(({ cents }) => (cents === null ? [] : [cents]));
  const counts = new Map(rows.map(({ rowId, to: count }) => [rowId, count]));
  const density = (of: (r: FullRow) => number) =>
    bedDensity(
      view.ground.plantableSqFt,
      known.map((r) => ({ taxon: r.placed.taxon, quantity: of(r) })),
    );
  return {
    rows,
    plants: rows.reduce((sum, { from, to: count }) => sum + count - from, 0),
    cents: priced.length ? priced.reduce((sum, cents) => sum + cents, 0) : null,
    unpriced: rows.flatMap(({ cents, letter }) => (cents === null ? [letter] : [])),
    before: density((r) => r.quantity),
    after: density((r) => counts.get(r.row.id) ?? r.quantity),
  };
}

/** Rows that keep the figures from being those of the drawing: too few or too many of their plants stand on it. */
export function rowsOffDrawing(view: Pick<BedView, "rows">): { readonly letter: string; readonly name: string; readonly missing: number }[] {
  return rowsKnown(view).flatMap(({ letter, placed, quantity, drawn }) => (drawn === quantity ? [] : [{ letter, name: placed.taxon.name, missing: quantity - drawn }]));
}

/** "A 2, C 5 (and 1 too many of D)": what is missing on the drawing, in words; "" where nothing is. */
export function offDrawingText(view: Pick<BedView, "rows">): string {
  const off = rowsOffDrawing(view);
  const lacks = off.filter(({ missing }) => missing > 0).map(({ letter, missing }) => `${missing} of ${letter}`);
  const over = off.filter(({ missing }) => missing < 0).map(({ letter, missing }) => `${-missing} too many of ${letter}`);
  return [lacks.join(", "), over.join(", ")].filter(Boolean).join("; ");
}

export type AreaAgainstDrawing = {
  readonly letter: string;
  readonly drawn: number;
  /** What the ground that the row takes at its spacing asks for, not rounded. */
  readonly byArea: number;
  /** Plants by which a fill may differ from its area, either way, for the edge alone; null where the ground is not the whole bed. */
  readonly edge: number | null;
};

/** Rows counted by area, beside what stands on the drawing. Where a row fills the whole bed the effect of its edge is known. @param outline the bed's */
export function areaAgainstDrawing(view: Pick<BedView, "rows" | "areaSqFt">, outline: Outline): AreaAgainstDrawing[] {
  return rowsKnown(view).flatMap(({ row, letter, drawn, spacingFt, quantity }): AreaAgainstDrawing[] => {
    if (drawn === 0 || spacingFt === null) return [];
    const sqFt = row.quantity.by === "area" ? row.quantity.areaSqFt : areaForQuantity(quantity, spacingFt, "triangular");
    const whole = Math.abs(sqFt - view.areaSqFt) < 0.15 * view.areaSqFt;
    if (row.quantity.by !== "area" && !whole) return [];
    const byArea = whole ? fillExpected(outline, spacingFt, "triangular") : sqFt / plantCellSqFt(spacingFt, "triangular");
    return [{ letter, drawn, byArea, edge: whole ? fillEdgeEffect(outline, spacingFt, "triangular") : null }];
  });
}

/** The crowding of the drawing by rows of the list; empty where nothing is drawn. */
export function viewCrowding(view: Pick<BedView, "rows" | "drawn">): CrowdingGroup[] {
  if (!view.drawn) return [];
  return crowdingGroups(
    view.drawn.crowding,
    view.drawn.plants,
    view.drawn.plan,
    view.rows.map(({ row }) => row.id),
  );
}

export type GroundPaper = {
  readonly by: BedView["groundBy"];
  readonly atHandOver: { readonly density: number; readonly raw: number; readonly words: string };
  readonly atMaturity: { readonly density: number; readonly raw: number; readonly words: string };
  readonly crowding: readonly { readonly year: number; readonly rows: readonly string[]; readonly against: string | null; readonly plants: number; readonly overFt: number }[];
};

/** The ground as data: for the headless command and downloads. Rows are told by their letters. */
export function groundPaper(view: Pick<BedView, "rows" | "ground" | "drawn" | "groundBy">): GroundPaper {
  const { atHandOver, atMaturity } = groundDensities(view);
  const letters = new Map(view.rows.map(({ row, letter }) => [row.id, letter]));
  const step = ({ label, raw, words }: Density) => ({ density: label, raw, words });
  return {
    by: view.groundBy,
    atHandOver: step(atHandOver),
    atMaturity: step(atMaturity),
    crowding: viewCrowding(view).map(({ year, rows, against, plantIds, overFt }) => ({
      year,
      rows: rows.flatMap((id) => letters.get(id) ?? []),
      against,
      plants: plantIds.length,
      overFt: Math.round(overFt * 100) / 100,
    })),
  };
}
