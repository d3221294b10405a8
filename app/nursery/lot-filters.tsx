"use client";

import { useRouter } from "next/navigation";
import { useEffect, useId, useOptimistic, useRef, useState, useTransition } from "react";
import { LOT_SORTS, type LotSort } from "@/lib/nursery/lot-search";
import { ALL_BLOCKS, type NurseryQuery, nurseryAddress } from "./lot-query";

const PAUSE_MS = 150;
const SORT_WORDS: Record<LotSort, string> = { name: "name", place: "walking order", size: "size", counted: "longest uncounted" };

/** Search, filters and order of the lots. They stand in the address, so that a list can be sent on and gone back to. */
export function LotFilters({ query, blocks, words }: { query: NurseryQuery; blocks: readonly string[]; words: string }) {
  const id = useId();
  const router = useRouter();
  const [busy, start] = useTransition();
  // A filter shows as chosen while its lots are on their way.
  const [shown, show] = useOptimistic(query);
  const [typed, setTyped] = useState(query.q);
  const timer = useRef<ReturnType<typeof setTimeout>>(undefined);
  // What was asked last; the page may still be on its way.
  const asked = useRef(query);
  useEffect(() => {
    asked.current = query;
  }, [query]);
  useEffect(() => () => clearTimeout(timer.current), []);
  const ask = (change: Partial<NurseryQuery>) => {
    asked.current = { ...asked.current, ...change, page: 1 };
    const next = asked.current;
    start(() => {
      show(next);
      router.replace(nurseryAddress(next), { scroll: false });
    });
  };
  const type = (q: string) => {
    setTyped(q);
    clearTimeout(timer.current);
    timer.current = setTimeout(() => ask({ q }), PAUSE_MS);
  };
  const clear = () => {
    setTyped("");
    clearTimeout(timer.current);
    ask({ q: "", block: null, free: false, since: null });
  };
  const filtered = shown.q !== "" || shown.block !== null || shown.free || shown.since !== null;
  return (
    <search className="lot-filters screen-only">
      <div className="fields">
        <div className="field lot-search">
          <label htmlFor={`${id}-q`}>Find in the nursery</label>
          <input id={`${id}-q`} type="search" value={typed} maxLength={120} placeholder="any name, place, size, remark" onChange={(event) => type(event.target.value)} />
        </div>
        <div className="field">
          <label htmlFor={`${id}-b`}>Block</label>
          <select id={`${id}-b`} value={shown.block ?? ALL_BLOCKS} onChange={(event) => ask({ block: event.target.value === ALL_BLOCKS ? null : event.target.value })}>
            <option value={ALL_BLOCKS}>all</option>
            {blocks.map((block) => (
              <option key={block} value={block}>
                {block || "no block"}
              </option>
            ))}
          </select>
        </div>
        <div className="field">
          <label htmlFor={`${id}-s`}>Not counted since</label>
          <input id={`${id}-s`} type="date" value={shown.since ?? ""} onChange={(event) => ask({ since: event.target.value || null })} />
        </div>
        <div className="field">
          <label htmlFor={`${id}-o`}>In order of</label>
          <select id={`${id}-o`} value={shown.sort} onChange={(event) => ask({ sort: LOT_SORTS.find((sort) => sort === event.target.value) ?? "name" })}>
            {LOT_SORTS.map((sort) => (
              <option key={sort} value={sort}>
                {SORT_WORDS[sort]}
              </option>
            ))}
          </select>
        </div>
        <label className="check">
          <input type="checkbox" checked={shown.free} onChange={(event) => ask({ free: event.target.checked })} /> Free plants only
        </label>
        {filtered ? (
          <button type="button" className="plain small" onClick={clear}>
            Show all lots
          </button>
        ) : null}
      </div>
      <p role="status" className="small soft lot-found" aria-busy={busy}>
        {words}
      </p>
    </search>
  );
}
