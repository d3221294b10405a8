"use client";

import type { FilterPart, PlantFilter } from "@/lib/papers/plant-filter";
import type { ListedPlant } from "@/lib/plants/plant-list";

type Props = {
  readonly filter: PlantFilter;
  readonly parts: readonly FilterPart[];
  /** What the words alone find. */
  readonly called: readonly ListedPlant[];
  readonly fits: (plant: ListedPlant, filter: PlantFilter) => boolean;
  readonly change: (next: PlantFilter) => void;
};

/** No result: what to do about it. Each filter is said with how many plants there would be without it. */
export function NothingFound({ filter, parts, called, fits, change }: Props) {
  const words = filter.q.trim();
  if (called.length === 0 || parts.length === 0)
    return (
      <div className="nothing">
        <p>No plant is called “{words}” or nearly so. Try fewer letters, or the genus alone.</p>
        <p>
          <button type="button" onClick={() => change({ ...filter, q: "" })}>
            All plants
          </button>
        </p>
      </div>
    );
  const ways = parts.map((part) => ({ part, count: called.filter((p) => fits(p, part.without)).length })).sort((a, b) => b.count - a.count);
  return (
    <div className="nothing">
      <p>{words ? `${called.length} ${called.length === 1 ? "plant is" : "plants are"} called so, but none fits all the filters.` : "No plant fits all of this."}</p>
      <ul className="plain-list">
        {ways.map(({ part, count }) => (
          <li key={part.words}>
            <button type="button" className="plain" onClick={() => change(part.without)}>
              Without {part.words}
            </button>{" "}
            <span className="soft">{count === 0 ? "still none" : `${count.toLocaleString("en-US")} ${count === 1 ? "plant" : "plants"}`}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}
