"use client";

import { useEffect, useRef } from "react";
import type { PlantHit } from "@/app/api/plants/route";
import { BotanicalText } from "@/app/parts/botanical-text";
import { PlantCombobox } from "@/app/parts/plant-combobox";
import { YearStripSvg } from "@/app/parts/year-strip-svg";

/** The next plant of the list, each hit with its year here. A slash jumps to the field. */
export function PlantAdd({ jobId, freezeDays, add }: { jobId: string; freezeDays: readonly (number | null)[]; add: (hit: PlantHit) => void }) {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === "/" && !(event.target instanceof HTMLElement && event.target.matches("input, textarea, select"))) {
        event.preventDefault();
        input.current?.focus();
      }
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);
  return (
    <PlantCombobox<PlantHit>
      label="Add a plant: type any name"
      address={(query) => `/api/plants?job=${encodeURIComponent(jobId)}&q=${encodeURIComponent(query)}`}
      keyOf={(hit) => hit.taxon.id}
      take={add}
      nothing={(query) => `Nothing in the dataset is called “${query}” or nearly so.`}
      input={input}
      show={(hit, id) => (
        <>
          <span>
            <BotanicalText taxon={hit.taxon} /> <span className="common">{hit.taxon.commonNames[0]}</span>
            {hit.formerName ? <span className="common"> · was {hit.formerName}</span> : null}
          </span>
          <span className="common">
            {hit.sizeWords} · zones {hit.taxon.zoneLow}–{hit.taxon.zoneHigh}
          </span>
          <span className="hit-strip">
            <YearStripSvg marks={hit.marks} sentence={hit.sentence} idPrefix={id} freezeDays={freezeDays} />
          </span>
        </>
      )}
    />
  );
}
