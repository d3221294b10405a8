import { describe, expect, it } from "vitest";
import { groundTaxon } from "../../tests/fixtures/ground-taxa";
import type { Feature } from "../plants/taxon";
import { type LookTaxon, lookKept, smallerTaxa } from "./smaller-taxon";

const feature = (kind: Feature["kind"], color: Feature["color"]): Feature => ({
  kind,
  color,
  hex: "#ffffff",
  fade: null,
  winter: null,
  from: "early Jun",
  to: "late Jun",
  startDay: 155,
  endDay: 180,
  show: 2,
  drive: "heat",
  degreeDays: null,
  note: null,
  source: "practice",
});
const taxon = (id: string, botanical: string, heightFt: number, spreadFt: number, features: readonly Feature[], more: Partial<LookTaxon> = {}): LookTaxon => ({
  ...groundTaxon("shrub", heightFt, spreadFt),
  id,
  genus: botanical.split(" ")[0] ?? "",
  botanical,
  features,
  light: ["sun"],
  zoneLow: 4,
  zoneHigh: 8,
  ...more,
});
const white = feature("bloom", "white");
const pink = feature("bloom", "pink");
const large = taxon("large", "Spiraea japonica", 5, 6, [pink]);
const list = [
  large,
  taxon("same-species", "Spiraea japonica", 3, 3, [pink]),
  taxon("same-species-white", "Spiraea japonica", 3, 3.5, [white]),
  taxon("other-genus", "Weigela florida", 3, 4, [pink]),
  taxon("too-wide", "Spiraea japonica", 4, 5, [pink]),
  taxon("shade", "Spiraea japonica", 2, 2, [pink], { light: ["shade"] }),
  taxon("cold-only", "Spiraea japonica", 2, 2, [pink], { zoneLow: 1, zoneHigh: 3 }),
  taxon("perennial", "Spiraea japonica", 2, 2, [pink], { kind: "perennial" }),
];

describe("a smaller plant of the same look", () => {
  it("is of the same species and color first, then of the species, then of the color", () => {
    expect(smallerTaxa(large, list, 4.5, null, 5).map(({ id }) => id)).toEqual(["same-species", "same-species-white", "other-genus"]);
  });

  it("keeps to a height where that is what matters, and to the number asked for", () => {
    expect(smallerTaxa(large, list, null, 3.5, 2).map(({ id }) => id)).toEqual(["same-species", "same-species-white"]);
    expect(smallerTaxa(large, list, 1, null, 5)).toEqual([]);
  });

  it("keeps all of a look that is the same", () => {
    expect(lookKept(large, large)).toBe(1);
    expect(lookKept(large, taxon("x", "Ilex verticillata", 5, 6, [white], { habit: "vase", foliage: "evergreen" }))).toBe(0);
  });
});
