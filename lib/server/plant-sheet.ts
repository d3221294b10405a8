// Everything a taxon's page shows, worked out for one place.

import type { CorrectionAsk } from "../papers/correction-form";
import { correctionAsk } from "../papers/correction-form";
import { type Caution, plantCautions } from "../papers/plant-cautions";
import { type FactGroup, plantFacts, sourceWords } from "../papers/plant-facts";
import { plantWindows, type WindowLine } from "../papers/plant-windows";
import { type StripMark, yearStrip } from "../papers/year-strip";
import { CORRECTABLE } from "../plants/correction";
import type { Taxon } from "../plants/taxon";
import { dayText, dayThirdText, seasonSentence } from "../season/sentence";
import type { TaxonSeason } from "../season/window";
import { datasetSources } from "./dataset-files";
import { nativeStates, usdaSymbol } from "./native-states";
import { type PlaceChoice, type PlantPlace, plantPlaces } from "./plant-places";
import { type PlantUse, plantUsesOf } from "./plant-use";
import { originOf, seasonOf, taxaHeld } from "./taxa";

export type PlantSheetView = {
  readonly taxon: Taxon;
  readonly origin: ReturnType<typeof originOf>;
  readonly choices: readonly PlaceChoice[];
  readonly place: Pick<PlantPlace, "key" | "label" | "seenAt" | "viewPlace">;
  readonly season: TaxonSeason;
  readonly marks: readonly StripMark[];
  readonly sentence: string;
  readonly leaves: { readonly words: string; readonly dates: string } | null;
  readonly windows: readonly WindowLine[];
  readonly groups: readonly FactGroup[];
  readonly cautions: readonly Caution[];
  readonly native: { readonly native: readonly string[]; readonly introduced: readonly string[] } | null;
  readonly uses: readonly PlantUse[];
  /** Words of every source key on the page. */
  readonly sources: Readonly<Record<string, string>>;
  /** How each correctable field is asked for. */
  readonly asks: Readonly<Record<string, CorrectionAsk>>;
};

const NATIVITY_SOURCE = "usda-nativity";

/** The page of a taxon; null when there is none by that id. @param placeKey a job's id or "reference"; null for the default */
export async function plantSheet(id: string, placeKey: string | null): Promise<PlantSheetView | null> {
  const [held, { choices, chosen }, uses] = await Promise.all([taxaHeld(), plantPlaces(placeKey), plantUsesOf(id)]);
  const taxon = held.byId.get(id);
  if (!taxon) return null;
  const corrections = held.corrections.get(id) ?? [];
  const isOwn = held.own.has(id);
  const season = seasonOf(held, taxon, chosen.year);
  const groups = plantFacts(taxon, corrections, isOwn);
  const windows = plantWindows(taxon, season, corrections, isOwn);
  const cautions = plantCautions(taxon, chosen.viewPlace.state);
  const files = datasetSources();
  const keys = new Set([
    ...groups.flatMap((g) => g.facts.map((f) => f.source)),
    ...windows.map((w) => w.source),
    ...cautions.map((c) => c.source),
    NATIVITY_SOURCE,
    taxon.sources.leaves ?? "practice",
  ]);
  const asks = Object.fromEntries(CORRECTABLE.map((field) => [field, correctionAsk(taxon, field)]));
  const { leaves } = season;
  return {
    taxon,
    origin: originOf(held, taxon),
    choices,
    place: { key: chosen.key, label: chosen.label, seenAt: chosen.seenAt, viewPlace: chosen.viewPlace },
    season,
    marks: yearStrip(season, chosen.viewPlace),
    sentence: seasonSentence(season),
    leaves: leaves ? { words: `${dayThirdText(leaves.onDay)} to ${dayThirdText(leaves.offDay)}`, dates: `${dayText(leaves.onDay)} – ${dayText(leaves.offDay)}` } : null,
    windows,
    groups,
    cautions,
    native: nativeStates(usdaSymbol(taxon)),
    uses,
    sources: Object.fromEntries([...keys].map((key) => [key, sourceWords(key, files)])),
    asks: { ...asks, ...Object.fromEntries(windows.flatMap((w) => (w.field ? [[w.field, { type: "window", from: w.fromDay, to: w.toDay } as const]] : []))) },
  };
}
