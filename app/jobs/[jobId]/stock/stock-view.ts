// The plan of a job's plants as its sheet shows it: words and figures, no lots.
import type { Lot } from "@/lib/nursery/lot";
import { lotFree } from "@/lib/nursery/lot";
import type { PullTaxon } from "@/lib/pulls/pull-list";
import type { HeldPlants } from "@/lib/pulls/stock-group";
import { planPrices } from "@/lib/pulls/stock-money";
import { type GroupPlan, type PlanPick, planPicks, planReleases, type StockPlan } from "@/lib/pulls/stock-plan";
import { placeText } from "@/lib/pulls/walking-order";

export type ViewLine = {
  readonly key: string;
  readonly lotId: string;
  readonly where: string;
  readonly own: boolean;
  readonly sizeText: string;
  readonly steps: number;
  readonly plants: number;
  readonly centsEach: number | null;
  readonly cents: number | null;
  /** Counts in no sum: it no longer fits. */
  readonly off: boolean;
  readonly remarks: string;
};
export type ViewHeld = ViewLine & { readonly reservationId: string; readonly open: number; readonly pulled: number; readonly release: number; readonly why: string | null };
export type ViewOther = ViewLine & { readonly free: number; readonly moreCents: number | null };

export type ViewGroup = {
  readonly key: string;
  readonly letter: string;
  readonly taxon: PullTaxon | null;
  readonly taxonName: string;
  readonly sizeText: string;
  readonly wanted: number;
  readonly received: number;
  readonly held: readonly ViewHeld[];
  readonly proposed: readonly ViewLine[];
  readonly others: readonly ViewOther[];
  readonly ownFirst: GroupPlan["ownFirst"];
  readonly chosenLotId: string | null;
  readonly short: number;
  readonly why: string;
  readonly picks: readonly PlanPick[];
  readonly releases: number;
};
export type ViewBed = { readonly bedId: string; readonly bedName: string; readonly groups: readonly ViewGroup[] };
export type StockView = {
  readonly jobId: string;
  readonly beds: readonly ViewBed[];
  readonly astray: readonly ViewHeld[];
  readonly picks: readonly PlanPick[];
  readonly proposed: number;
  readonly proposedCents: number;
  readonly promisedOpen: number;
  readonly releases: number;
};

function viewLine(lot: Lot, plants: number, steps: number, centsEach: number | null): ViewLine {
  return {
    key: lot.id,
    lotId: lot.id,
    where: placeText(lot),
    own: lot.owner.kind === "own",
    sizeText: lot.sizeText,
    steps,
    plants,
    centsEach,
    cents: centsEach === null ? null : centsEach * plants,
    off: false,
    remarks: lot.remarks,
  };
}

function viewHeld({ promised, steps, release, why }: HeldPlants, centsEach: number | null): ViewHeld {
  const { id, open, pulled, lot } = promised;
  return { ...viewLine(lot, open + pulled, steps, centsEach), key: id, off: why !== null, reservationId: id, open, pulled, release, why };
}

function viewGroup(own: GroupPlan, plan: StockPlan, prices: ReadonlyMap<string, number | null>, taxa: ReadonlyMap<string, PullTaxon>): ViewGroup {
  const { group, held, proposed, others, remaining, ownFirst, chosenLotId, short, why } = own;
  const { key, letter, taxonId, taxonName, sizeText, wanted, received } = group;
  return {
    key,
    letter,
    taxon: taxa.get(taxonId) ?? null,
    taxonName,
    sizeText,
    wanted,
    received,
    held: held.filter(({ promised }) => promised.open + promised.pulled > 0).map((one) => viewHeld(one, prices.get(one.promised.lot.id) ?? null)),
    proposed: proposed.map(({ lot, quantity, steps }) => viewLine(lot, quantity, steps, prices.get(lot.id) ?? null)),
    others: others.map(({ lot, steps, centsEach, moreCentsEach }) => ({
      ...viewLine(lot, remaining, steps, centsEach),
      free: lotFree(lot),
      moreCents: moreCentsEach === null ? null : moreCentsEach * remaining,
    })),
    ownFirst,
    chosenLotId,
    short,
    why,
    picks: planPicks(plan, [key]),
    releases: planReleases(plan, [key]).reduce((sum, { release }) => sum + release, 0),
  };
}

export function stockView(jobId: string, plan: StockPlan, taxa: ReadonlyMap<string, PullTaxon>): StockView {
  const prices = planPrices(plan);
  const names = new Map(plan.groups.map(({ group }) => [group.bedId, group.bedName]));
  const beds = [...names].map(([bedId, bedName]) => ({
    bedId,
    bedName,
    groups: plan.groups.filter(({ group }) => group.bedId === bedId).map((own) => viewGroup(own, plan, prices, taxa)),
  }));
  const groups = beds.flatMap((bed) => bed.groups);
  const proposed = groups.flatMap((group) => group.proposed);
  return {
    jobId,
    beds,
    astray: plan.astray.map((one) => viewHeld(one, null)),
    picks: planPicks(plan, null),
    proposed: proposed.reduce((sum, line) => sum + line.plants, 0),
    proposedCents: proposed.reduce((sum, line) => sum + (line.cents ?? 0), 0),
    promisedOpen: [...plan.groups.flatMap(({ held }) => held), ...plan.astray].reduce((sum, { promised }) => sum + promised.open, 0),
    releases: planReleases(plan, null).reduce((sum, { release }) => sum + release, 0),
  };
}
