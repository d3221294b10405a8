// The pull list by place, in walking order.
import { type PullSheet, type PullSheetLine, sheetLines } from "../pulls/pull-sheet";
import type { Paper, PaperRow } from "./paper";
import { paperPlant } from "./paper";
import { ballText } from "./pull-handling";

/** What the head and title block of a job's paper say. */
export type PaperJob = {
  readonly jobName: string;
  readonly bedName: string | null;
  readonly place: string;
  readonly date: string;
  readonly plantingText: string;
};

const METHOD_WORDS = { carry: "carry", dig: "dig", buy: "pick up", "not reserved": "" } as const;

export const PULL_CAUTION =
  "Lift with two above 50 lb and with a machine above 100 lb. Weights are planning figures; wet balls are heavier. Keep balls and containers moist and out of wind on the truck.";

function handlingText(line: PullSheetLine): string {
  const lift = line.lift === null || line.lift === "one person" ? "" : line.lift;
  return [line.dig ?? METHOD_WORDS[line.method], lift].filter(Boolean).join(", ");
}

function pullRow(line: PullSheetLine): PaperRow {
  return {
    key: line.lineId,
    cells: {
      qty: line.wanted,
      plant: paperPlant(line.taxon),
      size: line.sizeText || "size not said",
      bed: line.bedName,
      letter: line.letter,
      ball: ballText(line),
      weight: line.weightLb === null ? null : Math.round(line.weightLb * 10) / 10,
      handling: handlingText(line),
      remarks: [
        line.pulled > 0 ? `${line.pulled} pulled` : "",
        line.short > 0 ? `${line.short} short` : "",
        line.damaged > 0 ? `${line.damaged} damaged` : "",
        line.remarks,
        line.notes.length > 0 ? `from the field: ${line.notes.join("; ")}` : "",
        line.photos.length > 0 ? `${line.photos.length} ${line.photos.length === 1 ? "photo" : "photos"}` : "",
      ]
        .filter(Boolean)
        .join("; "),
    },
    ...(line.photos.length > 0 ? { photos: line.photos } : {}),
    ...(line.hazards.length > 0 ? { caution: line.hazards.join(" ") } : {}),
  };
}

/** The title block of a job's paper: seven cells with two blanks. */
export function paperFoot(job: PaperJob, plants: number, blanks: readonly string[]): Paper["foot"] {
  return [
    ["Job", job.jobName],
    ["Place", job.place],
    ["Planting", job.plantingText],
    ["Plants", plants.toLocaleString("en-US")],
    ...blanks.map((label) => [label, ""] as const),
    ["Date", job.date],
  ];
}

export const paperSubtitle = ({ jobName, bedName }: PaperJob): string => [jobName, bedName ?? "all beds"].join(" · ");
export const paperFileName = ({ jobName, bedName }: PaperJob, what: string): string => [jobName, bedName, what].filter(Boolean).join(" ");

/** The pull list as a paper: places in walking order, suppliers, then what is not reserved. */
export function pullPaper(sheet: PullSheet, job: PaperJob): Paper {
  const plants = sheetLines(sheet).reduce((sum, line) => sum + line.wanted, 0);
  return {
    title: "Pull list",
    subtitle: paperSubtitle(job),
    fileName: paperFileName(job, "pull list"),
    groupHead: "Place",
    columns: [
      { key: "tick", head: "Pulled", kind: "tick", width: 3 },
      { key: "qty", head: "Qty", kind: "number", width: 4, strong: true },
      { key: "plant", head: "Plant", kind: "plant", width: 24 },
      { key: "size", head: "Size", kind: "text", width: 10 },
      { key: "bed", head: "Bed", kind: "text", width: 11 },
      { key: "letter", head: "Key", kind: "text", width: 4 },
      { key: "ball", head: "Ball, wide × deep", kind: "text", width: 9 },
      { key: "weight", head: "lb each", kind: "number", width: 6 },
      { key: "handling", head: "Handling", kind: "text", width: 12 },
      { key: "remarks", head: "Remarks", kind: "text", width: 17 },
    ],
    groups: sheet.stops.map(({ place, lines }, index) => ({
      key: `${index} ${place}`,
      heading: place,
      note: lines.some((line) => line.method === "buy") ? "to be picked up or delivered" : "",
      rows: lines.map(pullRow),
    })),
    total: { qty: plants, plant: "plants in all" },
    notes: [PULL_CAUTION],
    foot: paperFoot(job, plants, ["Pulled by", "Loaded by"]),
    empty: "Nothing to pull yet: plants added to the beds appear here, except those that stand there already.",
  };
}
