"use client";

import { useRouter } from "next/navigation";
import { type KeyboardEvent, useCallback, useDeferredValue, useEffect, useMemo, useRef, useState } from "react";
import { filterParts, filterWrite, NO_FILTER, type PlantFilter, plantFits, plantsByUse } from "@/lib/papers/plant-filter";
import type { Climate } from "@/lib/place/climate";
import type { ListedPlant } from "@/lib/plants/plant-list";
import { FilterParts } from "./filter-parts";
import { FilterRail } from "./filter-rail";
import { FoundList } from "./found-list";
import { NothingFound } from "./nothing-found";
import { useFilterUrl } from "./use-filter-url";
import { usePlantList } from "./use-plant-list";
import { usePlantSearch } from "./use-plant-search";
import { usePlantYear } from "./use-plant-year";

/** Where plants are looked at, as the browser needs it. */
export type FinderPlace = {
  readonly key: string;
  readonly label: string;
  readonly climate: Climate;
  readonly zone: number | null;
  readonly state: string | null;
  readonly lastFreezeDay: number | null;
  readonly firstFreezeDay: number | null;
  /** USDA symbols native to the state; null where that is not known. */
  readonly native: readonly string[] | null;
};

type Props = {
  readonly address: string;
  /** Rows of beds by plant id. */
  readonly uses: Readonly<Record<string, number>>;
  /** Plants in the firm's lots by plant id; comes with the page, not with the list, so that a count shows at once. */
  readonly onHand: Readonly<Record<string, number>>;
  readonly place: FinderPlace;
};

const PAGE = 60;
const SCREENFUL = 14;
const isTyping = (target: EventTarget | null) => target instanceof HTMLElement && target.matches("input, textarea, select");

/** Search as one types, filters beside it, results with their years. Everything runs here; the list is fetched once. */
export function PlantFinder({ address, uses, onHand, place }: Props) {
  const router = useRouter();
  const input = useRef<HTMLInputElement>(null);
  const results = useRef<HTMLDivElement>(null);
  const [railOpen, setRailOpen] = useState(false);
  const { plants, failed, again } = usePlantList(address);
  const { filter, change, set, settle, rows, showRows } = useFilterUrl();
  const found = usePlantSearch(address, plants, filter.q);
  const year = usePlantYear(place.climate, plants);
  const native = useMemo(() => (place.native ? new Set(place.native) : null), [place.native]);
  const fits = useCallback((plant: ListedPlant, by: PlantFilter) => plantFits(plant, by, { native, colorsAt: year.colorsOf, onHand }), [native, year, onHand]);

  const ordered = useMemo(() => (plants ? plantsByUse(plants, uses) : []), [plants, uses]);
  // What the words find (or all plants, most used first); then what of it fits.
  const called = filter.q.trim() ? (found?.plants ?? []) : ordered;
  const shown = useMemo(() => called.filter((p) => fits(p, filter)), [called, filter, fits]);
  const parts = filterParts(filter, place.state);
  const count = Math.max(PAGE, rows ?? 0);
  const page = useMemo(() => shown.slice(0, count), [shown, count]);
  // A screenful at once, the rest of the page when the keys leave time for it.
  const later = useDeferredValue(page);
  const drawn = later === page ? page : page.slice(0, SCREENFUL);
  const settled = plants !== null && (!filter.q.trim() || found !== null);

  useEffect(() => {
    const onKey = (event: globalThis.KeyboardEvent) => {
      if (event.key === "/" && !isTyping(event.target)) {
        event.preventDefault();
        input.current?.focus();
        input.current?.select();
      } else if (event.key === "ArrowDown" || event.key === "ArrowUp") {
        const links = [...(results.current?.querySelectorAll<HTMLElement>("a.found-link") ?? [])];
        const here = links.findIndex((link) => link.matches(":focus"));
        if (here < 0) return;
        event.preventDefault();
        const next = here + (event.key === "ArrowDown" ? 1 : -1);
        if (next < 0) input.current?.focus();
        else links[next]?.focus();
      }
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);

  const hrefOf = useCallback((plant: ListedPlant) => `/plants/${plant.id}?place=${encodeURIComponent(place.key)}`, [place.key]);
  const onSearchKey = (event: KeyboardEvent) => {
    const [first] = shown;
    if (event.key === "ArrowDown") {
      event.preventDefault();
      results.current?.querySelector<HTMLElement>("a.found-link")?.focus();
    } else if (event.key === "Enter") {
      event.preventDefault();
      settle();
      if (filter.q.trim() && first) router.push(hrefOf(first));
    } else if (event.key === "Escape" && filter.q) {
      event.preventDefault();
      change({ ...filter, q: "" }, true);
    }
  };

  return (
    <div className="finder">
      <div className="finder-search">
        <label htmlFor="plants-q">Any botanical, common, trade or former name</label>
        <div className="row">
          <input
            id="plants-q"
            ref={input}
            type="search"
            autoComplete="off"
            spellCheck={false}
            enterKeyHint="search"
            placeholder="limelight hydrangea, Cornus ser. Cardinal, coneflower …"
            value={filter.q}
            onChange={(event) => change({ ...filter, q: event.target.value }, true)}
            onBlur={settle}
            onKeyDown={onSearchKey}
          />
          <button type="button" className="rail-button" aria-expanded={railOpen} aria-controls="plants-rail" onClick={() => setRailOpen(!railOpen)}>
            Filters{parts.length ? ` · ${parts.length}` : ""}
          </button>
        </div>
      </div>
      <div id="plants-rail" className={railOpen ? "rail open" : "rail"}>
        <FilterRail filter={filter} set={set} place={place} />
      </div>
      <div className="finder-results" ref={results}>
        <div className="section-head">
          <p role="status" className="count">
            {!plants ? failed ? "" : "Fetching the plants …" : settled ? <Count shown={shown.length} of={plants.length} filter={filter} /> : "Looking …"}
          </p>
          <FilterParts parts={parts} change={change} reset={() => change({ ...NO_FILTER, q: filter.q })} />
        </div>
        {failed ? (
          <p className="notice alert">
            The list of plants did not come: the program does not answer.{" "}
            <button type="button" onClick={again}>
              Try again
            </button>
          </p>
        ) : null}
        {settled && shown.length === 0 && plants ? <NothingFound filter={filter} parts={parts} called={called} fits={fits} change={change} /> : null}
        {shown.length ? (
          <FoundList plants={drawn} rows={page.length} former={found?.former ?? null} uses={uses} onHand={onHand} place={place} seasonOf={year.seasonOf} hrefOf={hrefOf} />
        ) : null}
        {shown.length > count ? (
          <p>
            <button type="button" onClick={() => showRows(count + PAGE)}>
              Show {Math.min(PAGE, shown.length - count)} more of {(shown.length - count).toLocaleString("en-US")}
            </button>
          </p>
        ) : null}
      </div>
    </div>
  );
}

function Count({ shown, of, filter }: { shown: number; of: number; filter: PlantFilter }) {
  const all = filterWrite(filter) === "";
  return (
    <>
      <b>{shown.toLocaleString("en-US")}</b> {all ? "plants" : `of ${of.toLocaleString("en-US")} plants`}
      <span className="soft">{filter.q.trim() ? ", best match first" : ", most used first"}</span>
    </>
  );
}
