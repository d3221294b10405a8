// Plants promised to jobs. A lot's `reserved` is at any moment the sum of its reservations' `open`, and never more than is on hand: every step is a
// conditional statement inside a transaction that holds the write lock, and the table's CHECK stands behind it.

import { z } from "zod";
import { plantsText } from "../nursery/count-words";
import type { Lot } from "../nursery/lot";
import { database, type Transaction } from "./database";
import type { Lot as LotRecord, Reservation } from "./generated/client";
import { newId } from "./identity";
import { lotEventsWrite } from "./lot-events";
import { lotDomain, withOwner } from "./stock-lots";
import { stockAnswer, stockTransaction } from "./stock-transaction";
import { taxaHeld } from "./taxa";

/** So many plants of a lot for a row of a bed. `steps`: size steps off what was asked for. */
export type ReservePick = { readonly lotId: string; readonly bedId: string; readonly rowId: string; readonly quantity: number; readonly steps: number };

export type ReserveAnswer =
  | { readonly kind: "reserved"; readonly count: number }
  | { readonly kind: "short"; readonly lotId: string; readonly taxonName: string; readonly wanted: number; readonly free: number; readonly message: string }
  | { readonly kind: "fault"; readonly message: string };

/** What a reservation stands at after a change; plants released or pulled in `count`. */
export type ReservationAnswer = { readonly kind: "done"; readonly count: number } | { readonly kind: "fault"; readonly message: string };

export type StoredReservation = {
  readonly id: string;
  readonly bedId: string;
  readonly rowId: string;
  readonly open: number;
  readonly pulled: number;
  readonly steps: number;
  readonly lot: Lot;
  readonly lotTaxonName: string;
};

const pickInput = z.array(
  z.object({
    lotId: z.string().min(1),
    bedId: z.string().min(1),
    rowId: z.string().min(1),
    quantity: z.int("A whole number of plants.").min(1, "At least one plant.").max(1_000_000, "At most 1,000,000 plants."),
    steps: z.int().min(-20).max(20),
  }),
);
const GONE = "This reservation is no longer there. Reload the page to see what is promised.";

type Wanted = { readonly lotId: string; readonly quantity: number };

/** Takes the plants of one lot out of what is free. @returns null when it was done, else why not */
async function lotPromise(tx: Transaction, { lotId, quantity }: Wanted, why: string, who: string): Promise<ReserveAnswer | null> {
  const lot = await tx.lot.findFirst({ where: { id: lotId, deletedAt: null } });
  if (!lot) return { kind: "fault", message: "A lot that was chosen is no longer there. Look at the stock anew." };
  const taken = await tx.lot.updateMany({
    where: { id: lotId, deletedAt: null, quantity: lot.quantity, reserved: { lte: lot.quantity - quantity } },
    data: { reserved: { increment: quantity } },
  });
  if (!taken.count) {
    const free = lot.quantity - lot.reserved;
    const size = lot.size && ` ${lot.size}`;
    return {
      kind: "short",
      lotId,
      taxonName: lot.taxonName,
      wanted: quantity,
      free,
      message: `${lot.taxonName}${size}: ${plantsText(quantity)} wanted, ${free ? `only ${free.toLocaleString("en-US")}` : "none"} free (${lot.quantity.toLocaleString("en-US")} on hand, ${lot.reserved.toLocaleString("en-US")} promised). Nothing was reserved; look at the stock anew.`,
    };
  }
  await lotEventsWrite(tx, [{ lotId, kind: "reserve", who, why, before: { reserved: lot.reserved }, after: { reserved: lot.reserved + quantity } }]);
  return null;
}

