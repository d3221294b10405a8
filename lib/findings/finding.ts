import type { Bed, BedRow } from "../ground/bed";
import type { DrawnBed } from "../ground/bed-drawn";
import type { Taxon } from "../plants/taxon";
import type { HalfMonthInterest } from "../season/interest";
import type { TaxonSeason } from "../season/window";

/** fix: it will fail or is not allowed · consider: a risk a designer should weigh · note: good to know. */
export const SEVERITIES = ["fix", "consider", "note"] as const;
export type Severity = (typeof SEVERITIES)[number];

/** What one press can do about a finding. */
export type Remedy =
  | { readonly type: "spacing"; readonly rowId: string; readonly spacingFt: number; readonly label: string }
  | { readonly type: "count"; readonly rowId: string; readonly count: number; readonly label: string }
  | { readonly type: "remove"; readonly rowId: string; readonly label: string }
  | { readonly type: "fill"; readonly halfMonths: readonly number[]; readonly label: string };

export type Finding = {
  readonly check: string;
  readonly severity: Severity;
  /** The row it concerns; null: the bed as a whole. */
  readonly rowId: string | null;
  readonly plant: string | null;
  /** One sentence: what is wrong, with the figures, and what to do. */
  readonly message: string;
  readonly remedy: Remedy | null;
};

/** A row with all that the checks need to know of it. */
export type CheckedRow = {
  readonly row: BedRow;
  /** The letter it carries on the sheet. */
  readonly letter: string;
  readonly taxon: Taxon;
  readonly season: TaxonSeason;
  readonly quantity: number;
  readonly spacingFt: number;
  /** Mature spread in the middle of its range. */
  readonly spreadFt: number;
};

export type CheckContext = {
  readonly site: Bed["site"];
  /** 5 = zone 5a, 5.5 = 5b; null where nobody has said. */
  readonly zone: number | null;
  readonly state: string | null;
  readonly plantableSqFt: number;
  readonly rows: readonly CheckedRow[];
  readonly density: { readonly raw: number; readonly label: number; readonly words: string };
  /** The plants on the drawing; null where there are none. */
  readonly drawn: DrawnBed | null;
  /** What the bed's edges border and what lies on its drawing, by name (lib/ground/border.ts), whether or not a plant stands there yet. */
  readonly borders: ReadonlySet<string>;
  readonly halfMonths: readonly HalfMonthInterest[];
  readonly resting: readonly { readonly index: number; readonly label: string; readonly key: string }[];
  /** Whether a day of year is in the growing season here. */
  readonly isGrowing: (day: number) => boolean;
};

/** A check looks at the bed and says what it finds. Its id is part of the headless answer. */
export type Check = { readonly id: string; readonly look: (context: CheckContext) => Omit<Finding, "check">[] };

/** A finding about one row. */
export function rowFinding(r: CheckedRow, severity: Severity, message: string, remedy: Remedy | null = null): Omit<Finding, "check"> {
  return { severity, rowId: r.row.id, plant: r.taxon.name, message, remedy };
}
