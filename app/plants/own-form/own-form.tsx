"use client";

import Link from "next/link";
import { useRouter } from "next/navigation";
import { type FormEvent, useState, useTransition } from "react";
import { unmatchedResolveAction } from "@/app/nursery/suppliers/actions";
import type { FieldFault, OwnTaxonInput } from "@/lib/plants/own-taxon";
import { ownTaxonSaveAction } from "../actions";
import { FeatureRows } from "./feature-rows";
import { MoreFields } from "./more-fields";
import { NameFields } from "./name-fields";
import { draftInput, draftOf, type OwnDraft } from "./own-draft";
import { OwnPreview } from "./own-preview";
import { PlantFields } from "./plant-fields";

type Props = {
  /** The plant to change; null adds one. */
  readonly id: string | null;
  readonly input: OwnTaxonInput;
  /** Where the windows are seen. */
  readonly placeLabel: string;
  readonly back: string;
  /** The lines of a supplier's list that are of this plant: they become lots of it. */
  readonly listed?: { readonly supplierId: string; readonly key: string };
};

/** Brings the first field with a fault into view. */
function faultShow(faults: readonly FieldFault[]): void {
  const field = faults[0]?.field ?? "";
  const part = field
    .split(".")
    .slice(0, field.startsWith("features.") ? 2 : 1)
    .join(".");
  const control = document.getElementById(`own-${part}`);
  const folded = control?.closest("details");
  if (folded) folded.open = true;
  control?.focus();
}

/** A plant of one's own: what it is called, what it is, its year; the rest folded away with what the plant like it has. */
export function OwnForm({ id, input, placeLabel, back, listed }: Props) {
  const router = useRouter();
  const [draft, setDraft] = useState(() => draftOf(input));
  const [faults, setFaults] = useState<readonly FieldFault[]>([]);
  const [busy, start] = useTransition();
  const set = (part: Partial<OwnDraft>) => setDraft((before) => ({ ...before, ...part }));
  const fail = (found: readonly FieldFault[]) => {
    setFaults(found);
    faultShow(found);
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const made = draftInput(draft);
    if (made.faults.length) {
      fail(made.faults);
      return;
    }
    start(async () => {
      const answer = await ownTaxonSaveAction(id, made.input);
      if (answer.kind !== "saved") return fail(answer.faults);
      if (!listed) return router.push(`/plants/${answer.id}`);
      // Where the lines cannot be reached they stay on the supplier's page, and are asked about there.
      await unmatchedResolveAction(listed.supplierId, listed.key, answer.id).catch(() => null);
      router.push(`/nursery/suppliers/${listed.supplierId}`);
    });
  };
  const elsewhere = faults.find((f) => f.field === "(form)")?.message ?? "";
  return (
    <div className="own-split">
      <form onSubmit={submit} className="own-form" noValidate>
        <NameFields draft={draft} faults={faults} set={set} />
        <PlantFields draft={draft} faults={faults} set={set} />
        <section aria-labelledby="own-year">
          <h2 id="own-year">Its year, as seen at {placeLabel}</h2>
          <FeatureRows features={draft.features} faults={faults} change={(features) => set({ features })} />
        </section>
        <MoreFields draft={draft} faults={faults} set={set} />
        <p className="row">
          <button type="submit" className="primary" disabled={busy}>
            {busy ? "Saving …" : id === null ? "Add it to my plants" : "Save"}
          </button>
          <Link className="button" href={back}>
            Cancel
          </Link>
        </p>
        <p role="alert" className="alert">
          {faults.length ? `${faults.length === 1 ? "One field is" : `${faults.length} fields are`} not right yet. ${elsewhere || `${faults[0]?.message ?? ""}`}` : ""}
        </p>
      </form>
      <OwnPreview draft={draft} placeLabel={placeLabel} />
    </div>
  );
}
