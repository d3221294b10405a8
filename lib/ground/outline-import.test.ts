import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type ImportResult, type ImportUnit, OUTLINE_FORMATS, type OutlineFormat, outlinesImported } from "./outline-import";
import { planPerimeter } from "./plan-outline";

const read = (text: string, format: OutlineFormat, unit: ImportUnit) => {
  const result = outlinesImported(text, format, unit);
  if (!result.ok) throw new Error(`${result.fault.line} ${result.fault.field}: ${result.fault.words}`);
  return result.outlines;
};
const fault = (result: ImportResult) => {
  if (result.ok) throw new Error("no fault");
  return result.fault;
};
const area = (text: string, format: OutlineFormat, unit: ImportUnit) => read(text, format, unit)[0]?.areaSqFt ?? 0;

describe("an SVG path", () => {
  it("of straight sides has its area in the unit chosen, however it is written", () => {
    for (const path of ["M0 0 L24 0 L24 8 L0 8 Z", "m0,0h24v8h-24z", "M0 0 24 0 24 8 0 8", "M 0,0 H24 V8 H0 V0 Z", "M1e1 1e1l24 0 0 8-24 0z"]) {
      expect(area(path, "SVG path", "ft")).toBeCloseTo(192, 9);
      expect(area(path, "SVG path", "in")).toBeCloseTo(192 / 144, 9);
      expect(area(path, "SVG path", "m")).toBeCloseTo(192 / 0.3048 ** 2, 6);
      expect(read(path, "SVG path", "ft")[0]?.plan.length).toBe(4);
    }
  });

  it("of arcs is a circle or an ellipse, and flags may touch the numbers", () => {
    expect(area("M-5 0A5 5 0 0 1 5 0A5 5 0 0 1-5 0Z", "SVG path", "ft") / (25 * Math.PI)).toBeCloseTo(1, 5);
    expect(area("M0 0a6 3 0 1012 0 6 3 0 10-12 0z", "SVG path", "ft") / (18 * Math.PI)).toBeCloseTo(1, 5);
    expect(area("M-1 0A1 1 0 0 1 9 0A5 5 0 0 1 -1 0Z", "SVG path", "ft") / (25 * Math.PI)).toBeCloseTo(1, 5);
  });

  it("of curves keeps them: smooth and quadratic ones too", () => {
    const [outline] = read("M0 0 C4 -4 12 -4 16 0 S20 10 16 12 Q8 16 0 12 T0 0", "SVG path", "ft");
    expect(outline?.plan.map(({ shape }) => shape.kind)).toEqual(["cubic", "cubic", "cubic", "cubic"]);
    // A parabola's arch has two thirds of its box: 16 wide, 2 high from the control at 4.
    expect(area("M0 0 Q8 4 16 0 L16 -6 L0 -6 Z", "SVG path", "ft")).toBeCloseTo(16 * 6 + (2 / 3) * 16 * 2, 9);
  });

  it("in a document is found, and its faults name their line", () => {
    expect(area('<svg>\n<path id="a" d="M0 0H10V10H0Z"/>\n</svg>', "SVG path", "ft")).toBeCloseTo(100, 9);
    expect(fault(outlinesImported('<svg>\n<path d="M0 0\nL10 x"/></svg>', "SVG path", "ft")).line).toBe(3);
    expect(fault(outlinesImported("<svg><rect/></svg>", "SVG path", "ft")).field).toBe("path");
    expect(fault(outlinesImported("L 1 2", "SVG path", "ft")).words).toContain("begins");
    expect(fault(outlinesImported("M0 0 L10 10 L10 0 L0 10 Z", "SVG path", "ft")).words).toContain("crosses");
  });

  it("with several shapes gives each, the largest first", () => {
    expect(read("M0 0h2v2h-2z m10 0 h5v5h-5z", "SVG path", "ft").map(({ areaSqFt }) => Math.round(areaSqFt))).toEqual([25, 4]);
  });
});

const dxf = (...pairs: readonly (readonly [number, string | number])[]) => pairs.map(([code, value]) => `${code}\n${value}`).join("\n");

