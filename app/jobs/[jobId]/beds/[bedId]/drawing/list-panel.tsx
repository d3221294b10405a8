"use client";

import type { PlantHit } from "@/app/api/plants/route";
import { BotanicalText } from "@/app/parts/botanical-text";
import type { BedViewRow } from "@/lib/papers/bed-view";
import { PlantAdd } from "../plant-add";
import { PLACING_KINDS, type PlacingKind } from "./placing";

const TOOL_WORDS: Readonly<Record<PlacingKind, string>> = { single: "Single", group: "Group", row: "Row", repeat: "Repeat", drift: "Drift", fill: "Fill" };
const TOOL_TITLES: Readonly<Record<PlacingKind, string>> = {
  single: "One plant at a press",
  group: "An odd group about a point",
  row: "A row along a line or an edge",
  repeat: "The same group again and again along the bed",
  drift: "A long thin drift, drawn by its length",
  fill: "The bed, what is left of it, or a drift, filled at the spacing",
};

/** The plant list beside the drawing: how many of each stand on it, and the tools that set them. */
export function ListPanel({
  jobId,
  rows,
  rowId,
  setRowId,
  tool,
  take,
  add,
}: {
  jobId: string;
  rows: readonly BedViewRow[];
  rowId: string | null;
  setRowId: (rowId: string) => void;
  tool: PlacingKind | null;
  take: (kind: PlacingKind) => void;
  add: (hit: PlantHit) => void;
}) {
  return (
    <section aria-labelledby="plan-list-title" className="plan-list screen-only">
      <h2 id="plan-list-title">Plant list</h2>
      {rows.length ? (
        <>
          <ul>
            {rows.map(({ row, letter, placed, quantity, drawn }) => (
              <li key={row.id}>
                <button type="button" aria-pressed={row.id === rowId} className="plan-row" onClick={() => setRowId(row.id)}>
                  <b>{letter}</b>
                  <span className="plan-row-name">{placed ? <BotanicalText taxon={placed.taxon} /> : row.taxonName}</span>
                  <span className={drawn < quantity ? "plan-count" : "plan-count soft"}>
                    {row.quantity.by === "drawing" ? `${drawn} by the drawing` : `${drawn} of ${quantity}`}
                    <span className="visually-hidden"> placed</span>
                  </span>
                </button>
              </li>
            ))}
          </ul>
          <fieldset className="tools">
            <legend>Set {rowId ? (rows.find(({ row }) => row.id === rowId)?.letter ?? "") : "a plant of the list"}</legend>
            {PLACING_KINDS.map((kind) => (
              <button key={kind} type="button" title={TOOL_TITLES[kind]} aria-pressed={tool === kind} disabled={!rowId} onClick={() => take(kind)}>
                {TOOL_WORDS[kind]}
              </button>
            ))}
          </fieldset>
        </>
      ) : (
        <p className="soft">No plants in the list yet. Add the first by any name; it is at once in your hand to be set.</p>
      )}
      <PlantAdd jobId={jobId} freezeDays={[]} add={add} />
    </section>
  );
}
