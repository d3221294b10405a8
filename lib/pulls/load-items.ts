// What of a pull sheet goes on the trucks.
import type { LoadItem } from "./loads";
import { standHeightFt, standWidthIn } from "./plant-stand";
import type { PullSheetLine } from "./pull-sheet";
import { trayCount } from "./root-ball";

export type LoadWants = {
  readonly items: readonly LoadItem[];
  /** Lines whose size does not tell what one weighs. */
  readonly unweighed: readonly { readonly key: string; readonly quantity: number; readonly reason: string }[];
};

/**
 * Lines as items of a load, keyed by the line; trays and flats count as one. Plants that were short or damaged are not carried.
 * @param bedIds beds in the order of planting; beds that are not named come last @param withBought whether plants from suppliers ride along
 */
export function loadItems(lines: readonly PullSheetLine[], bedIds: readonly string[], withBought: boolean): LoadWants {
  const items: LoadItem[] = [];
  const unweighed: { key: string; quantity: number; reason: string }[] = [];
  for (const line of lines) {
    const plants = line.open + line.pulled + line.swapped;
    if (plants === 0 || (line.method === "buy" && !withBought)) continue;
    const tray = trayCount(line.size);
    const quantity = tray === null ? plants : Math.ceil(plants / tray);
    if (line.weightLb === null) {
      unweighed.push({ key: line.lineId, quantity, reason: "the size does not tell its weight: write one, such as #3 or 2 in cal B&B" });
      continue;
    }
    const turn = bedIds.indexOf(line.bedId);
    items.push({
      key: line.lineId,
      bedId: line.bedId,
      bedTurn: turn === -1 ? bedIds.length : turn,
      quantity,
      weightLb: line.weightLb,
      widthIn: standWidthIn(line.size, line.ball),
      heightFt: standHeightFt(line.size, line.ball),
    });
  }
  return { items, unweighed };
}

/** The beds in the order chosen, as far as it names them; the others after, as they come. */
export function bedsOrdered<T extends { readonly id: string }>(beds: readonly T[], chosen: readonly string[]): T[] {
  const place = (id: string): number => (chosen.includes(id) ? chosen.indexOf(id) : chosen.length);
  return [...beds].sort((a, b) => place(a.id) - place(b.id));
}
