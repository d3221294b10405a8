"use client";

import { useActionState } from "react";
import { jobCreateAction } from "../actions";
import { FieldFault } from "./field-fault";

/** The first step: name and ZIP. */
export function JobForm() {
  const [fault, submit, busy] = useActionState(jobCreateAction, null);
  return (
    <form action={submit} className="stack-form">
      <div className="field">
        <label htmlFor="job-name">Job name</label>
        <input id="job-name" name="name" required maxLength={120} aria-describedby="job-name-fault" aria-invalid={fault?.field === "name"} />
        <FieldFault id="job-name-fault" fault={fault} field="name" />
      </div>
      <div className="field">
        <label htmlFor="job-client">Client (may stay empty)</label>
        <input id="job-client" name="client" maxLength={120} />
      </div>
      <div className="field">
        <label htmlFor="job-zip">ZIP code of the site</label>
        <input
          id="job-zip"
          name="zip"
          inputMode="numeric"
          autoComplete="postal-code"
          maxLength={10}
          placeholder="05401"
          aria-describedby="job-zip-fault"
          aria-invalid={fault?.field === "zip"}
        />
        <FieldFault id="job-zip-fault" fault={fault} field="zip" />
      </div>
      <div>
        <button type="submit" className="primary" disabled={busy}>
          {busy ? "Setting up …" : "Create the job"}
        </button>
      </div>
    </form>
  );
}
