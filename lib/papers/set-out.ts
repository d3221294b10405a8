// From a bed's plant list to an arrangement and back: what the layout engine is given, what cannot be set out by it, and the bed as it is when an arrangement is taken.
import type { Bed, BedRow } from "../ground/bed";
import { type BedDrawing, EMPTY_DRAWING, type PlacedPlant } from "../ground/bed-drawing";
import { bedSizeEdges } from "../ground/bed-size";
import { groundPlan } from "../ground/ground-plan";
import type { FixedPlant, Layout, LayoutInput, LayoutRow } from "../ground/layout";
import type { LayoutScore } from "../ground/layout-score";
import type { Standpoint } from "../ground/layout-sites";
import type { BedViewRow, PlacedTaxon } from "./bed-view";

/** What is needed of the bed's view: its rows with their counts, spacings and taxa. */
export type SetOutRows = {
  readonly rows: readonly (Pick<BedViewRow, "row" | "letter" | "quantity" | "spacingFt"> & { readonly placed: Pick<PlacedTaxon, "taxon"> | null })[];
};

/** Sides a bed can be looked at from on its drawing, y pointing up it; "front" is the foot of the sheet. */
export const STANDPOINTS = ["front", "back", "left", "right", "all round"] as const;
export type StandpointName = (typeof STANDPOINTS)[number];

const ANGLES = { front: Math.PI / 2, back: -Math.PI / 2, left: 0, right: Math.PI } as const;

export function standpointOf(name: StandpointName): Standpoint {
  return name === "all round" ? { kind: "all round" } : { kind: "one side", lookAngle: ANGLES[name] };
}

/** The side nearest to where a bed is looked at from. */
export function standpointName(standpoint: Standpoint): StandpointName {
  if (standpoint.kind === "all round") return "all round";
  const off = (angle: number) => 1 - Math.cos(standpoint.lookAngle - angle);
  const sides = ["front", "back", "left", "right"] as const;
  return sides.reduce<"front" | "back" | "left" | "right">((best, side) => (off(ANGLES[side]) < off(ANGLES[best]) - 1e-9 ? side : best), "front");
}

export type SetOutAsk = {
  readonly input: LayoutInput;
  /** Plants of the drawing that stay as they are. */
  readonly kept: readonly PlacedPlant[];
  /** What of the list is not set out, and why. */
  readonly left: readonly { readonly letter: string; readonly name: string; readonly why: string }[];
};

/**
 * What the engine is asked for a bed as it is. Plants that stand there already stay; with `keep` everything that is placed does.
 * Existing plants that are not on the drawing are left to be placed by hand: only the eye on site knows where they stand.
 */
export function setOutAsk(bed: Bed, view: SetOutRows, standpoint: Standpoint, keep: boolean): SetOutAsk {
  const drawing = bed.drawing ?? EMPTY_DRAWING;
  const rowOf = new Map(view.rows.map((r) => [r.row.id, r]));
  // What the dataset no longer has cannot be set out anew: it stays where it was put.
  const stays = (own: SetOutRows["rows"][number] | undefined) => own !== undefined && (own.row.existing || !own.placed);
  const kept = drawing.plants.filter(({ rowId }) => keep || stays(rowOf.get(rowId)));
  const fixed = kept.flatMap(({ rowId, at }): FixedPlant[] => {
    const own = rowOf.get(rowId);
    return own?.placed && own.spacingFt !== null ? [{ key: rowId, taxon: own.placed.taxon, spacingFt: own.spacingFt, at }] : [];
  });
  const rows: LayoutRow[] = [];
  const left: { letter: string; name: string; why: string }[] = [];
  for (const { row, letter, placed, quantity, spacingFt } of view.rows) {
    const open = quantity - kept.filter(({ rowId }) => rowId === row.id).length;
    if (open <= 0) continue;
    if (!placed || spacingFt === null) left.push({ letter, name: row.taxonName, why: "is no longer in the dataset, so its size is not known." });
    else if (row.existing) left.push({ letter, name: row.taxonName, why: "stands there already: place it by hand where it stands." });
    else rows.push({ key: row.id, taxon: placed.taxon, quantity: open, spacingFt });
  }
  return { input: { plan: groundPlan(bedSizeEdges(bed.size), drawing.things), rows, fixed, standpoint }, kept, left };
}

/** To a thousandth of a foot: finer than a crew sets, and short in the file. */
const setFigure = (feet: number) => Math.round(feet * 1000) / 1000 + 0;

/** The plants of the drawing under an arrangement: those kept, then those set out, each with an id and group of its own. */
export function layoutPlants(kept: readonly PlacedPlant[], layout: Pick<Layout, "placements" | "seed">): PlacedPlant[] {
  const taken = new Set(kept.map(({ id }) => id));
  const firstGroup = kept.reduce((most, { group }) => Math.max(most, group), 0) + 1;
  let made = 0;
  const idFree = () => {
    let id = `s${layout.seed}-${++made}`;
    while (taken.has(id)) id = `s${layout.seed}-${++made}`;
    return id;
  };
  return [
    ...kept,
    ...layout.placements.map(({ key, at, group }): PlacedPlant => ({ id: idFree(), rowId: key, at: [setFigure(at[0]), setFigure(at[1])], group: firstGroup + group })),
  ];
}

/** A row counted from the drawing keeps its number when not all of it found room. */
function rowCounted(row: BedRow, quantity: number, placed: number): BedRow {
  return row.quantity.by === "drawing" && placed < quantity ? { ...row, quantity: { by: "count", count: quantity } } : row;
}

/** The bed with an arrangement taken: its plants and its standpoint, everything else as it was. */
export function bedSetOut(bed: Bed, view: SetOutRows, plants: readonly PlacedPlant[], standpoint: Standpoint): Bed {
  const quantities = new Map(view.rows.map(({ row, quantity }) => [row.id, quantity]));
  const rows = bed.rows.map((row) => rowCounted(row, quantities.get(row.id) ?? 0, plants.filter(({ rowId }) => rowId === row.id).length));
  const drawing: BedDrawing = { ...(bed.drawing ?? EMPTY_DRAWING), plants, standpoint };
  return { ...bed, rows, drawing };
}

const percent = (share: number) => `${Math.round(100 * share)} %`;

/** The parts of an arrangement's score in words, with the figure of each. */
export function layoutWords(layout: Pick<Layout, "spacingShare">, score: LayoutScore): { readonly words: string; readonly figure: string }[] {
  return [
    { words: "tall stands behind low", figure: percent(score.order) },
    { words: "evergreens are seen in winter", figure: percent(score.evergreensSeen) },
    { words: "repeats are spread along the bed", figure: percent(score.spread) },
    { words: "plants have the room of the list's spacing", figure: percent(score.room) },
    { words: "spacing kept at", figure: percent(layout.spacingShare) },
  ];
}
