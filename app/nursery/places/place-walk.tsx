"use client";

import Link from "next/link";
import { type KeyboardEvent, type PointerEvent, useEffect, useRef, useState } from "react";
import type { StoredPlace } from "@/lib/server/stock-places";
import { placeDeleteAction, placeRenameAction, placesOrderAction } from "./actions";
import { PlaceForm } from "./place-form";

const UNREACHED = "The order was not kept: the program does not answer. It is shown as it was.";

/** The list with the one at `from` taken to `to`. */
function moved<T>(list: readonly T[], from: number, to: number): readonly T[] {
  const [one, rest] = [list[from], list.filter((_, i) => i !== from)];
  return one === undefined ? list : [...rest.slice(0, to), one, ...rest.slice(to)];
}

/** Own places in walking order: dragged by the grip with mouse or finger, or moved by arrow keys on it and the buttons beside. */
export function PlaceWalk({ places: given }: { places: readonly StoredPlace[] }) {
  const [places, setPlaces] = useState(given);
  const [carried, setCarried] = useState<string | null>(null);
  const [renamed, setRenamed] = useState<string | null>(null);
  const [fault, setFault] = useState<{ id: string; words: string } | null>(null);
  const [said, setSaid] = useState("");
  const list = useRef<HTMLOListElement>(null);
  const before = useRef(given);
  const [saving, setSaving] = useState(0);
  // Orders on their way: an older one that comes back meanwhile must not undo what the hand has done since.
  const underWay = useRef(0);
  const inHand = carried !== null;
  useEffect(() => {
    if (underWay.current === 0 && !inHand) setPlaces(given);
  }, [given, inHand]);

  const keep = async (next: readonly StoredPlace[]) => {
    underWay.current += 1;
    setSaving(underWay.current);
    try {
      await placesOrderAction(next.map((place) => place.id));
      setFault(null);
    } catch {
      setPlaces(given);
      setSaid("");
      setFault({ id: "", words: UNREACHED });
    }
    underWay.current -= 1;
    setSaving(underWay.current);
  };
  const step = (at: number, by: -1 | 1) => {
    const to = at + by;
    const place = places[at];
    if (!place || to < 0 || to >= places.length) return;
    const next = moved(places, at, to);
    setPlaces(next);
    setSaid(`${place.text} is now ${to + 1} of ${places.length}.`);
    void keep(next);
  };
  const onKey = (event: KeyboardEvent, at: number) => {
    if (event.key !== "ArrowUp" && event.key !== "ArrowDown") return;
    event.preventDefault();
    step(at, event.key === "ArrowUp" ? -1 : 1);
  };
  const lift = (event: PointerEvent<HTMLButtonElement>, id: string) => {
    if (event.button !== 0) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    before.current = places;
    setCarried(id);
  };
  const carry = (event: PointerEvent) => {
    if (carried === null || !list.current) return;
    const from = places.findIndex((place) => place.id === carried);
    const rows = [...list.current.children].map((row) => row.getBoundingClientRect());
    // The carried row takes the turn of the row whose middle has been passed.
    const to = rows.filter((row, i) => i !== from && event.clientY > row.top + row.height / 2).length;
    if (from >= 0 && to !== from) setPlaces(moved(places, from, to));
    const edge = 60;
    if (event.clientY < edge) window.scrollBy(0, -12);
    if (event.clientY > window.innerHeight - edge) window.scrollBy(0, 12);
  };
  const drop = () => {
    if (carried === null) return;
    const at = places.findIndex((place) => place.id === carried);
    setCarried(null);
    if (places.every((place, i) => place.id === before.current[i]?.id)) return;
    setSaid(`${places[at]?.text ?? ""} is now ${at + 1} of ${places.length}.`);
    void keep(places);
  };
  const cancel = () => {
    setCarried(null);
    setPlaces(before.current);
  };
  const remove = async (place: StoredPlace) => {
    try {
      const answer = await placeDeleteAction(place.id);
      setFault(answer.kind === "fault" ? { id: place.id, words: answer.message } : null);
    } catch {
      setFault({ id: place.id, words: "Nothing was deleted: the program does not answer." });
    }
  };
  return (
    <>
      <p role="status" className="small soft walk-said">
        {said && `${said} ${saving ? "Keeping the order…" : "Kept."}`}
      </p>
      {fault?.id === "" ? (
        <p role="alert" className="alert">
          {fault.words}
        </p>
      ) : null}
      <ol className="walk" ref={list}>
        {places.map((place, i) => (
          <li key={place.id} className={carried === place.id ? "carried" : undefined}>
            <button
              type="button"
              className="walk-grip"
              aria-label={`Move ${place.text}: ${i + 1} of ${places.length}. Up and down arrow keys move it.`}
              title="Drag, or use the up and down arrow keys"
              onKeyDown={(event) => onKey(event, i)}
              onPointerDown={(event) => lift(event, place.id)}
              onPointerMove={carry}
              onPointerUp={drop}
              onPointerCancel={cancel}
            >
              <span aria-hidden="true">{i + 1} ↕</span>
            </button>
            <span>
              <span className="walk-name">{place.text}</span>{" "}
              <span className="common">
                {place.lots ? (
                  <Link href={`/nursery?q=${encodeURIComponent(place.text)}&sort=place`}>
                    {place.lots} {place.lots === 1 ? "lot" : "lots"}, {place.plants.toLocaleString("en-US")} plants
                  </Link>
                ) : (
                  "empty"
                )}
              </span>
            </span>
            <span className="row small screen-only">
              <button type="button" aria-label={`${place.text} earlier on the walk`} disabled={i === 0} onClick={() => step(i, -1)}>
                ↑
              </button>
              <button type="button" aria-label={`${place.text} later on the walk`} disabled={i === places.length - 1} onClick={() => step(i, 1)}>
                ↓
              </button>
              <button type="button" className="plain" aria-label={`Rename ${place.text}`} onClick={() => setRenamed(place.id)}>
                Rename
              </button>
              <button type="button" className="plain" aria-label={`Delete ${place.text}`} onClick={() => remove(place)}>
                Delete
              </button>
            </span>
            {renamed === place.id ? <PlaceForm name={place} label="Keep" send={(name) => placeRenameAction(place.id, name)} done={() => setRenamed(null)} /> : null}
            {fault?.id === place.id ? (
              <p role="alert" className="alert small walk-fault">
                {fault.words}
              </p>
            ) : null}
          </li>
        ))}
      </ol>
    </>
  );
}
