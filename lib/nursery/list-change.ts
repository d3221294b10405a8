// What a supplier's new list changes: which lot each line is, what is new, gone, more, less, dearer or cheaper, and which promises it cannot keep.
import type { PriceBreak } from "./lot";
import { type LineSize, sizeIsKnown } from "./size-read";

/** A supplier's lot as it is held. `reserved` of its plants are promised. */
export type HeldLot = {
  readonly id: string;
  readonly taxonId: string;
  readonly sizeKey: string;
  readonly code: string;
  readonly quantity: number;
  readonly reserved: number;
  readonly priceCents: number | null;
};

/** A line of the new list whose plant is known. */
export type OfferedLot = {
  readonly taxonId: string;
  readonly sizeKey: string;
  readonly sizeText: string;
  readonly code: string;
  /** Null: the list gives no number ("call"); such a lot holds none until it is asked for. */
  readonly quantity: number | null;
  readonly priceCents: number | null;
  readonly prices: readonly PriceBreak[];
  readonly readyFrom: string | null;
  readonly grade: string;
  readonly remarks: string;
};

export type ChangedLot<H extends HeldLot, O extends OfferedLot> = { readonly lot: H; readonly offer: O };
export type ListChange<H extends HeldLot, O extends OfferedLot> = {
  /** Lots of which fewer are offered than are promised, or none: what to look at first. */
  readonly tooFew: readonly { readonly lot: H; readonly offered: number }[];
  readonly added: readonly O[];
  readonly gone: readonly H[];
  /** Every lot that is on the list again, changed or not. */
  readonly kept: readonly ChangedLot<H, O>[];
  readonly more: readonly ChangedLot<H, O>[];
  readonly fewer: readonly ChangedLot<H, O>[];
  readonly dearer: readonly ChangedLot<H, O>[];
  readonly cheaper: readonly ChangedLot<H, O>[];
};

/** One key for a size however it is written: "#3", "3 gal" and "No. 3" are one. A size that is not understood is its own words. */
export function sizeKey(size: LineSize, text: string): string {
  const words = text.toLowerCase().replace(/\s+/g, " ").trim();
  if (!sizeIsKnown(size)) return words;
  const { root, containerClass, caliperIn, heightIn, spreadIn, bulbCm, ballIn, plugCount, flatCount, other } = size;
  return JSON.stringify([root, containerClass, caliperIn, heightIn, spreadIn, bulbCm, ballIn, plugCount, flatCount, other.toLowerCase()]);
}

const bySize = ({ taxonId, sizeKey: size }: { taxonId: string; sizeKey: string }): string => `${taxonId}\u0000${size}`;
const byCode = (one: { taxonId: string; sizeKey: string; code: string }): string => `${bySize(one)}\u0000${one.code}`;

function queues<H extends HeldLot>(lots: Iterable<H>, keyOf: (lot: H) => string): Map<string, H[]> {
  const map = new Map<string, H[]>();
  for (const lot of lots) {
    const own = map.get(keyOf(lot));
    if (own) own.push(lot);
    else map.set(keyOf(lot), [lot]);
  }
  return map;
}

/**
 * Lines and lots paired: first by taxon, size and the supplier's number, then what is left by taxon and size alone, each lot once.
 * Lots that hold nothing and are promised to nobody are not called gone a second time.
 */
export function listChange<H extends HeldLot, O extends OfferedLot>(lots: readonly H[], offers: readonly O[]): ListChange<H, O> {
  const free = new Set(lots);
  const kept: ChangedLot<H, O>[] = [];
  const pair = (rest: readonly O[], keyOf: (one: HeldLot | OfferedLot) => string): O[] => {
    const held = queues(free, keyOf);
    return rest.filter((offer) => {
      const lot = held.get(keyOf(offer))?.shift();
      if (!lot) return true;
      free.delete(lot);
      kept.push({ lot, offer });
      return false;
    });
  };
  const added = pair(pair(offers, byCode), bySize);
  const gone = [...free].filter(({ quantity, reserved }) => quantity > 0 || reserved > 0);
  const tooFew = [
    ...gone.filter(({ reserved }) => reserved > 0).map((lot) => ({ lot, offered: 0 })),
    ...kept.flatMap(({ lot, offer }) => (lot.reserved > (offer.quantity ?? 0) ? [{ lot, offered: offer.quantity ?? 0 }] : [])),
  ];
  const counted = kept.filter(({ offer }) => offer.quantity !== null);
  const priced = kept.filter(({ lot, offer }) => lot.priceCents !== null && offer.priceCents !== null);
  return {
    tooFew,
    added,
    gone,
    kept,
    more: counted.filter(({ lot, offer }) => (offer.quantity ?? 0) > lot.quantity),
    fewer: counted.filter(({ lot, offer }) => (offer.quantity ?? 0) < lot.quantity),
    dearer: priced.filter(({ lot, offer }) => (offer.priceCents ?? 0) > (lot.priceCents ?? 0)),
    cheaper: priced.filter(({ lot, offer }) => (offer.priceCents ?? 0) < (lot.priceCents ?? 0)),
  };
}
