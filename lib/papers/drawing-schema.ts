// The drawing of a bed as it comes from files and screens: one check for both.
import { z } from "zod";
import { PLACED_MAX } from "../ground/bed-drawing";
import { type KeepClear, SPOT_KINDS } from "../ground/border";
import { type PlanEdge, type PlanOutline, planFault } from "../ground/plan-outline";

const coordinate = z.number().min(-5000).max(5000);
export const pointSchema = z.tuple([coordinate, coordinate]).describe("[x, y] in feet; x to the right, y up the drawing");
export const placeInGroupSchema = z.tuple([coordinate, coordinate, z.number().int().min(0).max(1_000_000)]).describe("[x, y, group]: plants of one group were set together");
const feetUpTo = (most: number) => z.number().min(0).max(most);

const shapeSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("straight") }),
  z.strictObject({ kind: z.literal("arc"), ordinateFt: z.number().min(-2000).max(2000).describe("middle of the chord to the arc, positive to the right of the way") }),
  z.strictObject({ kind: z.literal("cubic"), control1: pointSchema, control2: pointSchema }),
]);

const windowSchema = z
  .strictObject({
    fromFt: feetUpTo(2000).describe("along the edge from its first corner"),
    toFt: feetUpTo(2000),
    sillFt: feetUpTo(100).describe("height of the sill over the bed's ground"),
  })
  .refine((w) => w.toFt > w.fromFt, "a window ends after it begins");

const borderSchema = z.discriminatedUnion("what", [
  z.strictObject({ what: z.enum(["open", "lawn", "water", "walk", "drive"]) }),
  z.strictObject({ what: z.literal("house wall"), windows: z.array(windowSchema).max(50).default([]) }),
  z.strictObject({ what: z.literal("retaining wall"), heightFt: feetUpTo(100), bedAt: z.enum(["top", "foot"]), setbackFt: feetUpTo(100) }),
  z.strictObject({ what: z.literal("street corner"), withinFt: feetUpTo(500), maxHeightFt: feetUpTo(50) }),
]);

export const edgeSchema = z.strictObject({
  from: pointSchema,
  shape: shapeSchema.default({ kind: "straight" }),
  border: borderSchema.default({ what: "open" }),
}) satisfies z.ZodType<PlanEdge>;

/** Edges that make a bed: a fault is said with its place. */
export const edgesSchema = z
  .array(edgeSchema)
  .max(200)
  .superRefine((edges, context) => {
    const fault = planFault(edges);
    if (fault) context.addIssue({ code: "custom", message: fault.words });
  }) satisfies z.ZodType<PlanOutline>;

const path = z.array(pointSchema).min(2).max(50);
export const thingSchema = z.discriminatedUnion("what", [
  z.strictObject({ what: z.enum(SPOT_KINDS), at: pointSchema, radiusFt: feetUpTo(100), clearFt: feetUpTo(200) }),
  z.strictObject({ what: z.literal("overhead line"), path, heightFt: feetUpTo(200), clearFt: feetUpTo(200) }),
  z.strictObject({ what: z.literal("buried line"), path, clearFt: feetUpTo(200) }),
]) satisfies z.ZodType<KeepClear>;
export const thingsSchema = z.array(thingSchema).max(200);

export const standpointSchema = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("one side"), lookAngle: z.number().min(-10).max(10).describe("the way of looking, radians counterclockwise from x") }),
  z.strictObject({ kind: z.literal("all round") }),
]);

const id = z.string().min(1).max(64);
export const placedPlantSchema = z.object({ id, rowId: id, at: pointSchema, group: z.number().int().min(0).max(1_000_000) });
export const underlaySchema = z.object({
  imageId: id,
  widthPx: z.number().int().positive().max(100_000),
  heightPx: z.number().int().positive().max(100_000),
  at: pointSchema,
  ftPerPx: z.number().positive().max(1000),
  strength: z.number().min(0).max(1),
});

export const drawingSchema = z.object({
  plants: z.array(placedPlantSchema).max(PLACED_MAX),
  things: thingsSchema,
  standpoint: standpointSchema,
  underlay: underlaySchema.nullable(),
});