describe("a DXF polyline", () => {
  const light = dxf(
    [0, "SECTION"],
    [2, "ENTITIES"],
    [0, "LWPOLYLINE"],
    [8, "BED 1"],
    [90, 4],
    [70, 1],
    [10, 100],
    [20, 50],
    [10, 124],
    [20, 50],
    [10, 124],
    [20, 58],
    [10, 100],
    [20, 58],
    [0, "ENDSEC"],
    [0, "EOF"],
  );

  it("that is light has its area and its layer, with either line ending", () => {
    expect(read(light, "DXF", "ft")).toEqual(read(light.replaceAll("\n", "\r\n"), "DXF", "ft"));
    const [outline] = read(light, "DXF", "ft");
    expect(outline?.name).toBe("BED 1");
    expect(outline?.areaSqFt).toBeCloseTo(192, 9);
    expect(outline?.plan[0]?.from).toEqual([0, 0]);
  });

  it("with bulges has arcs: two of 1 are a circle", () => {
    const circle = dxf([0, "LWPOLYLINE"], [70, 1], [10, 0], [20, 0], [42, 1], [10, 10], [20, 0], [42, 1], [0, "EOF"]);
    const [outline] = read(circle, "DXF", "ft");
    expect(outline?.areaSqFt).toBeCloseTo(25 * Math.PI, 9);
    expect(planPerimeter(outline?.plan ?? [])).toBeCloseTo(10 * Math.PI, 9);
  });

  it("of the old kind is read vertex by vertex, closed by a repeated corner or not", () => {
    const vertex = (x: number, y: number) => [[0, "VERTEX"] as const, [8, "0"] as const, [10, x] as const, [20, y] as const];
    const old = (...last: (readonly [number, string | number])[]) =>
      dxf(
        [0, "POLYLINE"],
        [8, "B"],
        [66, 1],
        [10, 0],
        [20, 0],
        [70, 1],
        ...vertex(0, 0),
        ...vertex(10, 0),
        ...vertex(10, 10),
        ...vertex(0, 10),
        ...last,
        [0, "SEQEND"],
        [0, "EOF"],
      );
    expect(area(old(), "DXF", "ft")).toBeCloseTo(100, 9);
    expect(area(old(...vertex(0, 0)), "DXF", "ft")).toBeCloseTo(100, 9);
  });

  it("comes in the unit that its header says, and asks where it says none", () => {
    const said = (code: number) => `${dxf([0, "SECTION"], [2, "HEADER"], [9, "$INSUNITS"], [70, code], [0, "ENDSEC"])}\n${light}`;
    expect(area(said(2), "DXF", "as the file says")).toBeCloseTo(192, 9);
    expect(area(said(1), "DXF", "as the file says")).toBeCloseTo(192 / 144, 9);
    expect(area(said(4), "DXF", "as the file says")).toBeCloseTo(192 / 304.8 ** 2, 9);
    expect(fault(outlinesImported(said(0), "DXF", "as the file says")).field).toBe("unit");
  });

  it("with faults names line and field", () => {
    expect(fault(outlinesImported(light.replace("\n124\n", "\nwest\n"), "DXF", "ft"))).toMatchObject({ line: 18, field: "x (code 10)" });
    expect(fault(outlinesImported("0\nSECTION\nnonsense\n1", "DXF", "ft"))).toMatchObject({ line: 3, field: "group code" });
    expect(fault(outlinesImported(dxf([0, "POLYLINE"], [0, "VERTEX"], [10, 1], [20, 1], [0, "EOF"]), "DXF", "ft")).field).toBe("SEQEND");
    expect(fault(outlinesImported(dxf([0, "LINE"], [0, "EOF"]), "DXF", "ft")).words).toContain("no polyline");
  });
});

