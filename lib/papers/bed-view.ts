// The one view model of a bed: sheet, print, bed file and the headless command all show these figures, each computed here once.
import { type CheckedRow, type Finding, SEVERITIES, type Severity } from "../findings/finding";
import { bedFindings } from "../findings/findings";
import type { Bed, BedRow } from "../ground/bed";
import { placedByRow } from "../ground/bed-drawing";
import { bedBorders, bedDrawn, type DrawnBed, drawnCover, drawnGround, drawnRowSqFt } from "../ground/bed-drawn";
import { type BedGround, bedGround, bedRowAreas } from "../ground/bed-ground";
import { bedSizeArea } from "../ground/bed-size";
import { quantityForArea } from "../ground/spacing";
import { COLORS } from "../plants/colors";
import type { Taxon } from "../plants/taxon";
import { bedInterest, dayIsGrowing, type HalfMonthInterest, type InterestPlant, restingOnOne, type Targets, yearScore } from "../season/interest";
import { seasonSentence } from "../season/sentence";
import type { TaxonSeason } from "../season/window";
import { type StripMark, yearStrip } from "./year-strip";

/** A taxon with its year at the job's place. */
export type PlacedTaxon = { readonly taxon: Taxon; readonly season: TaxonSeason };

/** What the view needs of a place. */
export type ViewPlace = { readonly zone: number | null; readonly state: string | null; readonly lastFreezeDay: number | null; readonly firstFreezeDay: number | null };

export type BedViewRow = {
  readonly row: BedRow;
  readonly letter: string;
  /** Null when the taxon is no longer in the dataset: the row is kept and shown, but cannot be checked. */
  readonly placed: PlacedTaxon | null;
  readonly quantity: number;
  /** How many of them stand on the drawing. */
  readonly drawn: number;
  /** On center: the row's own, else mature spread. */
  readonly spacingFt: number | null;
  readonly spacingByDefault: boolean;
  readonly marks: readonly StripMark[];
  readonly sentence: string;
  readonly findings: readonly Finding[];
};

export type BedView = {
  readonly areaSqFt: number;
  readonly yearShown: number;
  readonly rows: readonly BedViewRow[];
  readonly ground: BedGround;
  /** The plants on the drawing; null where there are none. */
  readonly drawn: DrawnBed | null;
  /** Whether ground and interest are by the places of the drawing: every plant of the list stands on it. Else they are by area and count. */
  readonly groundBy: "drawing" | "area";
  readonly season: {
    readonly halfMonths: readonly HalfMonthInterest[];
    readonly gaps: readonly { readonly index: number; readonly label: string; readonly interest: number; readonly target: number }[];
    /** 0–1. */
    readonly score: number;
    readonly resting: readonly { readonly index: number; readonly label: string; readonly key: string }[];
  };
  readonly findings: readonly Finding[];
  readonly counts: Readonly<Record<Severity, number>>;
};

/** Letters of a planting list: A … Z without I and O (read as 1 and 0), then AA … */
export function rowLetter(index: number): string {
  const letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  const last = letters.charAt(index % letters.length);
  return index < letters.length ? last : rowLetter(Math.floor(index / letters.length) - 1) + last;
}

const middle = ([low, high]: readonly [number, number]) => (low + high) / 2;

/** Plants of a row: the count given, what its area needs at its spacing on a triangular grid, or as many as stand on the drawing. */
export function rowQuantityOf(row: BedRow, taxon: Pick<Taxon, "spreadFt"> | null, drawn: number): number {
  if (row.quantity.by === "count") return row.quantity.count;
  if (row.quantity.by === "drawing") return drawn;
  const spacing = row.spacingFt ?? (taxon ? middle(taxon.spreadFt) : null);
  return spacing === null ? 0 : quantityForArea(row.quantity.areaSqFt, spacing, "triangular");
}

