"use client";

import { useRef } from "react";
import type { KeepClear } from "@/lib/ground/border";
import type { Point } from "@/lib/ground/outline";
import { arrowStep, arrowStepFt, DragHandle, placeSnapped } from "./drag-handle";
import type { HandleProps } from "./edge-handles";
import { placeWords, thingName } from "./outline-words";

/** The places that a thing is moved by: its middle, or the points of its path. */
export const thingPlaces = (thing: KeepClear): readonly Point[] => ("path" in thing ? thing.path : [thing.at]);

/** A thing with one of its places elsewhere. */
export function thingMoved(thing: KeepClear, index: number, to: Point): KeepClear {
  return "path" in thing ? { ...thing, path: thing.path.map((point, i) => (i === index ? to : point)) } : { ...thing, at: to };
}

/** Things to keep clear of: dragged, or moved by arrows; Delete takes one off the drawing. */
export function ThingHandles({ edit, view, snapFt, placeOf, choose }: HandleProps & { choose: (thing: number) => void }) {
  const held = useRef<readonly KeepClear[] | null>(null);
  const { things } = edit;
  return things.flatMap((thing, index) => {
    const name = thingName(thing, index);
    const moved = (place: number, to: Point) => things.map((other, i) => (i === index ? thingMoved(other, place, to) : other));
    return thingPlaces(thing).map((at, place) => (
      <DragHandle
        key={`${thing.what} ${String(index)} ${String(place)}`}
        className="thing-handle"
        label={`${name}${"path" in thing ? `, point ${place + 1}` : ""} at ${placeWords(at)}. Arrows move it, Delete takes it off the drawing.`}
        at={at}
        view={view}
        placeOf={placeOf}
        onFocus={() => choose(index)}
        onDrag={(to) => {
          held.current = moved(place, placeSnapped(to, snapFt));
          edit.showThings(held.current);
        }}
        onDrop={() => {
          if (held.current) edit.keepThings(held.current, `${name} moved.`);
          held.current = null;
        }}
        onKey={(event) => {
          const step = arrowStep(event.key, arrowStepFt(snapFt));
          if (step) edit.keepThings(moved(place, [at[0] + step[0], at[1] + step[1]]), `${name} at ${placeWords([at[0] + step[0], at[1] + step[1]])}.`);
          else if (event.key === "Delete" || event.key === "Backspace")
            edit.keepThings(
              things.filter((_, i) => i !== index),
              `${name} taken off the drawing.`,
            );
          else return false;
          return true;
        }}
      />
    ));
  });
}
