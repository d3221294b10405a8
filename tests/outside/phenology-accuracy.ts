// The engine and the dataset together against each published source of dates.
import { climateAt } from "../../lib/place/climate-at";
import { type PlaceYear, placeYear } from "../../lib/place/place-year";
import { REFERENCE_YEAR } from "../../lib/place/reference";
import type { Feature, Taxon } from "../../lib/plants/taxon";
import { MONTH_STARTS } from "../../lib/plants/thirds";
import { CARRY_MODEL, type CarryModel, referenceDayOfDegreeDays } from "../../lib/season/carry";
import { taxonSeason } from "../../lib/season/taxon-season";
import type { SeasonWindow, TaxonSeason } from "../../lib/season/window";
import { BAILEY_1910 } from "./bailey-1910";
import { stationsRead, taxaByName, taxonOf } from "./dataset";
import { newYorkComparisons, stationMonthComparisons } from "./degree-day-accuracy";
import { HARVARD_FOREST, HARVARD_FOREST_SPECIES, type HarvardForestSpecies } from "./harvard-forest";
import { OHIO_DEGREE_DAYS } from "./ohio-degree-days";
import { type Comparison, rankCorrelation, type Score, scoreOf } from "./score";
import { WEBSTER_1897, WEBSTER_PRESENT_NAMES } from "./webster-1897";

export type AccuracyRow = Score & { readonly source: string; readonly unit: "days" | "months" | "%"; readonly tolerance: number; readonly rank: number | null };

type Seasons = (taxon: Taxon) => TaxonSeason;

const windowOf = (season: TaxonSeason, kind: SeasonWindow["kind"]): SeasonWindow | null => season.windows.find((w) => w.kind === kind) ?? null;
const middle = (start: number, end: number): number => (start + (end < start ? end + 365 : end)) / 2;

function harvardForest(
  taxa: readonly Taxon[],
  seasons: Seasons,
  observed: (s: HarvardForestSpecies) => number | undefined,
  computed: (s: TaxonSeason, t: Taxon) => number | null,
): Comparison[] {
  const byName = taxaByName(taxa);
  return HARVARD_FOREST_SPECIES.flatMap((species) => {
    const taxon = taxonOf(species.names, taxa, byName);
    const day = observed(species);
    const at = taxon && computed(seasons(taxon), taxon);
    return taxon && day !== undefined && at !== null && at !== undefined ? [{ name: `${species.species} (${taxon.name})`, observed: day, computed: at }] : [];
  });
}

/** A feature by the dataset's words alone. */
function withoutFigures(feature: Feature): Feature {
  const { degreeDaysFull: _full, ...words } = feature;
  return { ...words, degreeDays: null };
}

/**
 * Bloom at Wooster against the day on which the published count comes together there; by the dataset's words alone, and by
 * what the product shows, where the dataset has the figure itself.
 */
function ohio(taxa: readonly Taxon[], withFigures: boolean): Comparison[] {
  const byName = taxaByName(taxa);
  return OHIO_DEGREE_DAYS.flatMap((row) => {
    const taxon = taxonOf(row.names, taxa, byName);
    const observed = referenceDayOfDegreeDays(row.degreeDays);
    const words = taxon && { ...taxon, features: taxon.features.map((f) => (withFigures ? f : withoutFigures(f))) };
    const bloom = words && windowOf(taxonSeason(words, REFERENCE_YEAR), "bloom");
    if (!taxon || !bloom || observed === null) return [];
    return [{ name: `${taxon.name} ${row.event}`, observed, computed: row.event === "first bloom" ? bloom.startDay : bloom.peakDay }];
  });
}

const monthOf = (dayOfYear: number): number => MONTH_STARTS.findIndex((_, m) => dayOfYear <= (MONTH_STARTS[m + 1] ?? 365)) + 1;

function bailey(taxa: readonly Taxon[], seasons: Seasons): Comparison[] {
  const byName = taxaByName(taxa);
  return BAILEY_1910.flatMap((row) => {
    const taxon = taxonOf(row.names, taxa, byName);
    const bloom = taxon && windowOf(seasons(taxon), "bloom");
    return taxon && bloom ? [{ name: `${row.printed} (${taxon.name})`, observed: row.startMonth, computed: monthOf(bloom.startDay) }] : [];
  });
}

const sentenceCase = (printed: string): string => {
  const [genus, ...rest] = printed.split(" ");
  return [genus, ...rest.map((w) => w.toLowerCase())].join(" ");
};

/** A plant that the list has in several months counts by its first. */
function webster(taxa: readonly Taxon[], seasons: Seasons): Comparison[] {
  const byName = taxaByName(taxa);
  const seen = new Set<string>();
  const comparisons: Comparison[] = [];
  for (const [month, printed] of Object.entries(WEBSTER_1897))
    for (const name of printed) {
      const taxon = taxonOf(WEBSTER_PRESENT_NAMES[name] ?? [sentenceCase(name)], taxa, byName);
      const bloom = taxon && windowOf(seasons(taxon), "bloom");
      if (!taxon || !bloom || seen.has(taxon.id)) continue;
      seen.add(taxon.id);
      comparisons.push({ name: `${name} (${taxon.name})`, observed: Number(month), computed: bloom.startDay });
    }
  return comparisons;
}

