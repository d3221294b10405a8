"use client";

import { type RefObject, useEffect, useState } from "react";
import type { PlanColors } from "./plan-painter";

/** The sheet's colors for a canvas, which cannot read style sheets: read anew when the screen turns dark or light. */
export function usePlanColors(area: RefObject<HTMLElement | null>): PlanColors | null {
  const [colors, setColors] = useState<PlanColors | null>(null);
  useEffect(() => {
    const read = () => {
      if (!area.current) return;
      const style = getComputedStyle(area.current);
      const of = (name: string) => style.getPropertyValue(name).trim();
      setColors({ ink: of("--ink"), paper: of("--paper"), soft: of("--soft"), accent: of("--accent"), alert: of("--alert") });
    };
    read();
    const dark = window.matchMedia("(prefers-color-scheme: dark)");
    dark.addEventListener("change", read);
    return () => dark.removeEventListener("change", read);
  }, [area]);
  return colors;
}
