import { describe, expect, it } from "vitest";
import { dateText, numberText, sizeFromDate } from "./cell-text";

describe("a number of a workbook", () => {
  it.each([
    [18.5, '"$"#,##0.00', "$18.50"],
    [1062, '_($* #,##0.00_);_($* (#,##0.00);_($* "-"??_);_(@_)', "$1,062.00"],
    [12.5, "[$€-407] #,##0.00", "€ 12.50"],
    [3, '"#"0', "#3"],
    [7, "0 \\g\\a\\l", "7 gal"],
    [250, '0"+"', "250+"],
    [0.25, "0%", "25%"],
    [12.100000000000001, "General", "12.1"],
    [2.5, "# ?/?", "2.5"],
    [1200, "#,##0", "1,200"],
    [5, "", "5"],
  ])("%d under %s reads %s", (value, format, text) => {
    expect(numberText(value, format)).toBe(text);
  });
});

describe("dates", () => {
  it("are ISO dates, or day and month where the sheet shows no year", () => {
    const day = new Date(Date.UTC(2026, 4, 6));
    expect(dateText(day, "m/d/yy")).toBe("2026-05-06");
    expect(dateText(day, "d-mmm")).toBe("6-May");
  });
  it("that were sizes before a spreadsheet got hold of them are sizes again", () => {
    expect(sizeFromDate("6-May")).toBe("5-6");
    expect(sizeFromDate("10-Feb")).toBe("2-10");
    expect(sizeFromDate("5-6 ft")).toBe("5-6 ft");
  });
});
