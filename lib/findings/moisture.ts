import { MOISTURES } from "../plants/vocabulary";
import { type Check, rowFinding } from "./finding";

/** Soil moisture: one step off is to consider, two are to fix. */
export const moisture: Check = {
  id: "moisture",
  look: ({ rows, site }) =>
    rows.flatMap((r) => {
      const here = MOISTURES.indexOf(site.moisture);
      const steps = r.taxon.moisture.map((m) => MOISTURES.indexOf(m) - here);
      const off = Math.min(...steps.map(Math.abs));
      if (off === 0 || r.row.existing) return [];
      const drier = Math.max(...steps) < 0;
      const advice = drier ? "Raise the bed or drain it, or take a plant that stands the wet." : "Water it through dry spells for good, or take a plant that stands the dry.";
      return [rowFinding(r, off > 1 ? "fix" : "consider", `wants ${r.taxon.moisture.join(" or ")} soil; the bed is ${site.moisture}. ${advice}`)];
    }),
};
