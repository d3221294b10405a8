// Which lots serve which groups of a job: nothing short that need not be, a group from one lot where it can be, own stock first,
// the size that was asked for, and of what is left the cheapest. Never more than a lot has.
import { type Lot, lotFree, lotPriceCents } from "../nursery/lot";
import type { LineSize } from "../nursery/size-read";
import { sizeSteps } from "../nursery/size-step";
import { costAdd, costOrder, plantsShared, type UnitCost } from "./split-flow";

/** One row of one bed to be served. */
export type Need = {
  readonly key: string;
  readonly taxonId: string;
  readonly size: LineSize;
  readonly quantity: number;
  /** ISO date of planting: lots ready later do not serve; null: any. */
  readonly plantingOn: string | null;
  /** Size steps up or down that the job allows. */
  readonly stepsAllowed: 0 | 1;
  /** The one lot that may serve it, chosen by hand; null or absent: any. */
  readonly onlyLotId?: string | null;
};

export type Pick = { readonly lotId: string; readonly quantity: number; readonly steps: number };
export type Served = {
  readonly key: string;
  readonly picks: readonly Pick[];
  readonly short: number;
  /** Other lots that could serve the whole group from what this answer leaves free, also where one lot was chosen by hand, with the difference in cents a plant (null: no price). */
  readonly alternatives: readonly { readonly lotId: string; readonly steps: number; readonly moreCentsEach: number | null }[];
};
export type Allocation = {
  readonly served: readonly Served[];
  /** Sum at the prices of the quantities taken; lots without a price count nothing. */
  readonly cents: number;
  readonly unpricedPlants: number;
  /** All ways were looked at; false: a good answer, found by exchange. Where groups are split, price breaks are not part of the proof. */
  readonly proven: boolean;
};

/** So many ways a taxon are looked at one by one. */
const WAYS_MAX = 40_000;
/** Where plants fall short every way asks for a flow of its own. */
const SHORT_WAYS_MAX = 2_000;
const EXCHANGE_ROUNDS = 20;
/** A lot without a price is taken after those that have one. */
const UNPRICED_CENTS = 10_000_000;

type Option = { readonly lot: number; readonly cost: UnitCost; readonly steps: number };
type Problem = {
  readonly needs: readonly Need[];
  readonly lots: readonly Lot[];
  readonly free: readonly number[];
  readonly options: readonly (readonly Option[])[];
  readonly enough: boolean;
};
/** By group the lot that serves it alone, or null: it may be split. */
type Choice = readonly (number | null)[];
type Answer = { readonly short: number; readonly split: number; readonly cost: UnitCost; readonly shares: readonly (readonly number[])[] };

function optionOf(need: Need, lot: Lot, index: number, quantity: number): Option | null {
  if (lot.taxonId !== need.taxonId || lotFree(lot) === 0) return null;
  if (lot.readyFrom !== null && need.plantingOn !== null && lot.readyFrom > need.plantingOn) return null;
  const steps = sizeSteps(need.size, lot.size);
  if (steps === null || Math.abs(steps) > need.stepsAllowed) return null;
  return { lot: index, steps, cost: [lot.owner.kind === "own" ? 0 : 1, Math.abs(steps), lotPriceCents(lot, quantity) ?? UNPRICED_CENTS] };
}

/** Plants by group and lot: where `lot` is named the group takes from it alone, else from all that serve it. */
function sharesByFlow({ needs, free, options }: Problem, groups: readonly number[], left: readonly number[], choice: Choice): number[][] {
  const costs = groups.map((g) => free.map((_, l) => (choice[g] === null || choice[g] === l ? (options[g]?.find((option) => option.lot === l)?.cost ?? null) : null)));
  return plantsShared(
    groups.map((g) => needs[g]?.quantity ?? 0),
    left,
    costs,
  );
}

/**
 * What a choice comes to. Where there is enough, a group's one lot must serve it whole (null where it cannot);
 * where plants fall short, it may serve a part.
 */
