// Loads by truck: payload, deck and height; heavy balls low and forward, beds in planting order off the tailgate.
import { type Lift, liftClass } from "./root-ball";

export type Truck = {
  readonly name: string;
  readonly payloadLb: number;
  readonly deckLengthFt: number;
  readonly deckWidthFt: number;
  /** Clear height above the deck, feet; null: open. */
  readonly clearFt: number | null;
};

export type LoadItem = {
  readonly key: string;
  readonly bedId: string;
  /** The bed's turn in planting, from 0. */
  readonly bedTurn: number;
  readonly quantity: number;
  readonly weightLb: number;
  /** Width of ball or pot as it stands on the deck, inches. */
  readonly widthIn: number;
  /** Top above the deck when it stands, feet; taller ones are laid back over the load. */
  readonly heightFt: number;
};

export type LoadedItem = { readonly key: string; readonly bedId: string; readonly quantity: number; readonly weightLb: number; readonly lift: Lift; readonly laidBack: boolean };
export type TruckLoad = {
  readonly truck: string;
  /** Which run of that truck, from 1. */
  readonly trip: number;
  /** In order of loading: the first stands at the headboard, the last at the tailgate. */
  readonly items: readonly LoadedItem[];
  readonly weightLb: number;
  readonly deckSqFt: number;
  readonly deckShare: number;
};
export type LoadPlan = { readonly loads: readonly TruckLoad[]; readonly left: readonly { readonly key: string; readonly quantity: number; readonly reason: string }[] };

/** Round balls and pots stand no closer than in rows and lanes: each takes the square of its width. */
const squareFt = (widthIn: number): number => (widthIn / 12) ** 2;

type Run = { readonly truck: Truck; readonly trip: number; weightLb: number; deckSqFt: number; items: (LoadItem & { quantity: number })[] };

/** How many more of an item a run can take. */
function roomFor({ truck, weightLb, deckSqFt }: Run, item: LoadItem): number {
  const byWeight = item.weightLb > 0 ? (truck.payloadLb - weightLb) / item.weightLb : Number.POSITIVE_INFINITY;
  const byDeck = item.widthIn > 0 ? (truck.deckLengthFt * truck.deckWidthFt - deckSqFt) / squareFt(item.widthIn) : Number.POSITIVE_INFINITY;
  return Math.max(0, Math.floor(Math.min(byWeight, byDeck) + 1e-9));
}

function reasonLeft(item: LoadItem, trucks: readonly Truck[]): string | null {
  if (trucks.length === 0) return "no truck is named";
  if (!trucks.some((truck) => truck.payloadLb >= item.weightLb)) return `at ${Math.round(item.weightLb)} lb heavier than any truck may carry`;
  const fits = trucks.some((truck) => truck.payloadLb >= item.weightLb && Math.min(truck.deckWidthFt, truck.deckLengthFt) * 12 >= item.widthIn);
  return fits ? null : "wider than any deck";
}

/** Off the tailgate in planting order means loaded in reverse; machine lifts of a run go in first, heaviest foremost, whatever their bed. */
function loadingOrder(a: LoadItem, b: LoadItem): number {
  const machine = Number(liftClass(b.weightLb) === "machine") - Number(liftClass(a.weightLb) === "machine");
  if (machine) return machine;
  const heavy = liftClass(a.weightLb) === "machine" ? b.weightLb - a.weightLb : 0;
  return heavy || b.bedTurn - a.bedTurn || b.weightLb - a.weightLb || (a.key < b.key ? -1 : 1);
}

function runLoaded({ truck, trip, items, weightLb, deckSqFt }: Run): TruckLoad {
  return {
    truck: truck.name,
    trip,
    items: [...items].sort(loadingOrder).map(({ key, bedId, quantity, weightLb: each, heightFt }) => ({
      key,
      bedId,
      quantity,
      weightLb: each * quantity,
      lift: liftClass(each),
      laidBack: truck.clearFt !== null && heightFt > truck.clearFt,
    })),
    weightLb,
    deckSqFt,
    deckShare: deckSqFt / (truck.deckLengthFt * truck.deckWidthFt),
  };
}

/**
 * Fills trucks run by run in the order of planting, so that what is planted first arrives first; an item that does not fit whole is parted.
 * One layer on the deck. No run is over its payload or deck; every plant is on a run or among those left, with the reason.
 * A truck on which nothing that waits fits is passed over; the trucks go round in the order given.
 */
export function loadsPlanned(items: readonly LoadItem[], trucks: readonly Truck[]): LoadPlan {
  const left: { key: string; quantity: number; reason: string }[] = [];
  const waiting = items
    .filter((item) => item.quantity > 0)
    .flatMap((item) => {
      const reason = reasonLeft(item, trucks);
      if (reason === null) return [{ ...item }];
      left.push({ key: item.key, quantity: item.quantity, reason });
      return [];
    })
    .sort((a, b) => a.bedTurn - b.bedTurn || b.weightLb - a.weightLb || (a.key < b.key ? -1 : 1));
  const runs: Run[] = [];
  for (let round = 1; waiting.some((item) => item.quantity > 0); round++) {
    let moved = false;
    for (const truck of trucks) {
      const run: Run = { truck, trip: round, weightLb: 0, deckSqFt: 0, items: [] };
      const wide = Math.min(truck.deckWidthFt, truck.deckLengthFt) * 12;
      for (const item of waiting) {
        const quantity = item.widthIn > wide ? 0 : Math.min(item.quantity, roomFor(run, item));
        if (quantity === 0) continue;
        run.items.push({ ...item, quantity });
        run.weightLb += quantity * item.weightLb;
        run.deckSqFt += quantity * squareFt(item.widthIn);
        item.quantity -= quantity;
      }
      if (run.items.length === 0) continue;
      runs.push(run);
      moved = true;
    }
    if (moved) continue;
    for (const item of waiting) if (item.quantity > 0) left.push({ key: item.key, quantity: item.quantity, reason: "does not fit any deck" });
    break;
  }
  return { loads: runs.map(runLoaded), left };
}
