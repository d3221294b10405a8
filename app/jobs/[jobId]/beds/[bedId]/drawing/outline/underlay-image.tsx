"use client";

import { useState } from "react";
import type { Bed } from "@/lib/ground/bed";
import { pxOfFt, type SheetView } from "../sheet-view";
import { useUnderlay } from "./outline-tools";

/** The picture beneath the drawing, in the drawing area's pixels; nothing where there is none. @param path of the bed: /jobs/…/beds/… */
export function UnderlayImage({ bed, view, path, inPrint = false }: { bed: Bed; view: SheetView; path: string; inPrint?: boolean }) {
  const underlay = useUnderlay(bed);
  const [missing, setMissing] = useState<string | null>(null);
  if (!underlay) return null;
  if (missing === underlay.imageId)
    return (
      <p className="underlay-missing small alert" role="alert">
        The picture under this drawing is no longer stored. Choose it again, or take it away, under “Picture beneath”.
      </p>
    );
  const [left, bottom] = pxOfFt(view, underlay.at);
  const [width, height] = [underlay.widthPx * underlay.ftPerPx * view.pxPerFt, underlay.heightPx * underlay.ftPerPx * view.pxPerFt];
  return (
    <img
      className={inPrint ? "underlay-image" : "underlay-image screen-only"}
      src={`${path}/underlay/${underlay.imageId}`}
      alt=""
      draggable={false}
      style={{ left, top: bottom - height, width, height, opacity: underlay.strength }}
      onError={() => setMissing(underlay.imageId)}
    />
  );
}
