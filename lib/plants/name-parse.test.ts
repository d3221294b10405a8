import { describe, expect, it } from "vitest";
import { nameWords, parseName } from "./name-parse";

describe("a written name", () => {
  it("gives the same words in any capitals, quotes and hybrid sign", () => {
    const writings = [
      "Acer × freemanii 'Autumn Blaze'",
      "ACER X FREEMANII ‘AUTUMN BLAZE’",
      'Acer x freemanii "Autumn Blaze"',
      "acer ×freemanii autumn blaze",
      "Acer  freemanii `Autumn Blaze´",
    ];
    for (const writing of writings) expect(nameWords(writing)).toEqual(["acer", "freemanii", "autumn", "blaze"]);
  });

  it("drops rank words, trade marks and plant patents", () => {
    expect(nameWords("Viburnum plicatum var. tomentosum cv. Shasta")).toEqual(["viburnum", "plicatum", "tomentosum", "shasta"]);
    expect(nameWords("Hydrangea anomala ssp. petiolaris")).toEqual(["hydrangea", "anomala", "petiolaris"]);
    expect(nameWords("CORNUS FLORIDA F. RUBRA")).toEqual(["cornus", "florida", "rubra"]);
    expect(nameWords("Little Lime® Hydrangea PP22,330")).toEqual(["little", "lime", "hydrangea"]);
    expect(nameWords("Rosa Knock Out™ (PPAF)")).toEqual(["rosa", "knock", "out"]);
  });

  it("marks what is cut short with a full stop", () => {
    const { tokens, loose } = parseName("Hydr. pan. Limelight type");
    expect(tokens.map((token) => [token.text, token.abbreviated])).toEqual([
      ["hydr", true],
      ["pan", true],
      ["limelight", false],
    ]);
    expect(loose).toBe(true);
  });

  it("takes a short capital form behind an epithet for an author, but not saints and mountains of epithets", () => {
    expect(nameWords("Acer rubrum L.")).toEqual(["acer", "rubrum"]);
    expect(nameWords("Nyssa sylvatica Marsh. 'Wildfire'")).toEqual(["nyssa", "sylvatica", "wildfire"]);
    expect(nameWords("Sorghastrum nutans (L.) Nash")).toEqual(["sorghastrum", "nutans"]);
    expect(nameWords("Prunus cerasifera Mt. St. Helens")).toEqual(["prunus", "cerasifera", "mt", "st", "helens"]);
  });

  it("keeps apostrophes out, initials together, and hyphened words apart", () => {
    expect(nameWords("Nepeta 'Walker's Low'")).toEqual(["nepeta", "walkers", "low"]);
    expect(nameWords("Rhododendron 'P.J.M.'")).toEqual(["rhododendron", "pjm"]);
    expect(nameWords("Aster novae-angliae")).toEqual(["aster", "novae", "angliae"]);
  });

  it("knows which words stood in quotes, an unfinished quote included", () => {
    expect(parseName("Acer rubrum 'Octob").tokens.map((token) => token.quoted)).toEqual([false, false, true]);
    expect(parseName("Acer 'Red Sunset' maple").tokens.map((token) => token.quoted)).toEqual([false, true, true, false]);
  });

  it("folds marks over letters", () => {
    expect(nameWords("Syringa 'Andenken an Ludwig Späth'")).toEqual(["syringa", "andenken", "an", "ludwig", "spath"]);
  });

  it("gives no words for no letters", () => {
    expect(nameWords("")).toEqual([]);
    expect(nameWords(" '™—× ")).toEqual([]);
  });
});
