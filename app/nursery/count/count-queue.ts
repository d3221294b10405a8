// Counts on their way to the program. They are kept in the browser until it has them: a field has no signal as often as it has one.
import { z } from "zod";

const counts = z.array(z.object({ lotId: z.string(), version: z.number(), quantity: z.number(), name: z.string(), anyway: z.boolean() }));

/** A count of a lot as it was known at `version`; `anyway`: also below what is promised. */
export type WaitingCount = z.infer<typeof counts>[number];

const KEY = "twelvemonth:counts";

/** The counts that did not reach the program yet, the oldest first. */
export function countsRead(): readonly WaitingCount[] {
  try {
    return counts.safeParse(JSON.parse(localStorage.getItem(KEY) ?? "[]")).data ?? [];
  } catch {
    return [];
  }
}

export function countsWrite(waiting: readonly WaitingCount[]): void {
  try {
    if (waiting.length) localStorage.setItem(KEY, JSON.stringify(waiting));
    else localStorage.removeItem(KEY);
  } catch {
    // A browser that keeps nothing: the counts are kept while the page is open.
  }
}

/** The queue with a count added; a later count of a lot takes the place of an earlier one that was not sent. */
export function countAdded(waiting: readonly WaitingCount[], count: WaitingCount): readonly WaitingCount[] {
  return [...waiting.filter((one) => one.lotId !== count.lotId), count];
}
