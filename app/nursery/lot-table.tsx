"use client";

import { type ReactNode, useState, useTransition } from "react";
import type { NameHit } from "@/app/api/names/route";
import { UndoToast } from "@/app/parts/undo-toast";
import type { StoredLot } from "@/lib/server/lots";
import type { LotLine } from "@/lib/server/nursery-lots";
import { lotAddAction, lotDeleteAction, lotRestoreAction } from "./actions";
import { LotAdd } from "./lot-add";
import { LotRow, PLACES_LIST } from "./lot-row";

const COLUMNS = ["Plant", "Size", "Place", "On hand", "Free", "Price each", "Ready", "Counted"] as const;
const UNREACHED = "Nothing was changed: the program does not answer. Try again when it does.";

/** The firm's lots: add by any name of a plant, edit in place, delete with a way back. @param children what stands between the field and the list */
export function LotTable({ lines, places, empty, children }: { lines: readonly LotLine[]; places: readonly string[]; empty: ReactNode; children?: ReactNode }) {
  const [busy, start] = useTransition();
  const [fresh, setFresh] = useState<LotLine | null>(null);
  const [deleted, setDeleted] = useState<{ id: string; name: string } | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const run = (work: () => Promise<void>) =>
    start(async () => {
      try {
        setFault(null);
        await work();
      } catch {
        setFault(UNREACHED);
      }
    });
  const add = (hit: NameHit) =>
    run(async () => {
      const answer = await lotAddAction(hit.id);
      if (answer.kind === "saved") setFresh({ lot: answer.lot, taxon: hit });
      else if (answer.kind !== "stale") setFault(answer.message);
    });
  const remove = (lot: StoredLot) =>
    run(async () => {
      const refusal = await lotDeleteAction(lot.id);
      if (refusal) setFault(refusal);
      else {
        setFresh((now) => (now?.lot.id === lot.id ? null : now));
        setDeleted({ id: lot.id, name: lot.taxonName });
      }
    });
  const undo = (id: string) =>
    run(async () => {
      await lotRestoreAction(id);
      setDeleted(null);
    });
  // A lot just added stands first, wherever its name would put it among hundreds.
  const added = fresh && !lines.some((line) => line.lot.id === fresh.lot.id) ? [fresh] : [];
  const shown = [...added, ...lines];
  return (
    <>
      <LotAdd add={add} busy={busy} />
      {fault ? (
        <p role="alert" className="alert">
          {fault}
        </p>
      ) : null}
      {children}
      <datalist id={PLACES_LIST}>
        {places.map((place) => (
          <option key={place} value={place} />
        ))}
      </datalist>
      {shown.length ? (
        <table className="lots">
          <thead>
            <tr>
              {COLUMNS.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
              <th scope="col" className="screen-only">
                <span className="visually-hidden">Delete</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {shown.map((line) => (
              <LotRow key={line.lot.id} line={line} fresh={fresh?.lot.id === line.lot.id} remove={() => remove(line.lot)} />
            ))}
          </tbody>
        </table>
      ) : (
        empty
      )}
      {deleted ? <UndoToast words={`“${deleted.name}” deleted.`} undo={() => undo(deleted.id)} close={() => setDeleted(null)} /> : null}
    </>
  );
}
