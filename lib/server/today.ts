import { MONTH_STARTS } from "../plants/thirds";

/** Today: day of year 1–365 (29 February folds into 28), and in words. The only clock. */
export function today(now: Date = new Date()): { day: number; text: string; iso: string } {
  const month = now.getMonth();
  const date = month === 1 ? Math.min(28, now.getDate()) : now.getDate();
  const iso = `${now.getFullYear()}-${String(month + 1).padStart(2, "0")}-${String(now.getDate()).padStart(2, "0")}`;
  return { day: (MONTH_STARTS[month] ?? 0) + date, text: now.toLocaleDateString("en-US", { month: "short", day: "numeric", year: "numeric" }), iso };
}
