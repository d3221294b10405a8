"use client";

import { type KeyboardEvent, useEffect, useId, useRef, useState } from "react";
import type { PlantHit } from "@/app/api/plants/route";
import { BotanicalText } from "@/app/parts/botanical-text";
import { YearStripSvg } from "@/app/parts/year-strip-svg";

/** Search as one types: any botanical, common, trade or former name. Arrows choose, Enter adds, the field stays for the next plant. */
export function PlantAdd({ jobId, freezeDays, add }: { jobId: string; freezeDays: readonly (number | null)[]; add: (hit: PlantHit) => void }) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const [query, setQuery] = useState("");
  const [answer, setAnswer] = useState<{ query: string; hits: readonly PlantHit[]; failed: boolean }>({ query: "", hits: [], failed: false });
  const [active, setActive] = useState(0);

  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (event.key === "/" && !(event.target instanceof HTMLElement && event.target.matches("input, textarea, select"))) {
        event.preventDefault();
        input.current?.focus();
      }
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);

  useEffect(() => {
    const text = query.trim();
    if (!text) {
      setAnswer({ query: "", hits: [], failed: false });
      return;
    }
    const stop = new AbortController();
    const timer = setTimeout(async () => {
      try {
        const response = await fetch(`/api/plants?job=${encodeURIComponent(jobId)}&q=${encodeURIComponent(text)}`, { signal: stop.signal });
        const hits = (await response.json()) as readonly PlantHit[];
        setAnswer({ query: text, hits: response.ok ? hits : [], failed: !response.ok });
        setActive(0);
      } catch {
        if (!stop.signal.aborted) setAnswer({ query: text, hits: [], failed: true });
      }
    }, 60);
    return () => {
      clearTimeout(timer);
      stop.abort();
    };
  }, [query, jobId]);

  const choose = (hit: PlantHit | undefined) => {
    if (!hit) return;
    add(hit);
    setQuery("");
    input.current?.focus();
  };
  const onKey = (event: KeyboardEvent) => {
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      const count = answer.hits.length;
      if (count) setActive((active + (event.key === "ArrowDown" ? 1 : count - 1)) % count);
    } else if (event.key === "Enter") {
      event.preventDefault();
      choose(answer.hits[active]);
    } else if (event.key === "Escape") setQuery("");
  };
  const open = answer.hits.length > 0;
  return (
    <div className="plant-add screen-only">
      <label htmlFor={`${id}-q`}>Add a plant: type any name</label>
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
        placeholder="limelight hydrangea, Cornus ser. Cardinal, coneflower …"
        value={query}
        onChange={(event) => setQuery(event.target.value)}
        onKeyDown={onKey}
      />
      <div id={`${id}-list`} role="listbox" aria-label="Plants found" className={open ? "hits" : "hits empty"}>
        {answer.hits.map((hit, i) => (
          // The keyboard chooses through the field above (aria-activedescendant).
          <div
            key={hit.taxon.id}
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
              <BotanicalText taxon={hit.taxon} /> <span className="common">{hit.taxon.commonNames[0]}</span>
              {hit.formerName ? <span className="common"> · was {hit.formerName}</span> : null}
            </span>
            <span className="common">
              {hit.sizeWords} · zones {hit.taxon.zoneLow}–{hit.taxon.zoneHigh}
            </span>
            <span className="hit-strip">
              <YearStripSvg marks={hit.marks} sentence={hit.sentence} idPrefix={`${id}-h${i}`} freezeDays={freezeDays} />
            </span>
          </div>
        ))}
      </div>
      <p role="status" className="small soft">
        {answer.failed
          ? "The search did not answer. Type on, or reload the page."
          : query.trim() && answer.query === query.trim() && !open
            ? `Nothing in the dataset is called “${query.trim()}” or nearly so.`
            : ""}
      </p>
    </div>
  );
}
