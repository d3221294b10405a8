import { expect, it } from "vitest";
import { valueSame } from "./value-same";

it("takes two values for the same whatever the order of their fields, and undefined for absent", () => {
  expect(valueSame({ a: 1, b: [{ c: null }] }, { b: [{ c: null }], a: 1, d: undefined })).toBe(true);
});
it("tells values apart by a field, a place in a list, a kind", () => {
  expect(valueSame({ a: 1 }, { a: 2 })).toBe(false);
  expect(valueSame([1, 2], [2, 1])).toBe(false);
  expect(valueSame([1], [1, 2])).toBe(false);
  expect(valueSame({ a: null }, { a: [] })).toBe(false);
  expect(valueSame({ a: null }, {})).toBe(false);
});
