// A paper: one model of a list that the screen, CSV, XLSX and PDF all show. Papers are made by paper-*.ts and tag-sheet.ts, written by paper-table.ts and lib/server/papers.
import { type NameParts, type NameSegment, nameSegments, nameText } from "../plants/botanical-name";

/**
 * text: words; number: whole or decimal figures, right; money: whole cents; plant: a botanical name with its common name;
 * tick: an empty box to be ticked by hand.
 */
export type PaperColumnKind = "text" | "number" | "money" | "plant" | "tick";

export type PaperColumn = {
  readonly key: string;
  readonly head: string;
  readonly kind: PaperColumnKind;
  /** Share of the sheet's width beside the other columns. */
  readonly width: number;
  /** The figure that is looked for first: set larger. */
  readonly strong?: boolean;
};

export type PaperPlant = { readonly segments: readonly NameSegment[]; readonly text: string; readonly common: string };
export type PaperCell = string | number | null | PaperPlant;

/** `key` names the row for good; cells by column key, those left out are empty. `caution`: what must not be overlooked, below the row. `photos`: addresses of photographs, shown on the screen alone. */
export type PaperRow = {
  readonly key: string;
  readonly cells: Readonly<Record<string, PaperCell>>;
  readonly caution?: string;
  readonly photos?: readonly string[];
};
/** `note`: a line under the heading. */
export type PaperGroup = { readonly key: string; readonly heading: string; readonly note: string; readonly rows: readonly PaperRow[] };

export type Paper = {
  readonly title: string;
  /** Job, bed. */
  readonly subtitle: string;
  /** Words of a file's name: "Clinic garden pull list". */
  readonly fileName: string;
  /** What the groups are by: "Place", "Kind"; a column of its own in CSV and XLSX. */
  readonly groupHead: string;
  readonly columns: readonly PaperColumn[];
  readonly groups: readonly PaperGroup[];
  /** Cells of the last row, by column key; null: none. */
  readonly total: Readonly<Record<string, PaperCell>> | null;
  readonly notes: readonly string[];
  /** The title block. */
  readonly foot: readonly (readonly [label: string, value: string])[];
  /** Where to begin when there are no rows. */
  readonly empty: string;
};

/** A plant's name as a cell. */
export function paperPlant(taxon: NameParts & { readonly commonNames: readonly string[] }): PaperPlant {
  return { segments: nameSegments(taxon), text: nameText(taxon), common: taxon.commonNames[0] ?? "" };
}

/** All rows of a paper, in order. */
export function paperRows(paper: Paper): PaperRow[] {
  return paper.groups.flatMap(({ rows }) => rows);
}

/** Whether a column says anything in any row; a column that says nothing need not be shown. */
export function columnSays(paper: Paper, key: string): boolean {
  return paperRows(paper).some(({ cells }) => cells[key] !== undefined && cells[key] !== null && cells[key] !== "");
}
