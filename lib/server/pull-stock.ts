// What an event of the field does to the stock: plants pulled, missing or damaged leave their lot, plants swapped for others stay in it and are free again.
import type { PullEventKind } from "../pulls/pull-progress";
import type { Transaction } from "./database";
import { reservationMove } from "./reservations";

type StockEvent = { readonly lineId: string; readonly kind: PullEventKind; readonly quantity: number; readonly note: string; readonly who: string };

/** How each kind moves plants: whether they leave the lot, whether they count as pulled, and how the lot's history calls it. */
const MOVES = {
  pulled: { leaves: true, pulled: true, kind: "pull", why: "" },
  short: { leaves: true, pulled: false, kind: "write off", why: "not to be found when pulling" },
  damaged: { leaves: true, pulled: false, kind: "write off", why: "damaged when pulling" },
  swapped: { leaves: false, pulled: false, kind: "release", why: "another plant was pulled instead" },
} as const;

/**
 * Applies an event to the reservation that its line stands for. Each step is one conditional statement, so that no number falls below zero whoever else writes.
 * @returns false where the reservation or the lot holds too few for it: then nothing is changed. Lines without a reservation move no stock.
 */
export async function stockAfterEvent(tx: Transaction, jobId: string, event: StockEvent): Promise<boolean> {
  const { kind, quantity, lineId } = event;
  if (quantity === 0 || kind === "note" || kind === "photo" || kind === "substituted") return true;
  const reservation = await tx.reservation.findFirst({ where: { id: lineId, jobId }, include: { lot: true } });
  if (!reservation) return true;
  const move = MOVES[kind];
  const { lot } = reservation;
  const leaves = move.leaves ? quantity : 0;
  const fits =
    reservation.open >= quantity &&
    reservation.pulled + (move.pulled ? quantity : 0) >= 0 &&
    lot.reserved >= quantity &&
    lot.quantity >= leaves &&
    lot.reserved - quantity <= lot.quantity - leaves;
  if (!fits) return false;
  const why = [quantity < 0 ? "taken back" : "", move.why, event.note].filter(Boolean).join(": ");
  await reservationMove(tx, reservation, { ...move, quantity, who: event.who, why });
  return true;
}
