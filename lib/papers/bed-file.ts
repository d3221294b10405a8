// The bed file: one bed with its place, as JSON. Export, import and the headless command share this schema;
// scripts/schema-write.ts writes it to public/schema/ as JSON Schema.
import { z } from "zod";
import { type Bed, FACINGS, PRESSURES } from "../ground/bed";
import { EMPTY_DRAWING, PLACED_MAX, type PlacedPlant } from "../ground/bed-drawing";
import { outlineFault } from "../ground/outline";
import { MICROCLIMATES, WARMINGS_F } from "../place/microclimate";
import { NORMAL_SETTING, type PlaceSetting } from "../place/setting";
import { SPRINGS } from "../place/spring";
import { zoneParse } from "../place/zone";
import { LIGHTS, MOISTURES } from "../plants/vocabulary";
import { DEFAULT_TARGETS, type Targets } from "../season/interest";
import { edgesSchema, placeInGroupSchema, pointSchema, standpointSchema, thingsSchema } from "./drawing-schema";

const feet = z.number().positive().max(2000);
const corner = z.tuple([z.number().min(-5000).max(5000), z.number().min(-5000).max(5000)]);
const share = z.number().min(0).max(1);

const place = z
  .strictObject({
    zip: z
      .string()
      .regex(/^\d{5}$/, "five digits, such as 05401")
      .optional()
      .describe("ZIP code; gives latitude, longitude and the 2023 zone"),
    town: z.string().max(120).optional(),
    state: z
      .string()
      .regex(/^[A-Z]{2}$/, "two capital letters")
      .optional(),
    lat: z.number().min(-90).max(90).optional(),
    lon: z.number().min(-180).max(180).optional(),
    elevationFt: z.number().min(-300).max(21000).optional(),
    zone: z
      .string()
      .refine((text) => zoneParse(text) !== null, "a hardiness zone from 1a to 13b")
      .optional()
      .describe("set by hand; wins over the ZIP's zone"),
    microclimate: z.enum(MICROCLIMATES).optional().describe("the site within its ZIP; open where nothing is said"),
    warmingF: z.literal(WARMINGS_F).optional().describe("every month so many °F warmer than the normals"),
    spring: z.enum(SPRINGS).optional().describe("the spring to plan for"),
  })
  .refine((p) => p.zip !== undefined || (p.lat !== undefined && p.lon !== undefined), "needs zip, or lat and lon");

const size = z.union([
  z.strictObject({ lengthFt: feet, widthFt: feet }),
  z.strictObject({
    outlineFt: z
      .array(corner)
      .max(500)
      .superRefine((points, context) => {
        const fault = outlineFault(points);
        if (fault) context.addIssue({ code: "custom", message: fault.words });
      })
      .describe("corners [x, y] in feet, in order, not closed"),
  }),
  z.strictObject({ edges: edgesSchema.describe("drawn to scale: each edge from its corner to the next one's, in order, the last back to the first") }),
]);

const site = z.strictObject({
  light: z.enum(LIGHTS).default("sun"),
  moisture: z.enum(MOISTURES).default("average"),
  ph: z.number().min(3).max(10).nullable().default(null),
  salt: z.enum(PRESSURES).default("none").describe("road salt the bed gets"),
  deer: z.enum(PRESSURES).default("none").describe("deer pressure"),
  faces: z.enum(FACINGS).default(""),
});

const plant = z
  .strictObject({
    name: z.string().trim().min(1).max(200).describe("any accepted, former, trade or common name"),
    quantity: z.number().int().min(0).max(100_000).optional(),
    areaSqFt: z.number().positive().max(1_000_000).optional().describe("instead of quantity: the ground the group fills at its spacing, triangular grid"),
    spacingFt: z.number().min(0.1).max(200).nullable().default(null).describe("on center; null is mature spread"),
    size: z.string().max(80).default("").describe("at planting, as the trade writes it: #3, 2 in cal B&B"),
    remarks: z.string().max(500).default(""),
    existing: z.boolean().default(false).describe("stands there already and stays"),
    at: z
      .array(z.union([pointSchema, placeInGroupSchema]))
      .max(PLACED_MAX)
      .optional()
      .describe("where its plants stand on the drawing: [x, y] in feet, or [x, y, group]; without quantity and areaSqFt they are the quantity"),
  })
  .refine((p) => p.quantity === undefined || p.areaSqFt === undefined, "takes either quantity or areaSqFt, not both")
  .refine((p) => p.quantity !== undefined || p.areaSqFt !== undefined || p.at !== undefined, "needs either quantity or areaSqFt, or at");

