import { describe, expect, it } from "vitest";
import { datasetTaxa } from "./dataset";
import { accuracyRows } from "./phenology-accuracy";

/** What each source must at least come to. A row that gets better may be tightened; one that gets worse is a fault. */
const FLOORS: readonly { source: string; atLeast: number; meanAbsoluteError?: number; shareWithin?: number; rank?: number }[] = [
  { source: "Harvard Forest, first bloom", atLeast: 11, meanAbsoluteError: 7, rank: 0.7 },
  { source: "Harvard Forest, leaf-out (midway from budbreak to 75 % of size)", atLeast: 14, meanAbsoluteError: 7 },
  { source: "Harvard Forest, half fall color", atLeast: 14, meanAbsoluteError: 8 },
  { source: "Harvard Forest, half leaf fall", atLeast: 14, meanAbsoluteError: 8 },
  { source: "Ohio degree days at bloom, dataset's words alone", atLeast: 12, meanAbsoluteError: 5, rank: 0.95 },
  { source: "Ohio degree days at bloom, as shown", atLeast: 12, meanAbsoluteError: 3, rank: 0.9 },
  { source: "Bailey 1910, onset month", atLeast: 40, shareWithin: 0.93 },
  { source: "Webster 1897, order of onset", atLeast: 60, rank: 0.83 },
];

describe("computed dates against published ones", () => {
  const rows = accuracyRows(datasetTaxa());

  it.each(FLOORS)("$source", ({ source, atLeast, meanAbsoluteError, shareWithin, rank }) => {
    const row = rows.find((r) => r.source === source);
    expect(row?.n).toBeGreaterThanOrEqual(atLeast);
    if (meanAbsoluteError !== undefined) expect(row?.meanAbsoluteError).toBeLessThanOrEqual(meanAbsoluteError);
    if (shareWithin !== undefined) expect(row?.shareWithin).toBeGreaterThanOrEqual(shareWithin);
    if (rank !== undefined) expect(row?.rank).toBeGreaterThanOrEqual(rank);
  });
});
