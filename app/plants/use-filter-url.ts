"use client";

import { useSearchParams } from "next/navigation";
import { useCallback, useEffect, useRef, useState } from "react";
import { filterRead, filterWrite, type PlantFilter } from "@/lib/papers/plant-filter";

const TYPING_PAUSE_MS = 250;

/** The address with a filter: its own parts are replaced, the place stays. */
function addressWith(filter: string, rows: number | null): string {
  const place = new URLSearchParams(window.location.search).get("place");
  const text = [place ? `place=${encodeURIComponent(place)}` : "", filter, rows ? `rows=${rows}` : ""].filter(Boolean).join("&");
  return text ? `?${text}` : window.location.pathname;
}

export type FilterUrl = {
  readonly filter: PlantFilter;
  /** `typing`: one entry of the history for a whole query, written when the keys rest. */
  readonly change: (next: PlantFilter, typing?: boolean) => void;
  /** Changes a part of the filter as it stands now. Stays the same function, so that what only uses it is not drawn anew while one types. */
  readonly set: (part: Partial<PlantFilter>) => void;
  /** Writes what is still waiting: called when the search field is left. */
  readonly settle: () => void;
  /** Rows asked for beyond the first page, kept in the address for the way back. */
  readonly rows: number | null;
  readonly showRows: (rows: number) => void;
};

/** The filter lives in the address: it can be sent to somebody, and Back goes to the filter before. */
export function useFilterUrl(): FilterUrl {
  const params = useSearchParams();
  const inAddress = filterWrite(filterRead(params));
  const [filter, setFilter] = useState(() => filterRead(params));
  const written = useRef(inAddress);
  const waiting = useRef<{ text: string; timer: ReturnType<typeof setTimeout> } | null>(null);

  // Back, Forward, or a link: the address leads.
  useEffect(() => {
    if (inAddress === written.current) return;
    written.current = inAddress;
    setFilter(filterRead(params));
  }, [inAddress, params]);

  const write = useCallback((text: string, typing: boolean) => {
    if (waiting.current) clearTimeout(waiting.current.timer);
    waiting.current = null;
    if (text === written.current) return;
    const goesOn = typing && new URLSearchParams(written.current).has("q");
    written.current = text;
    if (goesOn) window.history.replaceState(null, "", addressWith(text, null));
    else window.history.pushState(null, "", addressWith(text, null));
  }, []);

  const settle = useCallback(() => {
    if (waiting.current) write(waiting.current.text, true);
  }, [write]);

  const change = useCallback(
    (next: PlantFilter, typing = false) => {
      setFilter(next);
      const text = filterWrite(next);
      if (!typing) {
        write(text, false);
        return;
      }
      if (waiting.current) clearTimeout(waiting.current.timer);
      waiting.current = { text, timer: setTimeout(() => write(text, true), TYPING_PAUSE_MS) };
    },
    [write],
  );

  const latest = useRef(filter);
  latest.current = filter;
  const set = useCallback((part: Partial<PlantFilter>) => change({ ...latest.current, ...part }), [change]);

  const rows = Number(params.get("rows")) || null;
  const showRows = useCallback((count: number) => window.history.replaceState(null, "", addressWith(written.current, count)), []);
  return { filter, change, set, settle, rows, showRows };
}
