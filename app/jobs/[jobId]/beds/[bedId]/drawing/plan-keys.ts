// The keys of the drawing: what each means while plants are chosen, and while a tool is in hand.
import type { Point } from "@/lib/ground/outline";

/** Feet that an arrow moves, and with Shift. */
export const NUDGE_FT = 0.5;
export const NUDGE_FINE_FT = 0.1;
const TURN_DEGREES = 5;

const ARROWS: Readonly<Record<string, Point>> = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

export type PlanKey =
  | { readonly type: "arrow"; readonly by: Point }
  | { readonly type: "step"; readonly step: 1 | -1 }
  | { readonly type: "turn"; readonly degrees: number }
  | { readonly type: "lengthen"; readonly step: 1 | -1 }
  | { readonly type: "zoom"; readonly factor: number }
  | { readonly type: "single" | "all" | "none" | "remove" | "copy" | "group" | "ungroup" | "whole" | "set" | "cancel" };

type Pressed = { readonly key: string; readonly ctrlKey: boolean; readonly metaKey: boolean; readonly shiftKey: boolean; readonly altKey: boolean };

/** What a key means on the drawing; null where it means nothing there. @param placing a tool is in hand */
export function planKey({ key, ctrlKey, metaKey, shiftKey, altKey }: Pressed, placing: boolean): PlanKey | null {
  const arrow = ARROWS[key];
  const command = ctrlKey || metaKey;
  if (altKey) return null;
  if (arrow && !command) {
    const feet = shiftKey ? NUDGE_FINE_FT : NUDGE_FT;
    return { type: "arrow", by: [arrow[0] * feet, arrow[1] * feet] };
  }
  if (command) {
    if (key.toLowerCase() === "a") return { type: "all" };
    return key.toLowerCase() === "d" ? { type: "copy" } : null;
  }
  switch (key) {
    case "+":
    case "=":
      return { type: "zoom", factor: 1.25 };
    case "-":
    case "_":
      return { type: "zoom", factor: 0.8 };
    case "0":
      return { type: "whole" };
    case "Enter":
      return { type: placing ? "set" : "single" };
    case "Escape":
      return { type: placing ? "cancel" : "none" };
    case "Delete":
    case "Backspace":
      return placing ? null : { type: "remove" };
  }
  if (placing) {
    switch (key) {
      case "[":
        return { type: "turn", degrees: TURN_DEGREES };
      case "]":
        return { type: "turn", degrees: -TURN_DEGREES };
      case "<":
      case ",":
        return { type: "lengthen", step: -1 };
      case ">":
      case ".":
        return { type: "lengthen", step: 1 };
    }
    return null;
  }
  switch (key.toLowerCase()) {
    case "]":
    case "n":
      return { type: "step", step: 1 };
    case "[":
    case "p":
      return { type: "step", step: -1 };
    case "d":
      return { type: "copy" };
    case "g":
      return { type: "group" };
    case "u":
      return { type: "ungroup" };
  }
  return null;
}

/** The keys as the help under the drawing tells them. */
export const PLAN_KEYS: readonly (readonly [keys: string, does: string])[] = [
  ["N or ], P or [", "Next plant, plant before (from the back to the front, left to right); its group is chosen with it"],
  ["Enter", "The one plant instead of its group, and back; with a tool in hand: set the plants"],
  ["Arrows", "Move what is chosen, or the tool in hand, half a foot; with Shift a tenth of a foot"],
  ["D or Ctrl + D", "Copy what is chosen"],
  ["G, U", "Make one group of what is chosen; make each plant single"],
  ["Delete", "Take what is chosen off the drawing"],
  ["Ctrl + A, Esc", "Choose all; choose none, or put the tool away"],
  ["[ ] and < >", "With a tool in hand: turn it by 5°, make it shorter or longer by a spacing"],
  ["+ − 0", "Closer, farther, the whole bed; the wheel zooms, Space or the middle button drags the sheet"],
];
