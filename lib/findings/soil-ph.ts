import { type Check, rowFinding } from "./finding";

const FAR = 0.5;

/** Soil pH against the plant's range: within half a unit outside is to consider, beyond is to fix. */
export const soilPh: Check = {
  id: "soil-ph",
  look: ({ rows, site }) =>
    site.ph === null
      ? []
      : rows.flatMap((r) => {
          const ph = site.ph ?? 7;
          const [low, high] = r.taxon.ph;
          const off = Math.max(low - ph, ph - high);
          if (off <= 0 || r.row.existing) return [];
          const advice =
            ph > high ? "Expect yellow leaves: lower the pH with sulfur before planting and test again, or take another." : "Lime before planting and test again, or take another.";
          return [rowFinding(r, off > FAR ? "fix" : "consider", `wants pH ${low.toFixed(1)}–${high.toFixed(1)}; the soil is ${ph.toFixed(1)}. ${advice}`)];
        }),
};
