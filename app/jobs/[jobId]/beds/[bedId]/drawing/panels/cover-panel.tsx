"use client";

import dynamic from "next/dynamic";
import { useMemo } from "react";
import { bedSizeOutline } from "@/lib/ground/bed-size";
import { areaAgainstDrawing, offDrawingText } from "@/lib/papers/ground-view";
import type { PanelProps } from "../drawing-props";

const CoverChart = dynamic(() => import("../../cover-chart").then((m) => m.CoverChart), { ssr: false, loading: () => <p className="soft small">Drawing …</p> });

/** Cover by year and layer, whose figures it shows, and counts by area beside the drawing. */
export function CoverPanel({ bed, bedView, year }: PanelProps) {
  const against = useMemo(() => (bedView.drawn ? areaAgainstDrawing(bedView, bedSizeOutline(bed.size)) : []), [bedView, bed.size]);
  const off = offDrawingText(bedView);
  return (
    <section className="ground-panel" aria-labelledby="cover-title">
      <h2 id="cover-title">Cover</h2>
      {bedView.rows.length === 0 ? (
        <p className="soft">The share of the bed under leaves appears here as plants are added.</p>
      ) : (
        <>
          <CoverChart cover={bedView.ground.coverByYear} year={year} />
          <p className="small">
            {bedView.groundBy === "drawing"
              ? "Figures by the places of the drawing."
              : bedView.drawn
                ? `Figures by area and count, as if each plant stood in even groups. Not on the drawing: ${off || "plants no longer in the dataset"}.`
                : "Figures by area and count: nothing stands on the drawing yet."}
          </p>
          {against.length ? (
            <ul className="small area-against">
              {against.map(({ letter, drawn, byArea, edge }) => (
                <li key={letter}>
                  <b>{letter}</b>: {drawn} on the drawing, {byArea.toFixed(1)} by area
                  {edge === null ? "; the rest is rounding and the group's edge." : `; the bed's edge alone may make ${edge.toFixed(1)} either way.`}
                </li>
              ))}
            </ul>
          ) : null}
        </>
      )}
    </section>
  );
}
