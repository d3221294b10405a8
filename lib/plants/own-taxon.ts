// A taxon of the user's own: the shape of its form, held to the dataset's vocabulary, and the taxon it makes.
import { z } from "zod";
import { COLOR_NAMES } from "./colors";
import type { Feature, Taxon } from "./taxon";
import { entryFile } from "./taxon-file";
import { genusTaxa } from "./taxon-load";
import { thirdOfDay } from "./thirds";
import { DRIVES, FEATURE_KINDS } from "./vocabulary";

/** The source key of what the user said. It is no key of sources.yaml: nobody can look it up. */
export const OWN_SOURCE = "own";

const text = (words: string, max = 120) => z.string().trim().min(1, words).max(max, `At most ${max} characters.`);
const maybe = (max = 120) =>
  z
    .string()
    .trim()
    .max(max, `At most ${max} characters.`)
    .transform((typed) => typed || null)
    .nullable();
const names = z.array(text("An empty name.", 120)).max(20, "At most 20 names.");
const day = z.number().int().min(1).max(365);
const of = entryFile.shape;

/** Says in words what a pair of numbers must be; zod's own message is not for people. */
const pair = (words: string, min: number, max: number) =>
  z
    .tuple([z.number({ error: words }).min(min, words).max(max, words), z.number({ error: words }).min(min, words).max(max, words)], { error: words })
    .refine(([low, high]) => low <= high, { error: "The first figure must not exceed the second." });
const some = <T extends z.ZodType>(list: z.ZodArray<T>, words: string) => list.min(1, words);

export const ownFeature = z.strictObject({
  kind: z.enum(FEATURE_KINDS),
  color: z.enum(COLOR_NAMES),
  fade: z.enum(COLOR_NAMES).nullable(),
  winter: z.enum(COLOR_NAMES).nullable(),
  /** Days of year at the place the windows were seen at; null: with the leaves, or all year. */
  window: z.strictObject({ from: day, to: day }).nullable(),
  show: z.union([z.literal(1), z.literal(2), z.literal(3)]),
  /** What moves its dates; null: what usually does for its kind and time. */
  drive: z.enum(DRIVES).nullable(),
});
export type OwnFeature = z.infer<typeof ownFeature>;

/** A point whose year the windows were seen in; null is the reference climate. */
export const seenAt = z.strictObject({ label: z.string().max(120), lat: z.number().min(-90).max(90), lon: z.number().min(-180).max(180), elevationFt: z.number() }).nullable();
export type SeenAt = z.infer<typeof seenAt>;

export const ownTaxonInput = z.strictObject({
  botanical: text("The botanical name, such as Hydrangea paniculata.").regex(
    /^(× )?[A-Z][a-z]+( .+)?$/,
    "A botanical name begins with a capitalized genus, such as Hydrangea paniculata. The cultivar has its own field.",
  ),
  cultivar: maybe(),
  trade: maybe(),
  group: maybe(),
  family: maybe(60),
  common: some(names, "At least one common name, such as panicle hydrangea."),
  synonyms: names,
  kind: of.kind.unwrap(),
  habit: of.habit.unwrap(),
  height: pair("Height in feet, low and high, between 0.05 and 380.", 0.05, 380),
  spread: pair("Spread in feet, low and high, between 0.05 and 200.", 0.05, 200),
  rate: of.rate.unwrap(),
  zones: pair("Hardiness zones, coldest and warmest, between 1 and 13.", 1, 13),
  light: some(of.light.unwrap(), "At least one: sun, part or shade."),
  moisture: some(of.moisture.unwrap(), "At least one: dry, average, moist or wet."),
  ph: pair("Soil pH, low and high, between 3 and 10.", 3, 10),
  salt: of.salt.unwrap(),
  deer: of.deer.unwrap(),
  drought: of.drought.unwrap(),
  wet: of.wet.unwrap(),
  juglone: of.juglone.unwrap(),
  roots: of.roots.unwrap(),
  foliage: of.foliage.unwrap(),
  leaves: z.strictObject({ onDay: day, offDay: day }).nullable(),
  toxic: of.toxic.unwrap(),
  sex: of.sex.unwrap(),
  partner: maybe(200),
  wood: of.wood.unwrap().nullable(),
  pruning: of.pruning.unwrap(),
  maintenance: of.maintenance.unwrap(),
  wildlife: of.wildlife.unwrap(),
  flags: of.flags.unwrap(),
  usda: of.usda.unwrap().nullable(),
  note: maybe(500),
  features: z.array(ownFeature).min(1, "At least one feature: what it is grown for.").max(20, "At most 20 features."),
  seenAt,
});
export type OwnTaxonInput = z.infer<typeof ownTaxonInput>;

