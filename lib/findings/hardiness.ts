import { zoneRangeF, zoneText } from "../place/zone";
import { type Check, rowFinding } from "./finding";

/** Hardiness zone: too tender is to fix, too warm is to consider. */
export const hardiness: Check = {
  id: "hardiness",
  look: ({ rows, zone }) => {
    if (zone === null)
      return rows.length
        ? [
            {
              severity: "consider",
              rowId: null,
              plant: null,
              message: "The hardiness zone of this place is not known, so hardiness was not checked. Set it on the place page.",
              remedy: null,
            },
          ]
        : [];
    const [low, high] = zoneRangeF(zone);
    const here = `zone ${zoneText(zone)} (coldest night of an average year ${low} to ${high} °F)`;
    return rows.flatMap((r) => {
      const { zoneLow, zoneHigh } = r.taxon;
      if (zone < zoneLow) {
        if (r.row.existing) return [rowFinding(r, "note", `is rated hardy to zone ${zoneLow}, this place is ${here}; it stands here already, so it has a sheltered spot.`)];
        const half = zoneLow - zone <= 0.5;
        const advice = half ? "Half a zone short: only a sheltered spot gives it a chance, and no warranty should." : "Expect to lose it: take a hardier plant.";
        return [rowFinding(r, "fix", `is hardy to zone ${zoneLow}, this place is ${here}. ${advice}`, { type: "remove", rowId: r.row.id, label: "Take it out" })];
      }
      if (zone >= zoneHigh + 1)
        return [rowFinding(r, "consider", `suffers from heat beyond zone ${zoneHigh}, this place is ${here}. Give it shade and moisture, or take another.`)];
      return [];
    });
  },
};
