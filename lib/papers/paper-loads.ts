// The loads as a paper: a run of a truck a group, in the order of loading.
import type { LoadPlan, TruckLoad } from "../pulls/loads";
import type { PullSheetLine } from "../pulls/pull-sheet";
import { trayCount } from "../pulls/root-ball";
import { type Paper, type PaperRow, paperPlant } from "./paper";
import { type PaperJob, paperFileName, paperFoot, paperSubtitle } from "./paper-pull";

export const LOAD_CAUTIONS = [
  "Stay within the truck's registered gross weight and axle ratings, driver, fuel and tools included. Secure every load; local law goes before this plan.",
  "Heavy balls stand low and forward. Lift balls by the ball, never by the trunk; two people above 50 lb, a machine above 100 lb. Cover plants against wind and keep roots moist.",
];

const percent = (share: number): string => `${Math.round(share * 100)} %`;

/** "3,120 of 4,000 lb (78 %), deck 71 % full". */
export function loadNote({ weightLb, by, deckShare }: TruckLoad): string {
  return `${Math.round(weightLb).toLocaleString("en-US")} of ${by.payloadLb.toLocaleString("en-US")} lb (${percent(weightLb / by.payloadLb)}), deck ${percent(deckShare)} full`;
}

/** "One-ton stake body, trip 1". */
export const loadName = ({ truck, trip }: TruckLoad): string => `${truck}, trip ${trip}`;

function loadRow(line: PullSheetLine | undefined, key: string, cells: PaperRow["cells"]): PaperRow {
  const tray = line ? trayCount(line.size) : null;
  return {
    key,
    cells: {
      ...cells,
      plant: line ? paperPlant(line.taxon) : "",
      size: line ? [line.sizeText, tray === null ? "" : `trays of ${tray}`].filter(Boolean).join(", ") : "",
      bed: line?.bedName ?? "",
      letter: line?.letter ?? "",
    },
  };
}

/** The loads of a plan; what is left behind comes last, with its reason. Lines by id. */
export function loadsPaper(plan: LoadPlan, lines: ReadonlyMap<string, PullSheetLine>, job: PaperJob): Paper {
  const groups = plan.loads.map((load, index) => ({
    key: `load ${index}`,
    heading: loadName(load),
    note: loadNote(load),
    rows: load.items.map((item, turn) =>
      loadRow(lines.get(item.key), `${index} ${turn}`, {
        turn: turn + 1,
        qty: item.quantity,
        each: Math.round((item.weightLb / item.quantity) * 10) / 10,
        weight: Math.round(item.weightLb),
        lift: item.lift,
        stands: item.laidBack ? "laid back" : "upright",
      }),
    ),
  }));
  const left = plan.left.map((item, index) => loadRow(lines.get(item.key), `left ${index}`, { qty: item.quantity, stands: item.reason }));
  const pounds = plan.loads.reduce((sum, { weightLb }) => sum + weightLb, 0);
  const units = plan.loads.reduce((sum, { items }) => sum + items.reduce((inner, { quantity }) => inner + quantity, 0), 0);
  return {
    title: "Loads",
    subtitle: paperSubtitle(job),
    fileName: paperFileName(job, "loads"),
    groupHead: "Load",
    columns: [
      { key: "turn", head: "Load as", kind: "number", width: 5 },
      { key: "qty", head: "Qty", kind: "number", width: 5, strong: true },
      { key: "plant", head: "Plant", kind: "plant", width: 26 },
      { key: "size", head: "Size", kind: "text", width: 11 },
      { key: "bed", head: "Bed", kind: "text", width: 12 },
      { key: "letter", head: "Key", kind: "text", width: 4 },
      { key: "each", head: "lb each", kind: "number", width: 7 },
      { key: "weight", head: "lb", kind: "number", width: 7 },
      { key: "lift", head: "Lift", kind: "text", width: 10 },
      { key: "stands", head: "Stands", kind: "text", width: 13 },
    ],
    groups: left.length > 0 ? [...groups, { key: "left", heading: "Left behind", note: "", rows: left }] : groups,
    total: { qty: units, plant: "plants and trays on the trucks", weight: Math.round(pounds) },
    notes: [...plan.loads.flatMap((load) => load.cautions.map((caution) => `${loadName(load)}: ${caution}`)), ...LOAD_CAUTIONS],
    foot: paperFoot(job, units, ["Driver", "Loaded by"]).map(([label, value]) => [label === "Plants" ? "Plants, trays" : label, value] as const),
    empty: "Nothing to load yet: plants added to the beds appear here, except those that stand there already.",
  };
}
