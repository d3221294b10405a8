"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { LotAnswer, LotChange, StoredLot } from "@/lib/server/lots";
import { lotChangeAction } from "./actions";

export const UNREACHED = "Not saved: the program does not answer. What was typed stays in its field; press Enter in it again.";

/** What is said about an answer; null where all is well. */
export function answerWords(answer: LotAnswer): string | null {
  if (answer.kind === "saved") return answer.released?.length ? `Written. Now short: ${answer.released.join(", ")}.` : null;
  if (answer.kind === "stale")
    return `Changed in another window meanwhile (${answer.theirs.quantity.toLocaleString("en-US")} on hand there); yours was not written. Look, then type it again.`;
  return answer.message;
}

export type LotSave = {
  readonly lot: StoredLot;
  /** Why the last change was not written, or what else it did; null when there is nothing to say. */
  readonly words: string | null;
  /** Grows when the fields must show the stored values again. */
  readonly turn: number;
  readonly change: (change: LotChange) => void;
  /** A count below what is promised, that was refused: writes it all the same. */
  readonly anyway: { readonly count: number; readonly take: () => void; readonly leave: () => void } | null;
};

type Offer = { readonly count: number; readonly part: LotChange };

/** A lot as last known, and its changes one after the other, each over the version that the one before made. */
export function useLotSave(given: StoredLot): LotSave {
  const [lot, setLot] = useState(given);
  const [words, setWords] = useState<string | null>(null);
  const [turn, setTurn] = useState(0);
  const [offer, setOffer] = useState<Offer | null>(null);
  const latest = useRef(given);
  const waiting = useRef<Promise<void>>(Promise.resolve());
  // Counts the changes of others met. What was asked before one of them was asked of a lot that is no more, and is dropped.
  const met = useRef(0);
  const take = useCallback((next: StoredLot) => {
    if (next.version < latest.current.version) return;
    latest.current = next;
    setLot(next);
  }, []);
  useEffect(() => take(given), [given, take]);

  const change = useCallback(
    (part: LotChange, anyway = false) => {
      const asked = met.current;
      waiting.current = waiting.current.then(async () => {
        if (met.current !== asked) return;
        try {
          const answer = await lotChangeAction(latest.current.id, latest.current.version, part, anyway);
          if (answer.kind === "saved") take(answer.lot);
          if (answer.kind === "stale") {
            met.current += 1;
            take(answer.theirs);
            setTurn((n) => n + 1);
          }
          setOffer(answer.kind === "promised" && part.quantity !== undefined ? { count: part.quantity, part } : null);
          setWords(answerWords(answer));
        } catch {
          setWords(UNREACHED);
        }
      });
    },
    [take],
  );
  const anyway = offer && {
    count: offer.count,
    take: () => change(offer.part, true),
    leave: () => {
      setOffer(null);
      setWords(null);
      setTurn((n) => n + 1);
    },
  };
  return { lot, words, turn, change, anyway };
}
