import { describe, expect, it } from "vitest";
import { checkedValue, rangesAgree, valuesExplained } from "./checked-value";
import { genusTaxa } from "./taxon-load";

const SEDGE = {
  name: "Carex grayi",
  common: ["Gray's sedge"],
  kind: "grass",
  habit: "clump",
  height: [2, 3],
  spread: [1.5, 2],
  rate: "medium",
  zones: [4, 9],
  light: ["part"],
  moisture: ["moist"],
  ph: [5.5, 7],
  salt: "low",
  deer: "rarely",
  drought: "low",
  wet: "yes",
  roots: "fibrous",
  foliage: "dies back",
  leaves: ["mid Apr", "late Oct"],
  toxic: "none",
  pruning: "cut back early spring",
  maintenance: "low",
  features: { seedhead: { color: "yellow-green", from: "mid Jun", to: "late Sep", show: 2 } },
  why: { height: "taller in wet ground" },
  cultivars: [{ cultivar: "Morning Star" }],
};
const [species, cultivar] = genusTaxa("carex.yaml", { genus: "Carex", family: "Cyperaceae", taxa: [SEDGE] }).taxa;
if (!species || !cultivar) throw new Error("the example does not load");
const apart = (taxon: typeof species, field: string, source: string) => checkedValue(taxon, field, source, "2–3 ft", "5 ft", false);

describe("ranges of size", () => {
  it("agree where ours, widened by a quarter on both sides, meets theirs", () => {
    expect(rangesAgree([4, 8], [10, 12])).toBe(true);
    expect(rangesAgree([4, 8], [10.1, 12])).toBe(false);
    expect(rangesAgree([4, 8], [1, 3])).toBe(true);
    expect(rangesAgree([4, 8], [1, 2.9])).toBe(false);
  });
});

describe("a disagreement", () => {
  it("is answered by the taxon's own why only where the source is a table the writers had", () => {
    const { values } = valuesExplained([apart(species, "height", "usda"), apart(species, "height", "mdc"), apart(species, "spread", "usda")], []);
    expect(values.map((v) => v.explained)).toEqual(["taller in wet ground", null, null]);
  });

  it("is answered by a reason for the taxon, its species or its genus, for that field and source alone", () => {
    const because = (taxon: string) => valuesExplained([apart(cultivar, "height", "mdc")], [{ taxon, field: "height", source: "mdc", reason: "because" }]).values[0]?.explained;
    expect([because("Carex grayi 'Morning Star'"), because("Carex grayi"), because("Carex"), because("Carex flacca")]).toEqual(["because", "because", "because", null]);
    expect(valuesExplained([apart(cultivar, "height", "mdc")], [{ taxon: "Carex", field: "spread", source: "mdc", reason: "because" }]).values[0]?.explained).toBeNull();
  });

  it("that is gone leaves its reason unused", () => {
    const reasons = [{ taxon: ["Carex grayi", "Carex flacca"], field: "height", source: "mdc", reason: "because" }];
    const { values, unused } = valuesExplained([apart(species, "height", "mdc")], reasons);
    expect(values[0]?.explained).toBe("because");
    expect(unused.map((r) => r.taxon)).toEqual(["Carex flacca"]);
  });
});
