"use client";

import { type KeyboardEvent, useEffect, useId, useState } from "react";
import type { NameHit } from "@/app/api/names/route";
import { BotanicalText } from "@/app/parts/botanical-text";

const PAUSE_MS = 60;
type Answer = { readonly query: string; readonly hits: readonly NameHit[]; readonly failed: boolean };
const NOTHING: Answer = { query: "", hits: [], failed: false };

/** The plant of a new lot, by any name. Arrows choose, Enter adds. */
export function LotAdd({ add, busy }: { add: (hit: NameHit) => void; busy: boolean }) {
  const id = useId();
  const [query, setQuery] = useState("");
  const [answer, setAnswer] = useState(NOTHING);
  const [active, setActive] = useState(0);

  useEffect(() => {
    const text = query.trim();
    if (!text) {
      setAnswer(NOTHING);
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const response = await fetch(`/api/names?q=${encodeURIComponent(text)}`, { signal: stop.signal });
        const hits = (await response.json()) as readonly NameHit[];
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
  }, [query]);

  const choose = (hit: NameHit | undefined) => {
    if (!hit || busy) return;
    add(hit);
    setQuery("");
  };
  const onKey = (event: KeyboardEvent) => {
    const count = answer.hits.length;
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      if (count) setActive((active + (event.key === "ArrowDown" ? 1 : count - 1)) % count);
    } else if (event.key === "Enter") {
      event.preventDefault();
      // Not the hits of the word before, should Enter come sooner than the answer.
      if (answer.query === query.trim()) choose(answer.hits[active]);
    } else if (event.key === "Escape") setQuery("");
  };
  const open = answer.hits.length > 0;
  return (
    <div className="plant-add screen-only">
      <label htmlFor={`${id}-q`}>Add a lot: type any name of its plant</label>
      <input
        id={`${id}-q`}
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
            key={hit.id}
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
            <span>
              <BotanicalText taxon={hit} /> <span className="common">{hit.commonNames[0]}</span>
              {hit.formerName ? <span className="common"> · was {hit.formerName}</span> : null}
            </span>
          </div>
        ))}
      </div>
      <p role="status" className="small soft">
        {answer.failed
          ? "The search did not answer. Type on, or reload the page."
          : query.trim() && answer.query === query.trim() && !open
            ? `No plant is called “${query.trim()}” or nearly so.`
            : ""}
      </p>
    </div>
  );
}
