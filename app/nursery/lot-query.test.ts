import { describe, expect, it } from "vitest";
import { nurseryAddress, nurseryQueryRead } from "./lot-query";

const USUAL = { q: "", block: null, free: false, since: null, sort: "name", page: 1 } as const;

describe("the address of the nursery page", () => {
  it("leaves out what is as usual", () => expect(nurseryAddress(USUAL)).toBe("/nursery"));
  it("holds all that was asked, so that a page can be sent on", () => {
    const query = { q: "red maple", block: "North field", free: true, since: "2026-11-01", sort: "place", page: 3 } as const;
    const text = nurseryAddress(query);
    expect(nurseryQueryRead(Object.fromEntries(new URL(text, "http://x").searchParams))).toEqual(query);
    expect(nurseryQueryRead({ block: "" })).toEqual({ ...USUAL, block: "" });
  });
  it("passes over what cannot be read", () => {
    expect(nurseryQueryRead({ sort: "price", page: "-2", since: "tomorrow", free: ["1", "0"], other: "x" })).toEqual({ ...USUAL, free: true });
  });
});
