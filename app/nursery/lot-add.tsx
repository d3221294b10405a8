"use client";

import type { NameHit } from "@/app/api/names/route";
import { BotanicalText } from "@/app/parts/botanical-text";
import { PlantCombobox } from "@/app/parts/plant-combobox";

/** The plant of a new lot, by any name. */
export function LotAdd({ add, busy }: { add: (hit: NameHit) => void; busy: boolean }) {
  return (
    <PlantCombobox<NameHit>
      label="Add a lot: type any name of its plant"
      address={(query) => `/api/names?q=${encodeURIComponent(query)}`}
      keyOf={(hit) => hit.id}
      take={add}
      busy={busy}
      nothing={(query) => `No plant is called “${query}” or nearly so.`}
      show={(hit) => (
        <span>
          <BotanicalText taxon={hit} /> <span className="common">{hit.commonNames[0]}</span>
          {hit.formerName ? <span className="common"> · was {hit.formerName}</span> : null}
        </span>
      )}
    />
  );
}