/** What is wrong with a field; `field` is a key of the input, "features.2.color" for the third feature's color. */
export type FieldFault = { readonly field: string; readonly message: string };
export type OwnTaxonAnswer =
  /** `seen`: by feature, whether its window was given; else it goes with the leaves. */
  { readonly kind: "taxon"; readonly taxon: Taxon; readonly seen: readonly boolean[] } | { readonly kind: "faults"; readonly faults: readonly FieldFault[] };

type FileFeature = { color: string; fade?: string; winter?: string; from?: string; to?: string; show: number; drive?: string };

function fileFeatures(features: readonly OwnFeature[]): Record<string, FileFeature[]> {
  const byKind: Record<string, FileFeature[]> = {};
  for (const f of features) {
    const file: FileFeature = { color: f.color, show: f.show };
    if (f.fade) file.fade = f.fade;
    if (f.winter && f.kind === "evergreen") file.winter = f.winter;
    if (f.drive) file.drive = f.drive;
    if (f.window) {
      file.from = thirdOfDay(f.window.from);
      file.to = thirdOfDay(f.window.to);
    }
    const sameKind = byKind[f.kind] ?? [];
    sameKind.push(file);
    byKind[f.kind] = sameKind;
  }
  return byKind;
}

/** The loader orders features by kind; the input's in the same order, to set exact days. */
const inLoaderOrder = (features: readonly OwnFeature[]): OwnFeature[] => FEATURE_KINDS.flatMap((kind) => features.filter((f) => f.kind === kind));

/** The loader speaks of "features.bloom"; the form of its first row of that kind. */
function faultField(field: string, input: OwnTaxonInput): string {
  const kind = /^features\.([a-z ]+)/.exec(field)?.[1];
  const row = kind ? input.features.findIndex((f) => f.kind === kind) : -1;
  if (row >= 0) return `features.${row}`;
  return field.startsWith("features") ? "features" : field === "name" ? "botanical" : field;
}

/**
 * The taxon an input makes, its windows still those of the place they were seen at. Checked by the dataset's own loader, so that it is as
 * complete as any; every source is `own`.
 * @param id stays with it for life, whatever it is renamed to
 */
export function ownTaxon(id: string, input: OwnTaxonInput): OwnTaxonAnswer {
  const genus = /^(× )?[A-Z][a-z]+/.exec(input.botanical)?.[0] ?? input.botanical;
  const { botanical, cultivar, trade, group, family, features, leaves, usda, wood, partner, note, seenAt: _seenAt, ...same } = input;
  const values = {
    ...same,
    features: fileFeatures(features),
    ...(leaves ? { leaves: [thirdOfDay(leaves.onDay), thirdOfDay(leaves.offDay)] } : {}),
    ...(usda ? { usda } : {}),
    ...(wood ? { wood } : {}),
    ...(partner ? { partner } : {}),
    ...(note ? { note } : {}),
  };
  const named = { ...(cultivar ? { cultivar } : {}), ...(trade ? { trade } : {}), ...(group ? { group } : {}) };
  const entry = cultivar || trade ? { name: botanical, abstract: true, cultivars: [{ ...named, ...values }] } : { name: botanical, ...values };
  const made = genusTaxa("own", { genus, family: family ?? "family not given", taxa: [entry] });
  const [taxon] = made.taxa;
  if (!taxon || made.faults.length) return { kind: "faults", faults: made.faults.map((f) => ({ field: faultField(f.field, input), message: f.message })) };
  const ordered = inLoaderOrder(features);
  return {
    kind: "taxon",
    seen: ordered.map((f) => f.window !== null),
    taxon: {
      ...taxon,
      id,
      leaves: taxon.leaves && leaves ? leaves : null,
      features: taxon.features.map((f, i): Feature => {
        const window = ordered[i]?.window;
        return { ...f, source: OWN_SOURCE, ...(window ? { startDay: window.from, endDay: window.to } : {}) };
      }),
      sources: Object.fromEntries([...Object.keys(taxon.sources), ...taxon.features.map((f) => `features.${f.kind}`)].map((field) => [field, OWN_SOURCE])),
    },
  };
}

/** Checks untrusted input. Faults name the field in the form's terms. */
export function ownTaxonRead(untrusted: unknown): { readonly kind: "input"; readonly input: OwnTaxonInput } | { readonly kind: "faults"; readonly faults: readonly FieldFault[] } {
  const parsed = ownTaxonInput.safeParse(untrusted);
  if (parsed.success) return { kind: "input", input: parsed.data };
  return { kind: "faults", faults: parsed.error.issues.map((issue) => ({ field: issue.path.map(String).join(".") || "(form)", message: issue.message })) };
}
