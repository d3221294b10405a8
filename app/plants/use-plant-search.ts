"use client";

import { useEffect, useRef, useState } from "react";
import { nameText } from "@/lib/plants/botanical-name";
import type { ListedPlant } from "@/lib/plants/plant-list";
import type { SearchAnswer, SearchAsk } from "./search-worker";

export type Found = {
  readonly query: string;
  readonly plants: readonly ListedPlant[] /** Former name that was matched, by plant id. */;
  readonly former: ReadonlyMap<string, string>;
};

const NONE: ReadonlyMap<string, string> = new Map();

/** Until the index stands: plants in whose names every typed word begins a word. */
function plainFind(plants: readonly ListedPlant[], query: string): readonly ListedPlant[] {
  const words = query.toLowerCase().split(/\s+/).filter(Boolean);
  return plants.filter((p) => {
    const text = ` ${nameText(p)} ${p.commonNames.join(" ")} ${p.synonyms.join(" ")}`.toLowerCase().replace(/['’(]/g, " ");
    return words.every((word) => text.includes(` ${word}`));
  });
}

/** Plants that answer a query, best first; null for no query. The last answer stays until the next is there. */
export function usePlantSearch(address: string, plants: readonly ListedPlant[] | null, query: string): Found | null {
  const worker = useRef<Worker | null>(null);
  const ready = useRef(false);
  const [found, setFound] = useState<Found | null>(null);
  const listed = useRef(plants);
  listed.current = plants;

  useEffect(() => {
    ready.current = false;
    const searcher = new Worker(new URL("./search-worker.ts", import.meta.url), { type: "module" });
    searcher.onmessage = (event: MessageEvent<SearchAnswer>) => {
      const answer = event.data;
      const all = listed.current;
      if (answer.type === "ready") ready.current = true;
      else if (all) {
        const hits = answer.places.flatMap((place) => all[place] ?? []);
        const former = new Map(answer.former.flatMap((name, i): [string, string][] => (name && hits[i] ? [[hits[i].id, name]] : [])));
        setFound({ query: answer.query, plants: hits, former });
      }
    };
    searcher.postMessage({ type: "list", address } satisfies SearchAsk);
    worker.current = searcher;
    return () => {
      searcher.terminate();
      worker.current = null;
    };
  }, [address]);

  useEffect(() => {
    const text = query.trim();
    if (!text) setFound(null);
    else if (plants) {
      if (!ready.current) setFound({ query: text, plants: plainFind(plants, text), former: NONE });
      worker.current?.postMessage({ type: "find", query: text } satisfies SearchAsk);
    }
  }, [query, plants]);

  return query.trim() ? found : null;
}
