"use client";

import { memo } from "react";
import { TextField } from "@/app/jobs/[jobId]/beds/[bedId]/text-field";
import { lengthFromText, plantSizeText } from "@/lib/ground/length";
import { filterWrite, monthName, type OpenRange, type PlantFilter, zoneWords } from "@/lib/papers/plant-filter";
import { zoneText } from "@/lib/place/zone";
import { FEATURE_KINDS, KINDS, LIGHTS } from "@/lib/plants/vocabulary";
import { CheckField, ChoiceField } from "./choice-field";
import { ColorField } from "./color-field";
import type { FinderPlace } from "./plant-finder";

type Props = { readonly filter: PlantFilter; readonly set: (part: Partial<PlantFilter>) => void; readonly place: FinderPlace };

const LIGHT_WORDS = { sun: "full sun", part: "part shade", shade: "shade" } as const;
const ZONES = Array.from({ length: 13 }, (_, i) => i + 1);
const MONTH_NUMBERS = Array.from({ length: 12 }, (_, i) => i);

function feetRead(typed: string): { ok: true; value: number | null } | { ok: false; fault: string } {
  if (typed === "") return { ok: true, value: null };
  const read = lengthFromText(typed, "ft");
  return read.ok ? { ok: true, value: Math.round(read.feet * 100) / 100 } : { ok: false, fault: read.fault };
}

function RangeField({ legend, range, keep }: { legend: string; range: OpenRange; keep: (range: OpenRange) => void }) {
  const text = (feet: number | null) => (feet === null ? "" : plantSizeText(feet));
  return (
    <fieldset className="rail-field range-field">
      <legend>{legend}</legend>
      <div className="row">
        <TextField label={`${legend}, from`} text={text(range[0])} placeholder="from" read={feetRead} keep={(from) => keep([from, range[1]])} />
        <span aria-hidden="true">–</span>
        <TextField label={`${legend}, to`} text={text(range[1])} placeholder="to" read={feetRead} keep={(to) => keep([range[0], to])} />
      </div>
    </fieldset>
  );
}

const withoutWords = (filter: PlantFilter): string => filterWrite({ ...filter, q: "" });
/** The words typed are not its business: it is not drawn anew for them. */
const isSame = (a: Props, b: Props): boolean => a.set === b.set && a.place === b.place && withoutWords(a.filter) === withoutWords(b.filter);

/** The filters a designer uses, in the order of a planting plan: what, where, how large, when in color, what it must stand. */
export const FilterRail = memo(function FilterRail({ filter, set, place }: Props) {
  const here = place.zone;
  const zones = here === null || ZONES.includes(here) ? ZONES : [here, ...ZONES];
  return (
    <form className="rail-form" aria-label="Filters" onSubmit={(event) => event.preventDefault()}>
      <fieldset className="rail-field">
        <legend>Kind</legend>
        <div className="kind-checks">
          {KINDS.map((kind) => (
            <CheckField
              key={kind}
              label={kind}
              on={filter.kinds.includes(kind)}
              change={(on) => set({ kinds: on ? KINDS.filter((k) => k === kind || filter.kinds.includes(k)) : filter.kinds.filter((k) => k !== kind) })}
            />
          ))}
        </div>
      </fieldset>
      <ChoiceField
        label="Hardy in"
        value={filter.zone === null ? null : String(filter.zone)}
        choices={zones.map((zone) => [String(zone), zone === here ? `zone ${zoneText(zone)}, this place` : zoneWords(zone)])}
        any="any zone"
        change={(zone) => set({ zone: zone === null ? null : Number(zone) })}
      />
      <ChoiceField label="Light" value={filter.light} choices={LIGHTS.map((light) => [light, LIGHT_WORDS[light]])} any="any light" change={(light) => set({ light })} />
      <RangeField legend="Grows to, height" range={filter.height} keep={(height) => set({ height })} />
      <RangeField legend="Grows to, spread" range={filter.spread} keep={(spread) => set({ spread })} />
      <ChoiceField
        label="In color in"
        value={filter.month === null ? null : String(filter.month)}
        choices={MONTH_NUMBERS.map((month) => [String(month), monthName(month)])}
        any="any month"
        change={(month) => set({ month: month === null ? null : Number(month) })}
      />
      <ColorField chosen={filter.colors} change={(colors) => set({ colors })} />
      <ChoiceField label="By its" value={filter.feature} choices={FEATURE_KINDS.map((kind) => [kind, kind])} any="any feature" change={(feature) => set({ feature })} />
      <ChoiceField
        label="Deer"
        value={filter.deer}
        choices={[
          ["rarely", "rarely browse it"],
          ["sometimes", "sometimes at most"],
        ]}
        any="never mind"
        change={(deer) => set({ deer })}
      />
      <ChoiceField
        label="Salt"
        value={filter.salt}
        choices={[
          ["medium", "stands some"],
          ["high", "stands much"],
        ]}
        any="never mind"
        change={(salt) => set({ salt })}
      />
      <ChoiceField
        label="Wet feet"
        value={filter.wet}
        choices={[
          ["brief", "for a day or two"],
          ["yes", "for weeks"],
        ]}
        any="never mind"
        change={(wet) => set({ wet })}
      />
      <div className="rail-field rail-checks">
        <CheckField label="evergreen leaves" on={filter.evergreen} change={(evergreen) => set({ evergreen })} />
        {place.native ? <CheckField label={`native to ${place.state}`} on={filter.native} change={(native) => set({ native })} /> : null}
        <CheckField label="free of toxic parts" on={filter.toxicFree} change={(toxicFree) => set({ toxicFree })} />
        <CheckField label="own and corrected" on={filter.own} change={(own) => set({ own })} />
        <CheckField label="On hand" on={filter.onHand} change={(onHand) => set({ onHand })} />
      </div>
    </form>
  );
}, isSame);
