"use client";

import { type KeyboardEvent, type ReactNode, type RefObject, useEffect, useId, useState } from "react";

const PAUSE_MS = 60;
type Answer<T> = { readonly query: string; readonly hits: readonly T[]; readonly failed: boolean };

/**
 * Search for a plant as one types, by any of its names. Arrows choose, Enter takes, Esc empties; the field stays for the next plant.
 * @param address where a query is asked: answers with hits, the best first
 */
export function PlantCombobox<T>({
  label,
  address,
  keyOf,
  show,
  take,
  nothing,
  busy = false,
  input,
}: {
  label: string;
  address: (query: string) => string;
  keyOf: (hit: T) => string;
  show: (hit: T, id: string) => ReactNode;
  take: (hit: T) => void;
  /** What is said when no plant is called so. */
  nothing: (query: string) => string;
  busy?: boolean;
  input?: RefObject<HTMLInputElement | null>;
}) {
  const id = useId();
  const [query, setQuery] = useState("");
  const [answer, setAnswer] = useState<Answer<T>>({ query: "", hits: [], failed: false });
  const [active, setActive] = useState(0);
  const text = query.trim();
  const asked = text ? address(text) : null;

  useEffect(() => {
    if (asked === null) {
      setAnswer({ query: "", hits: [], failed: false });
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const response = await fetch(asked, { signal: stop.signal });
        const hits = (await response.json()) as readonly T[];
        setAnswer({ query: text, hits: response.ok ? hits : [], failed: !response.ok });
        setActive(0);
      } catch {
        if (!stop.signal.aborted) setAnswer({ query: text, hits: [], failed: true });
      }
    }, PAUSE_MS);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [asked, text]);

  const choose = (hit: T | undefined) => {
    if (hit === undefined || busy) return;
    take(hit);
    setQuery("");
    input?.current?.focus();
  };
  const onKey = (event: KeyboardEvent) => {
    const count = answer.hits.length;
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      if (count) setActive((active + (event.key === "ArrowDown" ? 1 : count - 1)) % count);
    } else if (event.key === "Enter") {
      event.preventDefault();
      // Not the hits of the word before, should Enter come sooner than the answer.
      if (answer.query === text) choose(answer.hits[active]);
    } else if (event.key === "Escape") setQuery("");
  };
  const open = answer.hits.length > 0;
  return (
    <div className="plant-add screen-only">
      <label htmlFor={`${id}-q`}>{label}</label>
      <input
        id={`${id}-q`}
        ref={input}
        role="combobox"
        aria-expanded={open}
        aria-controls={`${id}-list`}
        aria-autocomplete="list"
        aria-activedescendant={open ? `${id}-${active}` : undefined}
        autoComplete="off"
        spellCheck={false}
        maxLength={120}
        placeholder="limelight hydrangea, Cornus ser. Cardinal, coneflower …"
        value={query}
        onChange={(event) => setQuery(event.target.value)}
        onKeyDown={onKey}
      />
      <div id={`${id}-list`} role="listbox" aria-label="Plants found" className={open ? "hits" : "hits empty"}>
        {answer.hits.map((hit, i) => (
          // The keyboard chooses through the field above (aria-activedescendant).
          <div
            key={keyOf(hit)}
            id={`${id}-${i}`}
            role="option"
            tabIndex={-1}
            aria-selected={i === active}
            className="hit"
            onPointerEnter={() => setActive(i)}
            onPointerDown={(event) => event.preventDefault()}
            onClick={() => choose(hit)}
            onKeyDown={onKey}
          >
            {show(hit, `${id}-h${i}`)}
          </div>
        ))}
      </div>
      <p role="status" className="small soft">
        {answer.failed ? "The search did not answer. Type on, or reload the page." : text && answer.query === text && !open ? nothing(text) : ""}
      </p>
    </div>
  );
}
