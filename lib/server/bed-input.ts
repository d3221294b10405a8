// A bed as it comes from the screens, checked. Numbers are held to what can be on the ground.
import { z } from "zod";
import { type Bed, FACINGS, PRESSURES } from "../ground/bed";
import { drawingKept } from "../ground/bed-drawing";
import { outlineFault } from "../ground/outline";
import { drawingSchema, edgesSchema } from "../papers/drawing-schema";
import { LIGHTS, MOISTURES } from "../plants/vocabulary";

const id = z.string().min(1).max(64);
const feet = z.number().positive().max(2000);

export const sizeInput = z.discriminatedUnion("by", [
  z.object({ by: z.literal("rectangle"), lengthFt: feet, widthFt: feet }),
  z.object({
    by: z.literal("outline"),
    points: z
      .array(z.tuple([z.number().min(-5000).max(5000), z.number().min(-5000).max(5000)]))
      .max(500)
      .superRefine((points, context) => {
        const fault = outlineFault(points);
        if (fault) context.addIssue({ code: "custom", message: fault.words });
      }),
  }),
  z.object({ by: z.literal("drawing"), edges: edgesSchema }),
]);

export const drawingInput = drawingSchema.nullable();

export const siteInput = z.object({
  light: z.enum(LIGHTS),
  moisture: z.enum(MOISTURES),
  ph: z.number().min(3).max(10).nullable(),
  salt: z.enum(PRESSURES),
  deer: z.enum(PRESSURES),
  faces: z.enum(FACINGS),
});

export const quantityInput = z.discriminatedUnion("by", [
  z.object({ by: z.literal("count"), count: z.number().int().min(0).max(100_000) }),
  z.object({ by: z.literal("area"), areaSqFt: z.number().positive().max(1_000_000) }),
  z.object({ by: z.literal("drawing") }),
]);

export const rowInput = z.object({
  id,
  taxonId: id.max(200),
  taxonName: z.string().min(1).max(200),
  quantity: quantityInput,
  spacingFt: z.number().min(0.1).max(200).nullable(),
  size: z.string().max(80),
  remarks: z.string().max(500),
  existing: z.boolean(),
});

/** Plants on the drawing whose row is gone go with it. */
export const bedInput = z
  .object({
    name: z.string().trim().min(1).max(120),
    size: sizeInput,
    site: siteInput,
    notes: z.string().max(5000),
    rows: z.array(rowInput).max(500),
    drawing: drawingInput.default(null),
  })
  .transform((bed) => ({ ...bed, drawing: drawingKept(bed.drawing, new Set(bed.rows.map((row) => row.id))) })) satisfies z.ZodType<Bed>;
