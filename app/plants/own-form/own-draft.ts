// The own plant's form as typed, and the input it stands for.
import { lengthFromText, lengthText } from "@/lib/ground/length";
import { COLORS } from "@/lib/plants/colors";
import type { FieldFault, OwnFeature, OwnTaxonInput } from "@/lib/plants/own-taxon";
import type { Feature } from "@/lib/plants/taxon";
import { thirdOfDay } from "@/lib/plants/thirds";
import type { TaxonSeason } from "@/lib/season/window";

type Pair = readonly [low: string, high: string];
type AsText = "height" | "spread" | "zones" | "ph" | "common" | "synonyms" | "cultivar" | "trade" | "group" | "note" | "partner" | "features";

/** A feature with a key that stays with its row. */
export type DraftFeature = OwnFeature & { readonly key: string };

export type OwnDraft = Omit<OwnTaxonInput, AsText> & {
  readonly height: Pair;
  readonly spread: Pair;
  readonly zones: Pair;
  readonly ph: Pair;
  /** Names parted by commas. */
  readonly common: string;
  readonly synonyms: string;
  readonly cultivar: string;
  readonly trade: string;
  readonly group: string;
  readonly note: string;
  readonly partner: string;
  readonly features: readonly DraftFeature[];
};

/** The form filled in with an input. */
export function draftOf(input: OwnTaxonInput): OwnDraft {
  const numbers = ([low, high]: readonly [number, number]): Pair => [String(low), String(high)];
  const lengths = ([low, high]: readonly [number, number]): Pair => [lengthText(low), lengthText(high)];
  return {
    ...input,
    height: lengths(input.height),
    spread: lengths(input.spread),
    zones: numbers(input.zones),
    ph: numbers(input.ph),
    common: input.common.join(", "),
    synonyms: input.synonyms.join(", "),
    cultivar: input.cultivar ?? "",
    trade: input.trade ?? "",
    group: input.group ?? "",
    note: input.note ?? "",
    partner: input.partner ?? "",
    features: input.features.map((f, i) => ({ ...f, key: `f${i}` })),
  };
}

const namesOf = (text: string): string[] =>
  text
    .split(",")
    .map((name) => name.trim())
    .filter(Boolean);
const numberOf = (text: string): number => (text.trim() === "" ? Number.NaN : Number(text));

/** The epithet without the quotes that people write around it. */
const epithet = (text: string): string => text.trim().replace(/^['‘’"]|['‘’"]$/g, "");

/** What the form stands for, still to be checked by the server; lengths that cannot be read are faults already. */
export function draftInput(draft: OwnDraft): { readonly input: unknown; readonly faults: readonly FieldFault[] } {
  const faults: FieldFault[] = [];
  const lengths = (field: "height" | "spread"): number[] =>
    draft[field].map((typed) => {
      const read = lengthFromText(typed, "ft");
      if (read.ok) return Math.round(read.feet * 1000) / 1000;
      if (!faults.some((f) => f.field === field)) faults.push({ field, message: read.fault });
      return Number.NaN;
    });
  const leaves = draft.foliage === "evergreen" ? null : draft.leaves;
  const input = {
    ...draft,
    leaves,
    height: lengths("height"),
    spread: lengths("spread"),
    zones: draft.zones.map(numberOf),
    ph: draft.ph.map(numberOf),
    common: namesOf(draft.common),
    synonyms: namesOf(draft.synonyms),
    cultivar: epithet(draft.cultivar),
    features: draft.features.map(({ key: _key, ...feature }) => feature),
  };
  return { input, faults };
}

/** Kinds of feature that go with the leaves when they are given no window. */
const windowShown = (feature: OwnFeature, leaves: OwnDraft["leaves"]): { from: number; to: number } => {
  if (feature.window) return feature.window;
  if (leaves && feature.kind === "summer foliage") return { from: leaves.onDay, to: leaves.offDay };
  if (leaves && (feature.kind === "bark" || feature.kind === "structure")) return { from: leaves.offDay, to: leaves.onDay };
  return { from: 1, to: 365 };
};

/** The year as typed, at the place it was seen at: for the drawing beside the form. */
export function draftSeason(draft: OwnDraft): TaxonSeason {
  const leaves = draft.foliage === "evergreen" ? null : draft.leaves;
  return {
    leaves,
    basis: "computed",
    basisNote: null,
    windows: draft.features.map((own) => {
      const { from, to } = windowShown(own, leaves);
      const feature: Feature = {
        kind: own.kind,
        color: own.color,
        hex: COLORS[own.color],
        fade: own.fade,
        winter: own.winter,
        from: thirdOfDay(from),
        to: thirdOfDay(to),
        startDay: from,
        endDay: to,
        show: own.show,
        drive: own.drive ?? "always",
        degreeDays: null,
        note: null,
        source: "own",
      };
      return {
        kind: own.kind,
        feature,
        drive: feature.drive,
        startDay: from,
        endDay: to,
        peakDay: ((from + Math.floor(((to - from + 365) % 365) / 2) - 1) % 365) + 1,
        spreadDays: 0,
        degreeDays: null,
        sources: [],
      };
    }),
  };
}

/** Height and spread to draw, ft; null where they cannot be read. */
export function draftSize(draft: OwnDraft): { readonly heightFt: number; readonly spreadFt: number } | null {
  const middle = (pair: Pair): number => {
    const [low, high] = pair.map((typed) => lengthFromText(typed, "ft"));
    return low?.ok && high?.ok ? (low.feet + high.feet) / 2 : Number.NaN;
  };
  const [heightFt, spreadFt] = [middle(draft.height), middle(draft.spread)];
  return heightFt > 0 && heightFt < 400 && spreadFt > 0 && spreadFt < 200 ? { heightFt, spreadFt } : null;
}
