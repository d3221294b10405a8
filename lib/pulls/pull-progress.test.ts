import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lineMissing, lineOpen, NOTHING_DONE, PULL_EVENT_KINDS, type PullEvent, pullEventFault, pullProgress } from "./pull-progress";

const event = (id: string, more: Partial<PullEvent> = {}): PullEvent => ({
  id,
  lineId: "line",
  kind: "pulled",
  quantity: 1,
  note: "",
  data: "",
  who: "Ana",
  doneAt: `2026-04-20T08:0${id.length}:00.000Z`,
  conflict: false,
  ...more,
});

describe("progress of a pull list", () => {
  it("sums pulled, short and damaged plants of a line, corrections included", () => {
    const line = pullProgress([
      event("a", { quantity: 5 }),
      event("b", { quantity: -1 }),
      event("c", { kind: "short", quantity: 2 }),
      event("d", { kind: "damaged", note: "broken leader" }),
    ]).get("line");
    expect(line).toMatchObject({ pulled: 4, short: 2, damaged: 1, notes: ["broken leader"], events: 4 });
    expect(line && lineOpen(9, line)).toBe(2);
    expect(line && lineMissing(line)).toBe(3);
  });
  it("counts an event that came twice once", () => {
    expect(pullProgress([event("a"), event("a"), event("b")]).get("line")?.pulled).toBe(2);
  });
  it("comes to the same in whatever order phones send", () => {
    const events = fc.array(
      fc.record({
        id: fc.string({ minLength: 1, maxLength: 3 }),
        kind: fc.constantFrom(...PULL_EVENT_KINDS),
        quantity: fc.integer({ min: -3, max: 5 }),
        minute: fc.integer({ min: 10, max: 59 }),
      }),
      { maxLength: 12 },
    );
    fc.assert(
      fc.property(events, fc.integer(), (given, turn) => {
        const all = [...new Map(given.map((g) => [g.id, event(g.id, { kind: g.kind, quantity: g.quantity, doneAt: `2026-04-20T08:${g.minute}:00.000Z` })])).values()];
        const shift = all.length ? Math.abs(turn) % all.length : 0;
        expect(pullProgress([...all.slice(shift), ...all.slice(0, shift)].reverse())).toEqual(pullProgress(all));
      }),
    );
  });
  it("says when a line has no more to do, and takes back no more than was recorded", () => {
    const done = { ...NOTHING_DONE, pulled: 3, short: 1 };
    expect(pullEventFault("pulled", 1, 5, done)).toBeNull();
    expect(pullEventFault("pulled", 2, 5, done)).toMatch(/Only 1 of 5/);
    expect(pullEventFault("short", -2, 5, done)).toMatch(/Only 1 were recorded as short/);
    expect(pullEventFault("pulled", 0.5, 5, done)).toMatch(/whole number/);
  });
});
