import { describe, expect, it } from "vitest";
import { generaCoverage } from "./genus-coverage";
import { taxonFinder } from "./taxon-finder";
import { genusTaxa } from "./taxon-load";

const { taxa } = genusTaxa("rhododendron.yaml", {
  genus: "Rhododendron",
  family: "Ericaceae",
  taxa: [
    {
      name: "Rhododendron groenlandicum",
      common: ["Labrador tea"],
      synonyms: ["Ledum groenlandicum"],
      kind: "shrub",
      habit: "mounded",
      height: [2, 4],
      spread: [2, 4],
      rate: "slow",
      zones: [2, 6],
      light: ["part"],
      moisture: ["moist", "wet"],
      ph: [4.5, 6],
      salt: "low",
      deer: "rarely",
      drought: "low",
      wet: "yes",
      roots: "fibrous",
      foliage: "evergreen",
      toxic: "unknown",
      wood: "old",
      pruning: "none",
      maintenance: "low",
      features: { bloom: { color: "white", from: "late May", to: "mid Jun", show: 2 } },
    },
  ],
});

describe("genera of the USDA list", () => {
  const listed = { Ledum: ["groenlandicum"], Rhododendron: ["maximum"], Avena: ["sativa"], Abelia: ["×grandiflora"] };
  const leftOut = [{ reason: "grain", genera: ["Avena", "Ledum", "Hordeum"] }];
  const { genera, stale } = generaCoverage(listed, new Set(["Rhododendron"]), leftOut, taxonFinder(taxa));

  it("are in, in under a present name, left out with the reason, or missing", () => {
    expect(genera).toEqual([
      { genus: "Abelia", state: "missing", species: ["Abelia ×grandiflora"] },
      { genus: "Avena", state: "left out", reason: "grain" },
      { genus: "Ledum", state: "renamed", as: "Rhododendron groenlandicum" },
      { genus: "Rhododendron", state: "in" },
    ]);
  });

  it("show which entries of the left-out list are needed no more", () => {
    expect(stale).toEqual(["Ledum", "Hordeum"]);
  });
});