/** Reserves all picks or none, in one transaction. Picks of a lot for a row that it already serves add to that reservation. */
export async function reservationsMake(jobId: string, picks: readonly ReservePick[], who: string): Promise<ReserveAnswer> {
  const parsed = pickInput.safeParse(picks);
  if (!parsed.success) return { kind: "fault", message: parsed.error.issues[0]?.message ?? "Cannot be read." };
  return stockAnswer<ReserveAnswer>(async (tx, undo) => {
    const job = await tx.job.findFirst({
      where: { id: jobId, deletedAt: null },
      include: { beds: { where: { deletedAt: null }, select: { id: true, rows: { select: { id: true } } } } },
    });
    if (!job) return { kind: "fault", message: "This job is no longer there." };
    const rows = new Set(job.beds.flatMap((bed) => bed.rows.map((row) => `${bed.id}:${row.id}`)));
    if (parsed.data.some((pick) => !rows.has(`${pick.bedId}:${pick.rowId}`)))
      return { kind: "fault", message: `A bed of ${job.name} was changed meanwhile: a row that was chosen for is no longer on its list. Look at the stock anew.` };
    const byLot = new Map<string, number>();
    for (const pick of parsed.data) byLot.set(pick.lotId, (byLot.get(pick.lotId) ?? 0) + pick.quantity);
    for (const [lotId, quantity] of byLot) {
      const refusal = await lotPromise(tx, { lotId, quantity }, job.name, who);
      if (refusal) return undo(refusal);
    }
    for (const { quantity, steps, ...key } of parsed.data)
      await tx.reservation.upsert({
        where: { lotId_bedId_rowId: key },
        create: { id: newId(), jobId, ...key, open: quantity, steps },
        update: { open: { increment: quantity }, steps },
      });
    return { kind: "reserved", count: parsed.data.reduce((sum, pick) => sum + pick.quantity, 0) };
  });
}

/** A reservation that nothing is open or pulled of is let go, unless the field has told something about its line. */
async function emptyRemove(tx: Transaction, id: string): Promise<void> {
  if (await tx.pullEvent.count({ where: { lineId: id } })) return;
  await tx.reservation.deleteMany({ where: { id, open: 0, pulled: 0 } });
}

/** Gives plants of a reservation back to its lot, inside a transaction. @returns plants released */
export async function reservationFree(tx: Transaction, reservation: Pick<Reservation, "id" | "lotId" | "open">, quantity: number, who: string, why: string): Promise<number> {
  const count = Math.min(quantity, reservation.open);
  if (count <= 0) {
    await emptyRemove(tx, reservation.id);
    return 0;
  }
  const given = await tx.reservation.updateMany({ where: { id: reservation.id, open: { gte: count } }, data: { open: { decrement: count } } });
  if (!given.count) return 0;
  const lot = await tx.lot.update({ where: { id: reservation.lotId }, data: { reserved: { decrement: count } } });
  await lotEventsWrite(tx, [{ lotId: lot.id, kind: "release", who, why, before: { reserved: lot.reserved + count }, after: { reserved: lot.reserved } }]);
  await emptyRemove(tx, reservation.id);
  return count;
}

const wholePlants = (quantity: number): boolean => Number.isSafeInteger(quantity) && Math.abs(quantity) <= 1_000_000;

/** Releases plants that were promised and not pulled. @param quantity null: all that is open @returns refuses more than is open */
export async function reservationRelease(id: string, quantity: number | null, who: string, why: string): Promise<ReservationAnswer> {
  if (quantity !== null && (!wholePlants(quantity) || quantity < 1)) return { kind: "fault", message: "A whole number of plants, 1 or more." };
  return stockTransaction(async (tx): Promise<ReservationAnswer> => {
    const found = await tx.reservation.findUnique({ where: { id } });
    if (!found) return { kind: "fault", message: GONE };
    if (quantity !== null && quantity > found.open)
      return { kind: "fault", message: `Only ${plantsText(found.open)} still promised here; ${quantity.toLocaleString("en-US")} cannot be released.` };
    return { kind: "done", count: await reservationFree(tx, found, quantity ?? found.open, who, why) };
  });
}

