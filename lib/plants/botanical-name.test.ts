import { describe, expect, it } from "vitest";
import { nameSegments, nameText } from "./botanical-name";

const set = (name: Parameters<typeof nameSegments>[0]) => nameSegments(name).map((segment) => `${segment.style}:${segment.text}`);
const bare = { cultivar: null, tradeDesignation: null };

describe("a botanical name", () => {
  it("has genus and species in italics", () => {
    expect(set({ botanical: "Acer rubrum", ...bare })).toEqual(["italic:Acer", "italic:rubrum"]);
  });

  it("keeps the hybrid sign and rank words roman and the epithets italic", () => {
    expect(set({ botanical: "Acer × freemanii", ...bare })).toEqual(["italic:Acer", "roman:×", "italic:freemanii"]);
    expect(set({ botanical: "Rudbeckia fulgida var. sullivantii", ...bare })).toEqual(["italic:Rudbeckia", "italic:fulgida", "roman:var.", "italic:sullivantii"]);
    expect(set({ botanical: "Viburnum plicatum f. tomentosum", ...bare })).toEqual(["italic:Viburnum", "italic:plicatum", "roman:f.", "italic:tomentosum"]);
    expect(set({ botanical: "Syringa reticulata subsp. pekinensis", ...bare }).at(2)).toBe("roman:subsp.");
    expect(set({ botanical: "× Heucherella", ...bare })).toEqual(["roman:×", "italic:Heucherella"]);
  });

  it("sets a cultivar roman in typographic single quotes and its apostrophe as an apostrophe", () => {
    expect(set({ botanical: "Hosta", cultivar: "Peachie's Pick", tradeDesignation: null })).toEqual(["italic:Hosta", "roman:‘Peachie’s Pick’"]);
  });

  it("sets a trade designation as a segment of its own, without quotes, behind the cultivar", () => {
    expect(set({ botanical: "Hydrangea paniculata", cultivar: "Jane", tradeDesignation: "Little Lime" })).toEqual([
      "italic:Hydrangea",
      "italic:paniculata",
      "roman:‘Jane’",
      "trade:Little Lime",
    ]);
  });

  it("sets a Group roman in parentheses before the cultivar", () => {
    expect(set({ botanical: "Rhododendron", group: "PJM Group", cultivar: "Compacta", tradeDesignation: null })).toEqual([
      "italic:Rhododendron",
      "roman:(PJM Group)",
      "roman:‘Compacta’",
    ]);
  });

  it("tells the roles of its parts", () => {
    expect(nameSegments({ botanical: "Buxus sinica var. insularis", cultivar: "Wintergreen", tradeDesignation: null }).map((segment) => segment.role)).toEqual([
      "genus",
      "species",
      "rank",
      "infraspecific",
      "cultivar",
    ]);
  });
});

describe("a name in plain text", () => {
  it("has straight quotes and the trade designation in capitals", () => {
    expect(nameText({ botanical: "Hydrangea paniculata", cultivar: "Jane", tradeDesignation: "Little Lime" })).toBe("Hydrangea paniculata 'Jane' LITTLE LIME");
    expect(nameText({ botanical: "Coreopsis", cultivar: null, tradeDesignation: "Uptick Cream" })).toBe("Coreopsis UPTICK CREAM");
    expect(nameText({ botanical: "Acer × freemanii", ...bare })).toBe("Acer × freemanii");
  });
});
