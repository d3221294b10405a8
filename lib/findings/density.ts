import type { Check } from "./finding";

const HARD = 9;
const FULL = 8;
const THIN = 3;

/** Planting density 1–10 of the whole bed. */
export const density: Check = {
  id: "density",
  look: ({ density: d, rows }) => {
    if (!rows.length) return [];
    const figure = `Planting density ${d.label} of 10 (${d.raw.toFixed(1)}; 5 is set at mature spread): ${d.words}`;
    const finding = (severity: "fix" | "consider", advice: string) => [{ severity, rowId: null, plant: null, message: `${figure} ${advice}`, remedy: null }];
    if (d.raw >= HARD) return finding("fix", `Take out about ${Math.round((1 - 5 / d.raw) * 100)} % of them or widen their spacing; else they will have to go within a few years.`);
    if (d.raw >= FULL) return finding("consider", "Agree now with the client who thins it, and when.");
    if (d.raw < THIN) return finding("consider", "Bare mulch will show for years: add plants or a groundcover, or make the bed smaller.");
    return [];
  },
};
