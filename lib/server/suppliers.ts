// The nurseries plants are bought from: added, changed, deleted (restorable), with their lots and the lines of their lists that matched no plant.

import { z } from "zod";
import { plantsText } from "../nursery/count-words";
import type { PriceBreak } from "../nursery/lot";
import { database } from "./database";
import type { Supplier as SupplierRecord } from "./generated/client";
import { newId } from "./identity";
import { lotPrices } from "./stock-lots";

export type StoredSupplier = {
  readonly id: string;
  readonly name: string;
  readonly contact: string;
  /** Least order in cents; null: none. */
  readonly minimumCents: number | null;
  /** Plants are sold in multiples of so many. */
  readonly multiple: number;
  /** Days from order to delivery; null: not said. */
  readonly leadDays: number | null;
  readonly notes: string;
  readonly version: number;
};

export type SupplierListed = StoredSupplier & {
  readonly lots: number;
  readonly plants: number;
  readonly promised: number;
  /** The list accepted last. */
  readonly list: { readonly fileName: string; readonly at: string; readonly lines: number; readonly who: string } | null;
};

export type SupplierAnswer =
  | { readonly kind: "saved"; readonly supplier: StoredSupplier }
  | { readonly kind: "fault"; readonly field: string; readonly message: string }
  | { readonly kind: "stale"; readonly theirs: StoredSupplier }
  | { readonly kind: "gone"; readonly message: string };

const MONEY_MAX = 100_000_00;
const supplierInput = z.strictObject({
  name: z.string().trim().min(1, "Give the supplier a name.").max(120, "At most 120 letters."),
  contact: z.string().trim().max(400, "At most 400 letters.").default(""),
  minimumCents: z.int("An amount such as 500.").min(0, "Not below 0.").max(MONEY_MAX, "At most $100,000.").nullable().default(null),
  multiple: z.int("A whole number of plants.").min(1, "At least 1.").max(1000, "At most 1,000.").default(1),
  leadDays: z.int("A whole number of days.").min(0, "Not below 0.").max(730, "At most 730 days.").nullable().default(null),
  notes: z.string().trim().max(2000, "At most 2,000 letters.").default(""),
});

function stored({ id, name, contact, minimumCents, multiple, leadDays, notes, version }: SupplierRecord): StoredSupplier {
  return { id, name, contact, minimumCents, multiple, leadDays, notes, version };
}

const GONE = "This supplier was deleted in another window. Undo the deletion there, then change it again.";

/** All suppliers by name, with what they have on offer. */
export async function supplierList(): Promise<SupplierListed[]> {
  const [records, sums, lists] = await Promise.all([
    database().supplier.findMany({ where: { deletedAt: null } }),
    database().lot.groupBy({ by: ["supplierId"], where: { supplierId: { not: null }, deletedAt: null }, _count: { _all: true }, _sum: { quantity: true, reserved: true } }),
    database().stockList.findMany({ orderBy: { acceptedAt: "asc" } }),
  ]);
  const sumOf = new Map(sums.map((sum) => [sum.supplierId, sum]));
  const listOf = new Map(lists.map((list) => [list.supplierId, list]));
  return records
    .map((record) => {
      const sum = sumOf.get(record.id);
      const list = listOf.get(record.id);
      return {
        ...stored(record),
        lots: sum?._count._all ?? 0,
        plants: sum?._sum.quantity ?? 0,
        promised: sum?._sum.reserved ?? 0,
        list: list ? { fileName: list.fileName, at: list.acceptedAt.toISOString(), lines: list.lines, who: list.who } : null,
      };
    })
    .sort((a, b) => a.name.localeCompare(b.name, "en"));
}

/** One supplier; null when there is none or it was deleted. */
export async function supplierFind(id: string): Promise<StoredSupplier | null> {
  const record = await database().supplier.findFirst({ where: { id, deletedAt: null } });
  return record && stored(record);
}

/** The name of a deleted supplier that can be brought back; null when there is none. */
export async function supplierDeleted(id: string): Promise<string | null> {
  return (await database().supplier.findFirst({ where: { id, deletedAt: { not: null } } }))?.name ?? null;
}

/**
 * Adds a supplier, or changes one over the version it was read at.
 * @param id null adds one
 * @param untrusted name, contact, minimumCents, multiple, leadDays, notes
 */
