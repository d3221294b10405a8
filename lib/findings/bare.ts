import { halfMonthRuns } from "../season/half-months";
import type { Check } from "./finding";

const percent = (share: number) => `${Math.round(share * 100)} %`;

/** Runs of half-months, each as its own finding, so that each can be filled. */
function runsOf(indexes: readonly number[]): number[][] {
  const wanted = new Set(indexes);
  if (wanted.size === 24) return [[...wanted].sort((a, b) => a - b)];
  return [...wanted]
    .filter((i) => !wanted.has((i + 23) % 24))
    .sort((a, b) => a - b)
    .map((start) => {
      const run = [start];
      for (let next = (start + 1) % 24; wanted.has(next); next = (next + 1) % 24) run.push(next);
      return run;
    });
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** Half-months below the target: under half of it is to fix, else to consider. */
export const bare: Check = {
  id: "bare",
  look: ({ halfMonths, rows }) => {
    if (!rows.length) return [];
    const gaps = halfMonths.filter((h) => h.bare);
    return runsOf(gaps.map((h) => h.index)).map((run) => {
      const hs = run.flatMap((i) => halfMonths[i] ?? []);
      const worst = hs.reduce((low, h) => (h.interest / h.target < low.interest / low.target ? h : low));
      const words = halfMonthRuns(run)[0] ?? "";
      const plural = run.length > 1 && words !== "the whole year";
      return {
        severity: worst.interest < worst.target / 2 ? ("fix" as const) : ("consider" as const),
        rowId: null,
        plant: null,
        message: `${capital(words)} ${plural && words.includes("through") ? "are" : "is"} bare: at the lowest, ${percent(worst.interest)} of the ground shows anything in ${worst.label}, against a target of ${percent(worst.target)}.`,
        remedy: { type: "fill" as const, halfMonths: run, label: "See what would fill it here" },
      };
    });
  },
};
