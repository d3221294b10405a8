"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { LotAnswer, LotChange, StoredLot } from "@/lib/server/lots";
import { lotChangeAction } from "./actions";

const UNREACHED = "Not saved: the program does not answer. What was typed stays in its field; press Enter in it again.";

function wordsOf(answer: LotAnswer): string | null {
  if (answer.kind === "saved") return null;
  if (answer.kind === "stale")
    return `Changed in another window meanwhile (${answer.theirs.quantity.toLocaleString("en-US")} on hand there); yours was not written. Look, then type it again.`;
  return answer.message;
}

export type LotSave = {
  readonly lot: StoredLot;
  /** Why the last change was not written; null when it was. */
  readonly words: string | null;
  /** Grows when the fields must show the stored values again. */
  readonly turn: number;
  readonly change: (change: LotChange) => void;
};

/** A lot as last known, and its changes one after the other, each over the version that the one before made. */
export function useLotSave(given: StoredLot): LotSave {
  const [lot, setLot] = useState(given);
  const [words, setWords] = useState<string | null>(null);
  const [turn, setTurn] = useState(0);
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
    (part: LotChange) => {
      const asked = met.current;
      waiting.current = waiting.current.then(async () => {
        if (met.current !== asked) return;
        try {
          const answer = await lotChangeAction(latest.current.id, latest.current.version, part);
          if (answer.kind === "saved") take(answer.lot);
          if (answer.kind === "stale") {
            met.current += 1;
            take(answer.theirs);
            setTurn((n) => n + 1);
          }
          setWords(wordsOf(answer));
        } catch {
          setWords(UNREACHED);
        }
      });
    },
    [take],
  );
  return { lot, words, turn, change };
}
