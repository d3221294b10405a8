"use client";

import { useState, useTransition } from "react";
import type { NameHit } from "@/app/api/names/route";
import { UndoToast } from "@/app/parts/undo-toast";
import type { StoredLot } from "@/lib/server/lots";
import { lotAddAction, lotDeleteAction, lotRestoreAction } from "./actions";
import { LotAdd } from "./lot-add";
import { type LotLine, LotRow } from "./lot-row";

const COLUMNS = ["Plant", "Size", "Place", "On hand", "Price each", "Remarks", "Counted"] as const;
const UNREACHED = "Nothing was changed: the program does not answer. Try again when it does.";

/** The firm's lots: add by any name of a plant, edit in place, delete with a way back. */
export function LotTable({ lines }: { lines: readonly LotLine[] }) {
  const [busy, start] = useTransition();
  const [fresh, setFresh] = useState<string | null>(null);
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
      if (answer.kind === "saved") setFresh(answer.lot.id);
      else if (answer.kind === "fault") setFault(answer.message);
    });
  const remove = (lot: StoredLot) =>
    run(async () => {
      await lotDeleteAction(lot.id);
      setDeleted({ id: lot.id, name: lot.taxonName });
    });
  const undo = (id: string) =>
    run(async () => {
      await lotRestoreAction(id);
      setDeleted(null);
    });
  return (
    <>
      <LotAdd add={add} busy={busy} />
      {fault ? (
        <p role="alert" className="alert">
          {fault}
        </p>
      ) : null}
      {lines.length ? (
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
            {lines.map((line) => (
              <LotRow key={line.lot.id} line={line} fresh={fresh === line.lot.id} remove={() => remove(line.lot)} />
            ))}
          </tbody>
        </table>
      ) : (
        <p>No lots yet. Type the name of a plant that stands in your field or yard, press Enter, then give its size, its place and how many there are.</p>
      )}
      {deleted ? <UndoToast words={`“${deleted.name}” deleted.`} undo={() => undo(deleted.id)} close={() => setDeleted(null)} /> : null}
    </>
  );
}
