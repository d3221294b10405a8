// The plants of a job: what is promised to each group, what no longer fits the design, and which lots are proposed for the rest.
import { type Lot, lotFree, lotPriceCents } from "../nursery/lot";
import { sizeSteps } from "../nursery/size-step";
import { lotsAllocated, type Need, type Pick } from "./allocation";
import { shortReason } from "./short-reason";
import { groupKey, type HeldPlants, heldCount, heldJudged, type JobRules, lotMisfit, lotsAfterRelease, type PromisedPlants, type StockGroup } from "./stock-group";

/** Another lot that could serve the rest of a group alone. */
export type OtherLot = { readonly lot: Lot; readonly steps: number; readonly centsEach: number | null; readonly moreCentsEach: number | null };

/** Stands for a lot in a choice: as many of the firm's own plants as there are, the rest from elsewhere. */
export const OWN_FIRST = "own-first";

export type ProposedPlants = { readonly lot: Lot; readonly quantity: number; readonly steps: number };

export type GroupPlan = {
  readonly group: StockGroup;
  readonly held: readonly HeldPlants[];
  /** Plants still to be found for it. */
  readonly remaining: number;
  readonly proposed: readonly ProposedPlants[];
  readonly others: readonly OtherLot[];
  /** More of the firm's own plants could serve it than are proposed, with the rest from elsewhere; null where that is no other way. */
  readonly ownFirst: { readonly own: number; readonly rest: number } | null;
  /** The lot that was chosen for it by hand, or OWN_FIRST, where it can still serve it. */
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

type Choices = {
  /** By group key, the one lot that serves it. */
  readonly lotIds: ReadonlyMap<string, string>;
  /** By group key, the own plants that are taken before anything else is looked at. */
  readonly own: ReadonlyMap<string, readonly Pick[]>;
};

/** Own plants for a group out of what is `left` of each lot: the right size first, then from as few lots as can be. */
function ownPicks(group: StockGroup, quantity: number, lots: readonly Lot[], rules: JobRules, left: ReadonlyMap<string, number>): readonly Pick[] {
  const fitting = lots
    .filter((lot) => lot.owner.kind === "own" && (left.get(lot.id) ?? 0) > 0 && lotMisfit(group, lot, rules) === null)
    .map((lot) => ({ lotId: lot.id, free: left.get(lot.id) ?? 0, steps: sizeSteps(group.size, lot.size) ?? 0 }))
    .sort((a, b) => Math.abs(a.steps) - Math.abs(b.steps) || b.free - a.free || a.lotId.localeCompare(b.lotId));
  const picks: Pick[] = [];
  let open = quantity;
  for (const { lotId, free, steps } of fitting) {
    if (open <= 0) break;
    picks.push({ lotId, quantity: Math.min(open, free), steps });
    open -= free;
  }
  return picks;
}

const picked = (picks: readonly { readonly quantity: number }[]): number => picks.reduce((sum, { quantity }) => sum + quantity, 0);

/** What was chosen by hand and can serve all groups it was chosen for; a choice that cannot be kept is let go. */
function choicesKept(needs: readonly Need[], groups: ReadonlyMap<string, StockGroup>, lots: readonly Lot[], rules: JobRules, chosen: ReadonlyMap<string, string>): Choices {
  const left = new Map(lots.map((lot) => [lot.id, lotFree(lot)]));
  const take = (lotId: string, quantity: number) => left.set(lotId, (left.get(lotId) ?? 0) - quantity);
  const lotIds = new Map<string, string>();
  const own = new Map<string, readonly Pick[]>();
  for (const need of needs) {
    const choice = chosen.get(need.key);
    const group = groups.get(need.key);
    if (choice === undefined || choice === OWN_FIRST || !group) continue;
    const lot = lots.find((one) => one.id === choice);
    if (!lot || lotMisfit(group, lot, rules) !== null || (left.get(lot.id) ?? 0) < need.quantity) continue;
    take(lot.id, need.quantity);
    lotIds.set(need.key, lot.id);
  }
  for (const need of needs) {
    const group = groups.get(need.key);
    if (chosen.get(need.key) !== OWN_FIRST || !group) continue;
    const picks = ownPicks(group, need.quantity, lots, rules, left);
    for (const { lotId, quantity } of picks) take(lotId, quantity);
    if (picks.length) own.set(need.key, picks);
  }
  return { lotIds, own };
}

/** The split that uses the firm's own plants first, where that is another way than the proposed one. @param left what the whole answer leaves free of each lot */
function ownFirstOffer(
  group: StockGroup,
  remaining: number,
  proposed: readonly ProposedPlants[],
  lots: readonly Lot[],
  rules: JobRules,
  left: ReadonlyMap<string, number>,
): GroupPlan["ownFirst"] {
  const back = new Map(left);
  for (const { lot, quantity } of proposed) back.set(lot.id, (back.get(lot.id) ?? 0) + quantity);
  const own = picked(ownPicks(group, remaining, lots, rules, back));
  return own > picked(proposed.filter(({ lot }) => lot.owner.kind === "own")) && own < remaining ? { own, rest: remaining - own } : null;
}

function takenByLot(picks: readonly Pick[]): ReadonlyMap<string, number> {
  const taken = new Map<string, number>();
  for (const { lotId, quantity } of picks) taken.set(lotId, (taken.get(lotId) ?? 0) + quantity);
  return taken;
}

/**
 * The plan for a job. Proposals count on what no longer fits being given back first.
 * @param promised all that is promised to the job @param lots lots of the groups' taxa, with all promises counted in `reserved`
 * @param chosen by group key the lot that somebody chose instead of the proposed one, or OWN_FIRST
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
  const ownTaken = takenByLot([...kept.own.values()].flat());
  const answer = lotsAllocated(
    open.map((need) => ({ ...need, quantity: need.quantity - picked(kept.own.get(need.key) ?? []), onlyLotId: kept.lotIds.get(need.key) ?? null })),
    stock.map((lot) => ({ ...lot, reserved: lot.reserved + (ownTaken.get(lot.id) ?? 0) })),
  );
  const taken = takenByLot([...[...kept.own.values()].flat(), ...answer.served.flatMap(({ picks }) => picks)]);
  const left = new Map(stock.map((lot) => [lot.id, lotFree(lot) - (taken.get(lot.id) ?? 0)]));
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
      const picks = [...(kept.own.get(group.key) ?? []), ...(own?.picks ?? [])];
      const proposed = picks.flatMap(withLot).map(({ lot, quantity, steps }) => ({ lot, quantity, steps }));
      return {
        group,
        held: heldOf.get(group.key) ?? [],
        remaining,
        proposed,
        others: (own?.alternatives ?? [])
          .flatMap(withLot)
          .map(({ lot, steps, moreCentsEach }) => ({ lot, steps, moreCentsEach, centsEach: lotPriceCents(lot, remaining) }))
          .sort((a, b) => Number(a.lot.owner.kind === "supplier") - Number(b.lot.owner.kind === "supplier") || (a.centsEach ?? Infinity) - (b.centsEach ?? Infinity)),
        ownFirst: remaining ? ownFirstOffer(group, remaining, proposed, stock, rules, left) : null,
        chosenLotId: kept.lotIds.get(group.key) ?? (kept.own.has(group.key) ? OWN_FIRST : null),
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
