"use client";

import { useMemo } from "react";
import type { UnderlayPlace } from "@/lib/ground/bed-drawing";
import type { KeepClear } from "@/lib/ground/border";
import type { OutlineFault, Point } from "@/lib/ground/outline";
import { type PlanOutline, planFault } from "@/lib/ground/plan-outline";
import type { LayerProps } from "../drawing-props";
import { useOutlineTools } from "./outline-tools";

/** Most edges of a drawn bed, and how far from 0, 0 it may lie: what a bed's file takes. */
export const EDGES_MAX = 200;
const FAR_FT = 5000;

/** What keeps a plan from being the bed's: a fault of its lines, too many edges, or a place out of reach. */
export function planHindrance(plan: PlanOutline): OutlineFault | null {
  const fault = planFault(plan);
  if (fault) return fault;
  if (plan.length > EDGES_MAX)
    return { kind: "too many corners", words: `A drawn bed has at most ${EDGES_MAX} edges; this one has ${plan.length}. Take out corners that lie close together.`, place: null };
  const reach = (point: Point) => Math.max(Math.abs(point[0]), Math.abs(point[1]));
  const far = plan.findIndex(({ from, shape }) => Math.max(reach(from), ...(shape.kind === "cubic" ? [reach(shape.control1), reach(shape.control2)] : [])) > FAR_FT);
  return far < 0 ? null : { kind: "not a number", words: `Corner ${far + 1} lies more than 5,000 ft from 0, 0. Check the length that was typed.`, place: null };
}

export type OutlineEdit = {
  /** As being drawn, else the bed's. */
  readonly plan: PlanOutline;
  readonly fault: OutlineFault | null;
  readonly things: readonly KeepClear[];
  readonly underlay: UnderlayPlace | null;
  /** Shows a plan without keeping it: while a handle is held. */
  readonly showPlan: (plan: PlanOutline) => void;
  /** Keeps a plan, or shows what is wrong with it while the bed stays as it was. */
  readonly keepPlan: (plan: PlanOutline, words: string) => void;
  readonly dropPlan: () => void;
  readonly showThings: (things: readonly KeepClear[]) => void;
  readonly keepThings: (things: readonly KeepClear[], words: string) => void;
  readonly showUnderlay: (underlay: UnderlayPlace) => void;
  readonly keepUnderlay: (underlay: UnderlayPlace | null, words: string) => void;
};

/** The outline, things and picture as they are being drawn, and how they change. The same for the layer and the panel. */
export function useOutlineEdit({ bed, edges, send, say }: Pick<LayerProps, "bed" | "edges" | "send" | "say">): OutlineEdit {
  const { planDraft, setPlanDraft, thingsDraft, setThingsDraft, underlayDraft, setUnderlayDraft } = useOutlineTools();
  const drawing = bed.drawing ?? null;
  const plan = planDraft?.base === bed.size ? planDraft.plan : edges;
  const things = thingsDraft && thingsDraft.base === drawing ? thingsDraft.things : (drawing?.things ?? []);
  const underlay = drawing?.underlay && underlayDraft?.base === drawing ? underlayDraft.underlay : (drawing?.underlay ?? null);
  const fault = useMemo(() => (plan === edges ? null : planHindrance(plan)), [plan, edges]);
  return {
    plan,
    fault,
    things,
    underlay,
    showPlan: (next) => setPlanDraft({ base: bed.size, plan: next }),
    keepPlan: (next, words) => {
      const hindrance = planHindrance(next);
      if (hindrance) {
        setPlanDraft({ base: bed.size, plan: next });
        return;
      }
      setPlanDraft(null);
      if (next === edges) return;
      send({ type: "edges", edges: next });
      say(words);
    },
    dropPlan: () => {
      setPlanDraft(null);
      say("Back to the last sound outline.");
    },
    showThings: (next) => setThingsDraft({ base: drawing, things: next }),
    keepThings: (next, words) => {
      setThingsDraft(null);
      send({ type: "things", things: next });
      say(words);
    },
    showUnderlay: (next) => setUnderlayDraft({ base: drawing, underlay: next }),
    keepUnderlay: (next, words) => {
      setUnderlayDraft(null);
      send({ type: "underlay", underlay: next });
      say(words);
    },
  };
}
