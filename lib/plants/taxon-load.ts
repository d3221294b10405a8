// From parsed genus files to taxa: inheritance, defaults, completeness. Pure; every fault names file, taxon and field.
import { COLORS } from "./colors";
import type { Feature, SourceMap, Taxon } from "./taxon";
import { type CultivarFile, type EntryFile, type FeatureFile, type GenusFile, genusFile, type Sources, type ValueFields } from "./taxon-file";
import { type Third, thirdEndDay, thirdStartDay } from "./thirds";
import { type Drive, FEATURE_KINDS, type FeatureKind, type Foliage, type Kind } from "./vocabulary";

/** One fault of the dataset: where it is and what to do about it. */
export type Fault = { file: string; taxon: string; field: string; message: string };

export const faultText = (f: Fault): string => `${f.file}: ${f.taxon}: ${f.field}: ${f.message}`;

/** The age the trade calls mature, in years (model.md §2). */
const MATURE_YEARS: Record<Kind, number> = { tree: 20, conifer: 20, shrub: 10, vine: 10, groundcover: 3, perennial: 3, grass: 3, fern: 3, bulb: 3, annual: 1 };

const REQUIRED = [
  "common",
  "kind",
  "habit",
  "height",
  "spread",
  "rate",
  "zones",
  "light",
  "moisture",
  "ph",
  "salt",
  "deer",
  "drought",
  "wet",
  "roots",
  "foliage",
  "features",
  "toxic",
  "pruning",
  "maintenance",
] as const satisfies readonly (keyof ValueFields)[];

const LOSES_LEAVES: readonly Foliage[] = ["deciduous", "dies back", "semi-evergreen"];
const DEFAULT_SOURCE = "practice";