export async function supplierSave(id: string | null, baseVersion: number, untrusted: unknown): Promise<SupplierAnswer> {
  const read = supplierInput.safeParse(untrusted);
  if (!read.success) {
    const issue = read.error.issues[0];
    return { kind: "fault", field: String(issue?.path[0] ?? "name"), message: issue?.message ?? "This cannot be saved." };
  }
  const twin = (await database().supplier.findMany({ where: { deletedAt: null }, select: { id: true, name: true } })).find(
    (other) => other.id !== id && other.name.toLowerCase() === read.data.name.toLowerCase(),
  );
  if (twin) return { kind: "fault", field: "name", message: `${twin.name} is among the suppliers already.` };
  if (id === null) return { kind: "saved", supplier: stored(await database().supplier.create({ data: { id: newId(), ...read.data } })) };
  const { count } = await database().supplier.updateMany({ where: { id, deletedAt: null, version: baseVersion }, data: { ...read.data, version: { increment: 1 } } });
  const now = await supplierFind(id);
  if (!now) return { kind: "gone", message: GONE };
  return count ? { kind: "saved", supplier: now } : { kind: "stale", theirs: now };
}

/** Deletes a supplier so that it can be restored; its lots go out of sight with it. @returns why it cannot be; null when it is deleted */
export async function supplierDelete(id: string): Promise<string | null> {
  return database().$transaction(async (tx) => {
    const record = await tx.supplier.findFirst({ where: { id, deletedAt: null } });
    if (!record) return null;
    const open = await tx.reservation.findMany({ where: { open: { gt: 0 }, lot: { supplierId: id } }, include: { job: { select: { name: true } } } });
    if (open.length) {
      const byJob = new Map<string, number>();
      for (const { job, open: count } of open) byJob.set(job.name, (byJob.get(job.name) ?? 0) + count);
      const told = [...byJob].map(([name, count]) => `${plantsText(count)} to ${name}`).join(", ");
      return `${record.name} cannot be deleted: ${told} promised from its lots. Release them in the job first.`;
    }
    await tx.supplier.update({ where: { id }, data: { deletedAt: new Date() } });
    return null;
  });
}

export async function supplierRestore(id: string): Promise<void> {
  await database().supplier.updateMany({ where: { id }, data: { deletedAt: null } });
}

export type SupplierLot = {
  readonly id: string;
  readonly taxonId: string;
  readonly taxonName: string;
  readonly size: string;
  readonly quantity: number;
  readonly reserved: number;
  readonly priceCents: number | null;
  /** Prices by quantity, the smallest quantity first. */
  readonly prices: readonly PriceBreak[];
  readonly readyFrom: string | null;
  readonly code: string;
  readonly remarks: string;
};
export type SupplierLots = { readonly lots: readonly SupplierLot[]; readonly page: number; readonly pages: number; readonly count: number };
const LOTS_A_PAGE = 100;

/** A supplier's lots by name and size, a page at a time. @param find words that stand in the name, size or number */
export async function supplierLots(id: string, find: string, page: number): Promise<SupplierLots> {
  const words = find.trim().split(/\s+/).filter(Boolean).slice(0, 8);
  const where = {
    supplierId: id,
    deletedAt: null,
    AND: words.map((word) => ({ OR: [{ taxonName: { contains: word } }, { size: { contains: word } }, { code: { contains: word } }] })),
  };
  const count = await database().lot.count({ where });
  const pages = Math.max(1, Math.ceil(count / LOTS_A_PAGE));
  const own = Math.min(Math.max(1, page), pages);
  const lots = await database().lot.findMany({ where, orderBy: [{ taxonName: "asc" }, { size: "asc" }, { id: "asc" }], skip: (own - 1) * LOTS_A_PAGE, take: LOTS_A_PAGE });
  return {
    lots: lots.map(({ id: lotId, taxonId, taxonName, size, quantity, reserved, priceCents, prices, readyFrom, code, remarks }) => ({
      id: lotId,
      taxonId,
      taxonName,
      size,
      quantity,
      reserved,
      priceCents,
      prices: lotPrices({ prices, priceCents }),
      readyFrom,
      code,
      remarks,
    })),
    page: own,
    pages,
    count,
  };
}
