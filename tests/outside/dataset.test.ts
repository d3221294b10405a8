import { describe, expect, it } from "vitest";
import { publishedSizeChecks } from "../../lib/plants/check-sizes";
import { rangesAgree } from "../../lib/plants/checked-value";
import { type Agreement, datasetReport } from "../../lib/plants/dataset-report";
import type { Range } from "../../lib/plants/taxon";
import { taxonFinder } from "../../lib/plants/taxon-finder";
import { statesOf } from "../../lib/plants/usda-table";
import { datasetRead } from "../../lib/server/dataset-files";
import { crossCheckTables, leftOutRead, nativeTable, reasonsRead, usdaGenera } from "../../lib/server/dataset-tables";
import { PUBLISHED_LISTS } from "./published-lists";

const { taxa: filed, faults } = datasetRead();
const taxa = filed.map((t) => t.taxon);
const tables = crossCheckTables();
const native = nativeTable();
const report = datasetReport({ taxa, tables, native, listedGenera: usdaGenera(), leftOut: leftOutRead(), reasons: reasonsRead(), lists: PUBLISHED_LISTS });
const find = taxonFinder(taxa);

const taxonNamed = (name: string) => {
  const found = find({ printed: name });
  if (found?.kind !== "taxon") throw new Error(`${name} is not in the dataset`);
  return found.taxon;
};
const agreement = (source: string, field: string): Agreement => {
  const row = report.agreements.find((a) => a.source === source && a.field === field);
  if (!row) throw new Error(`nothing compared with ${source} on ${field}`);
  return row;
};
const share = ({ compared, disagree }: Agreement): number => (compared - disagree) / compared;

describe("the open dataset", () => {
  it("has 1,500 taxa and more, 900 of them cultivars, in 280 genera and more, and no faults", () => {
    expect(faults).toEqual([]);
    expect(report.all.taxa).toBeGreaterThanOrEqual(1500);
    expect(report.all.cultivars).toBeGreaterThanOrEqual(900);
    expect(report.all.genera).toBeGreaterThanOrEqual(280);
  });

  it("holds what a full-line nursery and its perennial supplier sell, kind by kind", () => {
    const atLeast = { tree: 280, conifer: 150, shrub: 420, perennial: 450, grass: 70, fern: 30, bulb: 60 };
    const few = Object.entries(atLeast).filter(([kind, least]) => (report.kinds.find((k) => k.kind === kind)?.taxa ?? 0) < least);
    expect(few).toEqual([]);
    const low = report.kinds.filter((k) => k.kind === "vine" || k.kind === "groundcover").reduce((sum, k) => sum + k.taxa, 0);
    expect(low).toBeGreaterThanOrEqual(40);
  });

  it("has every value that a taxon of its kind can have, and says unknown only of poisons and juglone", () => {
    const mayBeUnknown = ["toxic to people", "toxic to dogs and cats", "toxic to horses", "juglone", "native states (in the nativity table)"];
    expect(report.fields.filter((f) => f.known < f.of && !mayBeUnknown.includes(f.field))).toEqual([]);
  });

  it("has every genus of the USDA list, or the reason why not", () => {
    expect(report.coverage.length).toBeGreaterThan(350);
    expect(report.coverage.filter((c) => c.state === "missing")).toEqual([]);
  });

  it("has no unexplained departure from a table or list, and no reason that answers nothing", () => {
    expect(report.disagreements.filter((d) => d.explained === null)).toEqual([]);
    expect(report.stale).toEqual([]);
  });

  it("has tables that are up to date: every symbol has its row", () => {
    const symbols = new Set(taxa.flatMap((t) => t.usda ?? []));
    expect([...symbols].filter((s) => !(s in tables.usda) && !(s in native.rows))).toEqual([]);
  });

  it("takes the values it credits to the USDA table from the row of the taxon's own symbol", () => {
    const SALT = { None: "low", Low: "low", Medium: "medium", High: "high" } as const;
    const RATE = { Slow: "slow", Moderate: "medium", Rapid: "fast" } as const;
    const wrong = taxa.flatMap((t) => {
      const credited = (field: string) => t.sources[field] === "usda";
      const row = t.usda ? tables.usda[t.usda] : undefined;
      if (!row) return Object.values(t.sources).includes("usda") ? [`${t.name}: no row`] : [];
      return [
        ...(credited("ph") && (t.ph[0] !== row.phLow || t.ph[1] !== row.phHigh) ? [`${t.name}: pH`] : []),
        ...(credited("salt") && row.salt && t.salt !== SALT[row.salt] ? [`${t.name}: salt`] : []),
        ...(credited("growthRate") && row.growth && t.growthRate !== RATE[row.growth] ? [`${t.name}: growth`] : []),
      ];
    });
    expect(wrong).toEqual([]);
  });

  it("knows the native states of natives", () => {
    expect(statesOf(taxonNamed("Cercis canadensis"), native)?.native).toContain("OH");
    expect(statesOf(taxonNamed("Hydrangea quercifolia 'Alice'"), native)?.native).not.toContain("OH");
    expect(statesOf(taxonNamed("Hosta plantaginea"), native)?.native ?? []).toEqual([]);
  });
});