function answerOf(problem: Problem, choice: Choice): Answer | null {
  const { needs, lots, free, options, enough } = problem;
  const left = [...free];
  const shares = needs.map(() => free.map(() => 0));
  const taken = free.map(() => 0);
  const open: number[] = [];
  const give = (g: number, l: number, quantity: number) => {
    const row = shares[g];
    if (row) row[l] = quantity;
    left[l] = (left[l] ?? 0) - quantity;
    taken[l] = (taken[l] ?? 0) + quantity;
  };
  for (const [g, l] of choice.entries()) {
    const quantity = needs[g]?.quantity ?? 0;
    if (l === null || !enough) open.push(g);
    else if ((left[l] ?? 0) < quantity) return null;
    else give(g, l, quantity);
  }
  if (open.length) {
    const shared = sharesByFlow(problem, open, left, choice);
    for (const [i, g] of open.entries()) for (const [l, quantity] of (shared[i] ?? []).entries()) if (quantity > 0) give(g, l, quantity);
  }
  let cost: UnitCost = [0, 0, 0];
  let got = 0;
  for (const [g, row] of shares.entries())
    for (const [l, quantity] of row.entries()) {
      const lot = lots[l];
      const option = options[g]?.find((one) => one.lot === l);
      if (quantity === 0 || !lot || !option) continue;
      got += quantity;
      cost = costAdd(cost, [option.cost[0], option.cost[1], lotPriceCents(lot, taken[l] ?? 0) ?? UNPRICED_CENTS], quantity);
    }
  const split = shares.filter((row) => row.filter((quantity) => quantity > 0).length > 1).length;
  return { short: needs.reduce((sum, need) => sum + need.quantity, 0) - got, split, cost, shares };
}

const answerOrder = (a: Answer, b: Answer): number => a.short - b.short || a.split - b.split || costOrder(a.cost, b.cost);

/** Every way of giving each group one lot or leaving it to be split. */
function bestOfAll(problem: Problem): Answer | null {
  const { needs, options, free, enough } = problem;
  let best: Answer | null = null;
  const choice: (number | null)[] = needs.map(() => null);
  const left = [...free];
  const walk = (g: number): void => {
    if (g === needs.length) {
      const answer = answerOf(problem, choice);
      if (answer && (!best || answerOrder(answer, best) < 0)) best = answer;
      return;
    }
    const quantity = needs[g]?.quantity ?? 0;
    for (const { lot } of options[g] ?? []) {
      if (enough && (left[lot] ?? 0) < quantity) continue;
      choice[g] = lot;
      left[lot] = (left[lot] ?? 0) - quantity;
      walk(g + 1);
      left[lot] = (left[lot] ?? 0) + quantity;
    }
    choice[g] = null;
    walk(g + 1);
  };
  walk(0);
  return best;
}

/** Large groups first, each to its best lot with room; then single groups are moved while that helps. */
function bestByExchange(problem: Problem): Answer | null {
  const { needs, options, free } = problem;
  const left = [...free];
  const choice: (number | null)[] = needs.map(() => null);
  const order = needs.map((_, g) => g).sort((a, b) => (needs[b]?.quantity ?? 0) - (needs[a]?.quantity ?? 0) || a - b);
  for (const g of order) {
    const quantity = needs[g]?.quantity ?? 0;
    const fitting = (options[g] ?? []).filter(({ lot }) => (left[lot] ?? 0) >= quantity).sort((a, b) => costOrder(a.cost, b.cost) || (left[a.lot] ?? 0) - (left[b.lot] ?? 0));
    const [first] = fitting;
    if (!first) continue;
    choice[g] = first.lot;
    left[first.lot] = (left[first.lot] ?? 0) - quantity;
  }
  let best = answerOf(problem, choice);
  for (let round = 0; round < EXCHANGE_ROUNDS; round++) {
    let better = false;
    for (const g of order) {
      for (const lot of [...(options[g] ?? []).map((option) => option.lot), null]) {
        const before = choice[g] ?? null;
        if (lot === before) continue;
        choice[g] = lot;
        const answer = answerOf(problem, choice);
        if (answer && (!best || answerOrder(answer, best) < 0)) {
          best = answer;
          better = true;
        } else choice[g] = before;
      }
    }
    if (!better) break;
  }
  return best;
}

