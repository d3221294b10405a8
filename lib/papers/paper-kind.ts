// The totals of a pull list by kind: plants by taxon and size, with a column a bed.
import type { PullList } from "../pulls/pull-list";
import { type Paper, type PaperCell, paperPlant } from "./paper";
import { type PaperJob, PULL_CAUTION, paperFileName, paperFoot, paperSubtitle } from "./paper-pull";

const bedKey = (bedId: string): string => `bed ${bedId}`;

/** The totals as a paper. Beds have a column each where there are several. */
export function kindPaper(list: PullList, job: PaperJob): Paper {
  const beds = list.beds.length > 1 ? list.beds : [];
  const split = (parts: readonly { readonly bedId: string; readonly quantity: number }[]): Record<string, PaperCell> =>
    Object.fromEntries(beds.map(({ bedId }) => [bedKey(bedId), parts.find((part) => part.bedId === bedId)?.quantity ?? null]));
  return {
    title: "Pull list",
    subtitle: paperSubtitle(job),
    fileName: paperFileName(job, "pull list by kind"),
    groupHead: "Kind",
    columns: [
      { key: "tick", head: "Pulled", kind: "tick", width: 3 },
      { key: "qty", head: "Qty", kind: "number", width: 5, strong: true },
      { key: "plant", head: "Plant", kind: "plant", width: 30 },
      { key: "size", head: "Size", kind: "text", width: 12 },
      ...beds.map(({ bedId, bedName }) => ({ key: bedKey(bedId), head: bedName, kind: "number", width: 8 }) as const),
      { key: "remarks", head: "Remarks", kind: "text", width: 18 },
    ],
    groups: list.groups.map(({ kind, heading, quantity, lines }) => ({
      key: kind,
      heading,
      note: quantity.toLocaleString("en-US"),
      rows: lines.map((line) => ({
        key: line.key,
        cells: { qty: line.quantity, plant: paperPlant(line.taxon), size: line.sizeText || "size not said", ...split(line.split), remarks: line.remarks.join("; ") },
      })),
    })),
    total: { qty: list.quantity, plant: "plants in all", ...split(list.beds) },
    notes: [`${PULL_CAUTION} Call 811 before digging on the site.`],
    foot: paperFoot(job, list.quantity, ["Pulled by", "Loaded by"]),
    empty: `Nothing to pull yet: plants added to ${job.bedName ? "the bed" : "the beds"} appear here, except those that stand there already.`,
  };
}
