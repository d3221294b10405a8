// The whole dataset against all tables and lists.

import { bloomOnsetChecks, fallColorChecks, winterChecks } from "./check-seasons";
import { growthChecks, publishedSizeChecks } from "./check-sizes";
import { streetTreeChecks } from "./check-street-trees";
import { symbolCheck, usdaChecks } from "./check-usda";
import type { UnexplainedValue } from "./checked-value";
import { isCultivar } from "./dataset-counts";
import type { PublishedLists } from "./published-lists";
import type { StreetTrees } from "./street-tree";
import type { Taxon } from "./taxon";
import { taxonFinder } from "./taxon-finder";
import type { UsdaRow } from "./usda-table";

export type CrossCheckTables = { readonly usda: Readonly<Record<string, UsdaRow>>; readonly streetTrees: Readonly<Record<string, readonly StreetTrees[]>> };

/** What a cultivar is chosen for: its size and vigor are its own, not its species'. */
const OF_THE_SPECIES: readonly string[] = ["height", "rate", "usda"];

/**
 * The USDA rows against the species, and against a cultivar where it says something else than its species does.
 * Sizes, growth and names are held to the species alone: a cultivar is sold because it departs there.
 */
function usdaAll(taxa: readonly Taxon[], rows: CrossCheckTables["usda"]): UnexplainedValue[] {
  const seen = new Set<string>();
  return [...taxa]
    .sort((a, b) => Number(isCultivar(a)) - Number(isCultivar(b)))
    .flatMap((taxon) => {
      const row = taxon.usda ? rows[taxon.usda] : undefined;
      if (!row) return [];
      return [symbolCheck(taxon, row), ...usdaChecks(taxon, row)].filter((value) => {
        if (isCultivar(taxon) && OF_THE_SPECIES.includes(value.field)) return false;
        const key = `${taxon.botanical}|${value.field}|${value.ours}|${value.theirs}`;
        if (isCultivar(taxon) && seen.has(key)) return false;
        seen.add(key);
        return true;
      });
    });
}

/** Every comparison of the dataset with the tables and lists; `valuesExplained` then gives the disagreements their reasons. */
export function crossChecks(taxa: readonly Taxon[], tables: CrossCheckTables, lists: PublishedLists): UnexplainedValue[] {
  const find = taxonFinder(taxa);
  const byName = new Map(taxa.map((t) => [t.name, t]));
  const measured = Object.entries(tables.streetTrees).flatMap(([name, groups]) => {
    const taxon = byName.get(name);
    return taxon ? streetTreeChecks(taxon, groups) : [];
  });
  return [
    ...usdaAll(taxa, tables.usda),
    ...measured,
    ...publishedSizeChecks(lists.sizes, find),
    ...growthChecks(lists.growth.source, lists.growth.rows, find),
    ...lists.winter.flatMap(({ source, rows }) => winterChecks(source, rows, find)),
    ...lists.fall.flatMap(({ source, rows }) => fallColorChecks(source, rows, find)),
    ...lists.bloom.flatMap(({ source, rows }) => bloomOnsetChecks(source, rows, find)),
  ];
}
