import { describe, expect, it } from "vitest";
import { plantsPerSqFt, quantityForArea } from "../../lib/ground/spacing";
import { EXTENSION_TABLE, GROUNDCOVER_CHART, MULTIPLIERS, type PlantsPerAreaTable, SINGLE_ROWS } from "./plants-per-area";

type Cell = { spacingIn: number; areaSqFt: number; printed: number; exact: number; ours: number };

function cell(spacingIn: number, areaSqFt: number, printed: number): Cell {
  const exact = (areaSqFt * 144) / spacingIn ** 2;
  return { spacingIn, areaSqFt, printed, exact, ours: quantityForArea(areaSqFt, spacingIn / 12, "square") };
}

function cells(table: PlantsPerAreaTable): Cell[] {
  return table.areasSqFt.flatMap((areaSqFt, i) => table.spacingsIn.map((spacingIn, j) => cell(spacingIn, areaSqFt, table.printed[i]?.[j] ?? Number.NaN)));
}

const named = (list: Cell[]) => list.map(({ spacingIn, areaSqFt, printed }) => `${areaSqFt} sq ft at ${spacingIn} in: ${printed}`);
const all = [...cells(EXTENSION_TABLE), ...cells(GROUNDCOVER_CHART), ...SINGLE_ROWS.rows.map((r) => cell(r.spacingIn, r.areaSqFt, r.printed))];

describe("plants per area against published tables (square grid)", () => {
  it("has every printed cell", () => {
    expect(cells(EXTENSION_TABLE)).toHaveLength(60);
    expect(cells(GROUNDCOVER_CHART)).toHaveLength(117);
    expect(all.every((c) => c.printed > 0)).toBe(true);
  });

  it("gives the exact figure rounded up once: wherever the exact figure is whole, the printed one too, but for the misprints below", () => {
    for (const c of all) expect(c.ours).toBe(Math.ceil(Number(c.exact.toFixed(6))));
    const wholeButDifferent = all.filter((c) => Number.isInteger(Number(c.exact.toFixed(9))) && c.printed !== c.ours);
    expect(named(wholeButDifferent)).toEqual(["900 sq ft at 9 in: 1602", "900 sq ft at 18 in: 405", "900 sq ft at 18 in: 396", "900 sq ft at 36 in: 99"]);
  });

  it("agrees with the extension table, which rounds up the plants for 100 sq ft and then multiplies; one cell breaks its own rule", () => {
    const rule = (c: Cell) => Math.ceil(Number((14_400 / c.spacingIn ** 2).toFixed(6))) * (c.areaSqFt / 100);
    expect(named(cells(EXTENSION_TABLE).filter((c) => c.printed !== rule(c)))).toEqual(["800 sq ft at 9 in: 1425"]);
    for (const c of cells(EXTENSION_TABLE)) {
      expect(c.ours).toBeLessThanOrEqual(c.printed);
      expect(c.printed - c.ours).toBeLessThanOrEqual(c.areaSqFt / 100);
    }
  });

  it("agrees with the chart, which rounds to the nearest plant or rounds down for 100 sq ft and multiplies: then it is short of the area", () => {
    for (const c of cells(GROUNDCOVER_CHART)) {
      const perHundredDown = Math.floor(Math.floor(Number((14_400 / c.spacingIn ** 2).toFixed(6))) * (c.areaSqFt / 100));
      expect([Math.round(c.exact), perHundredDown]).toContain(c.printed);
    }
    const short = cells(GROUNDCOVER_CHART).filter((c) => c.printed < c.exact - 1e-9);
    expect(short.length).toBeGreaterThan(15);
    for (const c of short) expect(c.ours).toBeGreaterThan(c.printed);
    expect([...new Set(short.map((c) => c.spacingIn))].sort((a, b) => a - b)).toEqual([18, 36]);
  });

  it("agrees with the multipliers to two decimals cut off, but for two misprints (2.28 for 2.25 and 0.24 for 0.25)", () => {
    const multipliers = cells(MULTIPLIERS);
    const cut = (c: Cell) => Math.floor(plantsPerSqFt(c.spacingIn / 12, "square") * 100 + 1e-9) / 100;
    expect(named(multipliers.filter((c) => c.printed !== cut(c)))).toEqual(["1 sq ft at 8 in: 2.28", "1 sq ft at 24 in: 0.24"]);
    expect(plantsPerSqFt(8 / 12, "square")).toBeCloseTo(2.25, 12);
    expect(plantsPerSqFt(2, "square")).toBe(0.25);
  });
});
