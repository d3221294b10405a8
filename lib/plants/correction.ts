// A value of the open dataset corrected for one's own region. The dataset's own value is kept beside it.
import { z } from "zod";
import { seenAt } from "./own-taxon";
import type { Taxon } from "./taxon";
import { entryFile } from "./taxon-file";

/** Values that differ by region; the rest is what the plant is. Named as in the dataset's files. */
export const CORRECTABLE = ["height", "spread", "rate", "zones", "light", "moisture", "ph", "salt", "deer", "drought", "wet", "habit"] as const;
export type CorrectableField = (typeof CORRECTABLE)[number];

const day = z.number().int().min(1).max(365);
/** A window as seen at a place, in its days of year. */
export const windowValue = z.strictObject({ from: day, to: day, seenAt });
export type WindowValue = z.infer<typeof windowValue>;

/** "bloom.0": the first bloom of the taxon. */
export const windowField = z.templateLiteral([
  "window.",
  z.enum(["bloom", "spring foliage", "summer foliage", "fall color", "fruit", "bark", "seedhead", "structure"]),
  ".",
  z.number().int().min(0).max(20),
]);
export type WindowField = z.infer<typeof windowField>;
export type CorrectionField = CorrectableField | WindowField;

/** One stored correction, its value checked. */
export type Correction = { readonly id: string; readonly field: CorrectionField; readonly value: unknown; readonly note: string; readonly savedAt: string };

/** The taxon's own name for a file's field. */
export const TAXON_FIELDS = {
  height: "heightFt",
  spread: "spreadFt",
  rate: "growthRate",
  zones: "zoneLow",
  light: "light",
  moisture: "moisture",
  ph: "ph",
  salt: "salt",
  deer: "deer",
  drought: "drought",
  wet: "wetFeet",
  habit: "habit",
} as const satisfies Record<CorrectableField, keyof Taxon>;

const WORDS: Record<CorrectableField, string> = {
  height: "Height in feet, low and high, the low one first.",
  spread: "Spread in feet, low and high, the low one first.",
  rate: "One of slow, medium, fast.",
  zones: "Zones between 1 and 13, the colder first.",
  light: "At least one of sun, part, shade.",
  moisture: "At least one of dry, average, moist, wet.",
  ph: "pH between 3 and 10, the lower first.",
  salt: "One of low, medium, high.",
  deer: "One of rarely, sometimes, often.",
  drought: "One of low, medium, high.",
  wet: "One of no, brief, yes.",
  habit: "One of the habits listed.",
};

export type CorrectionRead =
  | { readonly kind: "value"; readonly field: CorrectionField; readonly value: unknown }
  | { readonly kind: "fault"; readonly field: string; readonly message: string };

const isCorrectable = (field: string): field is CorrectableField => (CORRECTABLE as readonly string[]).includes(field);

/** Checks a field and its untrusted value by the dataset's own schema. */
export function correctionRead(field: string, value: unknown): CorrectionRead {
  if (isCorrectable(field)) {
    const parsed = entryFile.shape[field].unwrap().safeParse(value);
    return parsed.success ? { kind: "value", field, value: parsed.data } : { kind: "fault", field, message: WORDS[field] };
  }
  const name = windowField.safeParse(field);
  if (!name.success) return { kind: "fault", field, message: `"${field}" cannot be corrected here.` };
  const window = windowValue.safeParse(value);
  return window.success ? { kind: "value", field: name.data, value: window.data } : { kind: "fault", field, message: "A first and a last time of year." };
}

/** The features a window field speaks of: its place among the taxon's features; −1 where there is none (any more). */
export function windowFeatureIndex(taxon: Pick<Taxon, "features">, field: WindowField): number {
  const [, kind, nth] = field.split(".");
  const same = taxon.features.flatMap((f, i) => (f.kind === kind ? [i] : []));
  return same[Number(nth)] ?? -1;
}

/** The window field of a taxon's feature; null for what shows all year, which has no dates to correct. */
export function windowFieldOf(taxon: Pick<Taxon, "features">, index: number): WindowField | null {
  const feature = taxon.features[index];
  if (!feature || feature.drive === "always") return null;
  const nth = taxon.features.slice(0, index).filter((f) => f.kind === feature.kind).length;
  const parsed = windowField.safeParse(`window.${feature.kind}.${nth}`);
  return parsed.success ? parsed.data : null;
}

export const isWindowField = (field: CorrectionField): field is WindowField => field.startsWith("window.");
