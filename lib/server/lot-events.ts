// The history of lots: written in the transaction that changes the lot, only ever added to.
import { z } from "zod";
import { LOT_EVENT_KINDS, type LotEvent, type LotEventKind, type LotState, lotStateDiffers } from "../nursery/lot-event";
import { placeText } from "../nursery/lot-place";
import { database, type Transaction } from "./database";
import type { LotEvent as EventRecord, Lot as LotRecord, StockPlace } from "./generated/client";
import { newId } from "./identity";
import { instantStored } from "./stored-instant";

/** Who did something to a lot, and why; "" where it is not said. */
export type ByWhom = { readonly who: string; readonly why?: string };

const CHUNK = 500;

let latest = 0;
/** Events of one moment keep their order: each is at least a millisecond after the one before. */
function eventTime(): Date {
  latest = Math.max(Date.now(), latest + 1);
  return new Date(latest);
}

/** A lot as its history remembers it. */
export function lotState(lot: LotRecord & { place: StockPlace | null }): LotState {
  const { quantity, reserved, size, place, readyFrom, priceCents, costCents, grade, remarks } = lot;
  return { quantity, reserved, size, place: place ? placeText(place) : "", readyFrom, priceCents, costCents, grade, remarks };
}

export type NewLotEvent = { readonly lotId: string; readonly kind: LotEventKind; readonly before: Partial<LotState>; readonly after: Partial<LotState> } & ByWhom;

/** Adds events to the history. Of the states only what differs is kept. */
export async function lotEventsWrite(tx: Transaction, events: readonly NewLotEvent[]): Promise<void> {
  // Many at once are of different lots: their order says nothing, and a millisecond each would run ahead of the clock.
  const together = events.length > CHUNK ? eventTime() : null;
  const rows = events.map(({ lotId, kind, who, why = "", before, after }) => {
    const differing = lotStateDiffers(before, after);
    // A count that was right has changed nothing, and still says of how many.
    const count = kind === "count" && differing.after.quantity === undefined && after.quantity !== undefined ? { quantity: after.quantity } : {};
    return {
      id: newId(),
      lotId,
      at: together ?? eventTime(),
      kind,
      who: who.slice(0, 60),
      why: why.slice(0, 300),
      before: { ...count, ...differing.before },
      after: { ...count, ...differing.after },
    };
  });
  if (rows.length === 1) {
    await tx.lotEvent.createMany({ data: rows });
    return;
  }
  // One statement a batch: an accepted list writes twenty thousand, and createMany would hold the write lock for many seconds.
  for (let i = 0; i < rows.length; i += CHUNK) {
    const some = rows.slice(i, i + CHUNK).map((row) => ({ ...row, at: instantStored(row.at) }));
    await tx.$executeRaw`
      INSERT INTO "LotEvent" ("id", "lotId", "at", "who", "kind", "why", "before", "after")
      SELECT j.value ->> 'id', j.value ->> 'lotId', j.value ->> 'at', j.value ->> 'who', j.value ->> 'kind', j.value ->> 'why', j.value -> 'before', j.value -> 'after'
      FROM json_each(${JSON.stringify(some)}) AS j`;
  }
}

const stateRead = z
  .object({
    quantity: z.number(),
    reserved: z.number(),
    size: z.string(),
    place: z.string(),
    readyFrom: z.string().nullable(),
    priceCents: z.number().nullable(),
    costCents: z.number().nullable(),
    grade: z.string(),
    remarks: z.string(),
  })
  .partial()
  .catch({});

function lotEvent(record: EventRecord): LotEvent {
  const { id, lotId, at, who, why } = record;
  const kind = z.enum(LOT_EVENT_KINDS).catch("change").parse(record.kind);
  return { id, lotId, at: at.toISOString(), who, kind, why, before: stateRead.parse(record.before), after: stateRead.parse(record.after) };
}

/** A lot's history, the newest first. @param limit events at most */
export async function lotEventsOf(lotId: string, limit = 200): Promise<LotEvent[]> {
  const records = await database().lotEvent.findMany({ where: { lotId }, orderBy: [{ at: "desc" }, { id: "desc" }], take: limit });
  return records.map(lotEvent);
}

/** The latest changes of the firm's own lots, the newest first, with what the lot is called. */
export async function lotEventsLatest(limit: number, kind?: LotEventKind): Promise<(LotEvent & { readonly taxonName: string; readonly size: string })[]> {
  const records = await database().lotEvent.findMany({
    where: { lot: { supplierId: null }, ...(kind ? { kind } : {}) },
    orderBy: [{ at: "desc" }, { id: "desc" }],
    take: limit,
    include: { lot: { select: { taxonName: true, size: true } } },
  });
  return records.map((record) => ({ ...lotEvent(record), ...record.lot }));
}
