// Why a group of a job falls short, in words: none at all, promised to others, not ready in time, or only other sizes.

import { stepsText } from "../nursery/count-words";
import { type Lot, lotFree } from "../nursery/lot";
import { sizeSteps } from "../nursery/size-step";
import { isoDateText } from "./iso-date";
import type { JobRules, StockGroup } from "./stock-group";
import { placeText } from "./walking-order";

const count = (n: number): string => n.toLocaleString("en-US");
const NAMED_MAX = 3;

function listed(lots: readonly Lot[], words: (lot: Lot) => string): string {
  const more = lots.length - NAMED_MAX;
  return [...lots.slice(0, NAMED_MAX).map(words), ...(more > 0 ? [`${more} more ${more === 1 ? "lot" : "lots"}`] : [])].join("; ");
}

/** @param lots lots of any taxon, with what is promised @returns a sentence or a few */
export function shortReason(group: StockGroup, lots: readonly Lot[], rules: JobRules): string {
  const own = lots.filter((lot) => lot.taxonId === group.taxonId);
  if (!own.length) return "None at all: not in the nursery, and on no supplier's list.";
  const onHand = own.reduce((sum, lot) => sum + lot.onHand, 0);
  const free = own.filter((lot) => lotFree(lot) > 0);
  if (!free.length) return onHand === 0 ? "None left: every lot of it is at 0." : `All ${count(onHand)} on hand are promised.`;
  const stepsAbs = (lot: Lot): number | null => {
    const steps = sizeSteps(group.size, lot.size);
    return steps === null ? null : Math.abs(steps);
  };
  const isLate = (lot: Lot): boolean => rules.plantingOn !== null && lot.readyFrom !== null && lot.readyFrom > rules.plantingOn;
  const sizeServes = (lot: Lot): boolean => (stepsAbs(lot) ?? 99) <= rules.stepsAllowed;
  const late = free.filter((lot) => sizeServes(lot) && isLate(lot));
  const otherSize = free.filter((lot) => !sizeServes(lot)).sort((a, b) => (stepsAbs(a) ?? 99) - (stepsAbs(b) ?? 99));
  const serving = free.filter((lot) => sizeServes(lot) && !isLate(lot)).reduce((sum, lot) => sum + lotFree(lot), 0);
  const sentences = [
    serving > 0 && `Only ${count(serving)} free for this job's beds together.`,
    late.length > 0 && `Not ready by the planting date: ${listed(late, (lot) => `${count(lotFree(lot))} at ${placeText(lot)}, ready ${isoDateText(lot.readyFrom ?? "")}`)}.`,
    otherSize.length > 0 &&
      `${serving > 0 || late.length > 0 ? "In other sizes" : "Only in other sizes"}: ${listed(otherSize, (lot) => {
        const steps = sizeSteps(group.size, lot.size);
        return `${count(lotFree(lot))} of ${lot.sizeText || "no size said"} at ${placeText(lot)}${steps === null ? "" : ` (${stepsText(steps)})`}`;
      })}.`,
    rules.stepsAllowed === 0 && otherSize.some((lot) => stepsAbs(lot) === 1) && "One size up or down is not allowed on this job yet.",
  ];
  return sentences.filter(Boolean).join(" ");
}
