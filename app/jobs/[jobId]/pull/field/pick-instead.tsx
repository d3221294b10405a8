"use client";

import { useId, useState } from "react";
import type { FieldSnapshot } from "@/lib/papers/field-list";

const SHOWN = 8;
type Pick = FieldSnapshot["pickable"][number];

/** What was pulled instead, from the firm's own stock as this phone last knew it. */
export function PickInstead({ pickable, take }: { pickable: readonly Pick[]; take: (pick: Pick) => void }) {
  const id = useId();
  const [text, setText] = useState("");
  const words = text.toLowerCase().split(/\s+/).filter(Boolean);
  const found = pickable.filter(({ name, common }) => words.every((word) => `${name} ${common}`.toLowerCase().includes(word))).slice(0, SHOWN);
  return (
    <div className="pick-instead">
      <label htmlFor={id}>Pulled instead</label>
      <input id={id} value={text} autoComplete="off" onChange={(event) => setText(event.target.value)} placeholder="part of a name" />
      {found.length ? (
        <ul>
          {found.map((pick) => (
            <li key={pick.taxonId}>
              <button type="button" onClick={() => take(pick)}>
                {pick.name} <span className="soft">{pick.free} free</span>
              </button>
            </li>
          ))}
        </ul>
      ) : (
        <p className="small">No plant of that name stands free in the nursery, as far as this phone knows. Record it as short and write a note.</p>
      )}
    </div>
  );
}
