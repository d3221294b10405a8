import { describe, expect, it } from "vitest";
import { testTaxon } from "../../tests/fixtures/test-taxon";
import type { Bed } from "../ground/bed";
import { type BedDrawing, EMPTY_DRAWING } from "../ground/bed-drawing";
import { bedBorders, bedDrawn } from "../ground/bed-drawn";
import type { Border, KeepClear } from "../ground/border";
import { rectangleOutline } from "../ground/outline";
import { planFromOutline } from "../ground/plan-outline";
import { REFERENCE_YEAR } from "../place/reference";
import type { Taxon } from "../plants/taxon";
import { taxonSeason } from "../season/taxon-season";
import { crowding, lines, outside, thorns } from "./crowding";
import type { CheckContext, CheckedRow } from "./finding";

const site: Bed["site"] = { light: "sun", moisture: "average", ph: 6.5, salt: "none", deer: "none", faces: "" };
type Stand = readonly [rowId: string, x: number, y: number];

function context(taxa: Readonly<Record<string, Taxon>>, stands: readonly Stand[], back: Border = { what: "open" }, things: readonly KeepClear[] = [], spacingFt = 5): CheckContext {
  const rows = Object.entries(taxa).map(([id, taxon], i): CheckedRow => {
    const row = { id, taxonId: taxon.id, taxonName: taxon.name, quantity: { by: "drawing" } as const, spacingFt, size: "#3", remarks: "", existing: false };
    return { row, letter: "ABC".charAt(i), taxon, season: taxonSeason(taxon, REFERENCE_YEAR), quantity: 3, spacingFt, spreadFt: (taxon.spreadFt[0] + taxon.spreadFt[1]) / 2 };
  });
  const drawing: BedDrawing = { ...EMPTY_DRAWING, things, plants: stands.map(([rowId, x, y], i) => ({ id: `p${i}`, rowId, at: [x, y], group: 1 })) };
  const edges = planFromOutline(rectangleOutline(40, 12)).map((edge, i) => (i === 2 ? { ...edge, border: back } : edge));
  const bed: Bed = { name: "Bed", size: { by: "drawing", edges }, site, notes: "", rows: rows.map(({ row }) => row), drawing };
  return {
    site,
    zone: 5.5,
    state: "VT",
    plantableSqFt: 480,
    rows,
    density: { raw: 5, label: 5, words: "" },
    drawn: bedDrawn(bed, (id) => taxa[id] ?? null),
    borders: bedBorders(bed),
    halfMonths: [],
    resting: [],
    isGrowing: () => true,
  };
}
const shrub = testTaxon({ name: "Testa prima" });
const other = testTaxon({ name: "Testa secunda" });

