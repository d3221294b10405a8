"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useId, useState, useTransition } from "react";
import type { StoredSupplier } from "@/lib/server/suppliers";
import { supplierSaveAction } from "./actions";

type Fault = { field: string; message: string };
const FIELDS = [
  ["name", "Name", "text", "nursery or grower"],
  ["contact", "Contact", "text", "person, telephone, gate"],
  ["minimumCents", "Least order $", "decimal", "none"],
  ["multiple", "Sold in multiples of", "numeric", "1"],
  ["leadDays", "Days to delivery", "numeric", "not said"],
] as const;
type Key = (typeof FIELDS)[number][0] | "notes";

function texts(supplier: StoredSupplier | null): Record<Key, string> {
  return {
    name: supplier?.name ?? "",
    contact: supplier?.contact ?? "",
    minimumCents: supplier?.minimumCents === null || !supplier ? "" : String(supplier.minimumCents / 100),
    multiple: supplier && supplier.multiple > 1 ? String(supplier.multiple) : "",
    leadDays: supplier?.leadDays === null || !supplier ? "" : String(supplier.leadDays),
    notes: supplier?.notes ?? "",
  };
}

/** A number as typed; undefined when it is none. */
const numberRead = (text: string, empty: number | null): number | null | undefined => {
  const plain = text.replace(/[$,\s]/g, "");
  return plain === "" ? empty : /^\d+(\.\d{1,2})?$/.test(plain) ? Number(plain) : undefined;
};

/** The fields of a supplier; adds one where there is none yet. */
export function SupplierForm({ supplier }: { supplier: StoredSupplier | null }) {
  const id = useId();
  const router = useRouter();
  const [typed, setTyped] = useState(() => texts(supplier));
  const [version, setVersion] = useState(supplier?.version ?? 0);
  const [fault, setFault] = useState<Fault | null>(null);
  const [words, setWords] = useState("");
  const [busy, start] = useTransition();
  const save = (event: FormEvent) => {
    event.preventDefault();
    const dollars = numberRead(typed.minimumCents, null);
    const multiple = numberRead(typed.multiple, 1);
    const leadDays = numberRead(typed.leadDays, null);
    if (dollars === undefined) return setFault({ field: "minimumCents", message: "An amount such as 500." });
    if (multiple === undefined) return setFault({ field: "multiple", message: "A whole number of plants." });
    if (leadDays === undefined) return setFault({ field: "leadDays", message: "A whole number of days." });
    start(async () => {
      const { name, contact, notes } = typed;
      const answer = await supplierSaveAction(supplier?.id ?? null, version, {
        name,
        contact,
        notes,
        minimumCents: dollars === null ? null : Math.round(dollars * 100),
        multiple,
        leadDays,
      }).catch(() => null);
      setFault(null);
      if (answer === null) setFault({ field: "form", message: "The program did not answer. What you typed stays here; save again." });
      else if (answer.kind === "fault") setFault(answer);
      else if (answer.kind === "gone") setFault({ field: "form", message: answer.message });
      else if (answer.kind === "stale") {
        setVersion(answer.theirs.version);
        setFault({
          field: "form",
          message: `This supplier was changed in another window meanwhile (name now “${answer.theirs.name}”). Save again to write yours over it, or reload the page.`,
        });
      } else if (supplier) {
        setVersion(answer.supplier.version);
        setWords("Saved.");
        router.refresh();
      } else router.push(`/nursery/suppliers/${answer.supplier.id}`);
    });
  };
  const set = (key: Key, text: string) => {
    setTyped({ ...typed, [key]: text });
    setWords("");
  };
  const faultOf = (key: Key) => (fault?.field === key ? fault.message : "");
  return (
    <form onSubmit={save} className="supplier-form">
      <div className="fields">
        {FIELDS.map(([key, label, mode, hint]) => (
          <div className="field" key={key}>
            <label htmlFor={`${id}-${key}`}>{label}</label>
            <input
              id={`${id}-${key}`}
              value={typed[key]}
              inputMode={mode}
              placeholder={hint}
              maxLength={400}
              autoComplete="off"
              required={key === "name"}
              aria-invalid={faultOf(key) !== ""}
              aria-describedby={faultOf(key) ? `${id}-${key}-fault` : undefined}
              onChange={(event) => set(key, event.target.value)}
            />
            <span id={`${id}-${key}-fault`} role="alert" className="alert small">
              {faultOf(key)}
            </span>
          </div>
        ))}
      </div>
      <div className="field">
        <label htmlFor={`${id}-notes`}>Notes</label>
        <textarea id={`${id}-notes`} rows={2} maxLength={2000} value={typed.notes} onChange={(event) => set("notes", event.target.value)} />
      </div>
      <div className="row">
        <button type="submit" className="button primary" disabled={busy}>
          {supplier ? "Save" : "Add the supplier"}
        </button>
        <span role="status" className="small soft">
          {words}
        </span>
        <span role="alert" className="alert small">
          {fault?.field === "form" ? fault.message : ""}
        </span>
      </div>
    </form>
  );
}
