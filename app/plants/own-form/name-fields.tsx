"use client";

import type { FieldFault } from "@/lib/plants/own-taxon";
import { FormField } from "./form-field";
import type { OwnDraft } from "./own-draft";

export type FieldsProps = { readonly draft: OwnDraft; readonly faults: readonly FieldFault[]; readonly set: (part: Partial<OwnDraft>) => void };

/** What it is called. */
export function NameFields({ draft, faults, set }: FieldsProps) {
  const text = (field: "botanical" | "cultivar" | "trade" | "group" | "common" | "synonyms", label: string, hint: string, wide = false) => (
    <FormField field={field} label={label} faults={faults} hint={hint} wide={wide}>
      {(props) => <input {...props} value={draft[field]} autoComplete="off" spellCheck={false} onChange={(event) => set({ [field]: event.target.value })} />}
    </FormField>
  );
  return (
    <section aria-labelledby="own-names">
      <h2 id="own-names">Names</h2>
      <div className="fields">
        {text("botanical", "Botanical name", "Genus and species: Hydrangea paniculata", true)}
        {text("cultivar", "Cultivar", "without quotes: Little Lantern")}
        {text("trade", "Trade designation", "the name it is sold under, if another")}
        {text("common", "Common names", "parted by commas", true)}
        {text("synonyms", "Also known as", "former names, parted by commas", true)}
        {text("group", "Group", "may stay empty")}
      </div>
    </section>
  );
}