/** The year of Harvard Forest, from the normals around it. */
export function harvardForestYear(): PlaceYear {
  const answer = climateAt(stationsRead(), HARVARD_FOREST);
  if (answer.kind === "fault") throw new Error(answer.message);
  return placeYear(answer.climate);
}

/** Leaves are out, as the trade sees it, between the opening of the buds and three quarters of the leaves' size. */
const leafOut = (s: HarvardForestSpecies): number | undefined => (s.budbreak && s.leaves75 ? (s.budbreak[1] + s.leaves75[1]) / 2 : undefined);

/** One row a source; the calibration tries other models. */
export function accuracyRows(taxa: readonly Taxon[], model: CarryModel = CARRY_MODEL, forest: PlaceYear = harvardForestYear()): readonly AccuracyRow[] {
  const there: Seasons = (t) => taxonSeason(t, forest, model);
  const here: Seasons = (t) => taxonSeason(t, REFERENCE_YEAR, model);
  const days = (source: string, comparisons: Comparison[], tolerance: number): AccuracyRow => ({
    source,
    unit: "days",
    tolerance,
    rank: rankCorrelation(comparisons),
    ...scoreOf(comparisons, tolerance),
  });
  const onset = (s: TaxonSeason) => windowOf(s, "bloom")?.startDay ?? null;
  const color = (s: TaxonSeason) => windowOf(s, "fall color");
  return [
    days(
      "Harvard Forest, first bloom",
      harvardForest(taxa, there, (s) => s.firstBloom?.[1], onset),
      10,
    ),
    days(
      "Harvard Forest, leaf-out (midway from budbreak to 75 % of size)",
      harvardForest(taxa, there, leafOut, (s) => s.leaves?.onDay ?? null),
      10,
    ),
    days(
      "Harvard Forest, budbreak",
      harvardForest(
        taxa,
        there,
        (s) => s.budbreak?.[1],
        (s) => s.leaves?.onDay ?? null,
      ),
      10,
    ),
    days(
      "Harvard Forest, leaves 75 %",
      harvardForest(
        taxa,
        there,
        (s) => s.leaves75?.[1],
        (s) => s.leaves?.onDay ?? null,
      ),
      10,
    ),
    days(
      "Harvard Forest, color onset",
      harvardForest(
        taxa,
        there,
        (s) => s.colorOnset?.[1],
        (s) => color(s)?.startDay ?? null,
      ),
      10,
    ),
    days(
      "Harvard Forest, half fall color",
      harvardForest(
        taxa,
        there,
        (s) => s.halfColor?.[1],
        (s) => {
          const w = color(s);
          return w ? middle(w.startDay, w.endDay) : null;
        },
      ),
      10,
    ),
    days(
      "Harvard Forest, half leaf fall",
      harvardForest(
        taxa,
        there,
        (s) => s.halfLeafFall?.[1],
        (s) => s.leaves?.offDay ?? null,
      ),
      10,
    ),
    days(
      "Harvard Forest, leaf fall 90 %",
      harvardForest(
        taxa,
        there,
        (s) => s.leafFall90?.[1],
        (s) => s.leaves?.offDay ?? null,
      ),
      10,
    ),
    days("Ohio degree days at bloom, dataset's words alone", ohio(taxa, false), 7),
    days("Ohio degree days at bloom, as shown", ohio(taxa, true), 7),
    (() => {
      const comparisons = bailey(taxa, here);
      return { source: "Bailey 1910, onset month", unit: "months", tolerance: 1, rank: rankCorrelation(comparisons), ...scoreOf(comparisons, 1) } as const;
    })(),
    (() => {
      const comparisons = webster(taxa, here);
      return {
        source: "Webster 1897, order of onset",
        unit: "months",
        tolerance: 1,
        rank: rankCorrelation(comparisons),
        ...scoreOf(
          comparisons.map((c) => ({ ...c, computed: monthOf(c.computed) })),
          1,
        ),
      } as const;
    })(),
  ];
}

/** One row a source of degree days: errors are percentages of the published figure. */
export function degreeDayRows(): readonly AccuracyRow[] {
  const percent = (source: string, comparisons: Comparison[], tolerance: number): AccuracyRow => ({ source, unit: "%", tolerance, rank: null, ...scoreOf(comparisons, tolerance) });
  const months = stationMonthComparisons();
  return [
    percent("New York 1991–2020, from the means of the same period", newYorkComparisons("1991–2020"), 5),
    percent("New York 1991–2020, from the 1981–2010 means in use", newYorkComparisons("1981–2010"), 5),
    percent(
      "Twelve stations, months over 50, from the means of the same period",
      months.map((m) => m.byMeans),
      8,
    ),
    percent(
      "Twelve stations, months over 50, brought to their period",
      months.map((m) => m.inPeriod),
      8,
    ),
    percent(
      "Twelve stations, months over 50, 1981–2010 as it is",
      months.map((m) => m.asItIs),
      8,
    ),
  ];
}
