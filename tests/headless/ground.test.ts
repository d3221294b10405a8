// The ground of a drawn bed through the headless command: by places, with density at both ends and what crowds.
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { commandForTests } from "../support/command";

const { run, file } = commandForTests();

const ground = z.object({
  plantableSqFt: z.number(),
  density: z.number().min(1).max(10),
  densityWords: z.string(),
  coverByYear: z
    .array(
      z.object({
        year: z.number(),
        overall: z.number().min(0).max(1),
        byStratum: z.object({ "canopy trees": z.number(), "tall shrubs": z.number(), "low shrubs": z.number(), "herbs and groundcover": z.number() }),
      }),
    )
    .length(21),
  by: z.enum(["drawing", "area"]),
  atHandOver: z.object({ density: z.number(), raw: z.number(), words: z.string().min(1) }),
  atMaturity: z.object({ density: z.number(), raw: z.number(), words: z.string().min(1) }),
  crowding: z.array(z.object({ year: z.number(), rows: z.array(z.string()).min(1), against: z.string().nullable(), plants: z.number().int(), overFt: z.number() })),
});
const answer = z.object({ ground, findings: z.array(z.object({ check: z.string(), severity: z.string(), message: z.string() })) });

const bed = {
  version: 1,
  name: "Walk",
  place: { zip: "05401" },
  size: {
    edges: [
      { from: [0, 0], shape: { kind: "arc", ordinateFt: 2 }, border: { what: "walk" } },
      { from: [20, 0] },
      { from: [20, 10], border: { what: "house wall", windows: [{ fromFt: 12, toFt: 16, sillFt: 2.5 }] } },
      { from: [0, 10] },
    ],
  },
  keepClear: [
    {
      what: "buried line",
      path: [
        [18, 10],
        [18, -1],
      ],
      clearFt: 5,
    },
  ],
  standpoint: { kind: "one side", lookAngle: 1.5707963267948966 },
  plants: [
    {
      name: "Hydrangea paniculata 'Limelight'",
      quantity: 2,
      size: "#3",
      at: [
        [4, 8],
        [12, 5, 7],
      ],
    },
    {
      name: "Nepeta 'Walker's Low'",
      size: "#1",
      at: [
        [12.5, 4],
        [16, 3],
      ],
    },
  ],
};
const found = (data: unknown) => {
  const result = run(["bed", file("bed.json", JSON.stringify(data)), "--json"]);
  expect(result.err).toBe("");
  return answer.parse(JSON.parse(result.out));
};

describe("the ground of a drawn bed", () => {
  it("goes by the drawing when all stands on it, with its crowding by rows and borders", () => {
    const { ground: told, findings } = found(bed);
    expect(told.by).toBe("drawing");
    expect(told.plantableSqFt).toBeGreaterThan(200 + 20);
    expect(told.atMaturity.density).toBe(told.density);
    expect(told.atHandOver.raw).toBeLessThan(told.atMaturity.raw);
    // 'Limelight' before a window with its sill at 2 ft 6 in, and on top of a catmint.
    expect(told.crowding.some(({ rows, against }) => rows.join() === "A" && against?.startsWith("the window"))).toBe(true);
    expect(told.crowding.some(({ rows, against, overFt }) => rows.join() === "A,B" && against === null && overFt > 1)).toBe(true);
    expect(findings.some(({ check, severity, message }) => check === "crowding" && severity === "fix" && /window/.test(message))).toBe(true);
    expect(findings.some(({ check, message }) => check === "lines" && /811/.test(message))).toBe(true);
  });
  it("goes by area when one plant is missing on the drawing", () => {
    const { ground: told } = found({ ...bed, plants: [{ ...bed.plants[0], quantity: 3 }, bed.plants[1]] });
    expect(told.by).toBe("area");
  });
  it("has nothing to crowd where nothing is drawn", () => {
    const { ground: told } = found({
      version: 1,
      name: "Plain",
      place: { zip: "05401" },
      size: { lengthFt: 20, widthFt: 10 },
      plants: [{ name: "Nepeta 'Walker's Low'", quantity: 9 }],
    });
    expect(told).toMatchObject({ by: "area", crowding: [] });
  });
});
