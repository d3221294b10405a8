"use client";

import { useState } from "react";
import type { ColumnRole } from "@/lib/nursery/list-columns";
import type { ImportShown, SheetShown } from "@/lib/server/list-import-view";

export type Correction = { readonly sheet: string; readonly headerRow?: number | null; readonly roles?: readonly ColumnRole[] };

const ROLE_WORDS: Readonly<Record<ColumnRole, string>> = {
  name: "plant name",
  botanical: "botanical name",
  common: "common name",
  genus: "genus",
  species: "species",
  cultivar: "cultivar",
  size: "size",
  container: "container",
  root: "root",
  caliper: "caliper",
  height: "height",
  spread: "spread",
  quantity: "quantity",
  sizedQuantity: "quantity at this size",
  sizedPrice: "price at this size",
  later: "later quantity",
  ready: "ready from",
  price: "price",
  remarks: "remarks",
  location: "location",
  grade: "grade",
  code: "supplier’s number",
  ignore: "leave out",
};
const ROLES = Object.keys(ROLE_WORDS) as ColumnRole[];

type SheetProps = { sheet: SheetShown; several: boolean; correct: (correction: Correction) => void; unread: (sheet: string, is: boolean) => void; busy: boolean };

function SheetColumns({ sheet, several, correct, unread, busy }: SheetProps) {
  const [roles, setRoles] = useState(() => sheet.columns.map(({ role }) => role));
  const isChanged = (now: readonly ColumnRole[]): boolean => now.some((role, c) => role !== sheet.columns[c]?.role);
  const changed = isChanged(roles);
  const choose = (role: ColumnRole, at: number) => {
    const next = roles.map((one, i) => (i === at ? role : one));
    setRoles(next);
    unread(sheet.sheet, isChanged(next));
  };
  return (
    <div className="sheet-columns">
      {several ? <h3>{sheet.sheet}</h3> : null}
      <div className="field">
        <label htmlFor={`header ${sheet.sheet}`}>Headings stand in</label>
        <select
          id={`header ${sheet.sheet}`}
          value={sheet.headerRow ?? -1}
          disabled={busy}
          onChange={(event) => correct({ sheet: sheet.sheet, headerRow: Number(event.target.value) < 0 ? null : Number(event.target.value) })}
        >
          <option value={-1}>no row: there are none</option>
          {sheet.headerRow !== null && !sheet.top.some(({ row }) => row === sheet.headerRow) ? <option value={sheet.headerRow}>row {sheet.headerRow + 1}</option> : null}
          {sheet.top.map(({ row, text }) => (
            <option key={row} value={row}>
              row {row + 1}: {text}
            </option>
          ))}
        </select>
      </div>
      <ul className="columns">
        {sheet.columns.map(({ heading, samples }, c) => {
          const key = `${c} ${heading}`;
          const name = heading || `Column ${c + 1}`;
          return (
            <li key={key} className="field">
              <label htmlFor={`${sheet.sheet} ${key}`}>{name}</label>
              <select
                id={`${sheet.sheet} ${key}`}
                value={roles[c]}
                disabled={busy}
                onChange={(event) => {
                  const role = ROLES.find((one) => one === event.target.value);
                  if (role) choose(role, c);
                }}
              >
                {ROLES.map((role) => (
                  <option key={role} value={role}>
                    {ROLE_WORDS[role]}
                  </option>
                ))}
              </select>
              <span className="small soft samples">{samples.join(" · ") || "empty"}</span>
            </li>
          );
        })}
      </ul>
      {changed ? (
        <button type="button" className="button primary" disabled={busy} onClick={() => correct({ sheet: sheet.sheet, roles })}>
          Read again with these columns
        </button>
      ) : null}
    </div>
  );
}

/** The columns as they were read, each with a choice over it. @param unread told of each sheet whether a choice of its columns was made that the list was not read with */
export function ColumnSection({
  shown,
  correct,
  unread,
  busy,
}: Pick<SheetProps, "unread" | "busy"> & { shown: ImportShown; correct: (corrections: readonly Correction[]) => void }) {
  return (
    <section aria-labelledby="columns">
      <h2 id="columns">Columns</h2>
      <p className="small soft">
        {shown.recalled ? "As on the supplier’s last list. " : "Guessed from headings and contents. "}What you change is remembered for this supplier when you accept.
      </p>
      {shown.sheets.map((sheet) => (
        <SheetColumns key={sheet.sheet} sheet={sheet} several={shown.sheets.length > 1} correct={(correction) => correct([correction])} unread={unread} busy={busy} />
      ))}
    </section>
  );
}
