import { describe, expect, it } from "vitest";
import { datasetTaxa } from "../../tests/outside/dataset";
import { REFERENCE_CLIMATE } from "../place/reference";
import { yearMoves } from "./year-moves";

const lilac = datasetTaxa().find((t) => t.name === "Syringa vulgaris");

describe("how the year moves", () => {
  const moves = lilac ? yearMoves(REFERENCE_CLIMATE, "open", [{ label: "Lilac blooms", taxon: lilac, kind: "bloom" }]) : null;
  const row = (label: string) => moves?.rows.find((r) => r.label === label)?.days.map((day) => day ?? 0) ?? [];

  it("gives a date a column for each freeze and each marker", () => {
    expect(moves?.columns).toHaveLength(5);
    expect(moves?.rows.map((r) => r.label)).toEqual(["Last freeze", "Lilac blooms", "First freeze"]);
    for (const r of moves?.rows ?? []) expect(r.days).toHaveLength(5);
  });

  it("brings lilac early in a mild spring, late in a hard one, and ever earlier as the climate warms", () => {
    const [mild = 0, normal = 0, hard = 0, two = 0, four = 0] = row("Lilac blooms");
    expect(mild).toBeLessThan(normal);
    expect(hard).toBeGreaterThan(normal);
    expect(two).toBeLessThan(normal);
    expect(four).toBeLessThan(two);
  });

  it("leaves the first freeze of fall where it is in a mild spring, and moves it in a warmer climate", () => {
    const [mild = 0, normal = 0, , , four = 0] = row("First freeze");
    expect(Math.abs(mild - normal)).toBeLessThanOrEqual(1);
    expect(four).toBeGreaterThan(normal);
  });
});