/** Year after planting that the year chart shows unless another is chosen: established, not yet grown. */
export const YEAR_SHOWN = 3;

/**
 * Everything about a bed.
 * @param placed taxa of the bed by id, with their year at the place
 * @param year years after planting for the interest, 0–20
 */
export function bedView(bed: Bed, placed: Readonly<Record<string, PlacedTaxon>>, place: ViewPlace, targets: Targets, year: number = YEAR_SHOWN): BedView {
  const areaSqFt = bedSizeArea(bed.size);
  const growing = { lastFreezeDay: place.lastFreezeDay, firstFreezeDay: place.firstFreezeDay };
  const checked: CheckedRow[] = [];
  const counts = placedByRow(bed.drawing ?? null);
  const shells = bed.rows.map((row, index) => {
    const found = placed[row.taxonId] ?? null;
    const onDrawing = counts.get(row.id) ?? 0;
    const quantity = rowQuantityOf(row, found?.taxon ?? null, onDrawing);
    const spreadFt = found ? middle(found.taxon.spreadFt) : null;
    const spacingFt = row.spacingFt ?? spreadFt;
    const letter = rowLetter(index);
    if (found && spacingFt !== null && spreadFt !== null && quantity > 0) checked.push({ row, letter, ...found, quantity, spacingFt, spreadFt });
    return { row, letter, placed: found, quantity, drawn: onDrawing, spacingFt, spacingByDefault: row.spacingFt === null };
  });
  const groundRows = checked.map((r) => ({ taxon: r.taxon, quantity: r.quantity, spacingFt: r.row.spacingFt, sizeText: r.row.size, existing: r.row.existing }));
  const taxa = new Map(checked.map((r) => [r.row.id, r.taxon]));
  const drawn = bedDrawn(bed, (rowId) => taxa.get(rowId) ?? null);
  const cover = drawn && checked.every((r) => counts.get(r.row.id) === r.quantity) ? drawnCover(drawn) : null;
  const crownSqFt = cover ? checked.map((r) => drawnRowSqFt(cover, r.row.id, year)) : bedRowAreas({ areaSqFt, rows: groundRows }, year);
  const plants: InterestPlant[] = checked.map((r, i) => ({ key: r.row.id, areaSqFt: crownSqFt[i] ?? 0, season: r.season }));
  const halfMonths = bedInterest(plants, areaSqFt, targets, growing, (name) => COLORS[name as keyof typeof COLORS] ?? "#888888");
  const resting = restingOnOne(plants, areaSqFt, targets, growing);
  const ground = drawn && cover ? drawnGround(drawn, cover) : bedGround({ areaSqFt, rows: groundRows });
  const findings = bedFindings({
    site: bed.site,
    zone: place.zone,
    state: place.state,
    plantableSqFt: ground.plantableSqFt,
    rows: checked,
    density: { raw: ground.densityRaw, label: ground.density, words: ground.densityWords },
    drawn,
    borders: bedBorders(bed),
    halfMonths,
    resting,
    isGrowing: (day) => dayIsGrowing(growing, day),
  });
  return {
    areaSqFt,
    yearShown: year,
    rows: shells.map((shell) => ({
      ...shell,
      marks: shell.placed ? yearStrip(shell.placed.season, place) : [],
      sentence: shell.placed ? seasonSentence(shell.placed.season) : "This plant is no longer in the dataset.",
      findings: findings.filter((f) => f.rowId === shell.row.id),
    })),
    ground,
    drawn,
    groundBy: cover ? "drawing" : "area",
    season: {
      halfMonths,
      gaps: halfMonths.filter((h) => h.bare).map(({ index, label, interest, target }) => ({ index, label, interest, target })),
      score: yearScore(halfMonths),
      resting,
    },
    findings,
    counts: Object.fromEntries(SEVERITIES.map((s) => [s, findings.filter((f) => f.severity === s).length])) as Record<Severity, number>,
  };
}