/** Releases all that is promised to a job and not pulled. */
export async function reservationsReleaseJob(jobId: string, who: string, why: string): Promise<ReservationAnswer> {
  return stockTransaction(async (tx): Promise<ReservationAnswer> => {
    const found = await tx.reservation.findMany({ where: { jobId }, orderBy: { id: "asc" } });
    let count = 0;
    for (const reservation of found) count += await reservationFree(tx, reservation, reservation.open, who, why);
    return { kind: "done", count };
  });
}

/** Plants that leave a promise; below zero: that come back to it. `leaves`: they leave the lot too. `pulled`: they count as pulled. */
export type ReservationMove = {
  readonly quantity: number;
  readonly leaves: boolean;
  readonly pulled: boolean;
  readonly kind: "pull" | "write off" | "release";
  readonly who: string;
  readonly why: string;
};

/** Moves plants of a reservation that holds enough for it, and writes it down, inside a transaction. Plants put back bring a lot back that was deleted meanwhile. */
export async function reservationMove(tx: Transaction, { id, lot }: Pick<Reservation, "id"> & { readonly lot: LotRecord }, move: ReservationMove): Promise<void> {
  const { quantity, kind, who, why } = move;
  await tx.reservation.update({ where: { id }, data: { open: { decrement: quantity }, ...(move.pulled ? { pulled: { increment: quantity } } : {}) } });
  const changed = await tx.lot.update({
    where: { id: lot.id },
    data: { quantity: { decrement: move.leaves ? quantity : 0 }, reserved: { decrement: quantity }, version: { increment: 1 }, ...(quantity < 0 ? { deletedAt: null } : {}) },
  });
  const state = ({ quantity: onHand, reserved }: LotRecord) => ({ quantity: onHand, reserved });
  await lotEventsWrite(tx, [{ lotId: lot.id, kind, who, why, before: state(lot), after: state(changed) }]);
}

async function pulled(tx: Transaction, id: string, quantity: number, who: string): Promise<ReservationAnswer> {
  const found = await tx.reservation.findUnique({ where: { id }, include: { lot: true, job: { select: { name: true } } } });
  if (!found) return { kind: "fault", message: GONE };
  if (quantity > found.open)
    return {
      kind: "fault",
      message: `Only ${plantsText(found.open)} of ${found.lot.taxonName} still promised to ${found.job.name}; ${quantity.toLocaleString("en-US")} cannot be pulled.`,
    };
  if (-quantity > found.pulled)
    return {
      kind: "fault",
      message: `${found.lot.taxonName}: only ${plantsText(found.pulled)} pulled for ${found.job.name}; ${(-quantity).toLocaleString("en-US")} cannot be put back.`,
    };
  await reservationMove(tx, found, { quantity, leaves: true, pulled: true, kind: "pull", who, why: found.job.name });
  return { kind: "done", count: quantity };
}

/**
 * Takes promised plants from their lot: on hand, promised and open fall together, pulled grows. Refuses more than is open.
 * @param quantity plants; below zero puts pulled ones back @param tx a transaction to work in
 */
export async function reservationPull(id: string, quantity: number, who: string, tx?: Transaction): Promise<ReservationAnswer> {
  if (!wholePlants(quantity) || quantity === 0) return { kind: "fault", message: "A whole number of plants, 1 or more." };
  return tx ? pulled(tx, id, quantity, who) : stockTransaction((own) => pulled(own, id, quantity, who));
}

/** What is promised to a job, and what of it was pulled. */
export async function reservationsOfJob(jobId: string): Promise<StoredReservation[]> {
  const [records, held] = await Promise.all([
    database().reservation.findMany({ where: { jobId }, include: { lot: { include: withOwner } }, orderBy: [{ createdAt: "asc" }, { id: "asc" }] }),
    taxaHeld(),
  ]);
  return records.map(({ id, bedId, rowId, open, pulled, steps, lot }) => ({ id, bedId, rowId, open, pulled, steps, lot: lotDomain(lot, held.byId), lotTaxonName: lot.taxonName }));
}
