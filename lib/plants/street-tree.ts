// Heights and crown spreads measured on street trees of 15 years or more.
import { z } from "zod";

const measured = z.tuple([z.number().int(), z.tuple([z.number(), z.number(), z.number()]), z.tuple([z.number(), z.number(), z.number()])]).transform(([trees, height, crown]) => ({
  /** Trees of 15 years or more that the medians rest on. */
  trees,
  /** Median and 90th percentile of the height, tallest tree. */
  heightFt: { median: height[0], p90: height[1], max: height[2] },
  crownFt: { median: crown[0], p90: crown[1], max: crown[2] },
}));

/** One group of measured trees of a species (a species measured as two sizes of tree has two). */
export type StreetTrees = z.output<typeof measured>;
export type StreetTreeCells = z.input<typeof measured>;

export const streetTreesFile = z.strictObject({ source: z.string(), licence: z.string(), note: z.string(), species: z.record(z.string(), z.array(measured).min(1)) });
