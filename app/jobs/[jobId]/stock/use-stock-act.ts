"use client";

import { useState, useTransition } from "react";
import type { StockAnswer } from "@/lib/server/job-stock-write";

const NO_ANSWER: StockAnswer = { kind: "fault", message: "The program does not answer. Nothing is known to be written; reload the page when it does." };

/** Runs what a press does, one at a time, and keeps its answer. */
export function useStockAct() {
  const [answer, setAnswer] = useState<StockAnswer | null>(null);
  const [busy, start] = useTransition();
  const act = (work: () => Promise<StockAnswer>, then?: (done: StockAnswer) => void) =>
    start(async () => {
      const result = await work().catch(() => NO_ANSWER);
      setAnswer(result);
      then?.(result);
    });
  return { answer, busy, act };
}
export type StockAct = ReturnType<typeof useStockAct>["act"];
