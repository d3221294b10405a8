"use client";

import { type RefObject, useCallback, useEffect, useRef, useState } from "react";
import type { Point } from "@/lib/ground/outline";
import { outlineElsewhere, type SheetView, viewOfAll, viewZoomed } from "./sheet-view";

const MARGIN_PX = 72;
const MARGIN_PHONE_PX = 44;
/** Kept free at the foot of the window: the buttons and the scale stand there, under the length over all. */
const FOOT_PX = 40;

type Px = readonly [number, number];
export type SheetWindow = {
  readonly view: SheetView;
  readonly widthPx: number;
  readonly heightPx: number;
  /** By a factor, about the middle of the window. */
  readonly zoom: (factor: number) => void;
  readonly whole: () => void;
  /** Whether the hand holds the sheet just now. */
  readonly panning: RefObject<boolean>;
};

/**
 * The view over the drawing area: its size, the wheel, pinching and dragging the sheet (middle button, space held, two fingers; one finger where the area says so).
 * @param cancel ends what one finger began when a second comes down
 */
export function useSheetView(area: RefObject<HTMLElement | null>, outline: readonly Point[], cancel: RefObject<() => void>): SheetWindow & { readonly panStart: () => void } {
  const [size, setSize] = useState<Px>([900, 520]);
  const [view, setView] = useState<SheetView>(() => viewOfAll(outline, 900, 520, MARGIN_PX));
  const touched = useRef(false);
  const panning = useRef(false);
  const space = useRef(false);
  const fingers = useRef(new Map<number, Px>());
  const outlineNow = useRef(outline);
  outlineNow.current = outline;

  const fittedFor = useRef(outline);
  const fit = useCallback(([width, height]: Px) => {
    fittedFor.current = outlineNow.current;
    setView(viewOfAll(outlineNow.current, width, height - FOOT_PX, width < 600 ? MARGIN_PHONE_PX : MARGIN_PX));
  }, []);
  const outlineBefore = useRef(outline);
  useEffect(() => {
    const before = touched.current ? outlineBefore.current : fittedFor.current;
    outlineBefore.current = outline;
    if (!outlineElsewhere(before, outline)) return;
    touched.current = false;
    const element = area.current;
    if (element?.clientWidth) fit([element.clientWidth, element.clientHeight]);
  }, [area, outline, fit]);
  useEffect(() => {
    const element = area.current;
    if (!element) return;
    const watch = new ResizeObserver(() => {
      const next: Px = [element.clientWidth, element.clientHeight];
      if (!next[0] || !next[1]) return;
      setSize(next);
      if (!touched.current) fit(next);
    });
    watch.observe(element);
    return () => watch.disconnect();
  }, [area, fit]);

  const pan = useCallback((dx: number, dy: number) => {
    touched.current = true;
    setView((before) => ({ ...before, originPx: [before.originPx[0] + dx, before.originPx[1] + dy] }));
  }, []);
  const zoomAt = useCallback((at: Px, factor: number) => {
    touched.current = true;
    setView((before) => viewZoomed(before, at, factor));
  }, []);

  useEffect(() => {
    const element = area.current;
    if (!element) return;
    const at = (event: { clientX: number; clientY: number }): Px => {
      const box = element.getBoundingClientRect();
      return [event.clientX - box.left, event.clientY - box.top];
    };
    const onWheel = (event: WheelEvent) => {
      event.preventDefault();
      zoomAt(at(event), Math.exp(-event.deltaY * (event.deltaMode === 1 ? 0.04 : 0.0016)));
    };
    const onDown = (event: PointerEvent) => {
      if (event.pointerType === "touch") {
        fingers.current.set(event.pointerId, at(event));
        if (fingers.current.size >= 2) {
          panning.current = true;
          cancel.current();
          event.stopPropagation();
        }
      } else if (event.button === 1 || (event.button === 0 && space.current)) {
        event.preventDefault();
        event.stopPropagation();
        panning.current = true;
        fingers.current.set(event.pointerId, at(event));
        element.setPointerCapture(event.pointerId);
      }
    };
    const onMove = (event: PointerEvent) => {
      const before = fingers.current.get(event.pointerId);
      if (!before) return;
      const now = at(event);
      if (panning.current) {
        event.stopPropagation();
        const others = [...fingers.current].filter(([id]) => id !== event.pointerId).map(([, px]) => px);
        const [other] = others;
        if (other) {
          const factor = Math.hypot(now[0] - other[0], now[1] - other[1]) / Math.max(1, Math.hypot(before[0] - other[0], before[1] - other[1]));
          const middle: Px = [(now[0] + other[0]) / 2, (now[1] + other[1]) / 2];
          pan((now[0] - before[0]) / 2, (now[1] - before[1]) / 2);
          zoomAt(middle, factor);
        } else pan(now[0] - before[0], now[1] - before[1]);
      }
      fingers.current.set(event.pointerId, now);
    };
    const onUp = (event: PointerEvent) => {
      if (!fingers.current.delete(event.pointerId)) return;
      if (panning.current) event.stopPropagation();
      if (fingers.current.size === 0) panning.current = false;
    };
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== " ") return;
      const held = event.type === "keydown";
      if (held && event.target instanceof HTMLElement && event.target.closest("button, input, select, textarea, a, summary, [role=option]")) return;
      space.current = held;
      element.classList.toggle("hand", held);
      if (held && element.contains(document.activeElement)) event.preventDefault();
    };
    element.addEventListener("wheel", onWheel, { passive: false });
    element.addEventListener("pointerdown", onDown, true);
    element.addEventListener("pointermove", onMove, true);
    element.addEventListener("pointerup", onUp, true);
    element.addEventListener("pointercancel", onUp, true);
    window.addEventListener("keydown", onKey);
    window.addEventListener("keyup", onKey);
    return () => {
      element.removeEventListener("wheel", onWheel);
      element.removeEventListener("pointerdown", onDown, true);
      element.removeEventListener("pointermove", onMove, true);
      element.removeEventListener("pointerup", onUp, true);
      element.removeEventListener("pointercancel", onUp, true);
      window.removeEventListener("keydown", onKey);
      window.removeEventListener("keyup", onKey);
    };
  }, [area, cancel, pan, zoomAt]);

  const [widthPx, heightPx] = size;
  return {
    view,
    widthPx,
    heightPx,
    zoom: (factor) => zoomAt([widthPx / 2, heightPx / 2], factor),
    whole: () => {
      touched.current = false;
      fit(size);
    },
    panning,
    panStart: () => {
      panning.current = true;
    },
  };
}
