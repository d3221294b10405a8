"use client";

import { useEffect, useId, useRef, useState } from "react";
import { NO_PLACE, type PlaceName } from "@/lib/nursery/lot-place";
import type { PlaceAnswer } from "@/lib/server/stock-places";

const UNREACHED = "Nothing was changed: the program does not answer. Try again when it does.";
const PARTS = [
  ["block", "Block, field or yard", "North field"],
  ["row", "Row", "4"],
  ["bay", "Bay", "2"],
] as const;

/** Block, row and bay of a place. @param send writes it @param done called when it is written, or left as it was */
export function PlaceForm({ name = NO_PLACE, label, send, done }: { name?: PlaceName; label: string; send: (name: PlaceName) => Promise<PlaceAnswer>; done?: () => void }) {
  const id = useId();
  const [typed, setTyped] = useState<PlaceName>({ block: name.block, row: name.row, bay: name.bay });
  const [words, setWords] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  const first = useRef<HTMLInputElement>(null);
  const opened = done !== undefined;
  useEffect(() => {
    if (opened) first.current?.focus();
  }, [opened]);
  const write = async () => {
    setBusy(true);
    try {
      const answer = await send(typed);
      setWords(answer.kind === "fault" ? answer.message : null);
      if (answer.kind === "saved") {
        // The next place is mostly of the same block.
        setTyped({ ...NO_PLACE, block: typed.block });
        done?.();
      }
    } catch {
      setWords(UNREACHED);
    }
    setBusy(false);
  };
  return (
    <form
      className="place-form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void write();
      }}
      onKeyDown={(event) => {
        if (event.key === "Escape") done?.();
      }}
    >
      <div className="fields">
        {PARTS.map(([part, heading, example], i) => (
          <div key={part} className="field">
            <label htmlFor={`${id}-${part}`}>{heading}</label>
            <input
              id={`${id}-${part}`}
              value={typed[part]}
              maxLength={40}
              size={part === "block" ? 18 : 8}
              placeholder={example}
              ref={i === 0 ? first : undefined}
              onChange={(event) => setTyped({ ...typed, [part]: event.target.value })}
            />
          </div>
        ))}
        <button type="submit" disabled={busy}>
          {label}
        </button>
        {done ? (
          <button type="button" className="plain" onClick={done}>
            Leave it
          </button>
        ) : null}
      </div>
      {words ? (
        <p role="alert" className="alert small">
          {words}
        </p>
      ) : null}
    </form>
  );
}
