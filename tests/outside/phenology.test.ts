import { describe, expect, it } from "vitest";
import { datasetTaxa } from "./dataset";
import { accuracyRows, degreeDayRows } from "./phenology-accuracy";

/** The present figures, rounded up a little: a row that gets better may be tightened, one that gets worse is a fault. */
const FLOORS: readonly { source: string; atLeast: number; meanAbsoluteError?: number; shareWithin?: number; rank?: number }[] = [
  { source: "Harvard Forest, first bloom", atLeast: 20, meanAbsoluteError: 6, rank: 0.9 },
  { source: "Harvard Forest, leaf-out (midway from budbreak to 75 % of size)", atLeast: 27, meanAbsoluteError: 4.3 },
  { source: "Harvard Forest, half fall color", atLeast: 26, meanAbsoluteError: 7.8 },
  { source: "Harvard Forest, half leaf fall", atLeast: 27, meanAbsoluteError: 7.8 },
  { source: "Ohio degree days at bloom, dataset's words alone", atLeast: 16, meanAbsoluteError: 4, rank: 0.95 },
  { source: "Ohio degree days at bloom, as shown", atLeast: 16, meanAbsoluteError: 0.6, rank: 0.98 },
  { source: "Bailey 1910, onset month", atLeast: 55, shareWithin: 0.96 },
  { source: "Webster 1897, order of onset", atLeast: 136, rank: 0.85 },
  { source: "New York 1991–2020, from the means of the same period", atLeast: 11, meanAbsoluteError: 1, shareWithin: 1 },
  { source: "Twelve stations, months over 50, from the means of the same period", atLeast: 68, meanAbsoluteError: 1.7, shareWithin: 0.95 },
  { source: "Twelve stations, months over 50, brought to their period", atLeast: 68, meanAbsoluteError: 3.5, shareWithin: 0.88 },
];

describe("computed dates against published ones", () => {
  const rows = [...accuracyRows(datasetTaxa()), ...degreeDayRows()];

  it.each(FLOORS)("$source", ({ source, atLeast, meanAbsoluteError, shareWithin, rank }) => {
    const row = rows.find((r) => r.source === source);
    expect(row?.n).toBeGreaterThanOrEqual(atLeast);
    if (meanAbsoluteError !== undefined) expect(row?.meanAbsoluteError).toBeLessThanOrEqual(meanAbsoluteError);
    if (shareWithin !== undefined) expect(row?.shareWithin).toBeGreaterThanOrEqual(shareWithin);
    if (rank !== undefined) expect(row?.rank).toBeGreaterThanOrEqual(rank);
  });
});
