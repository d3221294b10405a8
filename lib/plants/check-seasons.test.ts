import { describe, expect, it } from "vitest";
import { bloomOnsetChecks, fallColorChecks, winterChecks } from "./check-seasons";
import { taxonFinder } from "./taxon-finder";
import { genusTaxa } from "./taxon-load";

const VALUES = {
  kind: "shrub",
  habit: "rounded",
  height: [6, 9],
  spread: [7, 10],
  rate: "fast",
  zones: [3, 7],
  light: ["sun"],
  moisture: ["average"],
  ph: [5, 7.5],
  salt: "medium",
  deer: "sometimes",
  drought: "medium",
  wet: "yes",
  roots: "fibrous",
  foliage: "deciduous",
  leaves: ["late Apr", "late Oct"],
  toxic: "none",
  wood: "old",
  pruning: "none",
  maintenance: "medium",
};
const { taxa } = genusTaxa("hamamelis.yaml", {
  genus: "Hamamelis",
  family: "Hamamelidaceae",
  taxa: [
    {
      ...VALUES,
      name: "Hamamelis virginiana",
      common: ["common witch hazel"],
      features: {
        bloom: { color: "yellow", from: "mid Oct", to: "late Nov", show: 2 },
        "fall color": { color: "golden yellow", fade: "copper", from: "mid Oct", to: "late Oct", show: 2 },
      },
    },
    { ...VALUES, name: "Hamamelis vernalis", common: ["Ozark witch hazel"], features: { bloom: { color: "orange", from: "mid Feb", to: "mid Mar", show: 2 } } },
  ],
});
const find = taxonFinder(taxa);
const agreement = (values: readonly { agrees: boolean }[]): boolean[] => values.map((v) => v.agrees);

describe("published lists of seasons", () => {
  it("want winter bloom in December to February, of a genus in one of its taxa", () => {
    const row = (printed: string) => winterChecks("list", [{ printed, kinds: ["bloom"], what: "bloom in late winter" }], find);
    expect(agreement(row("Hamamelis virginiana"))).toEqual([false]);
    expect(agreement(row("Hamamelis vernalis"))).toEqual([true]);
    expect(row("Hamamelis").map((v) => [v.taxon, v.agrees])).toEqual([["Hamamelis", true]]);
  });

  it("want fall color in a hue named, opening or fading, and within ten days of its time", () => {
    const row = (time: "early" | "medium", ...hues: ("yellow" | "red" | "brown")[]) => fallColorChecks("list", [{ printed: "Hamamelis virginiana", time, hues }], find);
    expect(agreement(row("medium", "yellow"))).toEqual([true, true]);
    expect(agreement(row("medium", "brown"))).toEqual([true, true]);
    expect(agreement(row("medium", "red"))).toEqual([false, true]);
    expect(agreement(row("early", "yellow"))).toEqual([true, true]);
    expect(agreement(fallColorChecks("list", [{ printed: "Hamamelis vernalis" }], find))).toEqual([false]);
  });

  it("want the month of bloom within one, counted over New Year, and a plant only once", () => {
    const row = (startMonth: number) => bloomOnsetChecks("list", [{ printed: "Hamamelis vernalis", startMonth }], find);
    expect([1, 2, 3, 4, 12].map((m) => agreement(row(m))[0])).toEqual([true, true, true, false, false]);
    const twice = [1, 6].map((startMonth) => ({ printed: "Hamamelis vernalis", startMonth }));
    expect(bloomOnsetChecks("list", twice, find)).toHaveLength(1);
  });

  it("pass over what the dataset does not have", () => {
    expect(winterChecks("list", [{ printed: "Hamamelis mollis", kinds: ["bloom"], what: "bloom" }], find)).toEqual([]);
  });
});
