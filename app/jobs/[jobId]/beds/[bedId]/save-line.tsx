"use client";

import type { Dispatch, SetStateAction } from "react";
import type { Bed } from "@/lib/ground/bed";
import type { PlacedTaxon } from "@/lib/papers/bed-view";
import { placedTaxaAction } from "./actions";
import type { BedDraft, DraftEvent } from "./bed-draft";
import type { useBedSave } from "./use-bed-save";

const clock = (iso: string) => new Date(iso).toLocaleTimeString("en-US", { hour: "numeric", minute: "2-digit" });

/** Undo, redo, and what has become of the last change. A change that came too late is shown with both ways out; nothing is lost by either. */
export function SaveLine({
  save,
  draft,
  send,
  bed,
  setPlaced,
}: {
  save: ReturnType<typeof useBedSave>;
  draft: BedDraft;
  send: Dispatch<DraftEvent>;
  bed: Bed;
  setPlaced: Dispatch<SetStateAction<Readonly<Record<string, PlacedTaxon>>>>;
}) {
  const { state, settle } = save;
  const words = {
    saved: () => (state.kind === "saved" ? `Saved ${clock(state.at)}` : ""),
    saving: () => "Saving …",
    waiting: () => "Saving …",
    stale: () => "Not saved",
    failed: () => (state.kind === "failed" ? state.message : ""),
  }[state.kind]();
  return (
    <div className="save-line screen-only">
      <div className="row">
        <span role="status" className={state.kind === "failed" || state.kind === "stale" ? "alert" : "soft"} suppressHydrationWarning>
          {words}
        </span>
        <button type="button" disabled={!draft.past.length} onClick={() => send({ type: "undo" })}>
          Undo
        </button>
        <button type="button" disabled={!draft.future.length} onClick={() => send({ type: "redo" })}>
          Redo
        </button>
      </div>
      {state.kind === "stale" ? (
        <div role="alert" className="notice alert">
          <p>This bed was changed in another window since you opened it here. Your list is safe on this screen and is not saved yet.</p>
          <div className="row">
            <button type="button" className="primary" onClick={() => settle(state.theirs, bed)}>
              Keep mine, over the other
            </button>
            <button
              type="button"
              onClick={async () => {
                const taxa = await placedTaxaAction(state.theirs.id);
                setPlaced((before) => ({ ...before, ...taxa }));
                send({ type: "replace", bed: state.theirs.bed });
                settle(state.theirs, state.theirs.bed);
              }}
            >
              Take the other (undo brings mine back)
            </button>
          </div>
        </div>
      ) : null}
    </div>
  );
}
