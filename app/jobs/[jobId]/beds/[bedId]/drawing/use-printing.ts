"use client";

import { useEffect, useState } from "react";
import { flushSync } from "react-dom";

/** Whether the page is being printed: what is only for paper is made then, and is there before the page is taken. */
export function usePrinting(): boolean {
  const [printing, setPrinting] = useState(false);
  useEffect(() => {
    const paper = window.matchMedia("print");
    const begin = () => flushSync(() => setPrinting(true));
    const end = () => setPrinting(false);
    const change = () => (paper.matches ? begin() : end());
    window.addEventListener("beforeprint", begin);
    window.addEventListener("afterprint", end);
    paper.addEventListener("change", change);
    return () => {
      window.removeEventListener("beforeprint", begin);
      window.removeEventListener("afterprint", end);
      paper.removeEventListener("change", change);
    };
  }, []);
  return printing;
}
