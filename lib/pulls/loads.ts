// Loads by truck: payload, deck and height; heavy balls low and forward, beds in planting order off the tailgate.
import { type DeckSpot, deckPlaced } from "./deck";
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

export type LoadedItem = {
  readonly key: string;
  readonly bedId: string;
  readonly quantity: number;
  /** Of all of them. */
  readonly weightLb: number;
  readonly lift: Lift;
  readonly laidBack: boolean;
  readonly widthIn: number;
  readonly heightFt: number;
};
export type TruckLoad = {
  readonly truck: string;
  /** The truck itself. */
  readonly by: Truck;
  /** Which run of that truck, from 1. */
  readonly trip: number;
  /** In order of loading: the first stands at the headboard, the last at the tailgate. */
  readonly items: readonly LoadedItem[];
  readonly weightLb: number;
  readonly deckSqFt: number;
  readonly deckShare: number;
  /** Where each unit stands. */
  readonly spots: readonly DeckSpot[];
  /** How far tops that are laid back reach past the tailgate, feet; 0: none does. */
  readonly pastTailgateFt: number;
  /** What to look out for, in plain words. */
  readonly cautions: readonly string[];
};
export type LoadPlan = { readonly loads: readonly TruckLoad[]; readonly left: readonly { readonly key: string; readonly quantity: number; readonly reason: string }[] };

/** Round balls and pots stand no closer than in rows and lanes: each takes the square of its width. */
const squareFt = (widthIn: number): number => (widthIn / 12) ** 2;

type Run = { readonly truck: Truck; readonly trip: number; weightLb: number; deckSqFt: number; items: (LoadItem & { quantity: number })[] };

/** Highest a load may stand above the road, and the widest a ball may be without a permit, feet (Kaneville Tree Farms, Rootball information; states differ). */
export const ROAD_HEIGHT_FT = 13.5;
export const ROAD_WIDTH_FT = 8.5;
/** Height of a deck above the road (common practice, no source). */
const DECK_HEIGHT_FT = 4;
/** Load that reaches so far past the tailgate carries a red flag (from memory; states differ). */
const FLAG_FROM_FT = 4;

/** How many more of an item a run can take: by weight, then by trying the deck. */
function roomFor(run: Run, item: LoadItem): number {
  const { truck, weightLb, deckSqFt } = run;
  const byWeight = item.weightLb > 0 ? (truck.payloadLb - weightLb) / item.weightLb : Number.POSITIVE_INFINITY;
  const byDeck = item.widthIn > 0 ? (truck.deckLengthFt * truck.deckWidthFt - deckSqFt) / squareFt(item.widthIn) : Number.POSITIVE_INFINITY;
  let fits = 0;
  let over = Math.max(0, Math.floor(Math.min(byWeight, byDeck, item.quantity) + 1e-9)) + 1;
  while (over - fits > 1) {
    const tried = Math.floor((fits + over) / 2);
    if (deckPlaced([...run.items, { ...item, quantity: tried }].sort(loadingOrder), truck)) fits = tried;
    else over = tried;
  }
  return fits;
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

/** Under a roof what is higher than it, on an open deck what would stand too high above the road. */
const isLaidBack = ({ clearFt }: Truck, heightFt: number): boolean => heightFt > (clearFt ?? ROAD_HEIGHT_FT - DECK_HEIGHT_FT);

function loadCautions(truck: Truck, items: readonly LoadedItem[], weightLb: number, pastTailgateFt: number): string[] {
  const laid = items.reduce((sum, { laidBack, quantity }) => sum + (laidBack ? quantity : 0), 0);
  const widest = Math.max(0, ...items.map(({ widthIn }) => widthIn));
  const machine = items.reduce((sum, { lift, quantity }) => sum + (lift === "machine" ? quantity : 0), 0);
  return [
    weightLb > truck.payloadLb * 0.9 ? "Within a tenth of the payload: weigh the truck before it goes on the road." : "",
    machine > 0 ? `${machine} to be lifted by machine here and on the site.` : "",
    laid > 0 ? `Lay back ${laid} with the tops to the tail, trunks padded, crowns tied in and tarped.` : "",
    widest > ROAD_WIDTH_FT * 12 ? `A ball of ${Math.round(widest)} in is wider than ${ROAD_WIDTH_FT} ft: most states want a permit.` : "",
    pastTailgateFt > 0.05
      ? `Tops reach about ${Math.ceil(pastTailgateFt)} ft past the tailgate: ${truck.clearFt === null ? (pastTailgateFt >= FLAG_FROM_FT ? "flag the end, and look at what the state allows" : "look at what the state allows") : "the body will not close"}.`
      : "",
  ].filter(Boolean);
}

function runLoaded({ truck, trip, items: loaded, weightLb, deckSqFt }: Run): TruckLoad {
  const sorted = [...loaded].sort(loadingOrder);
  const items = sorted.map(({ key, bedId, quantity, weightLb: each, widthIn, heightFt }) => ({
    key,
    bedId,
    quantity,
    weightLb: each * quantity,
    lift: liftClass(each),
    laidBack: isLaidBack(truck, heightFt),
    widthIn,
    heightFt,
  }));
  const spots = deckPlaced(sorted, truck) ?? [];
  const tall = new Map(items.filter(({ laidBack }) => laidBack).map(({ key, heightFt }) => [key, heightFt]));
  const pastTailgateFt = Math.max(0, ...spots.map(({ key, yFt }) => yFt + (tall.get(key) ?? Number.NEGATIVE_INFINITY) - truck.deckLengthFt));
  return {
    truck: truck.name,
    by: truck,
    trip,
    items,
    weightLb,
    deckSqFt,
    deckShare: deckSqFt / (truck.deckLengthFt * truck.deckWidthFt),
    spots,
    pastTailgateFt,
    cautions: loadCautions(truck, items, weightLb, pastTailgateFt),
  };
}

/**
 * Fills trucks run by run in the order of planting, so that what is planted first arrives first; an item that does not fit whole is parted.
 * One layer on the deck, each unit with its spot. No run is over its payload or deck; every plant is on a run or among those left, with the reason.
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
        const quantity = item.quantity === 0 || item.widthIn > wide ? 0 : roomFor(run, item);
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
