"use client";

import { useEffect, useId, useState } from "react";
import { whoSetAction } from "../who";

/** Where the browser keeps the name for pages that work without the server. */
export const WHO_KEY = "twelvemonth:who";

function whoKeep(name: string): void {
  try {
    if (name) localStorage.setItem(WHO_KEY, name);
    else localStorage.removeItem(WHO_KEY);
  } catch {
    // A browser that keeps nothing: the cookie has the name.
  }
}

/** The name that goes into the history. @param who what `whoNow()` has; "" where no name was given yet */
export function WhoField({ who }: { who: string }) {
  const id = useId();
  const [typed, setTyped] = useState(who);
  const [kept, setKept] = useState(who);
  const [words, setWords] = useState("");
  useEffect(() => {
    if (who) whoKeep(who);
  }, [who]);
  const keep = async () => {
    const name = typed.trim();
    if (name === kept) return;
    whoKeep(name);
    try {
      const stored = await whoSetAction(name);
      setTyped(stored);
      setKept(stored);
      setWords(stored ? "Kept on this device." : "No name is kept.");
    } catch {
      setWords("The program does not answer; the name is kept on this device only.");
    }
  };
  return (
    <div className="who-field row small screen-only">
      <label htmlFor={id}>Your name</label>
      <input
        id={id}
        value={typed}
        maxLength={60}
        size={14}
        autoComplete="name"
        placeholder="for the history"
        onChange={(event) => setTyped(event.target.value)}
        onBlur={keep}
        onKeyDown={(event) => {
          if (event.key === "Enter") {
            event.preventDefault();
            void keep();
          }
        }}
      />
      <span role="status" className="soft">
        {words}
      </span>
    </div>
  );
}
