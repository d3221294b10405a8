import { describe, expect, it } from "vitest";
import { isThird, MONTHS, type Third, thirdEndDay, thirdOfDay, thirdStartDay } from "./thirds";

const ALL = MONTHS.flatMap((m) => (["early", "mid", "late"] as const).map((part): Third => `${part} ${m}`));

describe("thirds of a month", () => {
  it("follow each other without gap through the year", () => {
    let next = 1;
    for (const third of ALL) {
      expect(thirdStartDay(third)).toBe(next);
      next = thirdEndDay(third) + 1;
    }
    expect(next).toBe(366);
  });
  it("are found again from any of their days", () => {
    for (const third of ALL) for (let day = thirdStartDay(third); day <= thirdEndDay(third); day++) expect(thirdOfDay(day)).toBe(third);
  });
  it("are told from other words", () => {
    expect(isThird("late Feb")).toBe(true);
    expect(isThird("Late February")).toBe(false);
  });
});
