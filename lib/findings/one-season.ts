import { HALF_MONTHS } from "../season/half-months";
import { plantInterest } from "../season/interest";
import { type Check, type CheckedRow, rowFinding } from "./finding";

const SEASONS = [
  { name: "winter", half: [22, 23, 0, 1, 2, 3] },
  { name: "spring", half: [4, 5, 6, 7, 8, 9] },
  { name: "summer", half: [10, 11, 12, 13, 14, 15] },
  { name: "fall", half: [16, 17, 18, 19, 20, 21] },
] as const;
/** A show of 1 of 3 through half of a half-month. */
const SHOWS = 1 / 3 - 1e-6;
const LARGE_SHARE = 0.1;

/** Seasons in which a plant has something to show here. */
export function plantSeasons(r: Pick<CheckedRow, "season">, isGrowing: (day: number) => boolean): string[] {
  return SEASONS.filter(({ half }) =>
    half.some((i) => {
      const h = HALF_MONTHS[i];
      if (!h) return false;
      const day = Math.round((h.startDay + h.endDay) / 2);
      return plantInterest(r.season, day, isGrowing(day)) >= SHOWS;
    }),
  ).map((s) => s.name);
}

/** Plants that earn their ground in one season only; a large share of the bed is to consider. */
export const oneSeason: Check = {
  id: "one-season",
  look: ({ rows, plantableSqFt, isGrowing }) =>
    rows.flatMap((r) => {
      if (r.taxon.kind === "bulb") return []; // bulbs give the ground back
      const seasons = plantSeasons(r, isGrowing);
      if (seasons.length > 1) return [];
      const share = (r.quantity * Math.PI * (r.spreadFt / 2) ** 2) / plantableSqFt;
      const ground = `${Math.min(100, Math.round(share * 100))} % of the ground at maturity`;
      if (seasons.length === 0) return [rowFinding(r, "note", `has no show of its own in any season (${ground}); it serves as a green background.`)];
      return [
        rowFinding(
          r,
          share > LARGE_SHARE ? "consider" : "note",
          `shows in ${seasons[0]} only and takes ${ground}. Use fewer, or set something beside it that carries the other seasons.`,
        ),
      ];
    }),
};
