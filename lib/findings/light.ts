import { LIGHTS, type Light } from "../plants/vocabulary";
import { type Check, rowFinding } from "./finding";

/** Hours of direct sun on a summer day: common practice, no source. */
const HOURS: Record<Light, string> = { sun: "six hours of sun or more", part: "three to six hours of sun", shade: "less than three hours of sun" };
const NAMES: Record<Light, string> = { sun: "full sun", part: "part shade", shade: "shade" };

/** Light: one step off is to consider, two are to fix. */
export const light: Check = {
  id: "light",
  look: ({ rows, site }) =>
    rows.flatMap((r) => {
      const here = LIGHTS.indexOf(site.light);
      const off = Math.min(...r.taxon.light.map((l) => Math.abs(LIGHTS.indexOf(l) - here)));
      if (off === 0 || r.row.existing) return [];
      const wants = r.taxon.light.map((l) => NAMES[l]).join(" or ");
      const happens = LIGHTS.indexOf(r.taxon.light[0] ?? "sun") < here ? "It will grow thin and flower little." : "Its leaves will scorch.";
      return [rowFinding(r, off > 1 ? "fix" : "consider", `wants ${wants}; the bed has ${NAMES[site.light]} (${HOURS[site.light]}). ${happens}`)];
    }),
};
