"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { Layout, LayoutInput } from "@/lib/ground/layout";
import type { LayoutAsk } from "./layout-worker";

export type Layouts = {
  /** "failed": the browser would not start the worker. */
  readonly state: "idle" | "working" | "done" | "failed";
  readonly done: number;
  readonly asked: number;
  /** The best first. */
  readonly found: readonly Layout[];
  readonly ask: (input: LayoutInput, seeds: readonly number[]) => void;
  readonly clear: () => void;
};

type Work = Pick<Layouts, "state" | "done" | "asked" | "found">;
const IDLE: Work = { state: "idle", done: 0, asked: 0, found: [] };

const better = (a: Layout, b: Layout) => b.score.overall - a.score.overall || a.seed - b.seed;

/** Arrangements worked out in a worker; a new ask ends the one under way. */
export function useLayouts(): Layouts {
  const worker = useRef<Worker | null>(null);
  const [work, setWork] = useState<Work>(IDLE);
  const stop = useCallback(() => {
    worker.current?.terminate();
    worker.current = null;
  }, []);
  useEffect(() => stop, [stop]);
  const ask = useCallback(
    (input: LayoutInput, seeds: readonly number[]) => {
      stop();
      setWork({ state: "working", done: 0, asked: seeds.length, found: [] });
      const own = new Worker(new URL("./layout-worker.ts", import.meta.url), { type: "module" });
      worker.current = own;
      own.onmessage = (event: MessageEvent<Layout>) =>
        setWork((before) => {
          const done = before.done + 1;
          return { state: done === before.asked ? "done" : "working", done, asked: before.asked, found: [...before.found, event.data].sort(better) };
        });
      own.onerror = () => setWork((before) => ({ ...before, state: "failed" }));
      own.postMessage({ input, seeds } satisfies LayoutAsk);
    },
    [stop],
  );
  const clear = useCallback(() => {
    stop();
    setWork(IDLE);
  }, [stop]);
  return { ...work, ask, clear };
}
