// The few constants that carry dates from the reference climate to a place, tried against the observed dates; nothing is
// fitted to a name. Each source is left out in turn: the value the others choose, and what it costs on the one left out.
//   node_modules/.bin/tsx scripts/calibrate-phenology.ts
import { REFERENCE_YEAR } from "../lib/place/reference";
import { CARRY_MODEL, type CarryModel, heatDay } from "../lib/season/carry";
import { datasetTaxa } from "../tests/outside/dataset";
import { HARVARD_FOREST_SPECIES, type Observed } from "../tests/outside/harvard-forest";
import { accuracyRows, harvardForestYear } from "../tests/outside/phenology-accuracy";

const taxa = datasetTaxa();
const forest = harvardForestYear();
/** Sources whose dates are carried to another place; the others are read at the reference climate, where nothing is carried. */
const CARRIED = ["first bloom", "leaf-out", "color onset", "half fall color", "half leaf fall"];
const isCarried = (source: string): boolean => source.startsWith("Harvard Forest") && CARRIED.some((c) => source.includes(c));

type Trial = {
  readonly label: string;
  readonly model: CarryModel;
  readonly errors: ReadonlyMap<string, number>;
  /** Absolute error by source and taxon. */
  readonly byTaxon: ReadonlyMap<string, ReadonlyMap<string, number>>;
};

function trialOf(label: string, change: Partial<CarryModel>): Trial {
  const model = { ...CARRY_MODEL, ...change };
  const rows = accuracyRows(taxa, model, forest).filter((r) => isCarried(r.source));
  return {
    label,
    model,
    errors: new Map(rows.map((r) => [r.source, r.meanAbsoluteError])),
    byTaxon: new Map(rows.map((r) => [r.source, new Map(r.comparisons.map((c) => [c.name, Math.abs(c.computed - c.observed)]))])),
  };
}

const meanError = (trial: Trial, without: string | null): number => {
  const kept = [...trial.errors].filter(([source]) => source !== without).map(([, error]) => error);
  return kept.reduce((sum, e) => sum + e, 0) / kept.length;
};
const bestOf = (trials: readonly Trial[], without: string | null): Trial | undefined => [...trials].sort((a, b) => meanError(a, without) - meanError(b, without))[0];

/** Each taxon left out in turn: the value that the others choose over these sources, and its own error by that value. */
function taxaLeftOut(trials: readonly Trial[], sources: readonly string[]): void {
  const wanted = (source: string) => sources.some((s) => source.endsWith(s));
  const errorsOf = (trial: Trial) =>
    [...trial.byTaxon].filter(([source]) => wanted(source)).flatMap(([source, taxa]) => [...taxa].map(([name, error]) => ({ source, name, error })));
  const mean = (xs: readonly number[]) => xs.reduce((sum, x) => sum + x, 0) / xs.length;
  const names = [...new Set(trials.flatMap((t) => errorsOf(t).map((e) => e.name)))];
  const left = names.flatMap((name) => {
    const cost = (t: Trial) =>
      mean(
        errorsOf(t)
          .filter((e) => e.name !== name)
          .map((e) => e.error),
      );
    const best = [...trials].sort((a, b) => cost(a) - cost(b))[0];
    return best ? errorsOf(best).filter((e) => e.name === name) : [];
  });
  for (const source of sources) {
    const own = left.filter((e) => e.source.endsWith(source));
    console.log(`  taxa left out of the fit in turn, ${source}: mean absolute error ${mean(own.map((e) => e.error)).toFixed(1)} days, n ${own.length}`);
  }
}

function tried(title: string, trials: readonly Trial[]): void {
  console.log(`\n${title}: mean absolute error in days, by source`);
  const sources = [...(trials[0]?.errors.keys() ?? [])];
  for (const t of trials)
    console.log(`  ${t.label.padEnd(26)} ${meanError(t, null).toFixed(2).padStart(6)}  ${sources.map((s) => (t.errors.get(s) ?? 0).toFixed(1).padStart(5)).join(" ")}`);
  console.log(`  (${sources.map((s) => s.replace("Harvard Forest, ", "").replace(/ \(.*/, "")).join("; ")})`);
  console.log(`  all sources choose ${bestOf(trials, null)?.label}`);
  for (const s of sources) {
    const best = bestOf(trials, s);
    console.log(`  without ${s.replace("Harvard Forest, ", "").replace(/ \(.*/, "").padEnd(16)} ${best?.label}; on it ${best?.errors.get(s)?.toFixed(1)}`);
  }
}

console.log(`${taxa.length} taxa; in use: ${JSON.stringify(CARRY_MODEL)}`);
const shares = [0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1].map((coolingShare) => trialOf(`share ${coolingShare}`, { coolingShare }));
tried("Share of the cooling difference", shares);
taxaLeftOut(shares, ["half fall color", "half leaf fall"]);
tried(
  "Cooling threshold",
  [46, 48, 50, 52, 54, 56, 58].map((coolingF) => trialOf(`${coolingF} °F`, { coolingF })),
);
tried("Midsummer blend", [
  trialOf("heat all year", { pureHeatUntilDay: 360, halfHeatDay: 365 }),
  trialOf("half by 15 Sep", { halfHeatDay: 258 }),
  trialOf("15 June, half by 1 Aug", {}),
  trialOf("15 June, half by 1 Jul", { halfHeatDay: 182 }),
  trialOf("1 May, half by 15 June", { pureHeatUntilDay: 121, halfHeatDay: 166 }),
]);

/** Scatter of the years as one sd, from the days a tenth and nine tenths of the plants came by. */
const scatter = (pick: (s: (typeof HARVARD_FOREST_SPECIES)[number]) => Observed | undefined): string => {
  const sds = HARVARD_FOREST_SPECIES.map(pick)
    .flatMap((o) => (o && o[0] >= 20 ? [(o[3] - o[2]) / 2.563] : []))
    .sort((a, b) => a - b);
  return `${(sds[Math.floor(sds.length / 2)] ?? 0).toFixed(1)} (n ${sds.length})`;
};
console.log("\nScatter of years and plants at Harvard Forest, one sd in days, median of species");
console.log(
  `  budbreak ${scatter((s) => s.budbreak)}, first bloom ${scatter((s) => s.firstBloom)}, half color ${scatter((s) => s.halfColor)}, half leaf fall ${scatter((s) => s.halfLeafFall)}`,
);
const half = (day: number): string => ((heatDay(day, forest, "hard") - heatDay(day, forest, "mild")) / 2).toFixed(1);
console.log(
  `  of the model, mild to hard spring: reference 1 Apr ${half(91)}, 15 Apr ${half(105)}, 1 May ${half(121)}, 15 May ${half(135)}; at the reference itself 15 Apr ${((heatDay(105, REFERENCE_YEAR, "hard") - heatDay(105, REFERENCE_YEAR, "mild")) / 2).toFixed(1)}`,
);
