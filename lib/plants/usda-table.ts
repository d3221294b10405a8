// The compact tables made from the USDA PLANTS data: what it says of a plant's growth, and where it is native.
import { z } from "zod";
import { STATES } from "./vocabulary";

export const USDA_SHADES = ["Intolerant", "Intermediate", "Tolerant"] as const;
export const USDA_MOISTURES = ["Low", "Medium", "High"] as const;
export const USDA_BLOOMS = [
  "Late Winter",
  "Winter",
  "Early Spring",
  "Mid Spring",
  "Late Spring",
  "Spring",
  "Early Summer",
  "Mid Summer",
  "Late Summer",
  "Summer",
  "Fall",
  "Indeterminate",
] as const;
export type UsdaBloom = (typeof USDA_BLOOMS)[number];
export const USDA_GROWTHS = ["Slow", "Moderate", "Rapid"] as const;
export const USDA_SALTS = ["None", "Low", "Medium", "High"] as const;

/** Columns of a row of usda-rows.json, in their order there. */
export const USDA_COLUMNS = ["name", "heightFt", "shade", "moisture", "minTempF", "bloom", "evergreen", "growth", "phLow", "phHigh", "salt", "availability"] as const;

const rowFile = z
  .tuple([
    z.string(),
    z.number().nullable(),
    z.enum(USDA_SHADES).nullable(),
    z.enum(USDA_MOISTURES).nullable(),
    z.number().nullable(),
    z.enum(USDA_BLOOMS).nullable(),
    z.boolean().nullable(),
    z.enum(USDA_GROWTHS).nullable(),
    z.number().nullable(),
    z.number().nullable(),
    z.enum(USDA_SALTS).nullable(),
    z.string().nullable(),
  ])
  .transform(([name, heightFt, shade, moisture, minTempF, bloom, evergreen, growth, phLow, phHigh, salt, availability]) => ({
    name,
    /** Mature height in the wild or in cultivation; one figure. */
    heightFt,
    shade,
    moisture,
    /** Lowest temperature of the native range: no garden hardiness. */
    minTempF,
    bloom,
    evergreen,
    growth,
    phLow,
    phHigh,
    salt,
    availability,
  }));

/** What the USDA table says of one plant. */
export type UsdaRow = z.output<typeof rowFile>;
/** A row as the file has it. */
export type UsdaRowCells = z.input<typeof rowFile>;

const header = { source: z.string(), licence: z.string(), note: z.string() };

export const usdaRowsFile = z.strictObject({ ...header, columns: z.tuple([z.literal("name")], z.enum(USDA_COLUMNS)), rows: z.record(z.string(), rowFile) });

const statesText = z
  .string()
  .transform((text) => text.split(" ").filter(Boolean))
  .pipe(z.array(z.enum(STATES as [string, ...string[]])));

/** Native and introduced states of one plant, two-letter codes. */
export type StatesOf = { readonly native: readonly string[]; readonly introduced: readonly string[] };

export const usdaNativeFile = z.strictObject({
  ...header,
  /** Botanical name of the dataset to symbol, for those the characteristics table does not have. */
  symbolOf: z.record(z.string(), z.string()),
  rows: z.record(
    z.string(),
    z.tuple([statesText, statesText]).transform(([native, introduced]): StatesOf => ({ native, introduced })),
  ),
});
export type UsdaNative = z.output<typeof usdaNativeFile>;

/** Genera that the table calls routinely available, hardy to a zone 7 winter (5 °F or less), each with its species. */
export const usdaGeneraFile = z.strictObject({ ...header, genera: z.record(z.string(), z.array(z.string())) });

/**
 * States a taxon is native to and introduced in; null where the table does not have it. A cultivar has those of its species,
 * a hybrid none of its own unless the table lists the hybrid.
 */
export function statesOf(taxon: { readonly usda: string | null; readonly botanical: string }, table: UsdaNative): StatesOf | null {
  const symbol = taxon.usda ?? table.symbolOf[taxon.botanical];
  return symbol ? (table.rows[symbol] ?? null) : null;
}
