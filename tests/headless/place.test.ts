import { writeFileSync } from "node:fs";
import path from "node:path";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { commandForTests } from "../support/command";

const { run, dir } = commandForTests();

const day = z.number().int().min(1).max(365);
const seasons = z.array(
  z.strictObject({
    query: z.string(),
    name: z.string(),
    basis: z.enum(["computed", "reference months"]),
    basisNote: z.string().nullable(),
    leaves: z.strictObject({ onDay: day, offDay: day, onSpreadDays: z.number().min(2).max(30), offSpreadDays: z.number().min(2).max(30) }).nullable(),
    windows: z.array(
      z.strictObject({
        kind: z.string(),
        color: z.string(),
        show: z.number(),
        drive: z.string(),
        startDay: day,
        endDay: day,
        peakDay: day,
        spreadDays: z.number().min(0).max(30),
        degreeDays: z.number().nullable(),
        degreeDaysFull: z.number().nullable(),
        sources: z.array(z.string()).min(1),
      }),
    ),
  }),
);
function seasonsAt(place: string, names: string[]) {
  const { code, out, err } = run(["windows", "-", "--place", place, "--json"], names.join("\n"));
  expect(err).toBe("");
  expect(code).toBe(0);
  return seasons.parse(JSON.parse(out));
}

describe("windows at a place", () => {
  it("give every field: leaves with their spread, peaks, published figures and what the dates rest on", () => {
    const [forsythia, locust, yew] = seasonsAt("05401", ["Forsythia x intermedia", "Robinia pseudoacacia", "Taxus x media"]);
    const bloom = forsythia?.windows.find((w) => w.kind === "bloom");
    expect(bloom).toMatchObject({ degreeDays: 86, degreeDaysFull: null, drive: "heat" });
    expect(bloom?.peakDay).toBeGreaterThan(bloom?.startDay ?? 365);
    expect(bloom?.spreadDays).toBeGreaterThanOrEqual(4);
    expect(forsythia).toMatchObject({ basis: "computed", basisNote: null });
    expect(forsythia?.leaves).not.toBeNull();
    expect(locust?.windows.find((w) => w.kind === "bloom")).toMatchObject({ degreeDays: null, degreeDaysFull: 548 });
    expect(yew?.leaves).toBeNull();
  });

  it("say where the model has no basis, and give the reference months there", () => {
    const [lilac] = seasonsAt("96813", ["Syringa vulgaris"]);
    expect(lilac?.basis).toBe("reference months");
    expect(lilac?.basisNote).toMatch(/reference months are shown/);
  });
});

describe("a place that cannot be", () => {
  it.each([
    [["place", "0540"], /neither a five-digit ZIP code nor LAT,LON/],
    [["place", "05498"], /ZIP 05498 is not in the Census table\. The nearest that is known is 054\d\d/],
    [["place", "35,-45"], /No weather station within 150 miles/],
    [["place", "44.48,73.21"], /is a minus sign missing/],
    [["place", "44.5,-72.8,99999"], /Elevation must lie between -282 and 20,310 ft/],
    [["place", "44.5,-72.8,high"], /not a number/],
    [["windows", "Acer rubrum", "--place", "35,-45"], /No weather station within 150 miles/],
  ])("%j is refused in words", (args, words) => {
    const { code, out, err } = run(args);
    expect(out).toBe("");
    expect(code).toBe(2);
    expect(err).toMatch(words);
  });

  it("without a zone in the table still has a default, said to be one", () => {
    const found = z.object({ zone: z.string(), zoneMap: z.null(), warnings: z.array(z.string()).min(1) }).parse(JSON.parse(run(["place", "99501", "--json"]).out));
    expect(found.zone).toMatch(/^[3-5][ab]$/);
    expect(found.warnings.join(" ")).toMatch(/estimate.+by hand/);
  });
});

describe("a bed file's place", () => {
  const bed = (place: Record<string, unknown>) => {
    const file = path.join(dir, "bed.json");
    writeFileSync(file, JSON.stringify({ place, size: { lengthFt: 20, widthFt: 8 }, plants: [{ name: "Syringa vulgaris", quantity: 3 }] }));
    return run(["bed", file]);
  };
  const site = z.object({ site: z.object({ zone: z.string(), lastFreeze: z.string() }) });

  it("may say what the site is, which moves zone and freezes", () => {
    const plain = site.parse(JSON.parse(bed({ zip: "05401" }).out)).site;
    const wall = site.parse(JSON.parse(bed({ zip: "05401", microclimate: "south wall", warmingF: 2 }).out)).site;
    expect([plain.zone, wall.zone]).toEqual(["5b", "6a"]);
    expect(wall.lastFreeze < plain.lastFreeze).toBe(true);
  });

  it.each([
    [{ zip: "05401", zone: "14a" }, /zone.+1a to 13b/],
    [{ zip: "05401", microclimate: "cave" }, /microclimate/],
    [{ zip: "05401", warmingF: 3 }, /warmingF/],
    [{ zip: "05401", spring: "odd" }, /spring/],
    [{ zip: "05401", elevationFt: 50000 }, /elevationFt/],
    [{ lat: 44 }, /zip, or lat and lon/],
  ])("%j is refused and named", (place, words) => {
    const { code, err } = bed(place);
    expect(code).toBe(2);
    expect(err).toMatch(words);
  });
});
