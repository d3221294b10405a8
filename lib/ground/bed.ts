// A bed as the engine sees it: its size, its site and its plant list. Rows of the database, bed files and the screens' drafts all become this.
import type { Light, Moisture } from "../plants/vocabulary";
import type { BedDrawing } from "./bed-drawing";
import type { PlanOutline } from "./plan-outline";

/** How much road salt or deer browsing the bed has to stand. */
export const PRESSURES = ["none", "some", "heavy"] as const;
export type Pressure = (typeof PRESSURES)[number];

export const FACINGS = ["", "north", "northeast", "east", "southeast", "south", "southwest", "west", "northwest"] as const;
export type Facing = (typeof FACINGS)[number];

export type BedSize =
  | { readonly by: "rectangle"; readonly lengthFt: number; readonly widthFt: number }
  | { readonly by: "outline"; readonly points: readonly (readonly [xFt: number, yFt: number])[] }
  /** Drawn to scale: straight and curved edges, each with what it borders. */
  | { readonly by: "drawing"; readonly edges: PlanOutline };

export type BedSite = {
  readonly light: Light;
  readonly moisture: Moisture;
  /** Soil pH as tested; null where nobody has. */
  readonly ph: number | null;
  readonly salt: Pressure;
  readonly deer: Pressure;
  readonly faces: Facing;
};

/** A count given by hand, the ground the group is to fill at its spacing, or as many as stand on the drawing. */
export type RowQuantity = { readonly by: "count"; readonly count: number } | { readonly by: "area"; readonly areaSqFt: number } | { readonly by: "drawing" };

export type BedRow = {
  readonly id: string;
  readonly taxonId: string;
  readonly taxonName: string;
  readonly quantity: RowQuantity;
  /** On center; null: at mature spread. */
  readonly spacingFt: number | null;
  /** Size at planting as the trade writes it: #3, 2 in cal B&B. */
  readonly size: string;
  readonly remarks: string;
  /** Stands there already and stays: counts in the year and the room, not in the pull list. */
  readonly existing: boolean;
};

export type Bed = {
  readonly name: string;
  readonly size: BedSize;
  readonly site: BedSite;
  readonly notes: string;
  readonly rows: readonly BedRow[];
  /** What stands where; null or absent: nobody has drawn it. */
  readonly drawing?: BedDrawing | null;
};

/** A new bed before anything is known of it. */
export const EMPTY_BED: Bed = {
  name: "New bed",
  size: { by: "rectangle", lengthFt: 24, widthFt: 8 },
  site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
  notes: "",
  rows: [],
  drawing: null,
};
