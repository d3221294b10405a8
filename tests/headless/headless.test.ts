import path from "node:path";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { commandForTests } from "../support/command";

const { run, dir, file: fileWritten } = commandForTests();

function answer<T>(schema: z.ZodType<T>, args: string[], input = ""): T {
  const result = run(args, input);
  expect(result.err).toBe("");
  expect(result.code).toBe(0);
  return schema.parse(JSON.parse(result.out));
}
function refusal(args: string[], input = ""): string {
  const result = run(args, input);
  expect(result.out).toBe("");
  expect(result.code).toBe(2);
  return result.err;
}
const file = (name: string, data: unknown): string => fileWritten(name, typeof data === "string" ? data : JSON.stringify(data));

const place = z.strictObject({
  zip: z.string().nullable(),
  state: z.string().nullable(),
  lat: z.number(),
  lon: z.number(),
  elevationFt: z.number(),
  zone: z.string().nullable(),
  zoneMap: z.string().nullable(),
  lastFreeze: z
    .string()
    .regex(/^\d\d-\d\d$/)
    .nullable(),
  firstFreeze: z
    .string()
    .regex(/^\d\d-\d\d$/)
    .nullable(),
  degreeDays50: z.object({ monthEnd: z.array(z.number()).length(12), annual: z.number() }),
  normals: z.string(),
  warnings: z.array(z.string()),
});

describe("place", () => {
  it("knows Burlington's zone, freezes and degree days", () => {
    const found = answer(place, ["place", "05401", "--json"]);
    expect(found).toMatchObject({ zip: "05401", state: "VT", zone: "5b", zoneMap: "5b" });
    // NOAA 1981–2010, Burlington International Airport: last 32 °F May 4, first Oct 8, 2,389 degree days a year.
    expect(found.lastFreeze).toMatch(/^(04-29|04-30|05-0\d)$/);
    expect(found.firstFreeze).toMatch(/^10-(0[2-9]|1[0-3])$/);
    expect(Math.abs(found.degreeDays50.annual - 2389)).toBeLessThan(0.06 * 2389);
    expect([...found.degreeDays50.monthEnd].sort((a, b) => a - b)).toEqual(found.degreeDays50.monthEnd);
  });
  it("takes a point with an elevation, colder the higher it is", () => {
    const low = answer(place, ["place", "44.5,-72.8,500"]);
    const high = answer(place, ["place", "44.5,-72.8,3500"]);
    expect(low.zip).toBeNull();
    expect(high.degreeDays50.annual).toBeLessThan(low.degreeDays50.annual - 300);
  });
  it("names what is wrong with a place", () => {
    expect(refusal(["place", "0540"])).toMatch(/five-digit ZIP/);
    expect(refusal(["place", "99999"])).toMatch(/not in the Census table/);
    expect(refusal(["place", "95,10"])).toMatch(/latitude 95/);
    expect(refusal(["place", "0,0"])).toMatch(/place:/);
    expect(refusal([])).toMatch(/Usage/);
    expect(refusal(["grow", "05401"])).toMatch(/"grow" is not a verb/);
  });
});

