// The plants of a job: what is promised to each group, what no longer fits the design, and which lots are proposed for the rest.
import { type Lot, lotFree, lotPriceCents } from "../nursery/lot";
import { lotsAllocated, type Need, type Pick } from "./allocation";
import { shortReason } from "./short-reason";
import { groupKey, type HeldPlants, heldCount, heldJudged, type JobRules, lotMisfit, lotsAfterRelease, type PromisedPlants, type StockGroup } from "./stock-group";

/** Another lot that could serve the rest of a group alone. */
export type OtherLot = { readonly lot: Lot; readonly steps: number; readonly centsEach: number | null; readonly moreCentsEach: number | null };

export type ProposedPlants = { readonly lot: Lot; readonly quantity: number; readonly steps: number };

export type GroupPlan = {
  readonly group: StockGroup;
  readonly held: readonly HeldPlants[];
  /** Plants still to be found for it. */
  readonly remaining: number;
  readonly proposed: readonly ProposedPlants[];
  readonly others: readonly OtherLot[];
  /** The lot that was chosen for it by hand, where it can still serve it. */
  readonly chosenLotId: string | null;
  readonly short: number;
  /** Why it falls short; "" where it does not. */
  readonly why: string;
};

export type StockPlan = {
  readonly groups: readonly GroupPlan[];
  /** Promised to rows that are on no plant list any more. */
  readonly astray: readonly HeldPlants[];
  readonly proven: boolean;
};

const ASTRAY = "this row is no longer on a plant list of the job";

/** Lots chosen by hand that can serve all groups they were chosen for; a choice that cannot be kept is let go. */
function choicesKept(
  needs: readonly Need[],
  groups: ReadonlyMap<string, StockGroup>,
  lots: readonly Lot[],
  rules: JobRules,
  chosen: ReadonlyMap<string, string>,
): Map<string, string> {
  const left = new Map(lots.map((lot) => [lot.id, lotFree(lot)]));
  const kept = new Map<string, string>();
  for (const need of needs) {
    const lot = lots.find((one) => one.id === chosen.get(need.key));
    const group = groups.get(need.key);
    if (!lot || !group || lotMisfit(group, lot, rules) !== null || (left.get(lot.id) ?? 0) < need.quantity) continue;
    left.set(lot.id, (left.get(lot.id) ?? 0) - need.quantity);
    kept.set(need.key, lot.id);
  }
  return kept;
}

/**
 * The plan for a job. Proposals count on what no longer fits being given back first.
 * @param promised all that is promised to the job @param lots lots of the groups' taxa, with all promises counted in `reserved`
 * @param chosen by group key the lot that somebody chose instead of the proposed one
 */
export function stockPlan(
  groups: readonly StockGroup[],
  promised: readonly PromisedPlants[],
  lots: readonly Lot[],
  rules: JobRules,
  chosen: ReadonlyMap<string, string>,
): StockPlan {
  const byKey = new Map(groups.map((group) => [group.key, group]));
  const heldOf = new Map(
    groups.map((group) => [
      group.key,
      heldJudged(
        group,
        promised.filter((one) => groupKey(one.bedId, one.rowId) === group.key),
        rules,
      ),
    ]),
  );
  const astray = promised
    .filter((one) => one.open > 0 && !byKey.has(groupKey(one.bedId, one.rowId)))
    .map((one): HeldPlants => ({ promised: one, steps: 0, serves: 0, release: one.open, why: ASTRAY }));
  const stock = lotsAfterRelease(lots, [...[...heldOf.values()].flat(), ...astray]);
  const needs = groups.map((group): Need => {
    const quantity = Math.max(0, group.wanted - group.received - heldCount(heldOf.get(group.key) ?? []));
    return { key: group.key, taxonId: group.taxonId, size: group.size, quantity, plantingOn: rules.plantingOn, stepsAllowed: rules.stepsAllowed };
  });
  const open = needs.filter((need) => need.quantity > 0);
  const kept = choicesKept(open, byKey, stock, rules, chosen);
  const answer = lotsAllocated(
    open.map((need) => ({ ...need, onlyLotId: kept.get(need.key) ?? null })),
    stock,
  );
  const served = new Map(answer.served.map((one) => [one.key, one]));
  const lotById = new Map(stock.map((lot) => [lot.id, lot]));
  const withLot = <T extends { readonly lotId: string }>(one: T) => {
    const lot = lotById.get(one.lotId);
    return lot ? [{ ...one, lot }] : [];
  };
  return {
    groups: groups.map((group): GroupPlan => {
      const own = served.get(group.key);
      const remaining = open.find((need) => need.key === group.key)?.quantity ?? 0;
      const short = own?.short ?? 0;
      return {
        group,
        held: heldOf.get(group.key) ?? [],
        remaining,
        proposed: (own?.picks ?? []).flatMap(withLot).map(({ lot, quantity, steps }) => ({ lot, quantity, steps })),
        others: (own?.alternatives ?? [])
          .flatMap(withLot)
          .map(({ lot, steps, moreCentsEach }) => ({ lot, steps, moreCentsEach, centsEach: lotPriceCents(lot, remaining) }))
          .sort((a, b) => Number(a.lot.owner.kind === "supplier") - Number(b.lot.owner.kind === "supplier") || (a.centsEach ?? Infinity) - (b.centsEach ?? Infinity)),
        chosenLotId: kept.get(group.key) ?? null,
        short,
        why: short > 0 ? shortReason(group, stock, rules) : "",
      };
    }),
    astray,
    proven: answer.proven,
  };
}

/** All that is to be given back because it no longer fits: of these groups, or of the whole job where `keys` is null. */
export function planReleases(plan: StockPlan, keys: readonly string[] | null): readonly HeldPlants[] {
  const held = plan.groups.filter(({ group }) => keys === null || keys.includes(group.key)).flatMap((one) => one.held);
  return [...held, ...(keys === null ? plan.astray : [])].filter(({ release }) => release > 0);
}

export type PlanPick = Pick & { readonly bedId: string; readonly rowId: string };

/** What is proposed, as it would be reserved: for these groups, or all where `keys` is null. */
export function planPicks(plan: StockPlan, keys: readonly string[] | null): readonly PlanPick[] {
  return plan.groups
    .filter(({ group }) => keys === null || keys.includes(group.key))
    .flatMap(({ group, proposed }) => proposed.map(({ lot, quantity, steps }) => ({ lotId: lot.id, bedId: group.bedId, rowId: group.rowId, quantity, steps })));
}
