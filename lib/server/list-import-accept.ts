// A list accepted: the supplier's lots, the lines that matched no plant, what was learned about names and columns, all in one transaction or not at all.

import { listChange, type OfferedLot } from "../nursery/list-change";
import { columnsKept } from "../nursery/list-columns-kept";
import type { Transaction } from "./database";
import type { Prisma } from "./generated/client";
import { newId } from "./identity";
import { importDrop, importFind, type ListImport, lineTaxon, supplierColumns } from "./list-import";
import { offersMade, promisesByLot, supplierHeldLots } from "./list-import-offers";
import { lotEventsWrite, type NewLotEvent } from "./lot-events";
import { stockAnswer } from "./stock-transaction";
import { instantStored } from "./stored-instant";
import { type TaxaHeld, taxaHeld } from "./taxa";

export type AcceptAnswer =
  | {
      readonly kind: "accepted";
      readonly listId: string;
      readonly added: number;
      readonly updated: number;
      readonly gone: number;
      readonly unmatched: number;
      readonly learned: number;
      /** Promised plants the list no longer has, in words with the job. */
      readonly tooFew: readonly string[];
    }
  | { readonly kind: "fault"; readonly message: string };

const CHUNK = 500;
const EXPIRED = "This list is no longer held. Choose the file again; nothing was written.";

export function chunks<T>(all: readonly T[]): T[][] {
  return Array.from({ length: Math.ceil(all.length / CHUNK) }, (_, i) => all.slice(i * CHUNK, (i + 1) * CHUNK));
}

/** A lot as an offer makes it. What the list gives no number for holds none, and says so. */
function lotFields(offer: OfferedLot) {
  const { quantity, remarks } = offer;
  return {
    size: offer.sizeText,
    quantity: quantity ?? 0,
    readyFrom: offer.readyFrom,
    priceCents: offer.priceCents,
    prices: offer.prices.length > 1 ? offer.prices.map(({ from, cents }) => ({ from, cents })) : [],
    grade: offer.grade,
    code: offer.code,
    remarks: quantity === null && !/call|ready|quantity/i.test(remarks) ? ["quantity not said", remarks].filter(Boolean).join("; ") : remarks,
  };
}

/** Lots of a supplier added in batches, with their history. */
export async function supplierLotsAdd(
  tx: Transaction,
  held: TaxaHeld,
  supplierId: string,
  listId: string,
  offers: readonly OfferedLot[],
  by: { who: string; why: string },
): Promise<void> {
  const rows = offers.map((offer) => ({
    id: newId(),
    supplierId,
    listId,
    taxonId: offer.taxonId,
    taxonName: held.byId.get(offer.taxonId)?.name ?? offer.taxonId,
    ...lotFields(offer),
  }));
  const now = instantStored(new Date());
  // One statement a batch: twenty thousand rows of createMany hold the write lock for many seconds.
  for (const some of chunks(rows))
    await tx.$executeRaw`
      INSERT INTO "Lot" ("id", "taxonId", "taxonName", "size", "supplierId", "listId", "quantity", "reserved", "readyFrom", "priceCents", "prices", "grade", "code", "remarks", "version", "createdAt", "updatedAt")
      SELECT j.value ->> 'id', j.value ->> 'taxonId', j.value ->> 'taxonName', j.value ->> 'size', ${supplierId}, ${listId}, j.value ->> 'quantity', 0, j.value ->> 'readyFrom',
        j.value ->> 'priceCents', j.value -> 'prices', j.value ->> 'grade', j.value ->> 'code', j.value ->> 'remarks', 1, ${now}, ${now}
      FROM json_each(${JSON.stringify(some)}) AS j`;
  await lotEventsWrite(
    tx,
    rows.map(
      ({ id, quantity, size, readyFrom, priceCents, grade, remarks }): NewLotEvent => ({
        lotId: id,
        kind: "list",
        before: {},
        after: { quantity, size, readyFrom, priceCents, grade, remarks },
        ...by,
      }),
    ),
  );
}

/** Lots changed in one statement a batch. What is promised meanwhile stays covered: no lot falls below it. */
async function lotsUpdate(tx: Transaction, listId: string, rows: readonly ({ readonly id: string } & ReturnType<typeof lotFields>)[]): Promise<void> {
  const now = instantStored(new Date());
  for (const some of chunks(rows)) {
    const json = JSON.stringify(some);
    await tx.$executeRaw`
      UPDATE "Lot" SET
        "quantity" = max(j.value ->> 'quantity', "Lot"."reserved"), "size" = j.value ->> 'size', "readyFrom" = j.value ->> 'readyFrom',
        "priceCents" = j.value ->> 'priceCents', "prices" = j.value -> 'prices', "grade" = j.value ->> 'grade', "code" = j.value ->> 'code',
        "remarks" = j.value ->> 'remarks', "listId" = ${listId}, "version" = "Lot"."version" + 1, "updatedAt" = ${now}
      FROM json_each(${json}) AS j WHERE "Lot"."id" = j.value ->> 'id'`;
  }
}

async function lotsGone(tx: Transaction, ids: readonly string[]): Promise<void> {
  for (const some of chunks(ids))
    await tx.$executeRaw`UPDATE "Lot" SET "quantity" = "reserved", "version" = "version" + 1, "updatedAt" = ${instantStored(new Date())} WHERE "id" IN (SELECT value FROM json_each(${JSON.stringify(some)}))`;
}

