// The shape of one genus file under prisma/plants/. A cultivar inherits from the entry it stands under.
import { z } from "zod";
import { COLOR_NAMES } from "./colors";
import { isThird, type Third } from "./thirds";
import {
  DEER,
  DRIVES,
  FEATURE_KINDS,
  FLAGS,
  FOLIAGES,
  HABITS,
  HAZARDS,
  JUGLONE,
  KINDS,
  LEVELS,
  LIGHTS,
  MOISTURES,
  PRUNINGS,
  RATES,
  ROOTS,
  SEXES,
  STATES,
  WET_FEET,
  WILDLIFE,
  WOODS,
} from "./vocabulary";

const text = z.string().trim().min(1);
const third = z.custom<Third>((v) => typeof v === "string" && isThird(v), { error: 'a third of a month such as "early Apr", "mid Jul" or "late Oct"' });
const range = (min: number, max: number) =>
  z.tuple([z.number().min(min).max(max), z.number().min(min).max(max)]).refine(([low, high]) => low <= high, { error: "low must not exceed high" });

export const featureFile = z.strictObject({
  color: z.enum(COLOR_NAMES),
  fade: z.enum(COLOR_NAMES).optional(),
  winter: z.enum(COLOR_NAMES).optional(),
  from: third.optional(),
  to: third.optional(),
  show: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  drive: z.enum(DRIVES).optional(),
  /** Published degree days (base 50 °F) at first bloom, and at full bloom. */
  dd: z.number().positive().optional(),
  ddFull: z.number().positive().optional(),
  note: text.optional(),
  src: text.optional(),
});
export type FeatureFile = z.infer<typeof featureFile>;

const oneOrMore = z.union([featureFile, z.array(featureFile).min(1)]);
const features = z.strictObject(
  Object.fromEntries(FEATURE_KINDS.map((k) => [k, oneOrMore.nullable().optional()])) as Record<(typeof FEATURE_KINDS)[number], z.ZodOptional<z.ZodNullable<typeof oneOrMore>>>,
);

const hazards = z.strictObject({ people: z.enum(HAZARDS), pets: z.enum(HAZARDS), horses: z.enum(HAZARDS), parts: text.optional() });
const regulation = z.strictObject({
  states: z.array(z.enum(STATES as [string, ...string[]])).min(1),
  what: text,
  law: text,
  date: z.string().regex(/^\d{4}(-\d\d(-\d\d)?)?$/, "a date such as 2009-01-01 or a year"),
  exempt: text.optional(),
});

/** Every value an entry may hold; all are optional here, and completeness is checked after inheritance. */
const values = {
  common: z.array(text).min(1).optional(),
  synonyms: z.array(text).optional(),
  kind: z.enum(KINDS).optional(),
  habit: z.enum(HABITS).optional(),
  height: range(0.05, 380).optional(),
  spread: range(0.05, 200).optional(),
  age: z.number().int().min(1).max(60).optional(),
  rate: z.enum(RATES).optional(),
  zones: range(1, 13).optional(),
  light: z.array(z.enum(LIGHTS)).min(1).optional(),
  moisture: z.array(z.enum(MOISTURES)).min(1).optional(),
  ph: range(3, 10).optional(),
  salt: z.enum(LEVELS).optional(),
  deer: z.enum(DEER).optional(),
  juglone: z.enum(JUGLONE).optional(),
  drought: z.enum(LEVELS).optional(),
  wet: z.enum(WET_FEET).optional(),
  roots: z.enum(ROOTS).optional(),
  foliage: z.enum(FOLIAGES).optional(),
  leaves: z.tuple([third, third]).optional(),
  features: features.optional(),
  toxic: z.union([z.literal("none"), z.literal("unknown"), hazards]).optional(),
  sex: z.enum(SEXES).optional(),
  partner: text.optional(),
  wood: z.enum(WOODS).optional(),
  pruning: z.enum(PRUNINGS).optional(),
  maintenance: z.enum(LEVELS).optional(),
  wildlife: z.array(z.enum(WILDLIFE)).optional(),
  flags: z.array(z.enum(FLAGS)).optional(),
  regulated: z.array(regulation).optional(),
  usda: z
    .string()
    .regex(/^[A-Z0-9]+$/)
    .optional(),
  note: text.optional(),
  why: z.record(text, text).optional(),
  src: z.record(text, z.array(text).min(1)).optional(),
};

export const cultivarFile = z
  .strictObject({ cultivar: text.optional(), trade: text.optional(), group: text.optional(), ...values })
  .refine((c) => c.cultivar || c.trade, { error: "needs cultivar, trade or both" });
export type CultivarFile = z.infer<typeof cultivarFile>;

export const entryFile = z.strictObject({ name: text, abstract: z.boolean().optional(), parent: text.optional(), ...values, cultivars: z.array(cultivarFile).optional() });
export type EntryFile = z.infer<typeof entryFile>;

export const genusFile = z.strictObject({ genus: z.string().regex(/^[A-Z][a-z]+$|^× [A-Z][a-z]+$/, "one capitalized word"), family: text, taxa: z.array(entryFile).min(1) });
export type GenusFile = z.infer<typeof genusFile>;

export type ValueFields = Omit<EntryFile, "name" | "abstract" | "parent" | "cultivars">;

export const sourcesFile = z.record(
  z.string().regex(/^[a-z0-9-]+$/),
  z.strictObject({ title: text, by: text, year: z.union([z.number(), text]).optional(), licence: text, note: text.optional() }),
);
export type Sources = z.infer<typeof sourcesFile>;
