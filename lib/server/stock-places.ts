// The firm's own fields and yard as a list in walking order.
import { z } from "zod";
import { type PlaceName, placeSame, placeText } from "../nursery/lot-place";
import { database, type Transaction } from "./database";
import { newId } from "./identity";
import { stockTransaction } from "./stock-transaction";

/** A place with what stands there. `position` is its turn on the walk. */
export type StoredPlace = PlaceName & { readonly id: string; readonly text: string; readonly position: number; readonly lots: number; readonly plants: number };

export type PlaceAnswer = { readonly kind: "saved"; readonly id: string } | { readonly kind: "fault"; readonly message: string };

const part = (what: string) => z.string().trim().max(40, `A ${what}'s name has at most 40 characters.`);
const placeInput = z.strictObject({ block: part("block"), row: part("row"), bay: part("bay") }).refine((p) => p.block || p.row || p.bay, "Give the place a block, a row or a bay.");

/** Places in walking order, with the lots that stand there and their plants. */
export async function placeList(): Promise<StoredPlace[]> {
  const [places, groups] = await Promise.all([
    database().stockPlace.findMany({ orderBy: [{ position: "asc" }, { id: "asc" }] }),
    database().lot.groupBy({ by: ["placeId"], where: { deletedAt: null, supplierId: null }, _count: { _all: true }, _sum: { quantity: true } }),
  ]);
  const held = new Map(groups.map((g) => [g.placeId, g]));
  return places.map((place) => {
    const { id, block, row, bay, position } = place;
    return { id, block, row, bay, position, text: placeText(place), lots: held.get(id)?._count._all ?? 0, plants: held.get(id)?._sum.quantity ?? 0 };
  });
}

/** Makes a place: after the last of its block on the walk, else at the end. @returns its id */
export async function placeMade(tx: Transaction, name: PlaceName): Promise<string> {
  const places = await tx.stockPlace.findMany({ orderBy: [{ position: "asc" }, { id: "asc" }] });
  const sibling = places.findLast((place) => place.block !== "" && place.block.toLowerCase() === name.block.toLowerCase());
  const position = ((sibling ?? places.at(-1))?.position ?? -1) + 1;
  await tx.stockPlace.updateMany({ where: { position: { gte: position } }, data: { position: { increment: 1 } } });
  const { id } = await tx.stockPlace.create({ data: { id: newId(), block: name.block, row: name.row, bay: name.bay, position } });
  return id;
}

async function orderWrite(tx: Transaction, ids: readonly string[], positions: ReadonlyMap<string, number>): Promise<void> {
  for (const [position, id] of ids.entries()) if (positions.get(id) !== position) await tx.stockPlace.update({ where: { id }, data: { position } });
}

const inUse = (name: PlaceName): PlaceAnswer => ({ kind: "fault", message: `${placeText(name)} is on the list already.` });

/** Adds a place. @param untrusted a PlaceName from a screen */
export async function placeAdd(untrusted: unknown): Promise<PlaceAnswer> {
  const parsed = placeInput.safeParse(untrusted);
  if (!parsed.success) return { kind: "fault", message: parsed.error.issues[0]?.message ?? "Cannot be read." };
  return stockTransaction(async (tx): Promise<PlaceAnswer> => {
    const places = await tx.stockPlace.findMany();
    if (places.some((place) => placeSame(place, parsed.data))) return inUse(parsed.data);
    return { kind: "saved", id: await placeMade(tx, parsed.data) };
  });
}

/** Renames a place; its lots stay there. @param untrusted a PlaceName */
export async function placeRename(id: string, untrusted: unknown): Promise<PlaceAnswer> {
  const parsed = placeInput.safeParse(untrusted);
  if (!parsed.success) return { kind: "fault", message: parsed.error.issues[0]?.message ?? "Cannot be read." };
  return stockTransaction(async (tx): Promise<PlaceAnswer> => {
    const places = await tx.stockPlace.findMany();
    if (places.some((place) => place.id !== id && placeSame(place, parsed.data))) return inUse(parsed.data);
    const renamed = await tx.stockPlace.updateMany({ where: { id }, data: parsed.data });
    return renamed.count ? { kind: "saved", id } : { kind: "fault", message: "This place was deleted in another window." };
  });
}

/** Deletes a place where nothing stands. */
export async function placeDelete(id: string): Promise<PlaceAnswer> {
  return stockTransaction(async (tx): Promise<PlaceAnswer> => {
    const place = await tx.stockPlace.findUnique({ where: { id }, include: { lots: { where: { deletedAt: null }, select: { taxonName: true } } } });
    if (!place) return { kind: "saved", id };
    const [first] = place.lots;
    if (first) {
      const more = place.lots.length > 1 ? ` and ${place.lots.length - 1} more ${place.lots.length === 2 ? "lot" : "lots"}` : "";
      return {
        kind: "fault",
        message: `${placeText(place)} is not empty: ${first.taxonName}${more} ${place.lots.length > 1 ? "stand" : "stands"} there. Move what stands there first.`,
      };
    }
    // Lots that were deleted there would come back without a place.
    await tx.lot.updateMany({ where: { placeId: id }, data: { placeId: null } });
    await tx.stockPlace.delete({ where: { id } });
    return { kind: "saved", id };
  });
}

/** Sets the walking order. Places that are not named (added meanwhile) follow after in their old order; ids that are gone are passed over. */
export async function placesOrder(ids: readonly string[]): Promise<void> {
  await stockTransaction(async (tx) => {
    const places = await tx.stockPlace.findMany({ orderBy: [{ position: "asc" }, { id: "asc" }] });
    const positions = new Map(places.map((place) => [place.id, place.position]));
    const named = [...new Set(ids)].filter((id) => positions.has(id));
    const others = places.filter((place) => !named.includes(place.id)).map((place) => place.id);
    await orderWrite(tx, [...named, ...others], positions);
  });
}
