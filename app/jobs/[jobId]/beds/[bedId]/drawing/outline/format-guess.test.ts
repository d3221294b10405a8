import { expect, it } from "vitest";
import { formatGuess, unitsOf } from "./format-guess";

it("knows a file by its contents, whatever it is called", () => {
  expect(formatGuess("bed.txt", '<?xml version="1.0"?><svg/>')).toBe("SVG path");
  expect(formatGuess("", "M 0 0 H 20 V 8 Z")).toBe("SVG path");
  expect(formatGuess("", "m10,10 l5 5z")).toBe("SVG path");
  expect(formatGuess("bed.svg", '{"type":"Polygon"}')).toBe("GeoJSON");
  expect(formatGuess("", "  0\r\nSECTION\r\n  2\r\nHEADER")).toBe("DXF");
  expect(formatGuess("", "999\nfrom the survey\n0\nSECTION\n2\nENTITIES")).toBe("DXF");
});
it("goes by the name where the contents say nothing, and admits what it does not know", () => {
  expect(formatGuess("Site.DXF", "garbage")).toBe("DXF");
  expect(formatGuess("bed.geojson", "")).toBe("GeoJSON");
  expect(formatGuess("bed.csv", "1,2")).toBeNull();
});
it("offers the likeliest unit first, and degrees only where they can be", () => {
  expect(unitsOf("DXF")[0]).toBe("as the file says");
  expect(unitsOf("GeoJSON")[0]).toBe("degrees");
  expect(unitsOf("SVG path")).not.toContain("degrees");
});