function taxonAllocated(needs: readonly Need[], lots: readonly Lot[]): { served: Served[]; taken: Map<string, number>; proven: boolean } {
  const total = needs.reduce((sum, need) => sum + need.quantity, 0);
  const free = lots.map(lotFree);
  const serving = needs.map((need) => lots.flatMap((lot, l) => optionOf(need, lot, l, Math.min(total, free[l] ?? 0)) ?? []));
  const options = needs.map((need, g) => (serving[g] ?? []).filter(({ lot: l }) => !need.onlyLotId || lots[l]?.id === need.onlyLotId));
  const any: Choice = needs.map(() => null);
  const all = answerOf({ needs, lots, free, options, enough: true }, any);
  const problem: Problem = { needs, lots, free, options, enough: all?.short === 0 };
  const ways = options.reduce((product, own) => product * (own.length + 1), 1);
  const proven = ways <= (problem.enough ? WAYS_MAX : SHORT_WAYS_MAX);
  const answer = proven ? bestOfAll(problem) : bestByExchange(problem);
  const shares = answer?.shares ?? needs.map(() => free.map(() => 0));
  const taken = new Map<string, number>();
  lots.forEach((lot, l) => {
    taken.set(
      lot.id,
      shares.reduce((sum, row) => sum + (row[l] ?? 0), 0),
    );
  });
  const served = needs.map((need, g): Served => {
    const row = shares[g] ?? [];
    const picks = row.flatMap((quantity, l): Pick[] => {
      const lot = lots[l];
      return quantity > 0 && lot ? [{ lotId: lot.id, quantity, steps: options[g]?.find((option) => option.lot === l)?.steps ?? 0 }] : [];
    });
    const own = row.findIndex((quantity) => quantity > 0);
    const ownCents = own < 0 ? null : (options[g]?.find((option) => option.lot === own)?.cost[2] ?? null);
    const alternatives = (serving[g] ?? []).flatMap(({ lot: l, steps, cost }) => {
      const lot = lots[l];
      const room = (free[l] ?? 0) - (taken.get(lot?.id ?? "") ?? 0) + (row[l] ?? 0);
      if (!lot || (picks.length === 1 && l === own) || room < need.quantity) return [];
      return [{ lotId: lot.id, steps, moreCentsEach: cost[2] === UNPRICED_CENTS || ownCents === null || ownCents === UNPRICED_CENTS ? null : cost[2] - ownCents }];
    });
    return { key: need.key, picks, short: need.quantity - picks.reduce((sum, pick) => sum + pick.quantity, 0), alternatives };
  });
  return { served, taken, proven };
}

/**
 * Lots for the groups of a job. In this order of weight: fewest plants short; fewest groups from more than one lot; most plants from own stock;
 * fewest plants a size step off; least cost. Answers come in the order of the needs; quantities that are not above zero need nothing.
 */
export function lotsAllocated(needs: readonly Need[], lots: readonly Lot[]): Allocation {
  const wanted = needs.filter((need) => need.quantity > 0);
  const byKey = new Map<string, Served>();
  let cents = 0;
  let unpricedPlants = 0;
  let proven = true;
  for (const taxonId of new Set(wanted.map((need) => need.taxonId))) {
    const own = lots.filter((lot) => lot.taxonId === taxonId);
    const result = taxonAllocated(
      wanted.filter((need) => need.taxonId === taxonId),
      own,
    );
    proven &&= result.proven;
    for (const served of result.served) byKey.set(served.key, served);
    for (const lot of own) {
      const quantity = result.taken.get(lot.id) ?? 0;
      const each = lotPriceCents(lot, quantity);
      if (each === null) unpricedPlants += quantity;
      else cents += each * quantity;
    }
  }
  return { served: needs.map((need) => byKey.get(need.key) ?? { key: need.key, picks: [], short: 0, alternatives: [] }), cents, unpricedPlants, proven };
}