export const bedFile = z.strictObject({
  $schema: z.string().optional(),
  version: z.literal(1).default(1),
  name: z.string().trim().min(1).max(120).default("Bed"),
  place,
  size,
  site: site.default({ light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" }),
  targets: z.strictObject({ growing: share, winter: share }).default({ ...DEFAULT_TARGETS }),
  notes: z.string().max(5000).default(""),
  plants: z.array(plant).max(500).default([]),
  keepClear: thingsSchema.optional().describe("trees, boulders, wells, spouts, outlets and lines that plants keep clear of"),
  standpoint: standpointSchema.optional().describe("where the bed is looked at from; from the foot of the drawing where nothing is said"),
});
export type BedFile = z.infer<typeof bedFile>;

/** Largest bed file that is read, in characters. */
export const BED_FILE_MAX = 2_000_000;

export type BedFileAnswer = { readonly kind: "file"; readonly file: BedFile } | { readonly kind: "fault"; readonly field: string; readonly message: string };

function fieldWords(path: readonly PropertyKey[]): string {
  return (
    path
      .map((part) => (typeof part === "number" ? `[${part}]` : String(part)))
      .join(".")
      .replaceAll(".[", "[") || "file"
  );
}

/** The deepest reason inside a union that failed: the branch that got furthest tells the person more than "no match". */
function deepest(issue: z.core.$ZodIssue): { path: PropertyKey[]; message: string } {
  if (issue.code !== "invalid_union" || !issue.errors.length) return { path: issue.path, message: issue.message };
  const branches = issue.errors.filter((branch) => branch.length > 0 && !branch.some((i) => i.code === "unrecognized_keys"));
  const branch = (branches.length ? branches : issue.errors).reduce((best, b) => (b.length < best.length ? b : best));
  const first = branch[0];
  if (!first) return { path: issue.path, message: issue.message };
  const inner = deepest(first);
  return { path: [...issue.path, ...inner.path], message: inner.message };
}

/** Reads the text of a bed file. A fault names the field and what is wanted there. */
export function bedFileRead(text: string): BedFileAnswer {
  if (text.length > BED_FILE_MAX) return { kind: "fault", field: "file", message: `${(text.length / 1e6).toFixed(1)} MB is no bed file: at most 2 MB are read.` };
  let data: unknown;
  try {
    data = JSON.parse(text);
  } catch {
    return { kind: "fault", field: "file", message: "This is not JSON: a bed file begins with { and ends with }." };
  }
  const parsed = bedFile.safeParse(data);
  if (parsed.success) return { kind: "file", file: parsed.data };
  const issue = parsed.error.issues[0];
  if (!issue) return { kind: "fault", field: "file", message: "It cannot be read." };
  const { path, message } = deepest(issue);
  const count = parsed.error.issues.length;
  return { kind: "fault", field: fieldWords(path), message: `${message}${count > 1 ? ` (and ${count - 1} more)` : ""}` };
}

function bedSizeOf(given: BedFile["size"]): Bed["size"] {
  if ("edges" in given) return { by: "drawing", edges: given.edges };
  return "outlineFt" in given ? { by: "outline", points: given.outlineFt } : { by: "rectangle", lengthFt: given.lengthFt, widthFt: given.widthFt };
}

/** The drawing of a file; null where it places nothing and keeps nothing clear. Places without a group are one group a plant list line. */
function drawingOf(file: BedFile): Bed["drawing"] {
  const plants = file.plants.flatMap(({ at = [] }, i) => at.map(([x, y, group = i], k): PlacedPlant => ({ id: `d${i + 1}-${k + 1}`, rowId: `p${i + 1}`, at: [x, y], group })));
  if (plants.length === 0 && !file.keepClear && !file.standpoint) return null;
  return { ...EMPTY_DRAWING, plants, things: file.keepClear ?? [], ...(file.standpoint ? { standpoint: file.standpoint } : {}) };
}

/** A file's bed, once its plants are found. @param find taxon of a written name, null when none fits */
export function bedOfFile(
  file: BedFile,
  find: (name: string) => { id: string; name: string } | null,
): { readonly kind: "bed"; readonly bed: Bed } | { readonly kind: "fault"; readonly field: string; readonly message: string } {
  const rows: Bed["rows"][number][] = [];
  for (const [i, p] of file.plants.entries()) {
    const taxon = find(p.name);
    if (!taxon) return { kind: "fault", field: `plants[${i}].name`, message: `"${p.name}" is no plant of the dataset, under any of its names.` };
    rows.push({
      id: `p${i + 1}`,
      taxonId: taxon.id,
      taxonName: taxon.name,
      quantity: p.areaSqFt !== undefined ? { by: "area", areaSqFt: p.areaSqFt } : p.quantity !== undefined ? { by: "count", count: p.quantity } : { by: "drawing" },
      spacingFt: p.spacingFt,
      size: p.size,
      remarks: p.remarks,
      existing: p.existing,
    });
  }
  return { kind: "bed", bed: { name: file.name, size: bedSizeOf(file.size), site: file.site, notes: file.notes, rows, drawing: drawingOf(file) } };
}

type FilePlace = {
  zip?: string | null;
  town?: string;
  state?: string | null;
  lat?: number | null;
  lon?: number | null;
  elevationFt?: number | null;
  zone?: string | null;
} & Partial<PlaceSetting>;

const NORMAL = new Map<string, unknown>(Object.entries(NORMAL_SETTING));

function fileSizeOf(given: Bed["size"]): BedFile["size"] {
  switch (given.by) {
    case "rectangle":
      return { lengthFt: given.lengthFt, widthFt: given.widthFt };
    case "outline":
      return { outlineFt: given.points.map(([x, y]) => [x, y]) };
    case "drawing":
      return { edges: edgesSchema.parse(given.edges) };
  }
}

const figure = (feet: number) => Math.round(feet * 1e4) / 1e4;

/** Places of a row's plants, to a thousandth of an inch; nothing where none stand on the drawing and none need be said. */
function filePlaces(bed: Bed, rowId: string, always: boolean): { at?: [number, number, number][] } {
  const at = (bed.drawing?.plants ?? []).flatMap((plant): [number, number, number][] => (plant.rowId === rowId ? [[figure(plant.at[0]), figure(plant.at[1]), plant.group]] : []));
  return at.length || always ? { at } : {};
}

/** The bed file of a bed. @param nameOf accepted name of a taxon, null when it left the dataset (then the kept name is written) */
export function bedFileOf(bed: Bed, at: FilePlace, targets: Targets, nameOf: (taxonId: string) => string | null): BedFile {
  const given = Object.fromEntries(Object.entries(at).filter(([key, value]) => value !== null && value !== undefined && value !== "" && NORMAL.get(key) !== value));
  return {
    version: 1,
    name: bed.name,
    place: given as BedFile["place"],
    size: fileSizeOf(bed.size),
    site: bed.site,
    targets,
    notes: bed.notes,
    plants: bed.rows.map((row) => ({
      name: nameOf(row.taxonId) ?? row.taxonName,
      ...(row.quantity.by === "count" ? { quantity: row.quantity.count } : row.quantity.by === "area" ? { areaSqFt: row.quantity.areaSqFt } : {}),
      spacingFt: row.spacingFt,
      size: row.size,
      remarks: row.remarks,
      existing: row.existing,
      ...filePlaces(bed, row.id, row.quantity.by === "drawing"),
    })),
    ...(bed.drawing?.things.length ? { keepClear: bedFile.shape.keepClear.parse(bed.drawing.things) } : {}),
    ...(bed.drawing ? { standpoint: bed.drawing.standpoint } : {}),
  };
}
