// What the plants of a job cost at list price: by who they come from, and by bed. Plants only: no labor, soil, delivery or tax.
import { type Lot, lotPriceCents } from "../nursery/lot";
import type { StockPlan } from "./stock-plan";

export type PlanMoney = {
  readonly cents: number;
  /** The firm's own stock first, then suppliers by name. */
  readonly sources: readonly { readonly key: string; readonly name: string; readonly plants: number; readonly cents: number; readonly unpriced: number }[];
  readonly beds: readonly {
    readonly bedId: string;
    readonly bedName: string;
    readonly plants: number;
    readonly cents: number;
    readonly unpriced: number;
    readonly short: number;
  }[];
  /** Plants that count nothing because their lot has no price, by plant and size. */
  readonly unpriced: readonly { readonly text: string; readonly plants: number }[];
  readonly short: number;
  readonly shortText: readonly string[];
};

type Taken = { readonly plan: StockPlan["groups"][number]; readonly lot: Lot; readonly quantity: number };

/** Plants of lots that serve the job, promised and proposed. */
function planTaken(plan: StockPlan): readonly Taken[] {
  return plan.groups.flatMap((own) => [
    ...own.held.filter(({ serves }) => serves > 0).map(({ promised, serves }) => ({ plan: own, lot: promised.lot, quantity: serves })),
    ...own.proposed.map(({ lot, quantity }) => ({ plan: own, lot, quantity })),
  ]);
}

/** Cents a plant by lot, at the break that all plants of the lot together reach; null: not priced. */
export function planPrices(plan: StockPlan): ReadonlyMap<string, number | null> {
  const taken = planTaken(plan);
  const byLot = new Map<string, number>();
  for (const { lot, quantity } of taken) byLot.set(lot.id, (byLot.get(lot.id) ?? 0) + quantity);
  return new Map(taken.map(({ lot }) => [lot.id, lotPriceCents(lot, byLot.get(lot.id) ?? 0)]));
}

export function planMoney(plan: StockPlan): PlanMoney {
  const prices = planPrices(plan);
  const taken = planTaken(plan);
  const summed = (own: readonly Taken[]) => {
    const each = ({ lot }: Taken) => prices.get(lot.id) ?? null;
    return {
      plants: own.reduce((sum, { quantity }) => sum + quantity, 0),
      cents: own.reduce((sum, one) => sum + (each(one) ?? 0) * one.quantity, 0),
      unpriced: own.reduce((sum, one) => sum + (each(one) === null ? one.quantity : 0), 0),
    };
  };
  const sourceKey = ({ lot }: Taken) => (lot.owner.kind === "own" ? "" : lot.owner.supplierId);
  const sourceName = ({ lot }: Taken) => (lot.owner.kind === "own" ? "Own nursery" : lot.owner.supplierName);
  const names = new Map(taken.map((one) => [sourceKey(one), sourceName(one)]));
  const sources = [...names]
    .sort(([a, nameA], [b, nameB]) => Number(a !== "") - Number(b !== "") || nameA.localeCompare(nameB))
    .map(([key, name]) => ({ key, name, ...summed(taken.filter((one) => sourceKey(one) === key)) }));
  const bedNames = new Map(plan.groups.map(({ group }) => [group.bedId, group.bedName]));
  const beds = [...bedNames].map(([bedId, bedName]) => ({
    bedId,
    bedName,
    ...summed(taken.filter((one) => one.plan.group.bedId === bedId)),
    short: plan.groups.filter(({ group }) => group.bedId === bedId).reduce((sum, { short }) => sum + short, 0),
  }));
  const unpriced = new Map<string, number>();
  for (const { plan: own, lot, quantity } of taken) {
    if (prices.get(lot.id) !== null) continue;
    const text = [own.group.taxonName, lot.sizeText].filter(Boolean).join(" ");
    unpriced.set(text, (unpriced.get(text) ?? 0) + quantity);
  }
  const shorts = plan.groups.filter(({ short }) => short > 0);
  return {
    cents: summed(taken).cents,
    sources,
    beds,
    unpriced: [...unpriced].map(([text, plants]) => ({ text, plants })),
    short: shorts.reduce((sum, { short }) => sum + short, 0),
    shortText: shorts.map(({ group, short }) => `${short.toLocaleString("en-US")} ${[group.taxonName, group.sizeText].filter(Boolean).join(" ")}`),
  };
}
