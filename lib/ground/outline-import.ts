// A bed's outline from a file: read by format, brought to feet, checked like a drawn one. What is wrong comes back as a value that names line and field.
import type { CurveShape } from "./curve";
import { FEET_PER_UNIT, type LengthUnit } from "./length";
import type { Point } from "./outline";
import { type DraftResult, faultAt, type ImportFault, type OutlineDraft } from "./outline-draft";
import { draftsFromDxf } from "./outline-dxf";
import { draftsFromGeojson } from "./outline-geojson";
import { draftsFromSvg } from "./outline-svg";
import { type PlanEdge, type PlanOutline, planArea, planFault } from "./plan-outline";

export const OUTLINE_FORMATS = ["SVG path", "DXF", "GeoJSON"] as const;
export type OutlineFormat = (typeof OUTLINE_FORMATS)[number];

/** What one unit of the file is. "degrees": longitude and latitude. "as the file says": DXF only, from its header. */
export type ImportUnit = LengthUnit | "mm" | "degrees" | "as the file says";

/** Plans begin at 0, 0: their lowest x and y. */
export type ImportedOutline = { readonly name: string; readonly plan: PlanOutline; readonly areaSqFt: number };
export type ImportResult = { readonly ok: true /** Largest first. */; readonly outlines: readonly ImportedOutline[] } | { readonly ok: false; readonly fault: ImportFault };

/** A drawing of a whole town is not a bed. */
const TEXT_MAX = 4_000_000;
/** Corners nearer than this (feet) are one. */
const SAME_FT = 1e-6;
/** WGS 84 ellipsoid: equatorial radius in meters and square of the eccentricity. */
const WGS84 = { radiusM: 6378137, e2: 0.00669437999014 } as const;

function draftsRead(text: string, format: OutlineFormat): DraftResult {
  switch (format) {
    case "SVG path":
      return draftsFromSvg(text);
    case "DXF":
      return draftsFromDxf(text);
    case "GeoJSON":
      return draftsFromGeojson(text);
  }
}

/** Feet in a degree of longitude and of latitude at a latitude (radii of curvature of the ellipsoid; over a bed the earth is flat to a thousandth of an inch). */
function degreeFeet(latitude: number): readonly [eastFt: number, northFt: number] {
  const phi = (latitude * Math.PI) / 180;
  const w = 1 - WGS84.e2 * Math.sin(phi) ** 2;
  const meters = (Math.PI / 180) * WGS84.radiusM;
  return [(meters * Math.cos(phi)) / Math.sqrt(w) / 0.3048, (meters * (1 - WGS84.e2)) / w ** 1.5 / 0.3048];
}

/** Feet for each unit of x and y; null where the file does not say. */
function scaleOf(unit: ImportUnit, unitSaid: string | null, drafts: readonly OutlineDraft[]): readonly [number, number] | null {
  if (unit === "degrees") return degreeFeet(drafts[0]?.edges[0]?.from[1] ?? 0);
  const name = unit === "as the file says" ? unitSaid : unit;
  const feet = name === "mm" ? FEET_PER_UNIT.cm / 10 : name === "in" || name === "ft" || name === "cm" || name === "m" ? FEET_PER_UNIT[name] : null;
  return feet === null ? null : [feet, feet];
}

/** Edges in feet from the lowest corner, counterclockwise or not as drawn, without edges of no length. */
function edgesInFeet(edges: readonly PlanEdge[], [sx, sy]: readonly [number, number]): PlanOutline {
  const lowX = Math.min(...edges.map(({ from }) => from[0]));
  const lowY = Math.min(...edges.map(({ from }) => from[1]));
  const moved = ([x, y]: Point): Point => [(x - lowX) * sx, (y - lowY) * sy];
  const scaled = edges.map(({ from, shape, border }): PlanEdge => {
    const curve: CurveShape =
      shape.kind === "cubic"
        ? { kind: "cubic", control1: moved(shape.control1), control2: moved(shape.control2) }
        : shape.kind === "arc"
          ? { kind: "arc", ordinateFt: shape.ordinateFt * sx }
          : shape;
    return { from: moved(from), shape: curve, border };
  });
  return scaled.filter(({ from, shape }, i) => {
    const to = scaled[(i + 1) % scaled.length]?.from ?? from;
    return shape.kind === "cubic" || Math.hypot(to[0] - from[0], to[1] - from[1]) > SAME_FT;
  });
}

/** Whether the numbers can be degrees. */
function degreesFault(drafts: readonly OutlineDraft[]): ImportFault | null {
  for (const { name, line, edges } of drafts) {
    const wrong = edges.findIndex(({ from: [x, y] }) => Math.abs(x) > 180 || Math.abs(y) > 90);
    if (wrong >= 0)
      return { line, field: `corner ${wrong + 1}`, words: `Corner ${wrong + 1} of ${name} is not a longitude and latitude. Choose the unit that the file is drawn in.` };
    if (edges.some(({ shape }) => shape.kind !== "straight"))
      return { line, field: "unit", words: "A drawing with curves is not in degrees. Choose the unit that it is drawn in." };
  }
  return null;
}

/**
 * Outlines of a file in feet, ready to be beds. Every outline is checked as a drawn one is (`planFault`); the first fault is returned with the name of its shape.
 * The result is the same for files with either line ending.
 */
export function outlinesImported(text: string, format: OutlineFormat, unit: ImportUnit): ImportResult {
  if (text.length > TEXT_MAX) return faultAt(null, "file", "The file is larger than 4 MB. Send only the bed's outline.");
  const read = draftsRead(text, format);
  if (!read.ok) return read;
  const { drafts, unitSaid } = read;
  if (drafts.length === 0) return faultAt(null, "file", `The file has no outline: no ${format === "SVG path" ? "path" : format === "DXF" ? "polyline" : "polygon"} in it.`);
  const degrees = unit === "degrees" ? degreesFault(drafts) : null;
  if (degrees) return { ok: false, fault: degrees };
  const scale = scaleOf(unit, unitSaid, drafts);
  if (!scale) return faultAt(null, "unit", "The file does not say its unit. Choose inches, feet, centimeters or meters.");
  const outlines: ImportedOutline[] = [];
  for (const { name, line, edges } of drafts) {
    const plan = edgesInFeet(edges, scale);
    const fault = planFault(plan);
    if (fault) return { ok: false, fault: { line, field: name, words: `${name}: ${fault.words}` } };
    outlines.push({ name, plan, areaSqFt: planArea(plan) });
  }
  return { ok: true, outlines: outlines.sort((a, b) => b.areaSqFt - a.areaSqFt) };
}
