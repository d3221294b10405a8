// A group of a job as stock sees it: one row of one bed that is to be planted, what is promised to it, and what of that no longer fits.

import { plantsText, stepsText } from "../nursery/count-words";
import type { Lot } from "../nursery/lot";
import type { LineSize } from "../nursery/size-read";
import { sizeSteps } from "../nursery/size-step";
import { isoDateText } from "./iso-date";

/** `received`: plants already pulled for it without a reservation. */
export type StockGroup = {
  readonly key: string;
  readonly bedId: string;
  readonly bedName: string;
  readonly rowId: string;
  readonly letter: string;
  readonly taxonId: string;
  readonly taxonName: string;
  readonly sizeText: string;
  readonly size: LineSize;
  readonly wanted: number;
  readonly received: number;
  readonly remarks: string;
};

/** When the job is planted (ISO date; null: not yet set) and how many size steps off it allows. */
export type JobRules = { readonly plantingOn: string | null; readonly stepsAllowed: 0 | 1 };

/** Plants of a lot promised to a row of a bed; `lot.reserved` includes them. */
export type PromisedPlants = { readonly id: string; readonly bedId: string; readonly rowId: string; readonly open: number; readonly pulled: number; readonly lot: Lot };

/** `serves`: plants of it that the group can count on. `release`: open plants to give back, and `why`; null: all of it fits. */
export type HeldPlants = { readonly promised: PromisedPlants; readonly steps: number; readonly serves: number; readonly release: number; readonly why: string | null };

export const groupKey = (bedId: string, rowId: string): string => `${bedId}:${rowId}`;

/** Why plants of a lot do not serve a group; null when they do. */
export function lotMisfit(group: StockGroup, lot: Lot, rules: JobRules): string | null {
  if (lot.taxonId !== group.taxonId) return `the bed now wants ${group.taxonName} here`;
  const steps = sizeSteps(group.size, lot.size);
  if (steps === null) return `the bed wants ${group.sizeText || "no size said"}, these are ${lot.sizeText || "of no size said"}`;
  if (Math.abs(steps) > rules.stepsAllowed) return `the bed wants ${group.sizeText || "no size said"}, these are ${lot.sizeText || "of no size said"} (${stepsText(steps)})`;
  if (lot.readyFrom !== null && rules.plantingOn !== null && lot.readyFrom > rules.plantingOn) return `not ready before ${isoDateText(lot.readyFrom)}`;
  return null;
}

/** Surplus is given back from other sizes first, then from suppliers' lots, then from the smaller promise. */
const releaseOrder = (a: HeldPlants, b: HeldPlants): number =>
  Math.abs(b.steps) - Math.abs(a.steps) ||
  Number(b.promised.lot.owner.kind === "supplier") - Number(a.promised.lot.owner.kind === "supplier") ||
  a.promised.open - b.promised.open ||
  a.promised.id.localeCompare(b.promised.id);

/**
 * What is promised to a group, judged by the design and the job's rules as they are now: what does not fit is to be given back whole, and of what fits
 * no more than the group wants. Plants pulled already are never given back here. @returns in the order given
 */
export function heldJudged(group: StockGroup, promised: readonly PromisedPlants[], rules: JobRules): readonly HeldPlants[] {
  const held = promised.map((one): HeldPlants => {
    const why = lotMisfit(group, one.lot, rules);
    const serves = why === null ? one.open + one.pulled : 0;
    return { promised: one, steps: sizeSteps(group.size, one.lot.size) ?? 0, serves, release: why === null ? 0 : one.open, why };
  });
  const fitting = held.filter(({ why }) => why === null);
  let over = fitting.reduce((sum, { serves }) => sum + serves, 0) - Math.max(0, group.wanted - group.received);
  const surplus = new Map<string, number>();
  for (const { promised: one } of [...fitting].sort(releaseOrder)) {
    const release = Math.min(one.open, Math.max(0, over));
    if (release > 0) surplus.set(one.id, release);
    over -= release;
  }
  return held.map((one) => {
    const release = surplus.get(one.promised.id);
    return release === undefined
      ? one
      : { ...one, serves: one.serves - release, release, why: `the bed now wants ${plantsText(group.wanted)}, ${release.toLocaleString("en-US")} fewer` };
  });
}

/** Plants that a group can count on. */
export const heldCount = (held: readonly HeldPlants[]): number => held.reduce((sum, { serves }) => sum + serves, 0);

/** Lots as they would be once what no longer fits is given back. */
export function lotsAfterRelease(lots: readonly Lot[], held: readonly HeldPlants[]): readonly Lot[] {
  const given = new Map<string, number>();
  for (const { promised, release } of held) given.set(promised.lot.id, (given.get(promised.lot.id) ?? 0) + release);
  return lots.map((lot) => ({ ...lot, reserved: Math.max(0, lot.reserved - (given.get(lot.id) ?? 0)) }));
}
