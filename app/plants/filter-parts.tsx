"use client";

import type { FilterPart, PlantFilter } from "@/lib/papers/plant-filter";

/** What is set, each part with its way out. */
export function FilterParts({ parts, change, reset }: { parts: readonly FilterPart[]; change: (next: PlantFilter) => void; reset: () => void }) {
  if (!parts.length) return null;
  return (
    <ul className="filter-parts" aria-label="Filters set">
      {parts.map((part) => (
        <li key={part.words}>
          <button type="button" onClick={() => change(part.without)} aria-label={`Without ${part.words}`}>
            {part.words} <span aria-hidden="true">×</span>
          </button>
        </li>
      ))}
      <li>
        <button type="button" className="plain" onClick={reset}>
          Reset
        </button>
      </li>
    </ul>
  );
}
