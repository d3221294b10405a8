import { describe, expect, it } from "vitest";
import { harvardForestYear } from "../../tests/outside/phenology-accuracy";
import { REFERENCE_YEAR } from "../place/reference";
import { spreadDays } from "./spread";

describe("the spread of a date", () => {
  it("is nothing for what shows all year", () => {
    expect(spreadDays("always", 1, 0, REFERENCE_YEAR)).toBe(0);
  });

  it("is about a week for a May date that was not carried, as the years at Harvard Forest scatter", () => {
    const days = spreadDays("heat", 128, 0, harvardForestYear());
    expect(days).toBeGreaterThanOrEqual(5);
    expect(days).toBeLessThanOrEqual(9);
  });

  it("grows with how far a date was carried, up to a bound", () => {
    const near = spreadDays("heat", 121, 0, REFERENCE_YEAR);
    const far = spreadDays("heat", 121, -20, REFERENCE_YEAR);
    const farther = spreadDays("heat", 121, -60, REFERENCE_YEAR);
    expect(far).toBeGreaterThan(near);
    expect(farther).toBeGreaterThanOrEqual(far);
    expect(farther).toBeLessThan(20);
  });
});
