"use client";

import { useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import type { NameGroup, NameShown, PlantShown } from "@/lib/server/list-import-view";
import { PlantSearch } from "../../plant-search";

/** One written name: the line as it stands first, its candidates as one-press choices, a search for another plant. */
export function NameRow({ name, group, choose }: { name: NameShown; group: NameGroup; choose: (plant: PlantShown | null | undefined) => void }) {
  const [searching, setSearching] = useState(false);
  const { written, chosen, candidates, lines, row, sizes } = name;
  const said = chosen === null ? "None of these; kept without a plant." : chosen ? "" : group === "none" ? "No plant found." : "";
  const foreign = chosen && !candidates.some(({ id }) => id === chosen.id);
  return (
    <li data-name-row className={chosen === undefined ? "name-row" : "name-row settled"}>
      <div className="name-written">
        <b>{written}</b>
        <span className="second-line small soft">
          row {row}
          {lines > 1 ? ` and ${lines - 1} more` : ""}
          {sizes.length ? `; ${sizes.join(", ")}` : ""}
        </span>
      </div>
      <div className="name-choices">
        {candidates.map((plant, i) => (
          <button
            key={plant.id}
            type="button"
            className="choice"
            aria-pressed={group === "sure" && chosen === undefined ? true : chosen?.id === plant.id}
            onClick={() => choose(chosen?.id === plant.id ? undefined : plant)}
          >
            <span className="choice-key">{i + 1}</span> <BotanicalText taxon={plant} /> <span className="common">{plant.common}</span>
          </button>
        ))}
        {foreign ? (
          <button type="button" className="choice" aria-pressed={true} onClick={() => choose(undefined)}>
            <BotanicalText taxon={chosen} /> <span className="common">{chosen.common}</span>
          </button>
        ) : null}
        <span className="row">
          <button type="button" className="plain" aria-expanded={searching} onClick={() => setSearching(!searching)} aria-label={`Another plant for ${written}`}>
            Another …
          </button>
          {candidates.length ? (
            <button
              type="button"
              className="plain"
              aria-pressed={chosen === null}
              onClick={() => choose(chosen === null ? undefined : null)}
              aria-label={`None of these for ${written}`}
            >
              None of these
            </button>
          ) : null}
          <span className="small soft">{said}</span>
        </span>
        {searching ? (
          <PlantSearch
            label={`What is “${written}”? Type any name`}
            take={(_, __, plant) => {
              setSearching(false);
              choose(plant);
            }}
          />
        ) : null}
      </div>
    </li>
  );
}
