import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { JOB_STAGES, type JobStage, type StageRow, stageDateFault, stageIndex, stageMoveFault, stageNow, stageOffers, stagesReached, stageWarning } from "./job-stage";

const row = (stage: JobStage, on: string, more: Partial<StageRow> = {}): StageRow => ({ id: `${stage} ${on}`, stage, on, who: "Ann", note: "", ...more });
const ALL = { wanted: 10, promised: 10, pulled: 10 };
const NONE = { wanted: 10, promised: 0, pulled: 0 };
const TODAY = "2027-05-01";
const sold = [row("sold", "2027-03-01")];

describe("where a job stands", () => {
  it("is in design until somebody says more, then at the latest row", () => {
    expect(stageNow([])).toBe("design");
    expect(stageNow([...sold, row("reserved", "2027-03-02")])).toBe("reserved");
  });

  it("after going back is the stage gone back to, with the day on which it was first reached", () => {
    const rows = [...sold, row("reserved", "2027-03-02"), row("pulled", "2027-04-01"), row("sold", "2027-04-02", { note: "put off" })];
    expect(stageNow(rows)).toBe("sold");
    expect([...stagesReached(rows)].map(([stage, { on }]) => [stage, on])).toEqual([["sold", "2027-03-01"]]);
  });

  it("never shows a stage as reached that lies after the present one", () => {
    fc.assert(
      fc.property(fc.array(fc.constantFrom(...JOB_STAGES), { maxLength: 12 }), (stages) => {
        const rows = stages.map((stage, i) => row(stage, `2027-01-${String(i + 1).padStart(2, "0")}`));
        for (const stage of stagesReached(rows).keys()) expect(stageIndex(stage)).toBeLessThanOrEqual(stageIndex(stageNow(rows)));
      }),
    );
  });
});

describe("a step", () => {
  it("forward needs a day that has come and does not run before the stage before it", () => {
    expect(stageMoveFault([], "sold", TODAY, "", NONE, TODAY)).toBeNull();
    expect(stageMoveFault([], "sold", "2027-05-02", "", NONE, TODAY)).toMatch(/still to come/);
    expect(stageMoveFault([], "sold", "2027-02-30", "", NONE, TODAY)).toMatch(/A date/);
    expect(stageMoveFault(sold, "reserved", "2027-02-28", "", ALL, TODAY)).toMatch(/sold on Mar 1, 2027/);
  });

  it("to reserved needs plants that are reserved; too few of them are only a warning", () => {
    expect(stageMoveFault(sold, "reserved", TODAY, "", NONE, TODAY)).toMatch(/No plants are reserved/);
    expect(stageMoveFault(sold, "reserved", TODAY, "", { ...NONE, promised: 7 }, TODAY)).toBeNull();
    expect(stageWarning("reserved", { ...NONE, promised: 7 })).toBe("3 plants of 10 not reserved yet.");
    expect(stageWarning("reserved", ALL)).toBeNull();
  });

  it("back needs a reason", () => {
    expect(stageMoveFault(sold, "design", TODAY, " ", NONE, TODAY)).toMatch(/why it goes back/);
    expect(stageMoveFault(sold, "design", TODAY, "client changed their mind", NONE, TODAY)).toBeNull();
  });

  it("to where the job stands already is none", () => {
    expect(stageMoveFault(sold, "sold", TODAY, "", NONE, TODAY)).toMatch(/sold already/);
  });

  it("may have its day corrected between its neighbors", () => {
    const rows = [...sold, row("reserved", "2027-03-10"), row("pulled", "2027-04-01")];
    expect(stageDateFault(rows, "reserved", "2027-03-20", TODAY)).toBeNull();
    expect(stageDateFault(rows, "reserved", "2027-04-02", TODAY)).toMatch(/cannot be after it/);
    expect(stageDateFault(rows, "reserved", "2027-02-02", TODAY)).toMatch(/cannot be before it/);
  });
});

describe("what is offered next", () => {
  it("is the stage that follows, ready once the plants say so", () => {
    expect(stageOffers("design", NONE)).toEqual([{ stage: "sold", ready: true, warning: null }]);
    expect(stageOffers("sold", ALL)).toEqual([{ stage: "reserved", ready: true, warning: null }]);
    expect(stageOffers("reserved", { ...ALL, pulled: 4 })).toEqual([{ stage: "pulled", ready: false, warning: "6 plants of 10 not pulled yet." }]);
    expect(stageOffers("reserved", ALL)).toEqual([{ stage: "pulled", ready: true, warning: null }]);
    expect(stageOffers("handed over", ALL)).toEqual([]);
  });

  it("skips reserved where nothing is reserved", () => {
    expect(stageOffers("sold", NONE)[0]?.stage).toBe("pulled");
  });
});
