// The day a plan is first shown at: when most of its plants are in flower between the freezes, so that the sheet shows what the planting is for.
import type { PlacedTaxon } from "@/lib/papers/bed-view";

const MAY_1 = 121;
const OCTOBER_1 = 274;
const MIDSUMMER = 172;

/** The day of year (1–365), by weeks, on which the most taxa flower; midsummer where none do. */
export function dayShown(taxa: readonly PlacedTaxon[], freezes: { readonly lastFreezeDay: number | null; readonly firstFreezeDay: number | null }): number {
  let best = { day: MIDSUMMER, show: 0 };
  for (let day = freezes.lastFreezeDay ?? MAY_1; day <= (freezes.firstFreezeDay ?? OCTOBER_1); day += 7) {
    const show = taxa.reduce(
      (sum, { season }) => sum + season.windows.reduce((most, w) => (w.kind === "bloom" && w.startDay <= day && day <= w.endDay ? Math.max(most, w.feature.show) : most), 0),
      0,
    );
    if (show > best.show) best = { day, show };
  }
  return best.day;
}
