import Papa from "papaparse";
import { describe, expect, it } from "vitest";
import { type PullRow, type PullTaxon, pullList } from "../pulls/pull-list";
import { pullListCsv } from "./pull-list-csv";

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
const row = (over: Partial<PullRow>): PullRow => ({ bedId: "1", bedName: "Door", taxon: hydrangea, sizeText: "#3", quantity: 5, existing: false, remarks: "", ...over });

describe("the pull list as CSV", () => {
  it("has one row a taxon and size and one column a bed", () => {
    const list = pullList([row({}), row({ bedId: "2", bedName: "Wall", quantity: 2, remarks: "matching" }), row({ taxon: sedge, sizeText: "qt", quantity: 50 })]);
    expect(pullListCsv(list)).toBe(
      [
        "\ufeffKind,Botanical name,Common name,Size,Quantity,Door,Wall,Remarks",
        "Shrubs,Hydrangea paniculata 'Jane' LITTLE LIME,panicle hydrangea,#3,7,5,2,matching",
        "Grasses,Carex pensylvanica,,qt,50,50,,",
        "",
      ].join("\r\n"),
    );
  });

  it("disarms formulas in bed names and remarks", () => {
    const list = pullList([row({ bedName: "=HYPERLINK(1)", remarks: "@x" })]);
    const [head, line] = Papa.parse<string[]>(pullListCsv(list)).data;
    expect(head?.[5]).toBe("'=HYPERLINK(1)");
    expect(line?.[6]).toBe("'@x");
  });
});
