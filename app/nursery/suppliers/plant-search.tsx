"use client";

import type { NameHit } from "@/app/api/names/route";
import { BotanicalText } from "@/app/parts/botanical-text";
import { PlantCombobox } from "@/app/parts/plant-combobox";
import type { PlantShown } from "@/lib/server/list-import-view";

/** Search for one plant by any name. @param take hears the plant's id, its name in words, and the plant to show */
export function PlantSearch({ label, take }: { label: string; take: (id: string, name: string, plant: PlantShown) => void }) {
  return (
    <PlantCombobox<NameHit>
      label={label}
      address={(query) => `/api/names?q=${encodeURIComponent(query)}`}
      keyOf={(hit) => hit.id}
      take={(hit) => {
        const { id, botanical, cultivar, group, tradeDesignation, commonNames } = hit;
        const name = [botanical, cultivar ? `‘${cultivar}’` : "", tradeDesignation ?? ""].filter(Boolean).join(" ");
        take(id, name, { id, botanical, cultivar, group, tradeDesignation, common: commonNames[0] ?? "" });
      }}
      nothing={(query) => `No plant is called “${query}” or nearly so.`}
      show={(hit) => (
        <span>
          <BotanicalText taxon={hit} /> <span className="common">{hit.commonNames[0]}</span>
        </span>
      )}
    />
  );
}
