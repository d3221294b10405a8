// Shapes of the hand-written tables: reasons for departing from a source, and genera that are left out.
import { z } from "zod";

const text = z.string().trim().min(1);

/** prisma/plants/tables/reasons.yaml. */
export const reasonsFile = z.array(z.strictObject({ taxon: z.union([text, z.array(text).min(1)]), field: text, source: text, reason: text }));

/** prisma/plants/tables/left-out.yaml: genera of the USDA list by the reason why they are not in. */
export const leftOutFile = z.array(z.strictObject({ reason: text, genera: z.array(text).min(1) }));
export type LeftOut = z.infer<typeof leftOutFile>;
