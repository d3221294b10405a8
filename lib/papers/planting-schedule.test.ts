import { describe, expect, it } from "vitest";
import type { PullTaxon } from "../pulls/pull-list";
import { paperTable } from "./paper-table";
import { plantingSchedule, rootText, type ScheduleRow, sizeWithoutRoot } from "./planting-schedule";

const maple: PullTaxon = {
  id: "acer",
  name: "Acer rubrum 'Frank Jr.'",
  genus: "Acer",
  botanical: "Acer rubrum",
  cultivar: "Frank Jr.",
  group: null,
  tradeDesignation: "Redpointe",
  commonNames: ["red maple"],
  kind: "tree",
};
const sedge: PullTaxon = {
  ...maple,
  id: "carex",
  name: "Carex pensylvanica",
  genus: "Carex",
  botanical: "Carex pensylvanica",
  cultivar: null,
  tradeDesignation: null,
  commonNames: ["Pennsylvania sedge"],
  kind: "grass",
};
const row = (over: Partial<ScheduleRow>): ScheduleRow => ({
  bedId: "1",
  bedName: "Door",
  letter: "A",
  taxon: maple,
  sizeText: "2 in cal B&B",
  quantity: 1,
  spacingFt: 20,
  existing: false,
  remarks: "",
  ...over,
});
const job = { jobName: "Clinic", bedName: null, place: "Burlington", date: "Nov 25, 2026", plantingText: "" };

describe("the planting schedule", () => {
  it("has the columns that drawings carry, grouped by kind", () => {
    const { columns, rows } = paperTable(plantingSchedule([row({ letter: "B", taxon: sedge, sizeText: "qt", quantity: 60, spacingFt: 1 }), row({})], job));
    expect(columns.map(({ head }) => head)).toEqual(["Kind", "Key", "Qty", "Botanical name", "Common name", "Size", "Root", "Spacing", "Remarks"]);
    expect(rows).toEqual([
      ["Trees", "A", 1, "Acer rubrum 'Frank Jr.' REDPOINTE", "red maple", "2 in cal", "B&B", "", ""],
      ["Grasses", "B", 60, "Carex pensylvanica", "Pennsylvania sedge", "qt", "cont.", "12 in o.c.", ""],
    ]);
  });

  it("names the bed where there are several, and counts no plant that stays", () => {
    const paper = plantingSchedule([row({}), row({ bedId: "2", bedName: "Wall", quantity: 2, existing: true })], job);
    expect(paper.columns.map(({ key }) => key)).toContain("bed");
    expect(paper.total).toMatchObject({ qty: 1 });
    expect(paper.groups[0]?.rows[1]?.cells.remarks).toBe("existing, to remain");
  });

  it("parts the root from the size", () => {
    expect(["2 in cal B&B", "#3", "24 in BR", "8-10 ft clump", "#5 cont.", "B&B"].map((size) => [sizeWithoutRoot(size), rootText(size, "tree")])).toEqual([
      ["2 in cal", "B&B"],
      ["#3", "cont."],
      ["24 in", "BR"],
      ["8-10 ft clump", ""],
      ["#5", "cont."],
      ["B&B", "B&B"],
    ]);
  });
});
