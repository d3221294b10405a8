// The dig list: own plants that still stand in the field, with ball, weight, method, time and what speaks against digging them.
import { digCautions } from "../pulls/dig-method";
import { type PullSheet, type PullSheetLine, sheetLines } from "../pulls/pull-sheet";
import { type Paper, type PaperRow, paperPlant } from "./paper";
import { type PaperJob, paperFileName, paperFoot, paperSubtitle } from "./paper-pull";
import { ballText, minutesSpanText, minutesText, weightSpanText } from "./pull-handling";

/** Lines that are dug, and of which any are left. */
export function digLines(sheet: PullSheet): PullSheetLine[] {
  return sheetLines(sheet).filter((line) => line.digPlan !== null && line.open > 0);
}

function digRow(line: PullSheetLine): PaperRow {
  const plan = line.digPlan;
  return {
    key: line.lineId,
    cells: {
      qty: line.open,
      plant: paperPlant(line.taxon),
      size: line.sizeText,
      bed: [line.bedName, line.letter].filter(Boolean).join(", "),
      ball: plan && !line.ball ? "bare root" : ballText(line),
      weight: line.ball ? weightSpanText(line.ball.weightRangeLb) : line.weightLb === null ? "" : `${Math.round(line.weightLb)} lb`,
      method: plan?.method ?? "",
      minutes: minutesSpanText(plan?.minutes ?? null),
      moving: plan?.moving ?? "",
      remarks: line.remarks,
    },
    ...(line.hazards.length > 0 ? { caution: line.hazards.join(" ") } : {}),
  };
}

/** Minutes for all lines, from–to; null where any line has none. */
export function digMinutes(lines: readonly PullSheetLine[]): readonly [number, number] | null {
  let low = 0;
  let high = 0;
  for (const line of lines) {
    const minutes = line.digPlan?.minutes;
    if (!minutes) return null;
    low += minutes[0] * line.open;
    high += minutes[1] * line.open;
  }
  return [low, high];
}

/** The dig list as a paper, by place in walking order. */
export function digPaper(sheet: PullSheet, job: PaperJob): Paper {
  const lines = digLines(sheet);
  const plants = lines.reduce((sum, line) => sum + line.open, 0);
  const minutes = digMinutes(lines);
  const places = [...new Set(lines.map((line) => line.placeText))];
  return {
    title: "Dig list",
    subtitle: paperSubtitle(job),
    fileName: paperFileName(job, "dig list"),
    groupHead: "Place",
    columns: [
      { key: "tick", head: "Dug", kind: "tick", width: 3 },
      { key: "qty", head: "Qty", kind: "number", width: 4, strong: true },
      { key: "plant", head: "Plant", kind: "plant", width: 22 },
      { key: "size", head: "Size", kind: "text", width: 9 },
      { key: "bed", head: "Bed, key", kind: "text", width: 10 },
      { key: "ball", head: "Ball, wide × deep", kind: "text", width: 9 },
      { key: "weight", head: "Weight each", kind: "text", width: 9 },
      { key: "method", head: "Dig with", kind: "text", width: 10 },
      { key: "minutes", head: "Time each", kind: "text", width: 8 },
      { key: "moving", head: "Move with", kind: "text", width: 11 },
      { key: "remarks", head: "Remarks", kind: "text", width: 11 },
    ],
    groups: places.map((place) => ({ key: place, heading: place, note: "", rows: lines.filter((line) => line.placeText === place).map(digRow) })),
    total: { qty: plants, plant: minutes && plants > 0 ? `to dig, ${minutesText(minutes[0])} to ${minutesText(minutes[1])} for one crew` : "to dig" },
    notes: [
      ...digCautions(lines.flatMap((line) => line.digPlan ?? [])),
      "Ball sizes are the least of the nursery stock standard. Times by hand follow a 24 in ball dug in clay in 60–90 minutes (trade forum, 2004), others by the cut face; spade times are common practice, no source.",
    ],
    foot: paperFoot(job, plants, ["Dug by", "Lines marked"]),
    empty: "Nothing to dig: no plant of this job is reserved from a field of your own.",
  };
}
