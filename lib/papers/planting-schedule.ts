// The planting schedule with the columns that drawings carry, for one bed or the whole job.
import { lengthText } from "../ground/length";
import { nurserySizeRank } from "../ground/nursery-size";
import { sizeFromText } from "../nursery/size-read";
import type { Kind } from "../plants/vocabulary";
import { KIND_HEADINGS, nameOrder, type PullTaxon } from "../pulls/pull-list";
import { type Paper, type PaperRow, paperPlant } from "./paper";
import { type PaperJob, paperFileName, paperFoot, paperSubtitle } from "./paper-pull";

/** A row of a bed view. `spacingFt`: on center; null: nothing is known. */
export type ScheduleRow = {
  readonly bedId: string;
  readonly bedName: string;
  readonly letter: string;
  readonly taxon: PullTaxon;
  readonly sizeText: string;
  readonly quantity: number;
  readonly spacingFt: number | null;
  readonly existing: boolean;
  readonly remarks: string;
};

/** Root as schedules write it: "B&B", "cont.", "BR", "plug", "bulb"; "" where the size does not tell. */
export function rootText(sizeText: string, kind: Kind): string {
  if (sizeText.trim() === "") return "";
  const { root } = sizeFromText(sizeText, kind);
  return { ball: "B&B", container: "cont.", "bare root": "BR", plug: "plug", bulb: "bulb", unknown: "" }[root];
}

/** The size without the words for its root, which has a column of its own. */
export function sizeWithoutRoot(sizeText: string): string {
  const left = sizeText
    .replace(/\s*,?\s*(?:\bb\s?(?:&|and|\+)\s?b\b|\bbare[ -]?root\b|\bbr\b|\bcont(?:ainer)?\b\.?)(?=\s|,|$)/gi, "")
    .replace(/\s+/g, " ")
    .trim();
  return left === "" ? sizeText.trim() : left;
}

/** Spacings up to this are written in inches, as schedules do. */
const INCHES_TO_FT = 5;

/** "18 in o.c.", "8 ft o.c."; "" for a single plant. */
function spacingText({ spacingFt, quantity }: ScheduleRow): string {
  if (spacingFt === null || quantity < 2) return "";
  return `${spacingFt < INCHES_TO_FT ? `${Math.round(spacingFt * 12)} in` : lengthText(spacingFt)} o.c.`;
}

function scheduleRow(row: ScheduleRow, several: boolean): PaperRow {
  return {
    key: `${row.bedId}:${row.letter}`,
    cells: {
      key: row.letter,
      ...(several ? { bed: row.bedName } : {}),
      qty: row.quantity,
      plant: paperPlant(row.taxon),
      size: sizeWithoutRoot(row.sizeText),
      root: rootText(row.sizeText, row.taxon.kind),
      spacing: spacingText(row),
      remarks: [row.existing ? "existing, to remain" : "", row.remarks].filter(Boolean).join("; "),
    },
  };
}

const KINDS_IN_ORDER = Object.keys(KIND_HEADINGS) as readonly Kind[];

/**
 * The schedule of rows in the order of beds and letters: grouped by kind, in each by botanical name, then size. Plants that stay are listed and said to,
 * and not counted in the totals. Columns after the planting schedules of drawings (eXtension, Preparing a Planting Plan, 2012; the root column is common practice).
 */
export function plantingSchedule(rows: readonly ScheduleRow[], job: PaperJob): Paper {
  const listed = rows.filter(({ quantity }) => quantity > 0);
  const several = new Set(listed.map(({ bedId }) => bedId)).size > 1;
  const turn = new Map(listed.map((row, index) => [row, index]));
  const sorted = [...listed].sort(
    (a, b) => nameOrder(a.taxon, b.taxon) || nurserySizeRank(a.sizeText, a.taxon.kind) - nurserySizeRank(b.sizeText, b.taxon.kind) || (turn.get(a) ?? 0) - (turn.get(b) ?? 0),
  );
  const counted = (some: readonly ScheduleRow[]): number => some.reduce((sum, { quantity, existing }) => sum + (existing ? 0 : quantity), 0);
  const plants = counted(listed);
  return {
    title: "Planting schedule",
    subtitle: paperSubtitle(job),
    fileName: paperFileName(job, "planting schedule"),
    groupHead: "Kind",
    columns: [
      { key: "key", head: "Key", kind: "text", width: 4 },
      ...(several ? [{ key: "bed", head: "Bed", kind: "text", width: 11 } as const] : []),
      { key: "qty", head: "Qty", kind: "number", width: 5, strong: true },
      { key: "plant", head: "Botanical and common name", kind: "plant", width: 30 },
      { key: "size", head: "Size", kind: "text", width: 11 },
      { key: "root", head: "Root", kind: "text", width: 6 },
      { key: "spacing", head: "Spacing", kind: "text", width: 10 },
      { key: "remarks", head: "Remarks", kind: "text", width: 20 },
    ],
    groups: KINDS_IN_ORDER.flatMap((kind) => {
      const own = sorted.filter(({ taxon }) => taxon.kind === kind);
      if (own.length === 0) return [];
      return [{ key: kind, heading: KIND_HEADINGS[kind], note: counted(own).toLocaleString("en-US"), rows: own.map((row) => scheduleRow(row, several)) }];
    }),
    total: { qty: plants, plant: "plants to plant" },
    notes: [
      "Key letters are those of each bed's plant list. o.c. = on center; B&B = balled and burlapped; cont. = container; BR = bare root. Sizes and balls by the nursery stock standard.",
    ],
    foot: paperFoot(job, plants, ["Sheet", "Drawn by"]),
    empty: "No plants yet: what is added to the beds appears here.",
  };
}
