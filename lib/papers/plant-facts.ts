// What a taxon's page says: every value with its source, and where it was corrected, what the dataset says.
import { CORRECTABLE, type CorrectableField, TAXON_FIELDS } from "../plants/correction";
import { OWN_SOURCE } from "../plants/own-taxon";
import type { Taxon } from "../plants/taxon";
import type { Sources } from "../plants/taxon-file";
import type { AppliedCorrection } from "../season/corrected";
import { FACT_LABELS, FACT_WORDS, type FactField, FILE_FIELDS } from "./plant-words";

/** A correction as shown beside its value. */
export type CorrectionNote = { readonly id: string; readonly original: string; readonly note: string };

export type PlantFact = {
  readonly field: string;
  readonly label: string;
  readonly words: string;
  readonly source: string;
  /** Why it departs from a public table; "" where it does not. */
  readonly why: string;
  readonly correctable: CorrectableField | null;
  readonly correction: CorrectionNote | null;
};

export type FactGroup = { readonly title: string; readonly facts: readonly PlantFact[] };

const GROUPS: readonly (readonly [title: string, fields: readonly FactField[]])[] = [
  ["Size and growth", ["heightFt", "spreadFt", "matureYears", "growthRate", "habit", "kind"]],
  ["Where it grows", ["zoneLow", "light", "moisture", "ph", "drought", "wetFeet", "salt", "deer", "juglone"]],
  ["Leaves, roots, flowers", ["foliage", "roots", "wood", "sex", "partner", "wildlife", "flags"]],
  ["Care", ["pruning", "maintenance"]],
];

/** The words of a source key, for a reader who wants to know how far to trust a value. */
export function sourceWords(key: string, sources: Sources): string {
  if (key === OWN_SOURCE) return "Your own entry.";
  if (key === "practice") return "Common practice, from memory, no source.";
  const source = sources[key];
  if (!source) return `Source "${key}".`;
  return `${source.title}${source.year ? `, ${source.year}` : ""}. ${source.by}.`;
}

/** What a field's values would say when nothing is the plain thing to say: left out. */
function isPlain(field: FactField, taxon: Taxon, words: string): boolean {
  return words === "" || (field === "sex" && taxon.sex === "both") || (field === "wildlife" && taxon.wildlife.length === 0);
}

const correctableOf = (field: FactField): CorrectableField | null => CORRECTABLE.find((name) => TAXON_FIELDS[name] === field) ?? null;

/** All facts of a taxon in groups. @param corrections those that lie on it */
export function plantFacts(taxon: Taxon, corrections: readonly AppliedCorrection[], isOwn: boolean): FactGroup[] {
  return GROUPS.map(([title, fields]) => ({
    title,
    facts: fields.flatMap((field): PlantFact[] => {
      const words = FACT_WORDS[field](taxon);
      if (isPlain(field, taxon, words)) return [];
      const applied = corrections.find((c) => c.fact === field);
      return [
        {
          field,
          label: FACT_LABELS[field],
          words,
          source: taxon.sources[field] ?? "practice",
          why: taxon.why[FILE_FIELDS[field] ?? field] ?? "",
          correctable: isOwn ? null : correctableOf(field),
          correction: applied ? { id: applied.id, original: FACT_WORDS[field](applied.original), note: applied.note } : null,
        },
      ];
    }),
  }));
}
