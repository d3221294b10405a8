// Outlines from GeoJSON polygons (RFC 7946): bare geometries, features and collections of them. Degrees of longitude and latitude, or plain lengths.
import { jsonFaultIndex } from "./json-fault";
import type { Point } from "./outline";
import { type DraftResult, draftEdge, faultAt, lineAt, type OutlineDraft } from "./outline-draft";

type Found = { readonly name: string; readonly rings: unknown; readonly field: string };

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> => typeof value === "object" && value !== null && !Array.isArray(value);

/** Every polygon in a value, with its path in the file; a text names what is not understood. */
function polygonsIn(value: unknown, field: string, name: string): Found[] | string {
  if (!isRecord(value)) return `${field || "The file"} is not a GeoJSON object.`;
  const many = (list: unknown, key: string, each: (item: unknown, at: string, index: number) => Found[] | string): Found[] | string => {
    if (!Array.isArray(list)) return `${field}${key} is not a list.`;
    const found: Found[] = [];
    for (const [i, item] of list.entries()) {
      const part = each(item, `${field}${key}[${i}]`, i);
      if (typeof part === "string") return part;
      found.push(...part);
    }
    return found;
  };
  const dot = field === "" ? "" : `${field}.`;
  switch (value.type) {
    case "Polygon":
      return [{ name, rings: value.coordinates, field: `${dot}coordinates` }];
    case "MultiPolygon":
      return many(value.coordinates, `${field === "" ? "" : "."}coordinates`, (rings, at, i) => [{ name: `${name} ${i + 1}`, rings, field: at }]);
    case "Feature": {
      const given = isRecord(value.properties) ? value.properties.name : undefined;
      return polygonsIn(value.geometry, `${dot}geometry`, typeof given === "string" && given !== "" ? given : name);
    }
    case "FeatureCollection":
      return many(value.features, "features", (item, at, i) => polygonsIn(item, at, `feature ${i + 1}`));
    case "GeometryCollection":
      return many(value.geometries, `${field === "" ? "" : "."}geometries`, (item, at, i) => polygonsIn(item, at, `${name} ${i + 1}`));
    case "Point":
    case "MultiPoint":
    case "LineString":
    case "MultiLineString":
      return [];
    default:
      return `${dot}type “${String(value.type)}” is not a kind of GeoJSON object.`;
  }
}

function ringPoints(ring: unknown, field: string): Point[] | string {
  if (!Array.isArray(ring)) return `${field} is not a list of positions.`;
  const points: Point[] = [];
  for (const [i, position] of ring.entries()) {
    const [x, y]: unknown[] = Array.isArray(position) ? position : [];
    if (typeof x !== "number" || typeof y !== "number" || !Number.isFinite(x) || !Number.isFinite(y)) return `${field}[${i}] needs two numbers.`;
    points.push([x, y]);
  }
  return points;
}

/** Every polygon of the file, without the repeated last position. A polygon with holes is refused: what is inside a bed is drawn as something to keep clear of. */
export function draftsFromGeojson(text: string): DraftResult {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return faultAt(lineAt(text, jsonFaultIndex(text)), "JSON", "The file is not sound JSON: a comma, quote or bracket is missing or too many there, or it is cut off.");
  }
  const found = polygonsIn(value, "", "polygon");
  if (typeof found === "string") return faultAt(null, "type", found);
  const drafts: OutlineDraft[] = [];
  for (const { name, rings, field } of found) {
    if (!Array.isArray(rings) || rings.length === 0) return faultAt(null, field, `${field} has no ring of positions.`);
    if (rings.length > 1) return faultAt(null, `${field}[1]`, `${name} has a hole in it. Send its outer edge, and draw what is inside as something to keep clear of.`);
    const points = ringPoints(rings[0], `${field}[0]`);
    if (typeof points === "string") return faultAt(null, `${field}[0]`, points);
    drafts.push({ name, line: null, edges: points.map((point) => draftEdge(point)) });
  }
  return { ok: true, drafts, unitSaid: null };
}
