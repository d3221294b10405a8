// The hand-labelled availability lists (tests/fixtures/availability, all invented) and how a matching is judged against them.
import { readFileSync } from "node:fs";
import path from "node:path";
import { z } from "zod";
import type { MatchedLine } from "../../lib/nursery/line-match";
import { csvRows } from "../../lib/nursery/list-read";

const span = z.tuple([z.number(), z.number()]).nullable();
const label = z.object({
  row: z.number(),
  /** Accepted name; null: the plant is not in the dataset, and no line may pass as sure. */
  name: z.string().nullable(),
  size: z.object({
    root: z.string().nullable(),
    containerClass: z.string().nullable(),
    caliperIn: span,
    heightIn: span,
    spreadIn: span.optional(),
    ballIn: z.number().optional(),
    plugCount: z.number().optional(),
    flatCount: z.number().optional(),
  }),
  quantity: z.number().nullable(),
  priceCents: z.number().nullable(),
  breaks: z.array(z.tuple([z.number(), z.number()])).optional(),
});
export type LineLabel = z.infer<typeof label>;

const folder = path.resolve(import.meta.dirname, "../fixtures/availability");
export type LabelledList = { readonly style: string; readonly rows: string[][]; readonly labels: LineLabel[] };

function listsOf(where: string): LabelledList[] {
  const all = z.record(z.string(), z.array(label)).parse(JSON.parse(readFileSync(path.join(where, "labels.json"), "utf8")));
  return Object.entries(all).map(([style, labels]) => ({ style, rows: csvRows(readFileSync(path.join(where, `${style}.csv`), "utf8")), labels }));
}

/** The lists by style, as rows, with their labels. */
export function labelledLists(): LabelledList[] {
  return listsOf(folder);
}

/** Lists that were labelled before the engine was ever run on them, in three further styles; nothing was tuned on them. */
export function heldOutLists(): LabelledList[] {
  return listsOf(path.join(folder, "held-out"));
}

/** Lists by another hand: written and labelled by someone who had not seen the engine or its lists; the engine's first figures on them are in DEVELOPERS.md. */
export function strangerLists(): LabelledList[] {
  return listsOf(path.join(folder, "stranger"));
}

/** Each label with the line that was read for it: the first label of a row has the row's first line. Lines without a label are invented ones. */
export function labelsJudged(
  labels: readonly LineLabel[],
  matched: readonly MatchedLine[],
): { pairs: { label: LineLabel; line: MatchedLine | undefined }[]; invented: MatchedLine[] } {
  const left = new Map<number, MatchedLine[]>();
  for (const line of matched) left.set(line.row, [...(left.get(line.row) ?? []), line]);
  const pairs = labels.map((one) => ({ label: one, line: left.get(one.row)?.shift() }));
  return { pairs, invented: [...left.values()].flat() };
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);

/** What of a line's size differs from its label; empty where all is right. */
export function sizeFaults(line: MatchedLine, { size }: LineLabel): string[] {
  const own = { ...line.size, root: line.size.root === "unknown" ? null : line.size.root };
  return (["root", "containerClass", "caliperIn", "heightIn", "spreadIn", "ballIn", "plugCount", "flatCount"] as const).flatMap((key) =>
    same(own[key], size[key]) ? [] : [`${key} ${JSON.stringify(own[key])} for ${JSON.stringify(size[key] ?? null)}`],
  );
}