/** A name as an identifier: lower case letters, digits and hyphens. */
export function taxonId(name: string): string {
  return name
    .normalize("NFD")
    .replace(/[\u0300-\u036f'’]/g, "")
    .replace(/×/g, "x")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-|-$/g, "");
}

type Resolved = ValueFields & { sourceOf: Record<string, string> };

/** `over` on top of `base`: a field replaces a field, features replace kind by kind (null removes the kind). */
function inherit(base: Resolved, over: ValueFields): Resolved {
  const sourceOf = { ...base.sourceOf };
  const next: Record<string, unknown> = { ...base };
  for (const [field, value] of Object.entries(over)) {
    if (value === undefined || field === "src" || field === "features") continue;
    next[field] = field === "why" ? { ...base.why, ...over.why } : value;
    sourceOf[field] = DEFAULT_SOURCE;
  }
  const merged: Record<string, unknown> = { ...base.features };
  for (const [kind, value] of Object.entries(over.features ?? {})) {
    sourceOf[`features.${kind}`] = DEFAULT_SOURCE;
    if (value === null) delete merged[kind];
    else merged[kind] = value;
  }
  for (const [key, fields] of Object.entries(over.src ?? {})) for (const field of fields) sourceOf[field] = key;
  return { ...(next as ValueFields), features: merged as ValueFields["features"], sourceOf };
}

/** What moves a feature's date when the dataset does not say (model.md §2). */
function defaultDrive(kind: FeatureKind, startDay: number, foliage: Foliage): Drive {
  const AUGUST = 213;
  switch (kind) {
    case "bloom":
    case "fruit":
    case "seedhead":
      return startDay >= AUGUST && startDay < 335 ? "light" : "heat";
    case "spring foliage":
    case "summer foliage":
      return "heat";
    case "fall color":
      return "cooling";
    case "bark":
      return foliage === "evergreen" ? "always" : "dormancy";
    case "evergreen":
      return "always";
    case "structure":
      return foliage === "evergreen" ? "always" : "dormancy";
  }
}

/** The window a kind has when the dataset leaves it out; null where it must be written. */
function defaultWindow(kind: FeatureKind, values: ValueFields, drive: Drive | undefined): [Third, Third] | null {
  const leaves = values.leaves;
  if (drive === "always" || kind === "evergreen") return ["early Jan", "late Dec"];
  if (kind === "summer foliage" && leaves) return leaves;
  if ((kind === "bark" || kind === "structure") && leaves) return [leaves[1], leaves[0]];
  if (kind === "bark" || kind === "structure") return ["early Jan", "late Dec"];
  return null;
}

function resolveFeature(kind: FeatureKind, file: FeatureFile, values: Resolved, fault: (field: string, message: string) => void): Feature | null {
  const fallback = defaultWindow(kind, values, file.drive);
  const from = file.from ?? fallback?.[0];
  const to = file.to ?? fallback?.[1];
  if (!from || !to) {
    fault(`features.${kind}`, "needs from and to, such as from: mid Jul, to: late Sep");
    return null;
  }
  if (file.winter && kind !== "evergreen") fault(`features.${kind}.winter`, "a winter color belongs to evergreen only");
  const startDay = thirdStartDay(from);
  return {
    kind,
    color: file.color,
    hex: COLORS[file.color],
    fade: file.fade ?? null,
    winter: file.winter ?? null,
    from,
    to,
    startDay,
    endDay: thirdEndDay(to),
    show: file.show,
    drive: file.drive ?? defaultDrive(kind, startDay, values.foliage ?? "deciduous"),
    degreeDays: file.dd ?? null,
    ...(file.ddFull === undefined ? {} : { degreeDaysFull: file.ddFull }),
    note: file.note ?? null,
    source: file.src ?? values.sourceOf[`features.${kind}`] ?? DEFAULT_SOURCE,
  };
}

const HEADLESS_FIELD: Record<string, string> = {
  common: "commonNames",
  height: "heightFt",
  spread: "spreadFt",
  age: "matureYears",
  rate: "growthRate",
  wet: "wetFeet",
};

function sourceMap(values: Resolved, features: readonly Feature[]): SourceMap {
  const out: Record<string, string> = {};
  for (const [field, source] of Object.entries(values.sourceOf)) {
    if (["why", "note", "usda"].includes(field) || field.startsWith("features.")) continue;
    if (field === "zones") {
      out.zoneLow = source;
      out.zoneHigh = source;
    } else out[HEADLESS_FIELD[field] ?? field] = source;
  }
  for (const f of features) out[`features.${f.kind}`] = f.source;
  return out;
}

type Names = { botanical: string; cultivar: string | null; group: string | null; tradeDesignation: string | null; formerNames: readonly string[] };

/** 'Epithet', Group and TRADE after the botanical part. */
function fullName(n: Pick<Names, "botanical" | "cultivar" | "group" | "tradeDesignation">): string {
  const group = n.group ? ` (${n.group})` : "";
  return n.cultivar ? `${n.botanical}${group} '${n.cultivar}'` : n.tradeDesignation ? `${n.botanical}${group} ${n.tradeDesignation.toUpperCase()}` : n.botanical;
}

function buildTaxon(genus: string, family: string, names: Names, values: Resolved, fault: (field: string, message: string) => void): Taxon | null {
  const before = values;
  const missing = REQUIRED.filter((field) => before[field] === undefined);
  for (const field of missing) fault(field, "missing, here and in what it inherits from");
  const { kind, habit, height, spread, rate, zones, light, moisture, ph, salt, deer, drought, wet, roots, foliage, toxic, pruning, maintenance, common } = values;
  if (
    !kind ||
    !habit ||
    !height ||
    !spread ||
    !rate ||
    !zones ||
    !light ||
    !moisture ||
    !ph ||
    !salt ||
    !deer ||
    !drought ||
    !wet ||
    !roots ||
    !foliage ||
    !toxic ||
    !pruning ||
    !maintenance ||
    !common
  )
    return null;
  if (LOSES_LEAVES.includes(foliage) && !values.leaves) fault("leaves", "needs [leaf-out, leaf-drop], such as [early May, late Oct]");
  if ((kind === "shrub" || kind === "vine") && values.features?.bloom && !values.wood) fault("wood", "a flowering shrub or vine needs the wood it blooms on: old, new or both");
  if (foliage === "evergreen" && kind !== "groundcover" && kind !== "bulb" && !values.features?.evergreen)
    fault("features.evergreen", "an evergreen needs its evergreen foliage as a feature");
  if (values.sex === "female" && values.features?.fruit && !values.partner) fault("partner", "a female that fruits needs its pollination partner named");
  const features = FEATURE_KINDS.flatMap((featureKind) => {
    const file = values.features?.[featureKind];
    if (!file) return [];
    return (Array.isArray(file) ? file : [file]).flatMap((one) => resolveFeature(featureKind, one, values, fault) ?? []);
  });
  if (features.length === 0) fault("features", "a taxon needs at least one seasonal feature");
  const leaves = values.leaves && foliage !== "evergreen" ? { onDay: thirdStartDay(values.leaves[0]), offDay: thirdEndDay(values.leaves[1]) } : null;
  const name = fullName(names);
  return {
    id: taxonId(name),
    name,
    genus,
    botanical: names.botanical,
    cultivar: names.cultivar,
    group: names.group,
    tradeDesignation: names.tradeDesignation,
    synonyms: [...new Set([...(values.synonyms ?? []), ...names.formerNames])].filter((s) => s !== name),
    commonNames: common,
    family,
    kind,
    habit,
    heightFt: height,
    spreadFt: spread,
    matureYears: values.age ?? MATURE_YEARS[kind],
    growthRate: rate,
    zoneLow: zones[0],
    zoneHigh: zones[1],
    light,
    moisture,
    ph,
    salt,
    deer,
    juglone: values.juglone ?? "unknown",
    drought,
    wetFeet: wet,
    roots,
    foliage,
    leaves,
    features,
    toxic: typeof toxic === "string" ? { people: toxic, pets: toxic, horses: toxic, parts: null } : { ...toxic, parts: toxic.parts ?? null },
    sex: values.sex ?? "both",
    partner: values.partner ?? null,
    wood: values.wood ?? null,
    pruning,
    maintenance,
    wildlife: values.wildlife ?? [],
    flags: values.flags ?? [],
    regulated: (values.regulated ?? []).map((r) => ({ ...r, exempt: r.exempt ?? null })),
    usda: values.usda ?? null,
    note: values.note ?? null,
    why: values.why ?? {},
    sources: sourceMap(values, features),
  };
}

/** Fields a cultivar does not take over from its entry: they belong to the entry's own name. */
function inheritable(values: Resolved): Resolved {
  const { synonyms: _synonyms, note: _note, ...rest } = values;
  return { ...rest, sourceOf: values.sourceOf };
}

/**
 * What an entry takes over from the entry named as its parent. A table's symbol and rows stay with their species: another species
 * built on it has the values by analogy, so their source is common practice.
 */
function entryBase(parent: Resolved, entry: EntryFile): Resolved {
  const base = inheritable(parent);
  if (entry.parent !== undefined && (entry.name === entry.parent || entry.name.startsWith(`${entry.parent} `))) return base;
  const { usda: _usda, ...rest } = base;
  return { ...rest, sourceOf: Object.fromEntries(Object.keys(base.sourceOf).map((field) => [field, DEFAULT_SOURCE])) };
}

function entryTaxa(file: string, genus: GenusFile, entry: EntryFile, base: Resolved, faults: Fault[]): { own: Resolved; taxa: Taxon[] } {
  const { name, abstract, parent: _parent, cultivars, ...values } = entry;
  const own = inherit(base, values);
  const faultOf = (taxon: string) => (field: string, message: string) => faults.push({ file, taxon, field, message });
  const taxa: Taxon[] = [];
  if (name.split(" ").find((w) => w !== "×") !== genus.genus.replace("× ", "")) faultOf(name)("name", `does not begin with the file's genus ${genus.genus}`);
  if (!abstract) {
    const taxon = buildTaxon(genus.genus, genus.family, { botanical: name, cultivar: null, group: null, tradeDesignation: null, formerNames: [] }, own, faultOf(name));
    if (taxon) taxa.push(taxon);
  }
  for (const c of cultivars ?? []) {
    const { cultivar, trade, group, ...over } = c satisfies CultivarFile;
    // A former species name with this epithet is a former name of the cultivar too.
    const formerNames = cultivar ? (entry.synonyms ?? []).filter((s) => !s.includes("'")).map((s) => `${s} '${cultivar}'`) : [];
    const names: Names = { botanical: name, cultivar: cultivar ?? null, group: group ?? null, tradeDesignation: trade ?? null, formerNames };
    const taxon = buildTaxon(genus.genus, genus.family, names, inherit(inheritable(own), over), faultOf(fullName(names)));
    if (taxon) taxa.push(taxon);
  }
  return { own, taxa };
}

/** Zod's issue as a fault that names the entry and the field. */
function shapeFaults(file: string, data: unknown, issues: readonly { path: PropertyKey[]; message: string }[]): Fault[] {
  return issues.map(({ path, message }) => {
    let at: unknown = data;
    let taxon = "(file)";
    let rest = path;
    path.forEach((key, i) => {
      at = at && typeof at === "object" ? (at as Record<PropertyKey, unknown>)[key] : undefined;
      const named = at as { name?: unknown; cultivar?: unknown; trade?: unknown } | undefined;
      const label = named && typeof named === "object" ? (named.name ?? named.cultivar ?? named.trade) : undefined;
      if (typeof label === "string" && typeof key === "number") {
        taxon = taxon === "(file)" ? label : `${taxon} '${label}'`;
        rest = path.slice(i + 1);
      }
    });
    return { file, taxon, field: rest.map(String).join(".") || "(entry)", message };
  });
}

/**
 * Taxa of one genus file.
 * @param file name for the faults
 * @param data the parsed YAML, untrusted
 */
export function genusTaxa(file: string, data: unknown): { taxa: Taxon[]; faults: Fault[] } {
  const parsed = genusFile.safeParse(data);
  if (!parsed.success) return { taxa: [], faults: shapeFaults(file, data, parsed.error.issues) };
  const faults: Fault[] = [];
  const taxa: Taxon[] = [];
  const done = new Map<string, Resolved>();
  for (const entry of parsed.data.taxa) {
    const parent = entry.parent ? done.get(entry.parent) : undefined;
    if (entry.parent && !parent) faults.push({ file, taxon: entry.name, field: "parent", message: `"${entry.parent}" does not stand above it in this file` });
    const result = entryTaxa(file, parsed.data, entry, parent ? entryBase(parent, entry) : { sourceOf: {} }, faults);
    done.set(entry.name, result.own);
    taxa.push(...result.taxa);
  }
  return { taxa, faults };
}

/** Faults between taxa: one name twice, a synonym that is another's accepted name, an unknown source. */
export function datasetFaults(taxa: readonly { file: string; taxon: Taxon }[], sources: Sources): Fault[] {
  const faults: Fault[] = [];
  const accepted = new Map<string, string>();
  const trades = new Map<string, string>();
  for (const { file, taxon } of taxa) {
    const fault = (field: string, message: string) => faults.push({ file, taxon: taxon.name, field, message });
    const twin = accepted.get(taxon.id);
    if (twin) fault("name", `stands already in ${twin}`);
    accepted.set(taxon.id, file);
    if (taxon.tradeDesignation) {
      const key = taxonId(`${taxon.botanical} ${taxon.tradeDesignation}`);
      const other = trades.get(key);
      if (other) fault("trade", `${taxon.tradeDesignation} is the trade designation of ${other} too`);
      trades.set(key, taxon.name);
    }
    for (const [field, source] of Object.entries(taxon.sources)) if (!(source in sources)) fault(`src ${field}`, `"${source}" is not a key of sources.yaml`);
  }
  const claimed = new Map<string, string>();
  for (const { file, taxon } of taxa) {
    for (const synonym of taxon.synonyms) {
      const id = taxonId(synonym);
      const fault = (message: string) => faults.push({ file, taxon: taxon.name, field: "synonyms", message });
      if (accepted.has(id) && id !== taxon.id) fault(`"${synonym}" is itself an accepted name, in ${accepted.get(id)}`);
      const other = claimed.get(id);
      if (other && other !== taxon.name) fault(`"${synonym}" is claimed by ${other} too`);
      claimed.set(id, taxon.name);
    }
  }
  return faults;
}
