// Lines of accepted lists that matched no plant: kept until somebody says what they are, or lets them go.
import { z } from "zod";
import { nameKey } from "../nursery/line-match";
import { sizeKey } from "../nursery/list-change";
import { sizeFromText } from "../nursery/size-read";
import { database } from "./database";
import { namesLearn, supplierLotsAdd } from "./list-import-accept";
import { stockTransaction } from "./stock-transaction";
import { taxaHeld } from "./taxa";

/** All unmatched lines of one written name. */
export type UnmatchedName = { readonly key: string; readonly written: string; readonly lines: number; readonly plants: number; readonly sizes: readonly string[] };

export async function unmatchedNames(supplierId: string): Promise<UnmatchedName[]> {
  const rows = await database().unmatchedLine.findMany({ where: { supplierId }, orderBy: [{ row: "asc" }, { id: "asc" }] });
  const byKey = new Map<string, UnmatchedName>();
  for (const { written, size, quantity } of rows) {
    const key = nameKey(written);
    const own = byKey.get(key) ?? { key, written, lines: 0, plants: 0, sizes: [] };
    byKey.set(key, {
      ...own,
      lines: own.lines + 1,
      plants: own.plants + (quantity ?? 0),
      sizes: size && !own.sizes.includes(size) && own.sizes.length < 4 ? [...own.sizes, size] : own.sizes,
    });
  }
  return [...byKey.values()];
}

const breaks = z.array(z.object({ from: z.number(), cents: z.number() })).catch([]);

/** "This is …": the lines of a written name become lots of that plant, and the name is learned. @returns lots made; null when the plant is no longer there */
export async function unmatchedResolve(supplierId: string, key: string, taxonId: string, who: string): Promise<number | null> {
  const held = await taxaHeld();
  const taxon = held.byId.get(taxonId);
  if (!taxon) return null;
  return stockTransaction(async (tx) => {
    const rows = (await tx.unmatchedLine.findMany({ where: { supplierId } })).filter(({ written }) => nameKey(written) === key);
    const [first] = rows;
    if (!first) return 0;
    const offers = rows.map(({ size, quantity, prices, remarks }) => {
      const own = breaks.parse(prices);
      return {
        taxonId,
        sizeKey: sizeKey(sizeFromText(size, taxon.kind), size),
        sizeText: size,
        code: "",
        quantity,
        priceCents: own[0]?.cents ?? null,
        prices: own,
        readyFrom: null,
        grade: "",
        remarks,
      };
    });
    await supplierLotsAdd(tx, held, supplierId, first.listId, offers, { who, why: `“${first.written}” of a list` });
    await tx.unmatchedLine.deleteMany({ where: { id: { in: rows.map(({ id }) => id) } } });
    await namesLearn(tx, supplierId, new Map([[key, taxonId]]));
    return rows.length;
  });
}

/** Lets the lines of a written name go. */
export async function unmatchedDrop(supplierId: string, key: string): Promise<void> {
  const rows = (await database().unmatchedLine.findMany({ where: { supplierId }, select: { id: true, written: true } })).filter(({ written }) => nameKey(written) === key);
  for (let i = 0; i < rows.length; i += 500) await database().unmatchedLine.deleteMany({ where: { id: { in: rows.slice(i, i + 500).map(({ id }) => id) } } });
}
