"use client";

import { useId } from "react";

/** A select with a first entry for "any". */
export function ChoiceField<T extends string>({
  label,
  value,
  choices,
  any,
  change,
}: {
  label: string;
  value: T | null;
  choices: readonly (readonly [value: T, words: string])[];
  any: string;
  change: (value: T | null) => void;
}) {
  const id = useId();
  return (
    <div className="rail-field">
      <label htmlFor={id}>{label}</label>
      <select
        id={id}
        value={value ?? ""}
        className={value === null ? "unset" : undefined}
        onChange={(event) => change(choices.find(([v]) => v === event.target.value)?.[0] ?? null)}
      >
        <option value="">{any}</option>
        {choices.map(([v, words]) => (
          <option key={v} value={v}>
            {words}
          </option>
        ))}
      </select>
    </div>
  );
}

/** A check with its word. */
export function CheckField({ label, on, change }: { label: string; on: boolean; change: (on: boolean) => void }) {
  return (
    <label className="check">
      <input type="checkbox" checked={on} onChange={(event) => change(event.target.checked)} /> {label}
    </label>
  );
}
