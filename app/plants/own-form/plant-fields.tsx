"use client";

import { FOLIAGES, HABITS, KINDS, LIGHTS, MOISTURES, RATES } from "@/lib/plants/vocabulary";
import { WindowFields } from "../window-fields";
import { faultOf, PairField, SelectField, SeveralField } from "./form-field";
import type { FieldsProps } from "./name-fields";

const LIGHT_WORDS = { sun: "full sun", part: "part shade", shade: "shade" } as const;
/** Leaves out and gone when foliage is changed from evergreen: the reference climate's usual dates. */
const LEAVES = { onDay: 121, offDay: 294 } as const;

/** What it is and where it grows. */
export function PlantFields({ draft, faults, set }: FieldsProps) {
  return (
    <section aria-labelledby="own-what">
      <h2 id="own-what">Plant</h2>
      <div className="fields">
        <SelectField field="kind" label="Kind" faults={faults} options={KINDS} value={draft.kind} change={(kind) => set({ kind })} />
        <SelectField field="habit" label="Habit" faults={faults} options={HABITS} value={draft.habit} change={(habit) => set({ habit })} />
        <SelectField field="rate" label="Growth" faults={faults} options={RATES} value={draft.rate} change={(rate) => set({ rate })} />
        <PairField field="height" label="Height" faults={faults} pair={draft.height} hint="4 ft, 18 in" change={(height) => set({ height })} />
        <PairField field="spread" label="Spread" faults={faults} pair={draft.spread} hint="3 ft, 30 in" change={(spread) => set({ spread })} />
        <PairField field="zones" label="Hardy in zones" faults={faults} pair={draft.zones} numeric change={(zones) => set({ zones })} />
        <SeveralField field="light" label="Light" faults={faults} options={LIGHTS} words={LIGHT_WORDS} values={draft.light} change={(light) => set({ light })} />
        <SeveralField field="moisture" label="Soil moisture" faults={faults} options={MOISTURES} values={draft.moisture} change={(moisture) => set({ moisture })} />
        <PairField field="ph" label="Soil pH" faults={faults} pair={draft.ph} numeric change={(ph) => set({ ph })} />
        <SelectField
          field="foliage"
          label="Leaves"
          faults={faults}
          options={FOLIAGES}
          value={draft.foliage}
          change={(foliage) => set({ foliage, leaves: foliage === "evergreen" ? draft.leaves : (draft.leaves ?? LEAVES) })}
        />
        {draft.foliage !== "evergreen" && draft.leaves ? (
          <WindowFields
            id="own-leaves"
            words={["Leaves out", "Leaves gone"]}
            from={draft.leaves.onDay}
            to={draft.leaves.offDay}
            change={(onDay, offDay) => set({ leaves: { onDay, offDay } })}
          />
        ) : null}
        <span className="alert small">{faultOf(faults, "leaves")}</span>
      </div>
    </section>
  );
}
