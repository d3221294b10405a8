"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import { WHO_KEY } from "@/app/parts/who-field";
import { eventsKnown, type FieldSnapshot, type QueuedEvent, queueLeft } from "@/lib/papers/field-list";
import type { PullEventKind } from "@/lib/pulls/pull-progress";
import { eventKeep, eventsSent, listKeep, listKept, waitingEvents } from "./field-store";

export type SignalState = "looking" | "sent" | "sending" | "no signal" | "refused";
export type FieldDoing = { readonly lineId: string; readonly kind: PullEventKind; readonly quantity: number; readonly note?: string; readonly data?: string };

const AGAIN_MS = 15_000;

/** An id that no other phone makes. */
function eventId(): string {
  return [...crypto.getRandomValues(new Uint8Array(16))].map((byte) => byte.toString(16).padStart(2, "0")).join("");
}

function nameKept(): string {
  try {
    return localStorage.getItem(WHO_KEY) ?? "";
  } catch {
    return ""; // a browser that keeps nothing: the change goes without a name
  }
}

/** The list of a job on this phone: what the server said last and what waits here. Everything done is kept on the phone first, then sent; what cannot be sent is sent later. */
export function useFieldList(jobId: string) {
  const [snapshot, setSnapshot] = useState<FieldSnapshot | null>(null);
  const [queue, setQueue] = useState<readonly QueuedEvent[]>([]);
  const [signal, setSignal] = useState<SignalState>("looking");
  const [fault, setFault] = useState<string | null>(null);
  const latest = useRef<{ snapshot: FieldSnapshot | null; queue: readonly QueuedEvent[] }>({ snapshot: null, queue: [] });
  const running = useRef(false);
  const path = `/jobs/${jobId}/pull/field/data`;

  const take = useCallback(async (next: FieldSnapshot) => {
    const left = queueLeft(latest.current.queue, next.events);
    const gone = latest.current.queue.filter((event) => !left.includes(event)).map((event) => event.id);
    latest.current = { snapshot: next, queue: left };
    setSnapshot(next);
    setQueue(left);
    await listKeep(next);
    await eventsSent(gone);
  }, []);

  const sync = useCallback(async () => {
    if (running.current) return;
    running.current = true;
    const waiting = latest.current.queue;
    let reached = false;
    try {
      setSignal((before) => (before === "looking" ? before : "sending"));
      const response = waiting.length
        ? await fetch(path, { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(waiting) })
        : await fetch(path, { cache: "no-store" });
      const answer = (await response.json()) as FieldSnapshot | { readonly message: string };
      if ("message" in answer) {
        setFault(answer.message);
        setSignal("refused");
      } else {
        reached = true;
        await take(answer);
        setFault(null);
        setSignal("sent");
      }
    } catch {
      setSignal("no signal");
    } finally {
      running.current = false;
    }
    // What was recorded while this was on its way goes next.
    if (reached && latest.current.queue.length) void sync();
  }, [path, take]);

  useEffect(() => {
    let gone = false;
    const begin = async () => {
      try {
        const [kept, waiting] = await Promise.all([listKept(jobId), waitingEvents(jobId)]);
        if (gone) return;
        latest.current = { snapshot: kept, queue: waiting };
        setSnapshot(kept);
        setQueue(waiting);
      } catch {
        setFault("This phone's storage is off: changes are sent at once, but nothing is kept without a signal.");
      }
      await sync();
    };
    void begin();
    const again = () => void sync();
    const timer = setInterval(again, AGAIN_MS);
    window.addEventListener("online", again);
    return () => {
      gone = true;
      clearInterval(timer);
      window.removeEventListener("online", again);
    };
  }, [jobId, sync]);

  /** Records something done: on the phone at once, then to the office. */
  const record = useCallback(
    async ({ lineId, kind, quantity, note = "", data = "" }: FieldDoing) => {
      const { snapshot: list, queue: waiting } = latest.current;
      if (!list) return;
      const event: QueuedEvent = { id: eventId(), lineId, kind, quantity, note, data, who: nameKept(), doneAt: new Date().toISOString(), knew: eventsKnown(lineId, list, waiting) };
      latest.current = { ...latest.current, queue: [...waiting, event] };
      setQueue(latest.current.queue);
      try {
        await eventKeep(jobId, event, Date.now() * 1000 + (waiting.length % 1000));
      } catch {
        setFault("This phone's storage is full: the change is on the screen and goes out with the next signal, but would be lost if the page is closed before.");
      }
      await sync();
    },
    [jobId, sync],
  );
  return { snapshot, queue, signal, fault, record, sync };
}
