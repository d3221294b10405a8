"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { Bed } from "@/lib/ground/bed";
import type { StoredBed } from "@/lib/server/beds";
import { bedSaveAction } from "./actions";
import type { BedCommand } from "./bed-draft";
import { valueSame } from "./value-same";

export type SaveState =
  | { readonly kind: "saved"; readonly at: string }
  | { readonly kind: "saving" }
  | { readonly kind: "waiting" }
  | { readonly kind: "stale"; readonly theirs: StoredBed }
  | { readonly kind: "failed"; readonly message: string };

const PAUSE_MS = 400;
const RETRY_MS = 4000;

type Kept = { readonly base: number; readonly bed: Bed };
const storageKey = (id: string) => `twelvemonth:bed:${id}`;

/** An edit that never reached the server (the browser was closed, the server was down), kept by this browser; nothing when the server has the very same bed. */
function keptDraft(id: string, stored: Bed): Kept | null {
  try {
    const text = localStorage.getItem(storageKey(id));
    const kept = text ? (JSON.parse(text) as Kept) : null;
    // The page was left while the save was on its way, and the save arrived.
    if (kept && valueSame(kept.bed, stored)) {
      localStorage.removeItem(storageKey(id));
      return null;
    }
    return kept;
  } catch {
    return null; // storage is off, or holds something of another version: then there is no draft
  }
}

function keepDraft(id: string, kept: Kept | null): void {
  try {
    if (kept) localStorage.setItem(storageKey(id), JSON.stringify(kept));
    else localStorage.removeItem(storageKey(id));
  } catch {
    // Storage full or off: the bed is still on the screen and goes to the server all the same.
  }
}

/**
 * Saves the bed a moment after each change. One save runs at a time; what changes meanwhile goes with the next.
 * A save that finds a newer bed on the server stops and says so until `settle` is called.
 */
export function useBedSave(id: string, version: number, savedAt: string, bed: Bed) {
  const [state, setState] = useState<SaveState>({ kind: "saved", at: savedAt });
  const base = useRef(version);
  const saved = useRef(bed);
  const at = useRef(savedAt);
  const waiting = useRef(false);
  const latest = useRef(bed);
  const running = useRef(false);
  const stopped = useRef(false);
  latest.current = bed;

  const save = useCallback(async () => {
    if (running.current || stopped.current || latest.current === saved.current) return;
    running.current = true;
    const sent = latest.current;
    setState({ kind: "saving" });
    try {
      const answer = await bedSaveAction(id, base.current, sent);
      if (answer.kind === "saved") {
        base.current = answer.version;
        saved.current = sent;
        at.current = answer.savedAt;
        if (latest.current === sent) {
          waiting.current = false;
          keepDraft(id, null);
        }
        setState({ kind: "saved", at: answer.savedAt });
      } else if (answer.kind === "stale") {
        stopped.current = true;
        setState({ kind: "stale", theirs: answer.theirs });
      } else setState({ kind: "failed", message: answer.message });
    } catch {
      setState({ kind: "failed", message: "Not saved: the program does not answer. Your list is kept in this browser and saved as soon as it does." });
      setTimeout(() => void save(), RETRY_MS);
    } finally {
      running.current = false;
    }
    if (!stopped.current && latest.current !== sent) void save();
  }, [id]);

  useEffect(() => {
    if (bed === saved.current) {
      // Undone before it was sent: nothing is left to save.
      if (waiting.current && !running.current && !stopped.current) {
        waiting.current = false;
        keepDraft(id, null);
        setState({ kind: "saved", at: at.current });
      }
      return;
    }
    waiting.current = true;
    keepDraft(id, { base: base.current, bed });
    if (stopped.current) return;
    setState({ kind: "waiting" });
    const timer = setTimeout(() => void save(), PAUSE_MS);
    return () => clearTimeout(timer);
  }, [bed, id, save]);

  useEffect(() => {
    const onLeave = (event: BeforeUnloadEvent) => {
      if (latest.current === saved.current) return;
      void save();
      event.preventDefault();
    };
    window.addEventListener("beforeunload", onLeave);
    return () => window.removeEventListener("beforeunload", onLeave);
  }, [save]);

  /** After a stale save: go on from their version, with `bed` on the screen being theirs (already saved) or ours (to be saved over it). */
  const settle = useCallback(
    (theirs: StoredBed, shown: Bed) => {
      base.current = theirs.version;
      stopped.current = false;
      saved.current = theirs.bed;
      at.current = theirs.savedAt;
      if (shown === theirs.bed) {
        keepDraft(id, null);
        setState({ kind: "saved", at: theirs.savedAt });
      } else void save();
    },
    [id, save],
  );

  /** A bed that is newer than the server's because this browser kept it: nothing was saved of it yet. */
  const markStale = useCallback((theirs: StoredBed) => {
    stopped.current = true;
    setState({ kind: "stale", theirs });
  }, []);

  return { state, settle, markStale };
}

/**
 * Brings an edit back that this browser kept because it never reached the server, as a change that can be undone.
 * Only once: a save refreshes the page's data, and what is kept then is the edit being made.
 */
export function useKeptDraft(stored: StoredBed, send: (command: BedCommand) => void, markStale: (theirs: StoredBed) => void): void {
  const restored = useRef(false);
  useEffect(() => {
    if (restored.current) return;
    restored.current = true;
    const kept = keptDraft(stored.id, stored.bed);
    if (!kept) return;
    send({ type: "replace", bed: kept.bed });
    if (kept.base !== stored.version) markStale(stored);
  }, [stored, send, markStale]);
}
