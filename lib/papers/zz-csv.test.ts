import fc from "fast-check";
import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { csvText } from "./csv";

fc.configureGlobal({ numRuns: 1000 });
describe("CSV", () => {
  it("quotes what needs it and ends every row with CRLF", () => {
    expect(csvText([["a", "b, c", 'd "e"', "f\ng", 1.5, null, true]])).toBe('a,"b, c","d ""e""","f\ng",1.5,,true\r\n');
    expect(csvText([["a"], ["b"]])).toBe("a\r\nb\r\n");
    expect(csvText([])).toBe("");
  });

  it("sets a byte order mark only when asked", () => {
    expect(csvText([["×"]], { byteOrderMark: true })).toBe("\ufeff×\r\n");
    expect(csvText([["×"]]).startsWith("\ufeff")).toBe(false);
  });

  it.each(["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\rx", "\nx", " =1", "\u00a0=1", "\u200b=1", "＝1", "＋1", "－1", "＠x", "=1\n+2", "-"])("disarms %j", (text) => {
    const [row] = Papa.parse<string[]>(csvText([[text]]), { delimiter: "," }).data;
    expect(row?.[0]).toBe(`'${text}`);
  });

  it("leaves negative numbers and harmless text as they are", () => {
    expect(csvText([[-5, "a-b", "#3", "2-2.5 in", "'Limelight'", "½"]])).toBe("-5,a-b,#3,2-2.5 in,'Limelight',½\r\n");
  });

  it("reads back to the same cells, but for the apostrophe of disarmed ones", () => {
    const cell = fc.oneof(fc.string({ unit: "binary" }), fc.string({ unit: fc.constantFrom(",", '"', "\n", "\r", "=", "a", ";", " ") }));
    fc.assert(
      fc.property(fc.array(fc.tuple(cell, cell), { minLength: 1, maxLength: 8 }), (rows) => {
        const { data } = Papa.parse<string[]>(csvText(rows), { newline: "\r\n", delimiter: "," });
        for (const [r, row] of rows.entries())
          for (const [c, value] of row.entries()) {
            const read = data[r]?.[c];
            expect(read === value || read === `'${value}`).toBe(true);
            expect(read ?? "").not.toMatch(/^\s*[=+\-@＝＋－＠]/);
          }
      }),
    );
  });
});
