// Which genera of the USDA list the dataset has, and why the others are left out.
import type { LeftOut } from "./reasons-file";
import type { TaxonFinder } from "./taxon-finder";

export type GenusCoverage =
  | { readonly genus: string; readonly state: "in" }
  /** A species of it is in under its present name. */
  | { readonly genus: string; readonly state: "renamed"; readonly as: string }
  | { readonly genus: string; readonly state: "left out"; readonly reason: string }
  | { readonly genus: string; readonly state: "missing"; readonly species: readonly string[] };

/**
 * Each listed genus, in order: in, in under another name, left out with its reason, or missing.
 * `stale` are genera of the left-out list that the dataset has by now, or that are not on the USDA list.
 */
export function generaCoverage(
  listed: Readonly<Record<string, readonly string[]>>,
  own: ReadonlySet<string>,
  leftOut: LeftOut,
  find: TaxonFinder,
): { genera: GenusCoverage[]; stale: string[] } {
  const reasons = new Map(leftOut.flatMap(({ reason, genera }) => genera.map((genus) => [genus, reason] as const)));
  const genera = Object.keys(listed)
    .sort()
    .map((genus): GenusCoverage => {
      if (own.has(genus)) return { genus, state: "in" };
      const species = listed[genus] ?? [];
      for (const epithet of species) {
        const found = find({ printed: `${genus} ${epithet}` });
        if (found?.kind === "taxon") return { genus, state: "renamed", as: found.taxon.name };
      }
      const reason = reasons.get(genus);
      return reason ? { genus, state: "left out", reason } : { genus, state: "missing", species: species.map((e) => `${genus} ${e}`) };
    });
  const needed = new Set(genera.filter((g) => g.state === "left out").map((g) => g.genus));
  return { genera, stale: [...reasons.keys()].filter((genus) => !needed.has(genus)) };
}
