import { LEVELS } from "../plants/vocabulary";
import { type Check, rowFinding } from "./finding";

const NEEDED = { none: 0, some: 1, heavy: 2 } as const;

/** Road salt against the plant's tolerance. */
export const salt: Check = {
  id: "salt",
  look: ({ rows, site }) =>
    rows.flatMap((r) => {
      const short = NEEDED[site.salt] - LEVELS.indexOf(r.taxon.salt);
      if (short <= 0 || r.row.existing) return [];
      return [
        rowFinding(
          r,
          short > 1 ? "fix" : "consider",
          `has ${r.taxon.salt} salt tolerance; the bed gets ${site.salt} road salt. Keep it back from the walk and the plow line, or take a tougher one.`,
        ),
      ];
    }),
};

/** Deer pressure against how often the plant is browsed. */
export const deer: Check = {
  id: "deer",
  look: ({ rows, site }) =>
    rows.flatMap((r) => {
      if (site.deer === "none" || r.taxon.deer === "rarely" || r.row.existing) return [];
      if (r.taxon.deer === "sometimes" && site.deer === "some") return [];
      const severe = r.taxon.deer === "often" && site.deer === "heavy";
      return [rowFinding(r, severe ? "fix" : "consider", `is ${r.taxon.deer} browsed and the deer pressure is ${site.deer}. Fence or spray it, or take one they leave alone.`)];
    }),
};