describe("crowding on the drawing", () => {
  it("is nothing without a drawing or with room for all", () => {
    expect(crowding.look({ ...context({ a: shrub }, [["a", 5, 6]]), drawn: null })).toEqual([]);
    expect(
      crowding.look(
        context({ a: shrub, b: other }, [
          ["a", 8, 6],
          ["b", 20, 6],
        ]),
      ),
    ).toEqual([]);
  });
  it("is one sentence for two rows, with both names, the year, the feet and what to do", () => {
    const found = crowding.look(
      context({ a: shrub, b: other }, [
        ["a", 8, 6],
        ["b", 10.5, 6],
        ["a", 13, 6],
      ]),
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ rowId: "a", plant: "Testa prima" });
    expect(found[0]?.message).toMatch(/^presses B Testa secunda on the drawing from year \d+ \(2 pairs\), up to .* more than they have room for\. Move one/);
  });
  it("is to fix when it begins at once, to consider when it begins later", () => {
    const severityAt = (apart: number) =>
      crowding.look(
        context({ a: shrub, b: other }, [
          ["a", 8, 6],
          ["b", 8 + apart, 6],
        ]),
      )[0]?.severity;
    expect(severityAt(0.8)).toBe("fix");
    expect(severityAt(2.6)).toBe("consider");
  });
  it("is to fix at a window whenever it begins", () => {
    const wall: Border = { what: "house wall", windows: [{ fromFt: 10, toFt: 14, sillFt: 3 }] };
    const found = crowding.look(context({ a: shrub }, [["a", 28, 8.2]], wall));
    expect(found.map(({ severity, message }) => [severity, /the window with its sill at 3 ft/.test(message)])).toEqual([["fix", true]]);
  });
  it("leaves a row's own closeness to the spacing check where that speaks", () => {
    const stands: Stand[] = [
      ["a", 8, 6],
      ["a", 10, 6],
    ];
    expect(crowding.look(context({ a: shrub }, stands, { what: "open" }, [], 2))).toEqual([]);
    expect(crowding.look(context({ a: shrub }, stands, { what: "open" }, [], 5))[0]?.message).toMatch(/^2 plants on the drawing press each other/);
  });
  it("takes herbs that knit together one step lighter than shrubs", () => {
    const herb = (name: string) =>
      testTaxon({ name, kind: "perennial", habit: "clump", height: [1.5, 2], spread: [1.5, 2], foliage: "dies back", wood: undefined, pruning: "cut back early spring" });
    const found = crowding.look(
      context({ a: herb("Testa prima"), b: herb("Testa secunda") }, [
        ["a", 8, 6],
        ["b", 8.9, 6],
      ]),
    );
    expect(found[0]?.severity).toBe("consider");
  });
});

describe("lines and corners on the drawing", () => {
  it("say 811, the utility and the ordinance once each, and nothing where there are none", () => {
    const path = [
      [0, 6],
      [40, 6],
    ] as const;
    const things: KeepClear[] = [
      { what: "buried line", path, clearFt: 5 },
      { what: "overhead line", path, heightFt: 25, clearFt: 10 },
    ];
    const corner: Border = { what: "street corner", withinFt: 25, maxHeightFt: 2.5 };
    const words = lines.look(context({ a: shrub }, [["a", 8, 2]], corner, things)).map(({ message }) => message);
    expect(words).toHaveLength(3);
    expect(lines.look(context({ a: shrub }, [], corner, things))).toHaveLength(3);
    expect(words.join(" ")).toMatch(/811.*utility.*local ordinance goes before/);
    expect(lines.look(context({ a: shrub }, [["a", 8, 2]]))).toEqual([]);
  });
});

describe("thorns by a walk", () => {
  const thorny = testTaxon({ name: "Testa spinosa", flags: ["thorns"] });
  const near: readonly Stand[] = [
    ["a", 10, 9],
    ["a", 20, 8],
    ["b", 30, 9],
  ];
  it("are told with their distance and whose figure it is, thornless plants are not", () => {
    const found = thorns.look(context({ a: thorny, b: shrub }, near, { what: "walk" }));
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({ severity: "consider", plant: "Testa spinosa" });
    expect(found[0]?.message).toMatch(/2 plants on the drawing stand within 10 ft of the walk, the nearest at 3 ft\. Ogden UT .*the local code decides/);
  });
  it("are no matter far off, by another border, or without a drawing", () => {
    expect(thorns.look(context({ a: thorny }, [["a", 10, 1]], { what: "walk" }))).toEqual([]);
    expect(thorns.look(context({ a: thorny }, near, { what: "lawn" }))).toEqual([]);
    expect(thorns.look({ ...context({ a: thorny }, near, { what: "walk" }), drawn: null })).toEqual([]);
  });
});

describe("plants outside the bed", () => {
  it("are counted by row; those inside and on the edge are not", () => {
    const found = outside.look(
      context({ a: shrub, b: other }, [
        ["a", 50, 6],
        ["a", 5, 6],
        ["a", 5, -1],
        ["b", 0, 6],
      ]),
    );
    expect(found.map(({ plant, message }) => `${plant} ${message}`)).toEqual(["Testa prima has 2 plants outside the bed on the drawing. Move them in, or take them out."]);
  });
});
