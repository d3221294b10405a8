// Changes of the plant list that crowding asks for: a smaller plant in place of one, or one fewer. The drawing goes with the list.
import type { Bed, BedRow } from "../ground/bed";
import type { PlacedPlant } from "../ground/bed-drawing";
import { rangeMiddle } from "../ground/stratum";
import type { Taxon } from "../plants/taxon";

const swapped = (row: BedRow, taxon: Pick<Taxon, "id" | "name" | "spreadFt">): BedRow => ({
  ...row,
  taxonId: taxon.id,
  taxonName: taxon.name,
  // A spacing closer than the new plant's own still holds; a wider one was the old plant's.
  spacingFt: row.spacingFt !== null && row.spacingFt <= rangeMiddle(taxon.spreadFt) ? row.spacingFt : null,
});

/** The row with so many plants fewer, as a count unless it is counted from the drawing. */
function rowFewer(row: BedRow, quantity: number, fewer: number): BedRow {
  return row.quantity.by === "drawing" ? row : { ...row, quantity: { by: "count", count: Math.max(0, quantity - fewer) } };
}

/** The bed with a row's taxon exchanged for another; its plants stay where they stand. */
export function rowExchanged(bed: Bed, rowId: string, taxon: Pick<Taxon, "id" | "name" | "spreadFt">): Bed {
  return { ...bed, rows: bed.rows.map((row) => (row.id === rowId ? swapped(row, taxon) : row)) };
}

/**
 * The bed with some plants of a row exchanged: a new row after theirs holds them, and theirs has so many fewer.
 * @param quantity of the row as the view counts it @param newId of the row that is made
 */
export function plantsExchanged(bed: Bed, rowId: string, ids: ReadonlySet<string>, quantity: number, taxon: Pick<Taxon, "id" | "name" | "spreadFt">, newId: string): Bed {
  if (!bed.drawing) return bed;
  const moved = bed.drawing.plants.filter((plant) => plant.rowId === rowId && ids.has(plant.id)).length;
  if (moved === 0) return bed;
  if (moved >= quantity) return rowExchanged(bed, rowId, taxon);
  const plants = bed.drawing.plants.map((plant): PlacedPlant => (plant.rowId === rowId && ids.has(plant.id) ? { ...plant, rowId: newId } : plant));
  const rows = bed.rows.flatMap((row): BedRow[] =>
    row.id === rowId ? [rowFewer(row, quantity, moved), { ...swapped(row, taxon), id: newId, quantity: { by: "count", count: moved }, remarks: "" }] : [row],
  );
  return { ...bed, rows, drawing: { ...bed.drawing, plants } };
}

/** The bed without one plant of the drawing, which is also taken off the list. @param quantity of its row as the view counts it */
export function plantLeftOut(bed: Bed, id: string, quantity: number): Bed {
  const plant = bed.drawing?.plants.find((one) => one.id === id);
  if (!bed.drawing || !plant) return bed;
  const rows = bed.rows.map((row) => (row.id === plant.rowId ? rowFewer(row, quantity, 1) : row));
  return { ...bed, rows, drawing: { ...bed.drawing, plants: bed.drawing.plants.filter((one) => one !== plant) } };
}
