// How each row of the plant list looks on the plan in a year, on a day: sizes, symbol and letter. Plants of a row share one figure.

import { PLAN_SYMBOL_FORMS, type PlanMark, planSymbol } from "@/lib/face/plan-symbol";
import { plantLook } from "@/lib/face/plant-look";
import type { BedRow } from "@/lib/ground/bed";
import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import { YEARS_AHEAD } from "@/lib/ground/growth";
import { type GrownPlant, type Growth, plantsGrown, radiusAtYear } from "@/lib/ground/plan-plant";
import { taxonStratum } from "@/lib/ground/stratum";
import { type PlacedTaxon, rowLetter } from "@/lib/papers/bed-view";
import type { Taxon } from "@/lib/plants/taxon";

export type Figure = {
  readonly rowId: string;
  readonly letter: string;
  readonly name: string;
  /** Null: no longer in the dataset. */
  readonly taxon: Taxon | null;
  readonly growth: Growth | null;
  readonly sizeText: string;
  readonly existing: boolean;
  readonly radiusFt: number;
  readonly matureFt: number;
  readonly heightFt: number;
  /** Lets what stands under it show through. */
  readonly over: boolean;
  /** The same for figures that look the same. */
  readonly look: string;
  readonly marksOf: (form: number) => readonly PlanMark[];
};
export type Figures = ReadonlyMap<string, Figure>;

/** A plant at its place with its figure. */
export type PlanStand = { readonly plant: PlacedPlant; readonly figure: Figure; readonly form: number };

const NO_TAXON_FT = 1;

/** Marks by look and form: the same on every redraw. */
const marksKept = new Map<string, readonly PlanMark[]>();
const KEPT_MOST = 4000;

function figureOf(row: BedRow, index: number, placed: PlacedTaxon | null, year: number, day: number): Figure {
  const own = { rowId: row.id, letter: rowLetter(index), name: placed?.taxon.name ?? row.taxonName, sizeText: row.size, existing: row.existing };
  if (!placed) return { ...own, taxon: null, growth: null, radiusFt: NO_TAXON_FT, matureFt: NO_TAXON_FT, heightFt: 0, over: false, look: `none ${NO_TAXON_FT}`, marksOf: () => [] };
  const { taxon, season } = placed;
  const [grown] = plantsGrown([{ id: row.id, key: row.id, at: [0, 0], taxon, sizeText: row.size, existing: row.existing }]);
  const growth = grown?.growth ?? null;
  const radiusFt = growth ? Math.max(0.12, radiusAtYear(growth, year)) : NO_TAXON_FT;
  const wears = plantLook(taxon, season, day);
  const look = `${taxon.kind} ${taxon.habit} ${taxon.foliage} ${radiusFt.toFixed(2)} ${JSON.stringify(wears)}`;
  return {
    ...own,
    taxon,
    growth,
    radiusFt,
    matureFt: growth ? radiusAtYear(growth, YEARS_AHEAD) : radiusFt,
    heightFt: growth?.heightFt[Math.min(YEARS_AHEAD, Math.round(year))] ?? 0,
    over: taxon.kind === "tree" && taxonStratum(taxon) === "canopy trees" && wears.leafHex !== null,
    look,
    marksOf: (form) => {
      const key = `${look} ${form}`;
      const kept = marksKept.get(key);
      if (kept) return kept;
      if (marksKept.size > KEPT_MOST) marksKept.clear();
      const marks = planSymbol(taxon, wears, radiusFt, form);
      marksKept.set(key, marks);
      return marks;
    },
  };
}

/** The figures of a plant list by row id. @param year after planting @param day of year 1–365 */
export function planFigures(rows: readonly BedRow[], placed: Readonly<Record<string, PlacedTaxon>>, year: number, day: number): Figures {
  return new Map(rows.map((row, index) => [row.id, figureOf(row, index, placed[row.taxonId] ?? null, year, day)]));
}

function formOf(id: string): number {
  let sum = 0;
  for (let i = 0; i < id.length; i++) sum = (sum * 31 + id.charCodeAt(i)) % 9973;
  return sum % PLAN_SYMBOL_FORMS;
}

/** Plants with their figures, the lowest first, as they are drawn over each other. */
export function planStands(plants: readonly PlacedPlant[], figures: Figures): PlanStand[] {
  return plants
    .flatMap((plant): PlanStand[] => {
      const figure = figures.get(plant.rowId);
      return figure ? [{ plant, figure, form: formOf(plant.id) }] : [];
    })
    .sort((a, b) => Number(a.figure.over) - Number(b.figure.over) || a.figure.heightFt - b.figure.heightFt);
}

/** The stands as plants with growth, for what they crowd; without those whose taxon is gone. */
export function standsGrown(stands: readonly PlanStand[]): GrownPlant[] {
  return stands.flatMap(({ plant, figure: { taxon, growth, sizeText, existing } }) =>
    taxon && growth ? [{ id: plant.id, key: plant.rowId, at: plant.at, taxon, sizeText, existing, growth }] : [],
  );
}
