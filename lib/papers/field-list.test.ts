import { describe, expect, it } from "vitest";
import { eventsKnown, type FieldLine, type FieldSnapshot, fieldList, type QueuedEvent, queueLeft } from "./field-list";

const line = (lineId: string, wanted: number): FieldLine => ({
  lineId,
  letter: "A",
  bedName: "Entrance bed",
  taxon: { botanical: "Acer rubrum", cultivar: null, group: null, tradeDesignation: null, commonNames: ["red maple"] },
  taxonId: "acer-rubrum",
  sizeText: "2 in cal B&B",
  wanted,
  handling: "",
  cautions: [],
  remarks: "",
});
const event = (id: string, lineId: string, quantity: number): QueuedEvent => ({
  id,
  lineId,
  kind: "pulled",
  quantity,
  note: "",
  data: "",
  who: "",
  doneAt: "2026-04-20T08:00:00.000Z",
  knew: 0,
});
const snapshot: FieldSnapshot = {
  jobId: "j",
  jobName: "Clinic",
  stops: [{ place: "Block A", lines: [line("x", 5), line("y", 3)] }],
  events: [{ ...event("1", "x", 2), conflict: false }],
  pickable: [],
  at: "2026-04-20T08:00:00.000Z",
};

describe("the list on the phone", () => {
  it("counts what the server has and what waits here, each once", () => {
    const queue = [event("1", "x", 2), event("2", "x", 1), event("3", "y", 3)];
    expect(queueLeft(queue, snapshot.events).map((e) => e.id)).toEqual(["2", "3"]);
    const list = fieldList(snapshot, queue);
    expect(list).toMatchObject({ wanted: 8, pulled: 6, open: 2, missing: 0 });
    expect(list.stops[0]?.lines.map((l) => [l.open, l.waiting])).toEqual([
      [2, 1],
      [0, 1],
    ]);
  });
  it("tells the server how many events of a line were known when one was made", () => {
    expect(eventsKnown("x", snapshot, [event("2", "x", 1)])).toBe(2);
    expect(eventsKnown("y", snapshot, [])).toBe(0);
  });
});
