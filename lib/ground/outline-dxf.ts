// Outlines from a DXF drawing exchange file in text form: LWPOLYLINE and POLYLINE entities with their bulges (arcs), and the drawing's unit.
import type { CurveShape } from "./curve";
import type { Point } from "./outline";
import { type DraftResult, draftEdge, faultAt, type OutlineDraft } from "./outline-draft";
import type { PlanEdge } from "./plan-outline";

/** Codes of $INSUNITS. */
const UNITS: Readonly<Record<number, string>> = { 1: "in", 2: "ft", 4: "mm", 5: "cm", 6: "m" };

type Pair = { readonly code: number; readonly value: string; readonly line: number };
type Corner = { readonly at: Point; readonly bulge: number };

/** Group codes and values, two lines each; null with the line where a code is not a number. */
function pairsRead(text: string): Pair[] | { readonly line: number; readonly value: string } {
  const lines = text.split(/\r\n|\n|\r/);
  const pairs: Pair[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) {
    const code = (lines[i] ?? "").trim();
    if (!/^-?\d+$/.test(code)) return { line: i + 1, value: code };
    pairs.push({ code: Number(code), value: (lines[i + 1] ?? "").trim(), line: i + 1 });
  }
  return pairs;
}

/** Entities: a pair with code 0 and all that follow it up to the next. */
function entitiesOf(pairs: readonly Pair[]): Pair[][] {
  const entities: Pair[][] = [];
  for (const pair of pairs) {
    if (pair.code === 0) entities.push([pair]);
    else entities.at(-1)?.push(pair);
  }
  return entities;
}

/** A closed run of corners as edges. Bulge = tan(sweep / 4), counterclockwise positive, so the arc's middle ordinate is bulge · chord / 2. */
function cornersEdges(corners: readonly Corner[]): PlanEdge[] {
  return corners.map(({ at, bulge }, i) => {
    const to = corners[(i + 1) % corners.length]?.at ?? at;
    const chord = Math.hypot(to[0] - at[0], to[1] - at[1]);
    const shape: CurveShape | undefined = bulge === 0 || chord === 0 ? undefined : { kind: "arc", ordinateFt: (bulge * chord) / 2 };
    return draftEdge(at, shape);
  });
}

/** Corners of one entity (all of a light polyline, one of a vertex); the faulty pair where a number cannot be read. */
function entityCorners(entity: readonly Pair[]): Corner[] | Pair {
  const corners: { x: number; y: number; bulge: number }[] = [];
  for (const pair of entity) {
    if (pair.code !== 10 && pair.code !== 20 && pair.code !== 42) continue;
    const value = Number(pair.value);
    if (pair.value === "" || !Number.isFinite(value)) return pair;
    const last = corners.at(-1);
    if (pair.code === 10) corners.push({ x: value, y: 0, bulge: 0 });
    else if (last && pair.code === 20) last.y = value;
    else if (last) last.bulge = value;
  }
  return corners.map(({ x, y, bulge }) => ({ at: [x, y], bulge }));
}

const FIELDS: Readonly<Record<number, string>> = { 10: "x (code 10)", 20: "y (code 20)", 42: "bulge (code 42)" };

/** Every polyline of the drawing, by its layer. Open ones are closed with a straight edge. */
export function draftsFromDxf(text: string): DraftResult {
  if (text.startsWith("AutoCAD Binary")) return faultAt(1, "file", "This is a binary drawing. Save it as DXF in text form.");
  const pairs = pairsRead(text);
  if (!Array.isArray(pairs))
    return faultAt(
      pairs.line,
      "group code",
      `“${pairs.value.slice(0, 20)}” stands where a group code (a whole number) should: this is not a DXF in text form, or a line is missing above.`,
    );
  const unitAt = pairs.findIndex(({ code, value }) => code === 9 && value === "$INSUNITS");
  const unitSaid = UNITS[Number(pairs[unitAt + 1]?.value)] ?? null;
  const drafts: OutlineDraft[] = [];
  const add = (entity: readonly Pair[], corners: readonly Corner[]) => {
    const layer = entity.find(({ code }) => code === 8)?.value ?? "";
    drafts.push({ name: layer === "" ? `polyline ${drafts.length + 1}` : layer, line: entity[0]?.line ?? null, edges: cornersEdges(corners) });
  };
  let open: { entity: Pair[]; corners: Corner[] } | null = null;
  for (const entity of entitiesOf(pairs)) {
    const kind = entity[0]?.value;
    if (kind !== "LWPOLYLINE" && kind !== "POLYLINE" && kind !== "VERTEX" && kind !== "SEQEND") continue;
    const corners = entityCorners(entity);
    if (!Array.isArray(corners)) return faultAt(corners.line + 1, FIELDS[corners.code] ?? "number", `“${corners.value.slice(0, 20)}” is not a number.`);
    if (kind === "LWPOLYLINE") add(entity, corners);
    else if (kind === "POLYLINE") open = { entity, corners: [] };
    else if (kind === "VERTEX") open?.corners.push(...corners);
    else if (open) {
      add(open.entity, open.corners);
      open = null;
    }
  }
  if (open) return faultAt(open.entity[0]?.line ?? null, "SEQEND", "The polyline that begins here does not end: the file is cut off.");
  return { ok: true, drafts, unitSaid: unitAt >= 0 ? unitSaid : null };
}