/** Names a person has settled, for this supplier and for every other. @returns how many */
export async function namesLearn(tx: Transaction, supplierId: string, names: ReadonlyMap<string, string>): Promise<number> {
  for (const [key, taxonId] of names)
    for (const whose of [supplierId, ""])
      await tx.learnedName.upsert({ where: { supplierId_key: { supplierId: whose, key } }, create: { supplierId: whose, key, taxonId }, update: { taxonId } });
  return names.size;
}

async function unmatchedWrite(tx: Transaction, one: ListImport, listId: string): Promise<number> {
  const rest = one.matched.filter((line) => lineTaxon(one, line) === null);
  await tx.unmatchedLine.deleteMany({ where: { supplierId: one.supplierId } });
  const rows = rest.map((line) => ({
    id: newId(),
    supplierId: one.supplierId,
    listId,
    row: line.row,
    written: line.written.slice(0, 300),
    text: line.text.slice(0, 1000),
    size: line.sizeText.slice(0, 80),
    quantity: line.quantity.count,
    prices: line.prices.map(({ from, cents }) => ({ from, cents })),
    remarks: line.remarks.join("; ").slice(0, 500),
  }));
  for (const data of chunks(rows)) await tx.unmatchedLine.createMany({ data });
  return rows.length;
}

/**
 * Writes a held list. Lots on it again take its figures, new ones are added, those gone hold no more than what is promised of them.
 * @param midway called when half is written: for the test that a fault there leaves nothing
 */
export async function importAccept(id: string, who: string, midway?: () => void): Promise<AcceptAnswer> {
  const one = importFind(id);
  if (!one) return { kind: "fault", message: EXPIRED };
  const [held, known] = await Promise.all([taxaHeld(), supplierColumns(one.supplierId)]);
  const offers = offersMade(held, one.matched, (line) => lineTaxon(one, line));
  const columns = { ...known, ...Object.fromEntries(one.list.maps.map(({ sheet, map }) => [sheet, columnsKept(map)])) };
  const answer = await stockAnswer<AcceptAnswer>(async (tx, undo) => {
    const supplier = await tx.supplier.findFirst({ where: { id: one.supplierId, deletedAt: null } });
    if (!supplier) return undo({ kind: "fault", message: "This supplier was deleted in another window; nothing was written. Undo the deletion there, then accept again." });
    const listId = newId();
    const by = { who, why: `list ${one.fileName}` };
    await tx.stockList.create({ data: { id: listId, supplierId: one.supplierId, fileName: one.fileName.slice(0, 200), lines: one.matched.length, who: who.slice(0, 60) } });
    const lots = await supplierHeldLots(tx, one.supplierId, held);
    const change = listChange(lots, offers);
    const updates = change.kept.map(({ lot, offer }) => ({ id: lot.id, ...lotFields(offer) }));
    await lotsUpdate(tx, listId, updates);
    await lotsGone(
      tx,
      change.gone.map((lot) => lot.id),
    );
    midway?.();
    const events = change.kept.flatMap(({ lot, offer }): NewLotEvent[] => {
      const { quantity, size, readyFrom, priceCents, grade, remarks } = lotFields(offer);
      const before = { quantity: lot.quantity, size: lot.size, readyFrom: lot.record.readyFrom, priceCents: lot.priceCents, grade: lot.record.grade, remarks: lot.record.remarks };
      const after = { quantity: Math.max(quantity, lot.reserved), size, readyFrom, priceCents, grade, remarks };
      return JSON.stringify(before) === JSON.stringify(after) ? [] : [{ lotId: lot.id, kind: "list", before, after, ...by }];
    });
    const gone = change.gone.map(
      (lot): NewLotEvent => ({ lotId: lot.id, kind: "list", before: { quantity: lot.quantity }, after: { quantity: lot.reserved }, who, why: `gone from ${by.why}` }),
    );
    await lotEventsWrite(tx, [...events, ...gone]);
    await supplierLotsAdd(tx, held, one.supplierId, listId, change.added, by);
    const unmatched = await unmatchedWrite(tx, one, listId);
    const names = new Map([...one.choices].flatMap(([key, taxonId]) => (taxonId === null ? [] : [[key, taxonId] as const])));
    const learned = await namesLearn(tx, one.supplierId, names);
    await tx.supplier.update({ where: { id: one.supplierId }, data: { columnMaps: columns as unknown as Prisma.InputJsonValue } });
    const promises = await promisesByLot(
      tx,
      change.tooFew.map(({ lot }) => lot.id),
    );
    const tooFew = change.tooFew.map(
      ({ lot, offered }) =>
        `${held.byId.get(lot.taxonId)?.name ?? lot.taxonId} ${lot.size}: ${offered ? `only ${offered.toLocaleString("en-US")} offered` : "gone"}, ${promises.get(lot.id) ?? lot.reserved} promised`,
    );
    return { kind: "accepted", listId, added: change.added.length, updated: events.length, gone: change.gone.length, unmatched, learned, tooFew };
  });
  if (answer.kind === "accepted") importDrop(id);
  return answer;
}
