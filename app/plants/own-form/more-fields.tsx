"use client";

import { DEER, type Flag, HAZARDS, LEVELS, PRUNINGS, ROOTS, SEXES, WET_FEET, WILDLIFE, WOODS } from "@/lib/plants/vocabulary";
import { FormField, SelectField, SeveralField } from "./form-field";
import type { FieldsProps } from "./name-fields";

const WOOD_OPTIONS = ["", ...WOODS] as const;
const WET_WORDS = { no: "not at all", brief: "for a day or two", yes: "for weeks" } as const;
const FLAGS_ASKED = ["thorns", "fall-dig-hazard", "skin-irritant", "suckers", "self-seeds", "spreads", "litter", "fragrant", "reblooms"] as const satisfies readonly Flag[];

const hazards = (toxic: FieldsProps["draft"]["toxic"]) => (typeof toxic === "string" ? { people: toxic, pets: toxic, horses: toxic } : toxic);

/** The rest: what the checks of a bed look at. Filled in already from the plant like it. */
export function MoreFields({ draft, faults, set }: FieldsProps) {
  const toxic = hazards(draft.toxic);
  const asked: readonly Flag[] = FLAGS_ASKED;
  return (
    <details className="more-fields">
      <summary>More: what it stands, hazards, care, note</summary>
      <div className="fields">
        <SelectField field="salt" label="Salt tolerance" faults={faults} options={LEVELS} value={draft.salt} change={(salt) => set({ salt })} />
        <SelectField field="deer" label="Deer browse it" faults={faults} options={DEER} value={draft.deer} change={(deer) => set({ deer })} />
        <SelectField field="drought" label="Drought tolerance" faults={faults} options={LEVELS} value={draft.drought} change={(drought) => set({ drought })} />
        <SelectField field="wet" label="Stands water at the roots" faults={faults} options={WET_FEET} words={WET_WORDS} value={draft.wet} change={(wet) => set({ wet })} />
        <SelectField
          field="toxic.people"
          label="Poisonous to people"
          faults={faults}
          options={HAZARDS}
          value={toxic.people}
          change={(people) => set({ toxic: { ...toxic, people } })}
        />
        <SelectField field="toxic.pets" label="To dogs and cats" faults={faults} options={HAZARDS} value={toxic.pets} change={(pets) => set({ toxic: { ...toxic, pets } })} />
        <SelectField field="toxic.horses" label="To horses" faults={faults} options={HAZARDS} value={toxic.horses} change={(horses) => set({ toxic: { ...toxic, horses } })} />
        <SelectField field="roots" label="Roots" faults={faults} options={ROOTS} value={draft.roots} change={(roots) => set({ roots })} />
        <SelectField field="pruning" label="Pruning" faults={faults} options={PRUNINGS} value={draft.pruning} change={(pruning) => set({ pruning })} />
        <SelectField
          field="wood"
          label="Blooms on wood"
          faults={faults}
          options={WOOD_OPTIONS}
          words={{ "": "does not matter" }}
          value={draft.wood ?? ""}
          change={(wood) => set({ wood: wood === "" ? null : wood })}
        />
        <SelectField field="maintenance" label="Upkeep" faults={faults} options={LEVELS} value={draft.maintenance} change={(maintenance) => set({ maintenance })} />
        <SelectField field="sex" label="Sex" faults={faults} options={SEXES} value={draft.sex} change={(sex) => set({ sex })} />
        <FormField field="partner" label="Pollination partner" faults={faults} hint="of a female that fruits">
          {(props) => <input {...props} value={draft.partner} onChange={(event) => set({ partner: event.target.value })} />}
        </FormField>
        <SeveralField
          field="flags"
          label="Also"
          faults={faults}
          options={FLAGS_ASKED}
          values={FLAGS_ASKED.filter((f) => draft.flags.includes(f))}
          change={(flags) => set({ flags: [...draft.flags.filter((f) => !asked.includes(f)), ...flags] })}
        />
        <SeveralField field="wildlife" label="Wildlife" faults={faults} options={WILDLIFE} values={draft.wildlife} change={(wildlife) => set({ wildlife })} />
        <FormField field="note" label="Note" faults={faults} wide>
          {(props) => <input {...props} value={draft.note} maxLength={500} onChange={(event) => set({ note: event.target.value })} />}
        </FormField>
      </div>
    </details>
  );
}
