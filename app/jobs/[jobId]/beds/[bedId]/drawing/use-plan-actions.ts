"use client";

import { useMemo } from "react";
import type { Bed } from "@/lib/ground/bed";
import { PLACED_MAX, type PlacedPlant } from "@/lib/ground/bed-drawing";
import type { GroundPlan } from "@/lib/ground/ground-plan";
import type { Point } from "@/lib/ground/outline";
import { pointSnapped } from "@/lib/ground/plan-outline";
import type { BedCommand } from "../bed-draft";
import { groupFree } from "../drawing-command";
import { type Alignment, placesAligned, placesSpaced, plantsCopied } from "./arrange";
import { groupOf, plantBeside, plantsInOrder } from "./plan-choice";
import type { Figures } from "./plan-figure";
import { moveText, outlineCorner, plantsText, plantText } from "./plan-words";

let made = 0;
/** An id for a plant set here; the time keeps two windows apart. */
export const plantIdNew = () => `p${Date.now().toString(36)}${(made++).toString(36)}`;

/** How far a copy stands from its original. */
const COPY_BY: Point = [1, -1];

export type Choice = { readonly ids: ReadonlySet<string> /** Where the keyboard stands. */; readonly active: string | null };
export const NO_CHOICE: Choice = { ids: new Set(), active: null };

/** What can be done with the plants of the drawing, each said when it is done. */
export type PlanActions = {
  readonly step: (step: 1 | -1) => void;
  readonly single: () => void;
  readonly all: () => void;
  readonly none: () => void;
  readonly move: (by: Point) => void;
  readonly putAt: (id: string, at: Point) => void;
  readonly remove: () => void;
  readonly copy: () => void;
  readonly regroup: (together: boolean) => void;
  readonly align: (alignment: Alignment) => void;
  readonly space: () => void;
  /** Sets places as plants of a row, each list one group. False where there is no room for so many. */
  readonly set: (rowId: string, groups: readonly (readonly Point[])[]) => boolean;
};

export function usePlanActions(
  bed: Bed,
  plants: readonly PlacedPlant[],
  figures: Figures,
  plan: GroundPlan,
  choice: Choice,
  setChoice: (choice: Choice) => void,
  snapFt: number,
  send: (command: BedCommand) => void,
  say: (words: string) => void,
): PlanActions {
  return useMemo(() => {
    const corner = outlineCorner(plan.outline);
    const chosen = plants.filter(({ id }) => choice.ids.has(id));
    const sizeOf = (group: number) => plants.filter((plant) => plant.group === group).length;
    const words = (plant: PlacedPlant) => plantText(plant, figures, sizeOf(plant.group), corner);
    const nothing = () => say("No plant is chosen. N or ] goes to the next plant, Ctrl+A chooses all.");
    return {
      step: (step) => {
        const next = plantBeside(plantsInOrder(plants), choice.active, step);
        if (!next) return say("No plants stand on the drawing yet.");
        setChoice({ ids: groupOf(plants, next.id), active: next.id });
        say(words(next));
      },
      single: () => {
        const plant = plants.find(({ id }) => id === choice.active);
        if (!plant) return;
        const alone = choice.ids.size === 1;
        setChoice({ ids: alone ? groupOf(plants, plant.id) : new Set([plant.id]), active: plant.id });
        say(alone ? `The whole group: ${words(plant)}` : `This plant alone: ${words(plant)}`);
      },
      all: () => {
        setChoice({ ids: new Set(plants.map(({ id }) => id)), active: choice.active });
        say(`${plantsText(plants.length)} chosen.`);
      },
      none: () => {
        setChoice({ ids: new Set(), active: choice.active });
        say("None chosen.");
      },
      move: (by) => {
        if (!chosen.length) return nothing();
        send({ type: "shift", ids: choice.ids, by });
        const [one] = chosen;
        say(chosen.length === 1 && one ? words({ ...one, at: [one.at[0] + by[0], one.at[1] + by[1]] }) : `${plantsText(chosen.length)} moved ${moveText(by)}.`);
      },
      putAt: (id, at) => {
        send({ type: "put", places: new Map([[id, at]]) });
        const plant = plants.find((one) => one.id === id);
        if (plant) say(words({ ...plant, at }));
      },
      remove: () => {
        if (!chosen.length) return nothing();
        send({ type: "unplace", ids: choice.ids });
        setChoice(NO_CHOICE);
        say(`${plantsText(chosen.length)} taken off the drawing. Undo brings ${chosen.length === 1 ? "it" : "them"} back.`);
      },
      copy: () => {
        if (!chosen.length) return nothing();
        if (plants.length + chosen.length > PLACED_MAX) return say(`A drawing has at most ${PLACED_MAX.toLocaleString("en-US")} plants.`);
        const copies = plantsCopied(chosen, COPY_BY, plantIdNew, groupFree(bed.drawing));
        send({ type: "place", plants: copies });
        setChoice({ ids: new Set(copies.map(({ id }) => id)), active: copies[0]?.id ?? null });
        say(`${plantsText(copies.length)} copied, ${moveText(COPY_BY)} of ${copies.length === 1 ? "its original" : "their originals"}.`);
      },
      regroup: (together) => {
        if (!chosen.length) return nothing();
        send({ type: "regroup", ids: choice.ids, together });
        say(together ? `${plantsText(chosen.length)} are one group.` : `${plantsText(chosen.length)} are single now.`);
      },
      align: (alignment) => {
        if (chosen.length < 2) return say("Choose two plants or more to bring them into line.");
        send({ type: "put", places: placesAligned(chosen, alignment, plan) });
        say(`${plantsText(chosen.length)} brought into line: ${alignment}.`);
      },
      space: () => {
        if (chosen.length < 3) return say("Choose three plants or more to space them evenly.");
        send({ type: "put", places: placesSpaced(chosen) });
        say(`${plantsText(chosen.length)} spaced evenly.`);
      },
      set: (rowId, groups) => {
        const count = groups.reduce((sum, group) => sum + group.length, 0);
        if (!count) return false;
        if (plants.length + count > PLACED_MAX) {
          say(`A drawing has at most ${PLACED_MAX.toLocaleString("en-US")} plants; ${plants.length.toLocaleString("en-US")} stand on it.`);
          return false;
        }
        const free = groupFree(bed.drawing);
        const single = count === 1;
        const set = groups.flatMap((group, index) =>
          group.map((at): PlacedPlant => ({ id: plantIdNew(), rowId, at: single ? pointSnapped(at, snapFt) : [round(at[0]), round(at[1])], group: free + index })),
        );
        send({ type: "place", plants: set });
        const figure = figures.get(rowId);
        say(`${count} ${figure?.name ?? "plants"} set${single && set[0] ? `, ${plantText(set[0], figures, 1, corner)}` : ""}.`);
        return true;
      },
    };
  }, [bed.drawing, plants, figures, plan, choice, setChoice, snapFt, send, say]);
}

/** To a thousandth of a foot: finer than a crew sets, and short in the file. */
const round = (feet: number) => Math.round(feet * 1000) / 1000 + 0;
