"use client";

import { createContext, type ReactNode, useContext, useState, useTransition } from "react";
import { UndoToast } from "@/app/parts/undo-toast";
import type { CorrectionAsk } from "@/lib/papers/correction-form";
import type { SeenAt } from "@/lib/plants/own-taxon";
import { correctionDeleteAction, correctionRestoreAction } from "../actions";
import { CorrectionDialog } from "./correction-dialog";

type Corrections = { readonly open: (field: string, label: string) => void; readonly takeBack: (id: string, label: string) => void; readonly busy: boolean };
const Context = createContext<Corrections>({ open: () => {}, takeBack: () => {}, busy: false });

/** What a button on the page needs to correct a value or take a correction back. */
export const useCorrection = (): Corrections => useContext(Context);

type Props = {
  readonly taxonId: string;
  readonly name: string;
  readonly asks: Readonly<Record<string, CorrectionAsk>>;
  readonly seenAt: SeenAt;
  readonly placeLabel: string;
  readonly children: ReactNode;
};

/** Holds the one correction dialog of the page, and the undo of a correction taken back. */
export function CorrectionProvider({ taxonId, name, asks, seenAt, placeLabel, children }: Props) {
  const [asked, setAsked] = useState<{ field: string; label: string } | null>(null);
  const [taken, setTaken] = useState<{ id: string; label: string } | null>(null);
  const [busy, start] = useTransition();
  const takeBack = (id: string, label: string) =>
    start(async () => {
      await correctionDeleteAction(id);
      setTaken({ id, label });
    });
  const undo = (id: string) =>
    start(async () => {
      await correctionRestoreAction(id);
      setTaken(null);
    });
  const ask = asked ? asks[asked.field] : undefined;
  return (
    <Context value={{ open: (field, label) => setAsked({ field, label }), takeBack, busy }}>
      {children}
      {asked && ask ? (
        <CorrectionDialog
          key={asked.field}
          taxonId={taxonId}
          name={name}
          field={asked.field}
          label={asked.label}
          ask={ask}
          seenAt={seenAt}
          placeLabel={placeLabel}
          close={() => setAsked(null)}
        />
      ) : null}
      {taken ? <UndoToast words={`Correction of ${taken.label.toLowerCase()} taken back.`} undo={() => undo(taken.id)} close={() => setTaken(null)} /> : null}
    </Context>
  );
}
