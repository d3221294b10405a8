// What can be done on a bed's drawing: commands as data, and the bed after each. Pure; the history around it is bed-draft.ts.
import type { Bed, BedRow, RowQuantity } from "@/lib/ground/bed";
import { type BedDrawing, EMPTY_DRAWING, type PlacedPlant, placedByRow, type UnderlayPlace } from "@/lib/ground/bed-drawing";
import type { KeepClear } from "@/lib/ground/border";
import type { Standpoint } from "@/lib/ground/layout-sites";
import type { Point } from "@/lib/ground/outline";
import type { PlanOutline } from "@/lib/ground/plan-outline";

export type DrawingCommand =
  /** The outline as drawn, with what its edges border. */
  | { readonly type: "edges"; readonly edges: PlanOutline }
  | { readonly type: "things"; readonly things: readonly KeepClear[] }
  | { readonly type: "standpoint"; readonly standpoint: Standpoint }
  | { readonly type: "underlay"; readonly underlay: UnderlayPlace | null }
  /** Puts plants on the drawing; `rows`: lines new to the plant list that they belong to. */
  | { readonly type: "place"; readonly plants: readonly PlacedPlant[]; readonly rows?: readonly BedRow[] }
  | { readonly type: "unplace"; readonly ids: ReadonlySet<string> }
  /** Moves plants by so many feet. */
  | { readonly type: "shift"; readonly ids: ReadonlySet<string>; readonly by: Point }
  /** Moves plants each to its own place. */
  | { readonly type: "put"; readonly places: ReadonlyMap<string, Point> }
  /** Makes the plants one group, or each a group of its own. */
  | { readonly type: "regroup"; readonly ids: ReadonlySet<string>; readonly together: boolean }
  /** Replaces everything that stands on the drawing. */
  | { readonly type: "set out"; readonly plants: readonly PlacedPlant[] };

const TYPES: ReadonlySet<string> = new Set<DrawingCommand["type"]>(["edges", "things", "standpoint", "underlay", "place", "unplace", "shift", "put", "regroup", "set out"]);

export function isDrawingCommand(command: { readonly type: string }): command is DrawingCommand {
  return TYPES.has(command.type);
}

/** A group number that no plant of the drawing has. */
export function groupFree(drawing: BedDrawing | null | undefined): number {
  return (drawing?.plants ?? []).reduce((most, { group }) => Math.max(most, group), 0) + 1;
}

const BY_DRAWING: RowQuantity = { by: "drawing" };

/** Rows of which more stand on the drawing than the list counts take their count from the drawing. */
function rowsCounted(rows: readonly BedRow[], drawing: BedDrawing): readonly BedRow[] {
  const placed = placedByRow(drawing);
  const outgrown = (row: BedRow) => row.quantity.by === "count" && (placed.get(row.id) ?? 0) > row.quantity.count;
  return rows.some(outgrown) ? rows.map((row) => (outgrown(row) ? { ...row, quantity: BY_DRAWING } : row)) : rows;
}

function withPlants(bed: Bed, drawing: BedDrawing, plants: readonly PlacedPlant[], rows: readonly BedRow[] = []): Bed {
  const next = { ...drawing, plants };
  return { ...bed, rows: rowsCounted([...bed.rows, ...rows], next), drawing: next };
}

/** The bed after a command of the drawing; the same object when nothing changes. */
export function placesChanged(bed: Bed, command: DrawingCommand): Bed {
  const drawing = bed.drawing ?? EMPTY_DRAWING;
  const { plants } = drawing;
  switch (command.type) {
    case "edges":
      return { ...bed, size: { by: "drawing", edges: command.edges } };
    case "things":
      return { ...bed, drawing: { ...drawing, things: command.things } };
    case "standpoint":
      return { ...bed, drawing: { ...drawing, standpoint: command.standpoint } };
    case "underlay":
      return { ...bed, drawing: { ...drawing, underlay: command.underlay } };
    case "place":
      return command.plants.length || command.rows?.length ? withPlants(bed, drawing, [...plants, ...command.plants], command.rows) : bed;
    case "unplace": {
      const left = plants.filter(({ id }) => !command.ids.has(id));
      return left.length === plants.length ? bed : withPlants(bed, drawing, left);
    }
    case "shift": {
      const [dx, dy] = command.by;
      if ((dx === 0 && dy === 0) || !plants.some(({ id }) => command.ids.has(id))) return bed;
      return withPlants(
        bed,
        drawing,
        plants.map((plant) => (command.ids.has(plant.id) ? { ...plant, at: [plant.at[0] + dx, plant.at[1] + dy] } : plant)),
      );
    }
    case "put":
      return plants.some(({ id }) => command.places.has(id))
        ? withPlants(
            bed,
            drawing,
            plants.map((plant) => ({ ...plant, at: command.places.get(plant.id) ?? plant.at })),
          )
        : bed;
    case "regroup": {
      if (!plants.some(({ id }) => command.ids.has(id))) return bed;
      let group = groupFree(drawing);
      return withPlants(
        bed,
        drawing,
        plants.map((plant) => (command.ids.has(plant.id) ? { ...plant, group: command.together ? group : group++ } : plant)),
      );
    }
    case "set out":
      return withPlants(bed, drawing, command.plants);
  }
}
