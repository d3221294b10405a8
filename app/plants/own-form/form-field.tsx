"use client";

import type { ReactNode } from "react";
import type { FieldFault } from "@/lib/plants/own-taxon";

/** What is wrong with a field or any part of it. */
export const faultOf = (faults: readonly FieldFault[], field: string): string => faults.find((f) => f.field === field || f.field.startsWith(`${field}.`))?.message ?? "";

/** A labeled field with its fault. `children` is given the ids it must carry. */
export function FormField({
  field,
  label,
  faults,
  wide,
  hint,
  children,
}: {
  field: string;
  label: string;
  faults: readonly FieldFault[];
  wide?: boolean;
  hint?: string;
  children: (props: { id: string; "aria-describedby": string; "aria-invalid": boolean }) => ReactNode;
}) {
  const fault = faultOf(faults, field);
  return (
    <div className={wide ? "field wide" : "field"}>
      <label htmlFor={`own-${field}`}>{label}</label>
      {children({ id: `own-${field}`, "aria-describedby": `own-${field}-fault`, "aria-invalid": fault !== "" })}
      <span id={`own-${field}-fault`} className={fault ? "alert small" : "soft small"}>
        {fault || hint || ""}
      </span>
    </div>
  );
}

/** Two figures, low and high. */
export function PairField({
  field,
  label,
  faults,
  pair,
  change,
  numeric,
  hint,
}: {
  field: string;
  label: string;
  faults: readonly FieldFault[];
  pair: readonly [string, string];
  change: (pair: readonly [string, string]) => void;
  numeric?: boolean;
  hint?: string;
}) {
  const fault = faultOf(faults, field);
  const input = (part: 0 | 1, words: string) => (
    <input
      id={part ? undefined : `own-${field}`}
      className="short"
      aria-label={`${label}, ${words}`}
      aria-describedby={`own-${field}-fault`}
      aria-invalid={fault !== ""}
      inputMode={numeric ? "decimal" : "text"}
      value={pair[part]}
      onChange={(event) => change(part ? [pair[0], event.target.value] : [event.target.value, pair[1]])}
    />
  );
  return (
    <fieldset className="field pair-field">
      <legend>{label}</legend>
      <span className="row">
        {input(0, "low")}
        <span aria-hidden="true">–</span>
        {input(1, "high")}
      </span>
      <span id={`own-${field}-fault`} className={fault ? "alert small" : "soft small"}>
        {fault || hint || ""}
      </span>
    </fieldset>
  );
}

/** One of a vocabulary. */
export function SelectField<T extends string>({
  field,
  label,
  faults,
  options,
  value,
  change,
  words,
}: {
  field: string;
  label: string;
  faults: readonly FieldFault[];
  options: readonly T[];
  value: T;
  change: (value: T) => void;
  words?: Partial<Record<T, string>>;
}) {
  return (
    <FormField field={field} label={label} faults={faults}>
      {(props) => (
        <select
          {...props}
          value={value}
          onChange={(event) => {
            const chosen = options.find((o) => o === event.target.value);
            if (chosen !== undefined) change(chosen);
          }}
        >
          {options.map((option) => (
            <option key={option} value={option}>
              {words?.[option] ?? option}
            </option>
          ))}
        </select>
      )}
    </FormField>
  );
}

/** Several of a vocabulary. */
export function SeveralField<T extends string>({
  field,
  label,
  faults,
  options,
  values,
  change,
  words,
}: {
  field: string;
  label: string;
  faults: readonly FieldFault[];
  options: readonly T[];
  values: readonly T[];
  change: (values: T[]) => void;
  words?: Partial<Record<T, string>>;
}) {
  const fault = faultOf(faults, field);
  return (
    <fieldset className="field pair-field">
      <legend>{label}</legend>
      <span className="row">
        {options.map((option, i) => (
          <label key={option} className="check">
            <input
              type="checkbox"
              id={i ? undefined : `own-${field}`}
              aria-describedby={`own-${field}-fault`}
              checked={values.includes(option)}
              onChange={(event) => change(options.filter((o) => (o === option ? event.target.checked : values.includes(o))))}
            />{" "}
            {words?.[option] ?? option}
          </label>
        ))}
      </span>
      <span id={`own-${field}-fault`} className="alert small">
        {fault}
      </span>
    </fieldset>
  );
}
