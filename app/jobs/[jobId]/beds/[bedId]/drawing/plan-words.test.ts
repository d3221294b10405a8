import { describe, expect, it } from "vitest";
import { planKey } from "./plan-keys";
import { moveText, placeFieldText, placeRead, placeText, toolRead } from "./plan-words";

const pressed = (key: string, held: Partial<Record<"ctrlKey" | "metaKey" | "shiftKey" | "altKey", boolean>> = {}) => ({
  key,
  ctrlKey: false,
  metaKey: false,
  shiftKey: false,
  altKey: false,
  ...held,
});

describe("places in words", () => {
  it("are told from the lower left corner, outside as well", () => {
    expect(placeText([5, 6.5], [2, 2])).toBe("3 ft from the left, 4 ft 6 in up");
    expect(placeText([1, 1], [2, 2])).toBe("12 in left of the bed, 12 in below it");
    expect(moveText([2, -0.5])).toBe("2 ft right, 6 in down");
  });
  it("are read as typed: feet and inches, nothing, and a minus for outside", () => {
    expect(placeRead("4 ft 6 in")).toEqual({ ok: true, value: 4.5 });
    expect(placeRead("0")).toEqual({ ok: true, value: 0 });
    expect(placeRead("-2")).toEqual({ ok: true, value: -2 });
    expect(placeRead("over there").ok).toBe(false);
    expect(placeFieldText(-2)).toBe("-2 ft");
  });
  it("spacings over 8 without a unit are inches", () => {
    expect(toolRead(1 / 6, 200, "spacing")("18")).toEqual({ ok: true, value: 1.5 });
    expect(toolRead(1 / 6, 200, "spacing")("3")).toEqual({ ok: true, value: 3 });
    expect(toolRead(0.5, 20, "ft")("300").ok).toBe(false);
  });
});

describe("keys on the drawing", () => {
  it("nudge by half a foot, with Shift by a tenth", () => {
    expect(planKey(pressed("ArrowLeft"), false)).toEqual({ type: "arrow", by: [-0.5, 0] });
    expect(planKey(pressed("ArrowUp", { shiftKey: true }), false)).toEqual({ type: "arrow", by: [0, 0.1] });
  });
  it("mean the tool while one is in hand", () => {
    expect(planKey(pressed("Enter"), true)).toEqual({ type: "set" });
    expect(planKey(pressed("Enter"), false)).toEqual({ type: "single" });
    expect(planKey(pressed("Escape"), true)).toEqual({ type: "cancel" });
    expect(planKey(pressed("]"), true)).toEqual({ type: "turn", degrees: -5 });
    expect(planKey(pressed("]"), false)).toEqual({ type: "step", step: 1 });
    expect(planKey(pressed("Delete"), true)).toBeNull();
  });
  it("leave undo and what is not theirs to the page", () => {
    expect(planKey(pressed("z", { ctrlKey: true }), false)).toBeNull();
    expect(planKey(pressed("Tab"), false)).toBeNull();
    expect(planKey(pressed("a", { metaKey: true }), false)).toEqual({ type: "all" });
  });
});
