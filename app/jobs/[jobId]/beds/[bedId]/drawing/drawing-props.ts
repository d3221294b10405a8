// What the drawing screen hands to its layers (over the drawing) and its panels (beside it).
import type { Bed } from "@/lib/ground/bed";
import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import type { PlanOutline } from "@/lib/ground/plan-outline";
import type { BedView, PlacedTaxon } from "@/lib/papers/bed-view";
import type { BedCommand } from "../bed-draft";
import type { SheetView } from "./sheet-view";

export type LayerProps = {
  readonly bed: Bed;
  /** The bed's edges, whichever way its size was given. */
  readonly edges: PlanOutline;
  readonly view: SheetView;
  readonly widthPx: number;
  readonly heightPx: number;
  /** 0: off. */
  readonly snapFt: number;
  readonly send: (command: BedCommand) => void;
  /** Says what happened, for those who hear the screen. */
  readonly say: (words: string) => void;
};

export type PanelProps = {
  readonly bed: Bed;
  readonly bedView: BedView;
  /** By taxon id. */
  readonly placed: Readonly<Record<string, PlacedTaxon>>;
  /** Adds taxa that rows about to be sent belong to. */
  readonly setPlaced: (add: Readonly<Record<string, PlacedTaxon>>) => void;
  /** Years after planting, 0–20. */
  readonly year: number;
  /** Of the bed's list: /jobs/…/beds/… */
  readonly path: string;
  /** Whether the server has the bed as it is shown. */
  readonly saved: boolean;
  readonly send: (command: BedCommand) => void;
  readonly say: (words: string) => void;
  /** Ids of placed plants. */
  readonly chosen: ReadonlySet<string>;
  readonly choose: (ids: ReadonlySet<string>) => void;
  /** Shows plants in place of those of the drawing without keeping them; null shows the drawing again. */
  readonly preview: (plants: readonly PlacedPlant[] | null) => void;
};