describe("a GeoJSON polygon", () => {
  const ring = (lon: number, lat: number, east: number, north: number) => [
    [lon, lat],
    [lon + east, lat],
    [lon + east, lat + north],
    [lon, lat + north],
    [lon, lat],
  ];
  const polygon = (coordinates: unknown) => JSON.stringify({ type: "Polygon", coordinates });

  it("in degrees has its size on the ground: a minute of latitude at 45° is 1,852 m but for half a meter", () => {
    const [outline] = read(polygon([ring(-81.9, 45, 0.0001, 0.0001)]), "GeoJSON", "degrees");
    const corners = outline?.plan.map(({ from }) => from) ?? [];
    expect(corners.length).toBe(4);
    expect((corners[2]?.[1] ?? 0) * 0.3048 * (1 / 0.0001 / 60)).toBeCloseTo(1852.2, 0);
    // A degree of longitude at 45°: 78.85 km on WGS 84.
    expect(((corners[1]?.[0] ?? 0) * 0.3048) / 0.0001 / 1000).toBeCloseTo(78.847, 2);
  });

  it("comes bare, as a feature with its name, or in a collection; points and lines beside it are passed over", () => {
    const square = { type: "Polygon", coordinates: [ring(0, 0, 10, 10)] };
    expect(area(JSON.stringify(square), "GeoJSON", "ft")).toBeCloseTo(100, 9);
    const feature = { type: "Feature", properties: { name: "North bed" }, geometry: square };
    expect(read(JSON.stringify(feature), "GeoJSON", "ft")[0]?.name).toBe("North bed");
    const collection = { type: "FeatureCollection", features: [{ type: "Feature", properties: null, geometry: { type: "Point", coordinates: [0, 0] } }, feature] };
    expect(read(JSON.stringify(collection), "GeoJSON", "ft").length).toBe(1);
    expect(read(JSON.stringify({ type: "MultiPolygon", coordinates: [[ring(0, 0, 2, 2)], [ring(9, 9, 3, 3)]] }), "GeoJSON", "ft").map(({ name }) => name)).toEqual([
      "polygon 2",
      "polygon 1",
    ]);
  });

  it("with faults names line or field", () => {
    expect(fault(outlinesImported('{\n"type": "Polygon",\n"coordinates": [[[0,0],,]]}', "GeoJSON", "ft"))).toMatchObject({ field: "JSON", line: 3 });
    expect(fault(outlinesImported(polygon([ring(0, 0, 9, 9), ring(2, 2, 1, 1)]), "GeoJSON", "ft"))).toMatchObject({ field: "coordinates[1]" });
    expect(
      fault(
        outlinesImported(
          polygon([
            [
              [0, 0],
              [1, "a"],
            ],
          ]),
          "GeoJSON",
          "ft",
        ),
      ).words,
    ).toContain("coordinates[0][1]");
    expect(fault(outlinesImported(polygon([ring(500, 0, 9, 9)]), "GeoJSON", "degrees")).words).toContain("longitude");
    expect(fault(outlinesImported('{"type":"Bed"}', "GeoJSON", "ft")).words).toContain("Bed");
    expect(fault(outlinesImported('{"type":"FeatureCollection","features":[]}', "GeoJSON", "ft")).words).toContain("no polygon");
  });
});

describe("any text", () => {
  it("comes back as outlines or as a fault in words, never as an exception", () => {
    const scraps = fc
      .array(
        fc.constantFrom(
          "M",
          "L",
          "A",
          "z",
          "10",
          "-3.5",
          ".5e1",
          "0",
          "\n",
          " ",
          "LWPOLYLINE",
          "20",
          "[",
          "{",
          '"type"',
          ":",
          '"Polygon"',
          "]",
          "}",
          ",",
          "<path d='",
          "'/>",
          "NaN",
        ),
        { maxLength: 40 },
      )
      .map((list) => list.join(" "));
    fc.assert(
      fc.property(fc.oneof(scraps, fc.string()), fc.constantFrom(...OUTLINE_FORMATS), fc.constantFrom<ImportUnit>("ft", "degrees", "as the file says"), (text, format, unit) => {
        const result = outlinesImported(text, format, unit);
        if (!result.ok) expect(result.fault.words.length).toBeGreaterThan(10);
        else expect(result.outlines.length).toBeGreaterThan(0);
      }),
      { numRuns: 600 },
    );
  });
});
