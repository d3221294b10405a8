"use client";

import { type ReactNode, useId, useState } from "react";

/** A value that tells its source on hover, focus and tap. Esc puts the card away. */
export function SourceMark({ children, source, why = "", label }: { children: ReactNode; source: string; why?: string; label?: string }) {
  const id = useId();
  const [state, setState] = useState<"auto" | "open" | "shut">("auto");
  return (
    <span className={`source-mark ${state}`}>
      <button
        type="button"
        className="source-value"
        aria-describedby={id}
        aria-label={label}
        onClick={() => setState(state === "open" ? "shut" : "open")}
        onBlur={() => setState("auto")}
        onPointerEnter={() => setState((s) => (s === "shut" ? "auto" : s))}
        onKeyDown={(event) => event.key === "Escape" && setState("shut")}
      >
        {children}
      </button>
      <span id={id} role="tooltip" className="source-card">
        {source}
        {why ? ` Departs from the public table: ${why}.` : ""}
      </span>
    </span>
  );
}