describe("published lists", () => {
  it.each([
    ["height", 140],
    ["spread", 50],
    ["zones", 55],
  ] as const)("agree with the dataset on %s in nine of ten rows and more, reasons not counted", (field, atLeast) => {
    const row = agreement("published", field);
    expect(row.compared).toBeGreaterThanOrEqual(atLeast);
    expect(share(row)).toBeGreaterThanOrEqual(0.9);
  });

  it("would not agree with other plants: each row set beside the plant of another row is off in half of the heights and more", () => {
    const rows = PUBLISHED_LISTS.sizes.filter((row) => row.heightFt && find(row));
    const shifted = rows.map((row, i) => ({ ...row, ...rows[(i + 97) % rows.length], heightFt: row.heightFt }));
    const values = publishedSizeChecks(shifted, find).filter((v) => v.field === "height");
    expect(values.length).toBeGreaterThan(100);
    expect(values.filter((v) => v.agrees).length / values.length).toBeLessThan(0.5);
  });

  it.each([
    ["usfs", "height", 50, 0.95],
    ["usfs", "spread", 50, 0.95],
    ["usda", "height", 400, 0.75],
    ["usda", "zones", 500, 0.9],
    ["usda", "moisture", 400, 0.95],
    ["usda", "light", 400, 0.95],
    ["usda", "foliage", 400, 0.95],
    ["usda", "features.bloom", 350, 0.9],
    ["mdc", "height", 35, 0.95],
    ["mdc", "rate", 35, 0.75],
    ["taylor-1921", "features.fruit", 15, 0.95],
    ["taylor-1921", "features.fall color", 38, 0.8],
    ["taylor-1921", "features.fall color time", 30, 0.95],
    ["bailey-1910", "features.bloom", 50, 0.95],
    ["webster-1897", "features.bloom", 110, 0.85],
  ] as const)("%s on %s: %d rows and more, a share of %f and more agreeing", (source, field, atLeast, leastShare) => {
    const row = agreement(source, field);
    expect(row.compared).toBeGreaterThanOrEqual(atLeast);
    expect(share(row)).toBeGreaterThanOrEqual(leastShare);
  });
});

