"use client";

import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";
import type { Point } from "@/lib/ground/outline";
import { pointSnapped } from "@/lib/ground/plan-outline";
import { pxOfFt, type SheetView } from "../sheet-view";

/** A step of the arrow keys where snapping is off: an inch. */
const FINE_FT = 1 / 12;

export const arrowStepFt = (snapFt: number): number => (snapFt > 0 ? snapFt : FINE_FT);

/** A place as the snapping has it; without snapping to the hundredth of a foot, an eighth of an inch. */
export function placeSnapped(place: Point, snapFt: number): Point {
  return pointSnapped(place, snapFt > 0 ? snapFt : 0.01);
}

/** Feet that an arrow key moves, y up the drawing; null for other keys. */
export function arrowStep(key: string, stepFt: number): Point | null {
  switch (key) {
    case "ArrowLeft":
      return [-stepFt, 0];
    case "ArrowRight":
      return [stepFt, 0];
    case "ArrowUp":
      return [0, stepFt];
    case "ArrowDown":
      return [0, -stepFt];
    default:
      return null;
  }
}

type DragHandleProps = {
  readonly className: string;
  readonly label: string;
  readonly at: Point;
  readonly view: SheetView;
  /** Feet under the pointer. */
  readonly placeOf: (event: PointerEvent) => Point;
  /** While it is held: the place under the pointer, not snapped. */
  readonly onDrag: (place: Point) => void;
  readonly onDrop: () => void;
  readonly onGrab?: () => void;
  /** Whether the key was for the handle; it goes no further then. */
  readonly onKey: (event: KeyboardEvent) => boolean;
  readonly onFocus?: () => void;
  readonly pressed?: boolean;
  readonly children?: ReactNode;
};

/** A place on the drawing that is dragged, or chosen and moved by keys. */
export function DragHandle({ className, label, at, view, placeOf, onDrag, onDrop, onGrab, onKey, onFocus, pressed, children }: DragHandleProps) {
  // How far the pointer took hold from the handle's place, so that it does not jump; null when not held.
  const held = useRef<Point | null>(null);
  const moved = useRef(false);
  const [left, top] = pxOfFt(view, at);
  const drop = () => {
    if (!held.current) return;
    held.current = null;
    if (moved.current) onDrop();
    moved.current = false;
  };
  return (
    <button
      type="button"
      className={`outline-handle ${className}`}
      style={{ left, top }}
      aria-label={label}
      aria-pressed={pressed}
      onFocus={onFocus}
      onKeyDown={(event) => {
        if (event.ctrlKey || event.metaKey || event.altKey || !onKey(event)) return;
        event.preventDefault();
        event.stopPropagation();
      }}
      onPointerDown={(event) => {
        if (event.button !== 0) return;
        event.stopPropagation();
        event.currentTarget.setPointerCapture(event.pointerId);
        const [x, y] = placeOf(event);
        held.current = [at[0] - x, at[1] - y];
        onGrab?.();
      }}
      onPointerMove={(event) => {
        if (!held.current) return;
        event.stopPropagation();
        const [x, y] = placeOf(event);
        moved.current = true;
        onDrag([x + held.current[0], y + held.current[1]]);
      }}
      onPointerUp={drop}
      onPointerCancel={drop}
    >
      {children}
    </button>
  );
}
