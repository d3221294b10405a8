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
  priceCents: z.number(),
  breaks: z.array(z.tuple([z.number(), z.number()])).optional(),
});
export type LineLabel = z.infer<typeof label>;

const folder = path.resolve(import.meta.dirname, "../fixtures/availability");

/** The lists by style, as rows, with their labels. */
export function labelledLists(): { style: string; rows: string[][]; labels: LineLabel[] }[] {
  const all = z.record(z.string(), z.array(label)).parse(JSON.parse(readFileSync(path.join(folder, "labels.json"), "utf8")));
  return Object.entries(all).map(([style, labels]) => ({ style, rows: csvRows(readFileSync(path.join(folder, `${style}.csv`), "utf8")), labels }));
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);

/** What of a line's size differs from its label; empty where all is right. */
export function sizeFaults(line: MatchedLine, { size }: LineLabel): string[] {
  const own = { ...line.size, root: line.size.root === "unknown" ? null : line.size.root };
  return (["root", "containerClass", "caliperIn", "heightIn", "spreadIn", "ballIn", "plugCount", "flatCount"] as const).flatMap((key) =>
    same(own[key], size[key]) ? [] : [`${key} ${JSON.stringify(own[key])} for ${JSON.stringify(size[key] ?? null)}`],
  );
}
