import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { type PullRow, type PullTaxon, pullList } from "../pulls/pull-list";
import { kindPaper } from "./paper-kind";
import { paperCsv } from "./paper-table";

const hydrangea: PullTaxon = {
  id: "hydrangea-paniculata-jane",
  name: "Hydrangea paniculata 'Jane'",
  genus: "Hydrangea",
  botanical: "Hydrangea paniculata",
  cultivar: "Jane",
  group: null,
  tradeDesignation: "Little Lime",
  commonNames: ["panicle hydrangea", "PeeGee"],
  kind: "shrub",
};
const sedge: PullTaxon = {
  ...hydrangea,
  id: "carex",
  name: "Carex pensylvanica",
  genus: "Carex",
  botanical: "Carex pensylvanica",
  cultivar: null,
  tradeDesignation: null,
  commonNames: [],
  kind: "grass",
};
const job = { jobName: "Clinic", bedName: null, place: "Burlington", date: "Nov 25, 2026", plantingText: "" };
const row = (over: Partial<PullRow>): PullRow => ({ bedId: "1", bedName: "Door", taxon: hydrangea, sizeText: "#3", quantity: 5, existing: false, remarks: "", ...over });
const csvOf = (rows: readonly PullRow[]): string => paperCsv(kindPaper(pullList(rows), job));

describe("the totals of a pull list by kind", () => {
  it("have one row a taxon and size and one column a bed", () => {
    expect(csvOf([row({}), row({ bedId: "2", bedName: "Wall", quantity: 2, remarks: "matching" }), row({ taxon: sedge, sizeText: "qt", quantity: 50 })])).toBe(
      [
        "\ufeffKind,Qty,Botanical name,Common name,Size,Door,Wall,Remarks",
        "Shrubs,7,Hydrangea paniculata 'Jane' LITTLE LIME,panicle hydrangea,#3,5,2,matching",
        "Grasses,50,Carex pensylvanica,,qt,50,,",
        "",
      ].join("\r\n"),
    );
  });

  it("have no bed columns where there is one bed", () => {
    const paper = kindPaper(pullList([row({})]), job);
    expect(paper.columns.map(({ key }) => key)).toEqual(["tick", "qty", "plant", "size", "remarks"]);
    expect(paper.total).toMatchObject({ qty: 5 });
  });

  it("disarm formulas in bed names and remarks", () => {
    const [head, line] = Papa.parse<string[]>(csvOf([row({ bedName: "=HYPERLINK(1)", remarks: "@x" }), row({ bedId: "2", bedName: "Wall" })])).data;
    expect(head?.[5]).toBe("'=HYPERLINK(1)");
    expect(line?.at(-1)).toBe("'@x");
  });
});
