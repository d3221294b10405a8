import { halfMonthRuns } from "../season/half-months";
import { type Check, rowFinding } from "./finding";

/** Half-months that one plant alone keeps from being bare. */
export const resting: Check = {
  id: "resting-on-one",
  look: ({ rows, resting: found }) =>
    rows.flatMap((r) => {
      const halves = found.filter((f) => f.key === r.row.id).map((f) => f.index);
      if (!halves.length) return [];
      return [rowFinding(r, "note", `carries ${halfMonthRuns(halves).join(", ")} alone: if it fails, that time is bare. A second plant for it is insurance.`)];
    }),
};