type Sample = { readonly name: string; readonly heightFt?: Range; readonly spreadFt?: Range; readonly zoneLow?: number; readonly source: string };
const SAMPLES: readonly Sample[] = [
  { name: "Acer saccharum", heightFt: [40, 80], spreadFt: [30, 60], zoneLow: 3, source: "University of Massachusetts Extension" },
  { name: "Quercus alba", heightFt: [50, 80], zoneLow: 3, source: "University of Delaware Botanic Gardens" },
  { name: "Cercis canadensis", heightFt: [20, 40], spreadFt: [25, 35], zoneLow: 4, source: "University of Wisconsin Botanical Garden" },
  { name: "Ostrya virginiana", heightFt: [40, 40], spreadFt: [25, 25], zoneLow: 3, source: "Michigan State University Extension" },
  { name: "Picea abies", heightFt: [40, 60], spreadFt: [25, 30], zoneLow: 2, source: "University of Minnesota Urban Forestry" },
  { name: "Tsuga canadensis", heightFt: [30, 80], spreadFt: [15, 30], zoneLow: 3, source: "NC State University" },
  { name: "Hamamelis virginiana", heightFt: [15, 20], spreadFt: [15, 20], zoneLow: 3, source: "Master Gardeners of Northern Virginia" },
  { name: "Callicarpa dichotoma", heightFt: [3, 5], zoneLow: 5, source: "Pennsylvania Horticultural Society" },
  { name: "Ilex verticillata", heightFt: [6, 10], spreadFt: [6, 10], source: "Missouri State University" },
  { name: "Helleborus × hybridus", heightFt: [1.5, 2], spreadFt: [2, 2.5], source: "University of Illinois Extension" },
  { name: "Rudbeckia fulgida var. sullivantii 'Goldsturm'", heightFt: [2.5, 3], spreadFt: [3, 3], source: "University of Washington Botanic Gardens" },
  { name: "Panicum virgatum 'Northwind'", heightFt: [4, 6], zoneLow: 4, source: "Perennial Plant Association" },
  { name: "Dalea purpurea", heightFt: [1, 3], spreadFt: [1, 1.5], zoneLow: 3, source: "University of Wisconsin Extension, Dane County" },
  { name: "Carex platyphylla", heightFt: [0.67, 1], spreadFt: [1, 1.5], zoneLow: 4, source: "University of Wisconsin Extension, Dane County" },
  { name: "Adiantum pedatum", heightFt: [1, 2.5], spreadFt: [1, 1.5], zoneLow: 3, source: "Olbrich Botanical Gardens" },
  { name: "Penstemon digitalis 'Husker Red'", heightFt: [3, 3], spreadFt: [2.5, 2.5], zoneLow: 4, source: "University of Vermont Extension" },
];

describe("samples", () => {
  it.each(SAMPLES)("$name agrees with $source", ({ name, heightFt, spreadFt, zoneLow }) => {
    const taxon = taxonNamed(name);
    if (heightFt) expect(rangesAgree(taxon.heightFt, heightFt), `height ${taxon.heightFt}`).toBe(true);
    if (spreadFt) expect(rangesAgree(taxon.spreadFt, spreadFt), `spread ${taxon.spreadFt}`).toBe(true);
    if (zoneLow) expect(Math.abs(taxon.zoneLow - zoneLow)).toBeLessThanOrEqual(1);
  });

  it("old names of trade lists lead to the present plant", () => {
    expect(taxonNamed("Cornus stolonifera").name).toBe("Cornus sericea");
    expect(taxonNamed("Hosta sieboldiana 'Frances Williams'").name).toContain("'Frances Williams'");
    expect(taxonNamed("Aster novae-angliae 'Purple Dome'").name).toBe("Symphyotrichum novae-angliae 'Purple Dome'");
    expect(taxonNamed("Perovskia atriplicifolia").name).toBe("Salvia yangii");
  });

  it("street trees measured by the US Forest Service stand within the dataset's sizes: pin oak, honeylocust, zelkova, ginkgo", () => {
    for (const name of ["Quercus palustris", "Gleditsia triacanthos f. inermis", "Zelkova serrata", "Ginkgo biloba"]) {
      const groups = tables.streetTrees[name] ?? [];
      expect(groups.length, name).toBeGreaterThan(0);
      for (const { heightFt, crownFt } of groups) {
        expect(rangesAgree(taxonNamed(name).heightFt, [heightFt.median, heightFt.p90]), name).toBe(true);
        expect(rangesAgree(taxonNamed(name).spreadFt, [crownFt.median, crownFt.p90]), name).toBe(true);
      }
    }
  });
});
