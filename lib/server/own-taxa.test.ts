// Against a real database: own plants and corrections, and that neither the seed nor each other's changes lose them.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import { plantListDecode } from "../plants/plant-list";
import { searchPlants } from "../plants/search";
import { ownTaxonLike } from "../season/own-like";
import { correctionDelete, correctionRestore, correctionSave } from "./corrections";
import { database } from "./database";
import { headlessAnswer } from "./headless";
import { ownTaxonDelete, ownTaxonDeleted, ownTaxonRestore, ownTaxonSave } from "./own-taxa";
import { plantListResponse } from "./plant-list-response";
import { plantPlaces } from "./plant-places";
import { plantSheet } from "./plant-sheet";
import { databaseSeed } from "./seed";
import { seasonOf, taxaForget, taxaHeld } from "./taxa";

const LIKE = "hydrangea-paniculata-limelight";
let copy: ReturnType<typeof databaseCopy>;
let id = "";
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(async () => {
  await database().$disconnect();
  copy.remove();
});

async function inputLike(change: object = {}) {
  const held = await taxaHeld();
  const { chosen } = await plantPlaces(null);
  const taxon = held.byId.get(LIKE);
  if (!taxon) throw new Error(`The dataset has no ${LIKE}`);
  return { ...ownTaxonLike(taxon, seasonOf(held, taxon, chosen.year), chosen.seenAt), ...change };
}
async function headlessNames(): Promise<string[]> {
  const answer = await headlessAnswer(["plants", "--all"]);
  return answer.kind === "answer" && Array.isArray(answer.value) ? answer.value.map((t: { name: string }) => t.name) : [];
}

describe("a plant of one's own in the database", () => {
  it("is found by name, known to beds and headless, and in the browser's list under a new address", async () => {
    const before = (await taxaHeld()).mark;
    const answer = await ownTaxonSave(null, await inputLike({ cultivar: "Zz Porch Lantern", height: [3, 4] }));
    expect(answer.kind).toBe("saved");
    id = answer.kind === "saved" ? answer.id : "";
    const held = await taxaHeld();
    expect(held.mark).not.toBe(before);
    expect(held.byId.get(id)).toMatchObject({ name: "Hydrangea paniculata 'Zz Porch Lantern'", family: "Hydrangeaceae", heightFt: [3, 4] });
    expect(searchPlants(held.index, "porch lantern hydrangea")[0]?.taxon.id).toBe(id);
    expect(await headlessNames()).toContain("Hydrangea paniculata 'Zz Porch Lantern'");
    const listed = plantListDecode(await (await plantListResponse(held.mark, null)).json());
    expect(listed.find((p) => p.id === id)?.origin).toBe("own");
    expect(listed.map((p) => p.name)).toEqual(held.taxa.map((t) => t.name));
  });
  it("is not taken twice under one name, nor under a name of the dataset", async () => {
    expect(await ownTaxonSave(null, await inputLike({ cultivar: "Zz Porch Lantern" }))).toMatchObject({ kind: "faults", faults: [{ field: "cultivar" }] });
    expect(await ownTaxonSave(null, await inputLike({ cultivar: "Limelight" }))).toMatchObject({
      kind: "faults",
      faults: [{ field: "cultivar", message: expect.stringContaining("in the dataset") }],
    });
  });
  it("is changed under its id", async () => {
    expect(await ownTaxonSave(id, await inputLike({ cultivar: "Zz Porch Lantern", trade: "Lamp" }))).toEqual({ kind: "saved", id });
    expect((await taxaHeld()).byId.get(id)?.tradeDesignation).toBe("Lamp");
  });
  it("is not saved with a fault", async () => {
    expect(await ownTaxonSave(id, await inputLike({ cultivar: "Zz Porch Lantern", kind: "bush" }))).toMatchObject({ kind: "faults", faults: [{ field: "kind" }] });
    expect((await taxaHeld()).byId.get(id)?.kind).toBe("shrub");
  });
  it("survives a new dataset", async () => {
    await database().mark.update({ where: { key: "Taxon" }, data: { value: "of an older release" } });
    await databaseSeed(() => {});
    taxaForget();
    expect((await taxaHeld()).byId.get(id)?.tradeDesignation).toBe("Lamp");
  });
  it("is gone when deleted, and back on undo", async () => {
    await ownTaxonDelete(id);
    expect((await taxaHeld()).byId.has(id)).toBe(false);
    expect(await ownTaxonDeleted(id)).toContain("Zz Porch Lantern");
    expect(await headlessNames()).not.toContain("Hydrangea paniculata 'Zz Porch Lantern'");
    await ownTaxonRestore(id);
    expect((await taxaHeld()).byId.has(id)).toBe(true);
    expect(await ownTaxonDeleted(id)).toBeNull();
  });
});

describe("a correction in the database", () => {
  it("lies over the dataset's value, shows it, and survives a new dataset", async () => {
    const original = (await taxaHeld()).byId.get(LIKE);
    expect(await correctionSave(LIKE, "zones", [4, 7], "lost two on the ridge")).toEqual({ kind: "saved" });
    await database().mark.update({ where: { key: "Taxon" }, data: { value: "of an older release" } });
    await databaseSeed(() => {});
    taxaForget();
    expect((await taxaHeld()).byId.get(LIKE)).toMatchObject({ zoneLow: 4, zoneHigh: 7 });
    const sheet = await plantSheet(LIKE, null);
    const zones = sheet?.groups.flatMap((g) => g.facts).find((f) => f.field === "zoneLow");
    expect(zones?.correction).toMatchObject({ original: `${original?.zoneLow}–${original?.zoneHigh}`, note: "lost two on the ridge" });
  });
  it("is replaced by a second one of the same value", async () => {
    await correctionSave(LIKE, "zones", [5, 7], "");
    expect((await taxaHeld()).corrections.get(LIKE)).toHaveLength(1);
    expect((await taxaHeld()).byId.get(LIKE)?.zoneLow).toBe(5);
  });
  it("is taken back and restored", async () => {
    const correctionId = (await taxaHeld()).corrections.get(LIKE)?.[0]?.id ?? "";
    await correctionDelete(correctionId);
    expect((await taxaHeld()).corrections.has(LIKE)).toBe(false);
    await correctionRestore(correctionId);
    expect((await taxaHeld()).byId.get(LIKE)?.zoneLow).toBe(5);
  });
  it("is refused for one's own plant, for a plant that is not there, and for a value that is none", async () => {
    expect(await correctionSave(id, "zones", [4, 7], "")).toMatchObject({ kind: "fault" });
    expect(await correctionSave("nobody", "zones", [4, 7], "")).toMatchObject({ kind: "fault" });
    expect(await correctionSave(LIKE, "zones", [9, 4], "")).toMatchObject({ kind: "fault", field: "zones" });
  });
});

describe("the page of every taxon", () => {
  it("can be worked out, and no source on it is unknown", async () => {
    const { taxa } = await taxaHeld();
    for (const taxon of taxa.filter((_, i) => i % 40 === 0)) {
      const sheet = await plantSheet(taxon.id, null);
      expect(sheet?.windows.length).toBe(taxon.features.length);
      expect(Object.values(sheet?.sources ?? {}).filter((words) => words.startsWith('Source "'))).toEqual([]);
    }
  });
});
