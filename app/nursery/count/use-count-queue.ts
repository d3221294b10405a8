"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { pageKept } from "@/app/parts/page-kept";
import type { StoredLot } from "@/lib/server/lots";
import { lotCountAction } from "../actions";
import { answerWords } from "../use-lot-save";
import { countAdded, countsRead, countsWrite, type WaitingCount } from "./count-queue";

const RETRY_MS = 15_000;
/** The page is kept anew when no count was made for so long. */
const KEEP_MS = 5_000;

/** A count that was not written: why, and whether it may be written all the same. */
export type CountTrouble = { readonly count: WaitingCount; readonly words: string; readonly mayStand: boolean };

export type CountQueue = {
  readonly waiting: number;
  /** The program did not answer; it is asked again. */
  readonly unreached: boolean;
  readonly troubles: readonly CountTrouble[];
  /** What else the last counts did: jobs that go short. */
  readonly told: string | null;
  /** A lot as the program has answered it since the page was opened. */
  readonly latest: ReadonlyMap<string, StoredLot>;
  readonly add: (count: WaitingCount) => void;
  readonly settle: (lotId: string) => void;
};

/** Sends counts one after the other; those that do not get through wait in the browser and are sent again. */
export function useCountQueue(): CountQueue {
  const queue = useRef<readonly WaitingCount[]>([]);
  const sending = useRef(false);
  const keeping = useRef<ReturnType<typeof setTimeout> | undefined>(undefined);
  const lots = useRef(new Map<string, StoredLot>());
  const [waiting, setWaiting] = useState(0);
  const [unreached, setUnreached] = useState(false);
  const [troubles, setTroubles] = useState<readonly CountTrouble[]>([]);
  const [told, setTold] = useState<string | null>(null);
  const [latest, setLatest] = useState<ReadonlyMap<string, StoredLot>>(new Map());

  const hold = useCallback((next: readonly WaitingCount[]) => {
    queue.current = next;
    countsWrite(next);
    setWaiting(next.length);
  }, []);
  const settle = useCallback((lotId: string) => setTroubles((list) => list.filter((trouble) => trouble.count.lotId !== lotId)), []);
  const send = useCallback(async () => {
    if (sending.current) return;
    sending.current = true;
    try {
      for (let count = queue.current[0]; count; count = queue.current[0]) {
        const sent = count;
        const version = Math.max(sent.version, lots.current.get(sent.lotId)?.version ?? 0);
        const answer = await lotCountAction(sent.lotId, version, sent.quantity, sent.anyway);
        hold(queue.current.filter((one) => one !== sent));
        setUnreached(false);
        const lot = answer.kind === "saved" ? answer.lot : answer.kind === "stale" ? answer.theirs : null;
        if (lot) {
          lots.current.set(lot.id, lot);
          setLatest(new Map(lots.current));
        }
        const words = answerWords(answer);
        clearTimeout(keeping.current);
        keeping.current = setTimeout(() => void pageKept(), KEEP_MS);
        if (answer.kind === "saved") setTold(words && `${sent.name}: ${words}`);
        else setTroubles((list) => [...list.filter((trouble) => trouble.count.lotId !== sent.lotId), { count: sent, words: words ?? "", mayStand: answer.kind === "promised" }]);
      }
    } catch {
      setUnreached(true);
    } finally {
      sending.current = false;
    }
  }, [hold]);
  useEffect(() => {
    hold(countsRead());
    void send();
    void pageKept();
    const again = () => void send();
    window.addEventListener("online", again);
    const timer = setInterval(again, RETRY_MS);
    return () => {
      window.removeEventListener("online", again);
      clearInterval(timer);
      clearTimeout(keeping.current);
    };
  }, [hold, send]);
  const add = useCallback(
    (count: WaitingCount) => {
      settle(count.lotId);
      hold(countAdded(queue.current, count));
      void send();
    },
    [hold, send, settle],
  );
  return { waiting, unreached, troubles, told, latest, add, settle };
}