const range = z.tuple([z.number(), z.number()]);
const feature = z.object({
  kind: z.string(),
  color: z.string(),
  hex: z.string().regex(/^#[0-9a-f]{6}$/),
  from: z.string(),
  to: z.string(),
  show: z.number().int().min(1).max(3),
  drive: z.enum(["heat", "light", "cooling", "dormancy", "always"]),
});
const taxon = z.object({
  name: z.string(),
  cultivar: z.string().nullable(),
  tradeDesignation: z.string().nullable(),
  synonyms: z.array(z.string()),
  commonNames: z.array(z.string()).min(1),
  family: z.string(),
  kind: z.string(),
  habit: z.string(),
  heightFt: range,
  spreadFt: range,
  matureYears: z.number(),
  growthRate: z.string(),
  zoneLow: z.number(),
  zoneHigh: z.number(),
  light: z.array(z.string()),
  moisture: z.array(z.string()),
  ph: range,
  foliage: z.string(),
  features: z.array(feature).min(1),
  flags: z.array(z.string()),
  sources: z.record(z.string(), z.string()),
});

describe("plants", () => {
  it("gives every taxon in full, each value with its source", () => {
    const all = answer(z.array(taxon), ["plants", "--all", "--json"]);
    expect(all.length).toBeGreaterThanOrEqual(200);
    expect(all.filter((t) => t.cultivar).length).toBeGreaterThanOrEqual(100);
    expect(new Set(all.map((t) => t.kind)).size).toBeGreaterThanOrEqual(8);
    for (const t of all) for (const field of ["heightFt", "spreadFt", "zoneLow", "light", "ph", "foliage"]) expect(t.sources[field], `${t.name} ${field}`).toBeTruthy();
  });
  it("finds by misspelt, turned and abbreviated names", () => {
    const hits = z.array(z.object({ name: z.string(), commonNames: z.array(z.string()), kind: z.string(), zoneLow: z.number(), zoneHigh: z.number(), score: z.number() }));
    expect(answer(hits, ["plants", "limelite hydranga"])[0]?.name).toBe("Hydrangea paniculata 'Limelight'");
    expect(answer(hits, ["plants", "Goldsturm", "Rudbeckia"])[0]?.name).toMatch(/'Goldsturm'/);
    expect(answer(hits, ["plants", "Acer rub. october glory"])[0]?.name).toBe("Acer rubrum 'October Glory'");
    expect(answer(hits, ["plants", "xqzzk"])).toEqual([]);
  });
});

const windows = z.array(
  z.object({
    query: z.string(),
    name: z.string().nullable(),
    windows: z.array(
      z.object({
        kind: z.string(),
        color: z.string(),
        show: z.number(),
        drive: z.string(),
        startDay: z.number().int().min(1).max(365),
        endDay: z.number().int().min(1).max(365),
        spreadDays: z.number(),
        sources: z.array(z.string()).min(1),
      }),
    ),
  }),
);

describe("windows", () => {
  it("answers in the order asked, former names by the accepted one, strangers by null", () => {
    const found = answer(windows, ["windows", "-", "--place", "05401", "--json"], "Aster novae-angliae\nQuercus imaginaria\nForsythia x intermedia\n");
    expect(found.map((f) => f.name)).toEqual(["Symphyotrichum novae-angliae", null, "Forsythia × intermedia"]);
  });
  it("blooms later in a colder place", () => {
    const start = (at: string) => answer(windows, ["windows", "Syringa vulgaris", "--place", at])[0]?.windows.find((w) => w.kind === "bloom")?.startDay ?? 0;
    expect(start("05401")).toBeGreaterThan(start("44691"));
    expect(start("44691")).toBeGreaterThan(start("20001"));
  });
  it("asks for a place", () => {
    expect(refusal(["windows", "Acer rubrum"])).toMatch(/--place/);
  });
});

const bedFile = {
  version: 1,
  name: "Walk",
  place: { zip: "05401" },
  size: { lengthFt: 20, widthFt: 10 },
  site: { light: "sun", moisture: "average" },
  plants: [
    { name: "Hydrangea paniculata 'Limelight'", quantity: 3, size: "#3" },
    { name: "Nepeta 'Walker's Low'", areaSqFt: 40, spacingFt: 2, size: "#1" },
    { name: "Magnolia grandiflora", quantity: 1, size: "#7" },
  ],
};
const bed = z.object({
  site: z.object({ areaSqFt: z.number(), zone: z.string().nullable() }),
  quantities: z.array(z.object({ plant: z.string(), quantity: z.number().int() })),
  ground: z.object({ plantableSqFt: z.number(), density: z.number().min(1).max(10), coverByYear: z.array(z.object({ year: z.number(), overall: z.number().min(0).max(1) })) }),
  season: z.object({
    halfMonths: z.array(z.object({ interest: z.number().min(0).max(1), target: z.number(), byKind: z.record(z.string(), z.number()) })).length(24),
    gaps: z.array(z.object({ index: z.number(), label: z.string() })),
    score: z.number().min(0).max(1),
    restingOnOne: z.array(z.object({ index: z.number(), plant: z.string().nullable() })),
  }),
  findings: z.array(z.object({ check: z.string(), severity: z.enum(["fix", "consider", "note"]), plant: z.string().nullable(), message: z.string() })),
});

describe("bed", () => {
  it("checks a bed file: quantities, ground, year and findings", () => {
    const found = answer(bed, ["bed", file("walk.json", bedFile), "--json"]);
    expect(found.ground.plantableSqFt).toBe(200);
    // 40 sq ft at 2 ft triangular: 40 ÷ (0.8660 · 4) = 11.55
    expect(found.quantities.map((q) => q.quantity)).toEqual([3, 12, 1]);
    expect(found.findings.some((f) => f.check === "hardiness" && f.severity === "fix" && f.plant === "Magnolia grandiflora")).toBe(true);
    expect(found.season.gaps.length).toBe(found.season.halfMonths.filter((h) => h.interest < h.target - 1e-9).length);
    expect(found.season.score).toBeCloseTo(found.season.halfMonths.reduce((sum, h) => sum + Math.min(1, h.interest / h.target), 0) / 24, 9);
  });
  it("gives the same whether the file comes by name or on standard input", () => {
    expect(run(["bed", "-"], JSON.stringify(bedFile)).out).toBe(run(["bed", file("same.json", bedFile)]).out);
  });
  it.each([
    ["not JSON", "{ this is", /file: This is not JSON/],
    ["an unknown plant", { ...bedFile, plants: [{ name: "Quercus imaginaria", quantity: 1 }] }, /plants\[0\]\.name: "Quercus imaginaria"/],
    ["a negative size", { ...bedFile, size: { lengthFt: -4, widthFt: 3 } }, /size\.lengthFt/],
    [
      "an outline that crosses itself",
      {
        ...bedFile,
        size: {
          outlineFt: [
            [0, 0],
            [10, 10],
            [10, 0],
            [0, 10],
          ],
        },
      },
      /size\.outlineFt: .*cross/,
    ],
    ["neither quantity nor area", { ...bedFile, plants: [{ name: "Acer rubrum" }] }, /plants\[0\]: needs either quantity or areaSqFt/],
    ["a misspelt field", { ...bedFile, plants: [{ name: "Acer rubrum", quantity: 1, spacing: 3 }] }, /plants\[0\]: .*spacing/],
    ["a fraction of a plant", { ...bedFile, plants: [{ name: "Acer rubrum", quantity: 1.5 }] }, /plants\[0\]\.quantity/],
    ["an unknown ZIP", { ...bedFile, place: { zip: "99999" } }, /place\.zip: ZIP 99999/],
    ["a zone that is none", { ...bedFile, place: { zip: "05401", zone: "15c" } }, /place\.zone/],
    ["10 MB of noise", "x".repeat(10_000_000), /file: 10\.0 MB is no bed file/],
    ["a list", "[]", /file:/],
  ])("refuses %s and names the field", (_what, data, message) => {
    expect(refusal(["bed", file("bad.json", data)])).toMatch(message);
  });
  it("says that a file is not there", () => {
    expect(refusal(["bed", path.join(dir, "nowhere.json")])).toMatch(/file: .*cannot be read/);
  });
});
