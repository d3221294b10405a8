// The nursery page's lots: found, filtered, in order, and one page of them.
import { type LotQuery, lotsFiltered, lotsNamed, lotsSorted } from "../nursery/lot-search";
import { plantNames } from "../plants/plant-names";
import { searchPlants } from "../plants/search";
import type { Taxon } from "../plants/taxon";
import { lotList } from "./lots";
import type { StoredLot } from "./stored-lot";
import { type TaxaHeld, taxaHeld } from "./taxa";
import { today } from "./today";

/** A lot with its plant as the dataset has it now; null when the plant has left it. */
export type LotLine = { readonly lot: StoredLot; readonly taxon: Pick<Taxon, "botanical" | "cultivar" | "group" | "tradeDesignation" | "commonNames"> | null };

export type LotPage = {
  readonly lines: readonly LotLine[];
  /** Lots that the query lets through, and plants of theirs. */
  readonly found: number;
  readonly foundPlants: number;
  readonly page: number;
  readonly pages: number;
  /** Nothing has the words; these are plants whose names come near. */
  readonly nearly: boolean;
  /** Of the whole nursery. */
  readonly totals: { readonly lots: number; readonly onHand: number; readonly reserved: number; readonly uncounted: number };
  readonly blocks: readonly string[];
};

export const PAGE_LOTS = 60;
const NEAR_PLANTS = 40;

/** A lot with the names it is shown by. */
export function lotLine(lot: StoredLot, byId: TaxaHeld["byId"]): LotLine {
  const taxon = byId.get(lot.taxonId);
  if (!taxon) return { lot, taxon: null };
  const { botanical, cultivar, group, tradeDesignation, commonNames } = taxon;
  return { lot, taxon: { botanical, cultivar, group, tradeDesignation, commonNames } };
}

/** The names of a plant, read once as long as the plants are the same. */
const namesKept = new WeakMap<Taxon, readonly string[]>();
function namesOf(taxon: Taxon | undefined): readonly string[] {
  if (!taxon) return [];
  const names = namesKept.get(taxon) ?? plantNames(taxon).map((name) => name.text);
  namesKept.set(taxon, names);
  return names;
}

const dayOf = (countedAt: string): string => today(new Date(countedAt)).iso;
const sum = (lots: readonly StoredLot[], of: (lot: StoredLot) => number): number => lots.reduce((total, lot) => total + of(lot), 0);

/** The blocks that lots stand in, in walking order. */
export function blocksOf(lots: readonly StoredLot[]): string[] {
  return [
    ...new Set(
      lotsSorted(
        lots.map((lot) => ({ ...lot, names: [] })),
        "place",
      ).map((lot) => lot.block),
    ),
  ];
}

/** All lots that a query lets through, in its order. Where no lot has the words, those of plants with names near to them, the nearest first. */
export async function lotsFound(query: LotQuery): Promise<{ readonly lots: readonly StoredLot[]; readonly all: readonly StoredLot[]; readonly nearly: boolean }> {
  const [all, held] = await Promise.all([lotList(), taxaHeld()]);
  const listed = lotsFiltered(
    all.map((lot) => ({ ...lot, names: namesOf(held.byId.get(lot.taxonId)) })),
    query,
    dayOf,
  );
  const bare = (lots: readonly (StoredLot & { names: readonly string[] })[]): StoredLot[] => lots.map(({ names: _names, ...lot }) => lot);
  const named = lotsNamed(listed, query.q);
  if (named.length || !query.q.trim()) return { lots: bare(lotsSorted(named, query.sort)), all, nearly: false };
  const rank = new Map(searchPlants(held.index, query.q, NEAR_PLANTS).map((hit, i) => [hit.taxon.id, i]));
  const near = listed.filter((lot) => rank.has(lot.taxonId)).sort((a, b) => (rank.get(a.taxonId) ?? 0) - (rank.get(b.taxonId) ?? 0));
  return { lots: bare(near), all, nearly: near.length > 0 };
}

/** One page of what a query finds. @param page from 1; one beyond the last is the last */
export async function lotPage(query: LotQuery, page: number): Promise<LotPage> {
  const [{ lots, all, nearly }, held] = await Promise.all([lotsFound(query), taxaHeld()]);
  const pages = Math.max(1, Math.ceil(lots.length / PAGE_LOTS));
  const at = Math.min(Math.max(1, page), pages);
  return {
    lines: lots.slice((at - 1) * PAGE_LOTS, at * PAGE_LOTS).map((lot) => lotLine(lot, held.byId)),
    found: lots.length,
    foundPlants: sum(lots, (lot) => lot.quantity),
    page: at,
    pages,
    nearly,
    totals: { lots: all.length, onHand: sum(all, (lot) => lot.quantity), reserved: sum(all, (lot) => lot.reserved), uncounted: all.filter((lot) => lot.countedAt === null).length },
    blocks: blocksOf(all),
  };
}
