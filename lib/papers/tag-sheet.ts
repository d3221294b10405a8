// Tags to hang on plants: job, bed, key, name, size, which of how many, and a code that a phone's camera reads.
import { plantsText } from "../nursery/count-words";
import { type PullSheet, type PullSheetLine, sheetLines } from "../pulls/pull-sheet";
import { type Paper, type PaperPlant, paperPlant } from "./paper";
import { type PaperJob, paperFileName, paperFoot, paperSubtitle } from "./paper-pull";

/** plant: a tag for every plant; group: one for all plants of a line. */
export const TAG_EACH = ["group", "plant"] as const;
export type TagEach = (typeof TAG_EACH)[number];

export type Tag = {
  readonly key: string;
  readonly job: string;
  readonly bed: string;
  readonly letter: string;
  readonly plant: PaperPlant;
  readonly size: string;
  /** "3 of 11"; for a group "11 plants". */
  readonly count: string;
  readonly place: string;
  /** What the code says: the address of the line. */
  readonly code: string;
};

/** No more tags are made at once: a sheet's worth of paper for a large job. */
export const TAGS_MAX = 1200;

export type TagSet = { readonly tags: readonly Tag[] /** Tags beyond the most that are made at once. */; readonly left: number };

const rowKey = ({ bedId, rowId }: PullSheetLine): string => `${bedId}:${rowId}`;

/** Address of a line of the pull list on the phone. @param origin "http://nursery:3000" @param lineId may hold a colon, which an address leaves as it is */
export function lineAddress(origin: string, jobId: string, lineId: string): string {
  return `${origin}/jobs/${jobId}/pull/field#${lineId}`;
}

/**
 * Tags of a sheet in the order in which it is pulled. Plants of a row are numbered through, also where they come from several places.
 * Plants that were short or damaged get none.
 */
export function tagSet(sheet: PullSheet, jobName: string, each: TagEach, addressOf: (lineId: string) => string): TagSet {
  const lines = sheetLines(sheet)
    .map((line) => ({ line, plants: line.open + line.pulled }))
    .filter(({ plants }) => plants > 0);
  const totals = new Map<string, number>();
  for (const { line, plants } of lines) totals.set(rowKey(line), (totals.get(rowKey(line)) ?? 0) + plants);
  const numbered = new Map<string, number>();
  const tags: Tag[] = [];
  let left = 0;
  for (const { line, plants } of lines) {
    const begin = numbered.get(rowKey(line)) ?? 0;
    numbered.set(rowKey(line), begin + plants);
    const base = { job: jobName, bed: line.bedName, letter: line.letter, plant: paperPlant(line.taxon), size: line.sizeText, place: line.placeText, code: addressOf(line.lineId) };
    const counts = each === "group" ? [plantsText(plants)] : Array.from({ length: plants }, (_, i) => `${begin + i + 1} of ${totals.get(rowKey(line))}`);
    for (const [index, count] of counts.entries())
      if (tags.length < TAGS_MAX) tags.push({ key: `${line.lineId} ${index}`, count, ...base });
      else left++;
  }
  return { tags, left };
}

/** The tags as a list, for printers that take CSV or XLSX. */
export function tagsPaper({ tags }: TagSet, job: PaperJob): Paper {
  return {
    title: "Tags",
    subtitle: paperSubtitle(job),
    fileName: paperFileName(job, "tags"),
    groupHead: "Place",
    columns: [
      { key: "job", head: "Job", kind: "text", width: 12 },
      { key: "bed", head: "Bed", kind: "text", width: 12 },
      { key: "letter", head: "Key", kind: "text", width: 4 },
      { key: "plant", head: "Plant", kind: "plant", width: 26 },
      { key: "size", head: "Size", kind: "text", width: 10 },
      { key: "count", head: "Count", kind: "text", width: 8 },
      { key: "code", head: "Code", kind: "text", width: 24 },
    ],
    groups: [...new Set(tags.map(({ place }) => place))].map((place) => ({
      key: place,
      heading: place,
      note: "",
      rows: tags
        .filter((tag) => tag.place === place)
        .map(({ key, job: jobName, bed, letter, plant, size, count, code }) => ({ key, cells: { job: jobName, bed, letter, plant, size, count, code } })),
    })),
    total: null,
    notes: [],
    foot: paperFoot(job, tags.length, ["Printed by", "Hung by"]),
    empty: "No tags yet: plants added to the beds get theirs here, except those that stand there already.",
  };
}
