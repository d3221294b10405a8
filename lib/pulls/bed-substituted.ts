// A bed in which some plants of a row give way to another plant, because they were not to be had.
import type { Bed, BedRow } from "../ground/bed";

export type Substitution = {
  readonly rowId: string;
  /** How many of the row give way; the row's present quantity when larger. */
  readonly quantity: number;
  /** The row's quantity as it stands, whichever way it is counted. */
  readonly present: number;
  readonly taxonId: string;
  readonly taxonName: string;
  readonly size: string;
  /** Id of the new row. */
  readonly newRowId: string;
};

/**
 * The bed after a substitution; null when the row is not there or has no such plants. The new plant stands in a line of its own right after the old one, on the old
 * one's spacing, and takes the places on the drawing of those that give way (the last ones set). A row that is left with nothing goes.
 */
export function bedSubstituted(bed: Bed, { rowId, quantity, present, taxonId, taxonName, size, newRowId }: Substitution): Bed | null {
  const at = bed.rows.findIndex((row) => row.id === rowId);
  const old = bed.rows[at];
  const count = Math.min(quantity, present);
  if (!old || count <= 0) return null;
  const left = present - count;
  const drawn = bed.drawing?.plants.filter((plant) => plant.rowId === rowId) ?? [];
  const giving = new Set(drawn.slice(Math.max(0, drawn.length - count)).map((plant) => plant.id));
  const byDrawing = old.quantity.by === "drawing";
  const fresh: BedRow = {
    id: newRowId,
    taxonId,
    taxonName,
    quantity: byDrawing ? { by: "drawing" } : { by: "count", count },
    spacingFt: old.spacingFt,
    size,
    remarks: `instead of ${old.taxonName}`,
    existing: false,
  };
  const kept: BedRow[] = left > 0 ? [{ ...old, quantity: byDrawing ? old.quantity : { by: "count", count: left } }] : [];
  return {
    ...bed,
    rows: [...bed.rows.slice(0, at), ...kept, fresh, ...bed.rows.slice(at + 1)],
    drawing: bed.drawing ? { ...bed.drawing, plants: bed.drawing.plants.map((plant) => (giving.has(plant.id) ? { ...plant, rowId: newRowId } : plant)) } : (bed.drawing ?? null),
  };
}
