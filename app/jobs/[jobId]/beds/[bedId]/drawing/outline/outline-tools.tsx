"use client";

import { createContext, type ReactNode, useContext, useMemo, useState } from "react";
import type { Bed, BedSize } from "@/lib/ground/bed";
import type { BedDrawing, UnderlayPlace } from "@/lib/ground/bed-drawing";
import type { KeepClear, LineKind, SpotKind } from "@/lib/ground/border";
import type { Point } from "@/lib/ground/outline";
import type { PlanOutline } from "@/lib/ground/plan-outline";

/** What a click on the drawing does. */
export type OutlineTool =
  | { readonly kind: "spot"; readonly what: SpotKind }
  | { readonly kind: "line"; readonly what: LineKind; readonly path: readonly Point[] }
  /** The bed's outline drawn anew, corner by corner. */
  | { readonly kind: "corners"; readonly path: readonly Point[] }
  /** Two places of the picture whose distance is known; a third click begins anew. */
  | { readonly kind: "scale"; readonly points: readonly Point[] }
  | { readonly kind: "move picture" };

export type Chosen = { readonly kind: "edge" | "thing"; readonly index: number } | null;

/** What is being drawn and is not the bed's yet. `base` says of which state: after undo or a change in another place it counts no more. */
export type PlanDraft = { readonly base: BedSize; readonly plan: PlanOutline };
export type ThingsDraft = { readonly base: BedDrawing | null; readonly things: readonly KeepClear[] };
export type UnderlayDraft = { readonly base: BedDrawing | null; readonly underlay: UnderlayPlace };

type Tools = {
  readonly tool: OutlineTool | null;
  readonly setTool: (tool: OutlineTool | null) => void;
  readonly chosen: Chosen;
  readonly choose: (chosen: Chosen) => void;
  readonly planDraft: PlanDraft | null;
  readonly setPlanDraft: (draft: PlanDraft | null) => void;
  readonly thingsDraft: ThingsDraft | null;
  readonly setThingsDraft: (draft: ThingsDraft | null) => void;
  readonly underlayDraft: UnderlayDraft | null;
  readonly setUnderlayDraft: (draft: UnderlayDraft | null) => void;
};

const OutlineToolsContext = createContext<Tools | null>(null);

/** Round the whole drawing screen: what is chosen and being drawn, shared by the layer over the drawing, the panel beside it and the picture beneath it. */
export function OutlineTools({ children }: { children: ReactNode }) {
  const [tool, setTool] = useState<OutlineTool | null>(null);
  const [chosen, choose] = useState<Chosen>(null);
  const [planDraft, setPlanDraft] = useState<PlanDraft | null>(null);
  const [thingsDraft, setThingsDraft] = useState<ThingsDraft | null>(null);
  const [underlayDraft, setUnderlayDraft] = useState<UnderlayDraft | null>(null);
  const tools = useMemo(
    () => ({ tool, setTool, chosen, choose, planDraft, setPlanDraft, thingsDraft, setThingsDraft, underlayDraft, setUnderlayDraft }),
    [tool, chosen, planDraft, thingsDraft, underlayDraft],
  );
  return <OutlineToolsContext value={tools}>{children}</OutlineToolsContext>;
}

export function useOutlineTools(): Tools {
  const tools = useContext(OutlineToolsContext);
  if (!tools) throw new Error("OutlineTools has to stand round the drawing screen");
  return tools;
}

/** The picture under the drawing as it is being moved, else as the bed has it. */
export function useUnderlay(bed: Bed): UnderlayPlace | null {
  const { underlayDraft } = useOutlineTools();
  const drawing = bed.drawing ?? null;
  return drawing?.underlay && underlayDraft?.base === drawing ? underlayDraft.underlay : (drawing?.underlay ?? null);
}
