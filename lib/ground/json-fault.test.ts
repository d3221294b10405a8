import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { jsonFaultIndex } from "./json-fault";

describe("a text that is not JSON", () => {
  it("is faulty at the first sign out of place, or at its end where it is cut off", () => {
    expect(jsonFaultIndex('{"a": [1, 2,, 3]}')).toBe(12);
    expect(jsonFaultIndex("[1 2]")).toBe(3);
    expect(jsonFaultIndex('{"a" 1}')).toBe(5);
    expect(jsonFaultIndex("[1, 2")).toBe(5);
    expect(jsonFaultIndex("{'a': 1}")).toBe(1);
    expect(jsonFaultIndex("[1]]")).toBe(3);
    expect(jsonFaultIndex("[}")).toBe(1);
  });

  it("is sound up to its end where it is JSON, and cut short is faulty only there", () => {
    fc.assert(
      fc.property(fc.json(), fc.integer({ min: 2, max: 4 }), (text, indent) => {
        const written = JSON.stringify(JSON.parse(text), null, indent);
        expect(jsonFaultIndex(written)).toBe(written.length);
      }),
    );
  });
});
