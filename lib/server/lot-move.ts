// Lots that leave their place: moved whole or in part, or written off.

import { z } from "zod";
import { plantsText } from "../nursery/count-words";
import { newId } from "./identity";
import { type ByWhom, lotEventsWrite, lotState } from "./lot-events";
import { lotPromises, promisedMessage, promisesRelease, promisesText } from "./lot-promises";
import { inputFault, lotFields, placeIdOf } from "./lots";
import { stockTransaction } from "./stock-transaction";
import { type LotAnswer, lotAtVersion, storedLot, withPlace } from "./stored-lot";

const moveInput = z.strictObject({
  quantity: z.int("A whole number of plants, such as 7.").min(1, "At least one plant to move."),
  place: lotFields.place.min(1, "Say where it goes, such as Yard, bay 3."),
  size: lotFields.size.optional(),
  priceCents: lotFields.priceCents.optional(),
  costCents: lotFields.costCents.optional(),
  readyFrom: lotFields.readyFrom.optional(),
  why: z.string().trim().max(300).default(""),
  /** Jobs whose promised plants are among those moved, all of them. */
  jobs: z.array(z.string()).max(200).default([]),
});

/** What is moved, where to, and what is different there. A plant dug and heeled in has another size ("3 in B&B") and price. */
export type LotMove = z.input<typeof moveInput>;

/**
 * Moves a lot, or so many plants of it, over version `baseVersion`. A part becomes a lot of its own. Of a part, the promises of the jobs named go
 * along; the others stay, and must find their plants where they were. @param untrusted a LotMove @returns the lot that stands at the new place
 */
export async function lotMove(id: string, baseVersion: number, untrusted: unknown, by: ByWhom): Promise<LotAnswer> {
  const parsed = moveInput.safeParse(untrusted);
  if (!parsed.success) return inputFault(parsed.error);
  const { quantity, place, why, jobs, ...different } = parsed.data;
  return stockTransaction(async (tx): Promise<LotAnswer> => {
    const found = await lotAtVersion(tx, id, baseVersion);
    if ("answer" in found) return found.answer;
    const { record } = found;
    if (quantity > record.quantity)
      return {
        kind: "fault",
        field: "quantity",
        message: `Only ${plantsText(record.quantity)} on hand; ${quantity.toLocaleString("en-US")} cannot be moved. Count the lot first if more stand there.`,
      };
    const changes = { ...different, ...(different.priceCents === undefined ? {} : { prices: [] }) };
    const reason = { who: by.who, why };
    if (quantity === record.quantity) {
      const moved = await tx.lot.update({
        where: { id, version: baseVersion },
        data: { ...changes, placeId: await placeIdOf(tx, place), version: { increment: 1 } },
        include: withPlace,
      });
      await lotEventsWrite(tx, [{ lotId: id, kind: "move", ...reason, before: lotState(record), after: lotState(moved) }]);
      return { kind: "saved", lot: storedLot(moved) };
    }
    const promises = await lotPromises(tx, id);
    const along = promises.filter((promise) => jobs.includes(promise.jobId));
    const reserved = along.reduce((sum, promise) => sum + promise.open, 0);
    if (reserved > quantity)
      return {
        kind: "fault",
        field: "quantity",
        message: `${plantsText(reserved)} promised would go along (${promisesText(along)}), more than the ${quantity.toLocaleString("en-US")} moved. Move at least ${reserved.toLocaleString("en-US")}.`,
      };
    const staying = promises.filter((promise) => !jobs.includes(promise.jobId));
    if (record.quantity - quantity < record.reserved - reserved)
      return {
        kind: "fault",
        field: "quantity",
        message: `Only ${plantsText(record.quantity - (record.reserved - reserved))} can be moved: ${promisesText(staying)} promised where they stand. Move fewer, say for which job they are dug, or move the whole lot.`,
      };
    const { taxonId, taxonName, size, readyFrom, priceCents, prices, costCents, grade, code, remarks, countedAt } = record;
    const same = { taxonId, taxonName, size, readyFrom, priceCents, prices: prices ?? [], costCents, grade, code, remarks, countedAt };
    const part = await tx.lot.create({ data: { ...same, ...changes, id: newId(), quantity, reserved, placeId: await placeIdOf(tx, place) }, include: withPlace });
    await tx.reservation.updateMany({ where: { lotId: id, jobId: { in: along.map((promise) => promise.jobId) }, open: { gt: 0 } }, data: { lotId: part.id } });
    const left = await tx.lot.update({
      where: { id, version: baseVersion },
      data: { quantity: { decrement: quantity }, reserved: { decrement: reserved }, version: { increment: 1 } },
      include: withPlace,
    });
    const [from, to] = [storedLot(record), storedLot(part)];
    await lotEventsWrite(tx, [
      { lotId: id, kind: "move", who: by.who, why: [`${plantsText(quantity)} to ${to.place}`, why].filter(Boolean).join("; "), before: lotState(record), after: lotState(left) },
      {
        lotId: part.id,
        kind: "move",
        who: by.who,
        why: [`from ${from.place || "no place"}`, why].filter(Boolean).join("; "),
        before: { ...lotState(record), quantity: 0, reserved: 0 },
        after: lotState(part),
      },
    ]);
    return { kind: "saved", lot: to };
  });
}

const writeOffInput = z.strictObject({
  quantity: z.int("A whole number of plants, such as 7.").min(1, "At least one plant to write off."),
  why: z.string().trim().min(1, "Say why, such as winter kill.").max(300, "At most 300 characters."),
});

/** Takes plants out of a lot for a reason. Below what is promised it is refused with the jobs named, unless `anyway`: then the newest promises are let go. */
export async function lotWriteOff(id: string, baseVersion: number, untrusted: unknown, by: ByWhom, { anyway = false } = {}): Promise<LotAnswer> {
  const parsed = writeOffInput.safeParse(untrusted);
  if (!parsed.success) return inputFault(parsed.error);
  const { quantity, why } = parsed.data;
  return stockTransaction(async (tx): Promise<LotAnswer> => {
    const found = await lotAtVersion(tx, id, baseVersion);
    if ("answer" in found) return found.answer;
    const { record } = found;
    const left = record.quantity - quantity;
    if (left < 0) return { kind: "fault", field: "quantity", message: `Only ${plantsText(record.quantity)} on hand; ${quantity.toLocaleString("en-US")} cannot be written off.` };
    let released: string[] = [];
    if (left < record.reserved) {
      if (!anyway) return { kind: "promised", message: promisedMessage(left, record.reserved, await lotPromises(tx, id)) };
      released = await promisesRelease(tx, id, left, by.who, why);
    }
    const written = await tx.lot.update({ where: { id, version: baseVersion }, data: { quantity: { decrement: quantity }, version: { increment: 1 } }, include: withPlace });
    await lotEventsWrite(tx, [{ lotId: id, kind: "write off", who: by.who, why, before: { quantity: record.quantity }, after: { quantity: written.quantity } }]);
    return { kind: "saved", lot: storedLot(written), ...(released.length ? { released } : {}) };
  });
}
