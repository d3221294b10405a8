// Places from what people type: what is known, what is guessed and said to be, and what cannot be.
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../../tests/support/base-database";
import type { Place } from "../place/place";
import type { PlaceKey } from "./places";

let copy: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  copy = databaseCopy();
  process.env.DATABASE_URL = copy.url;
});
afterAll(() => copy.remove());

async function placeOf(key: PlaceKey): Promise<Place> {
  const { placeFind } = await import("./places");
  const answer = await placeFind(key);
  if (answer.kind === "fault") throw new Error(`${answer.field}: ${answer.message}`);
  return answer.place;
}
async function faultOf(key: PlaceKey): Promise<{ field: string; message: string }> {
  const { placeFind } = await import("./places");
  const answer = await placeFind(key);
  if (answer.kind === "place") throw new Error("a fault was expected");
  return answer;
}

describe("a place by its ZIP", () => {
  it("has the table's zone, and no warning", async () => {
    expect(await placeOf({ zip: "05401" })).toMatchObject({ zone: 5.5, zoneMap: 5.5, zoneSource: "ZIP", state: "VT", warnings: [], fault: null });
  });

  it("that the table has no zone for takes a neighbor's, and says whose", async () => {
    const { database } = await import("./database");
    const without = await database().zip.findFirst({ where: { state: "OH", zone: null } });
    const place = await placeOf({ zip: without?.zip ?? "" });
    expect(place.zoneMap).toBeNull();
    expect(place.zoneSource).toBe("nearest ZIP");
    expect(place.zone).toBeGreaterThanOrEqual(5.5);
    expect(place.zone).toBeLessThanOrEqual(7);
    expect(place.warnings.join(" ")).toMatch(/no zone for ZIP \d{5}.+that of ZIP \d{5}.+Set the zone by hand/);
  });

  it("in Hawaii or Alaska, where the table ends, takes an estimate from the normals and says so", async () => {
    const [honolulu, anchorage] = [await placeOf({ zip: "96813" }), await placeOf({ zip: "99501" })];
    for (const place of [honolulu, anchorage]) {
      expect(place).toMatchObject({ zoneSource: "normals", zoneMap: null });
      expect(place.warnings.join(" ")).toMatch(/estimate from the normals.+Set the zone by hand/);
    }
    expect(honolulu.zone).toBeGreaterThanOrEqual(12);
    expect(anchorage.zone).toBeLessThanOrEqual(5.5);
  });

  it("keeps a zone set by hand, without a warning", async () => {
    expect(await placeOf({ zip: "99501", zone: "4b" })).toMatchObject({ zone: 4.5, zoneSource: "hand", warnings: [] });
  });

  it("that is malformed or unknown is a fault that says what to do", async () => {
    for (const zip of ["0540", "abcde", "05401-1234", "５４０１２"])
      expect(await faultOf({ zip })).toMatchObject({ field: "zip", message: expect.stringMatching(/five digits are wanted/) });
    const unknown = await faultOf({ zip: "05498" });
    expect(unknown.field).toBe("zip");
    expect(unknown.message).toMatch(/not in the Census table\. The nearest that is known is 054\d\d\. Check the digits, or set latitude and longitude by hand/);
  });

  it("that is unknown does with latitude and longitude by hand", async () => {
    expect(await placeOf({ zip: "05498", lat: 44.48, lon: -73.21 })).toMatchObject({ fault: null, zoneSource: "nearest ZIP" });
  });
});

describe("a place by a point", () => {
  it("takes zone and state of the nearest ZIP, and says so", async () => {
    const place = await placeOf({ lat: 44.48, lon: -73.21 });
    expect(place).toMatchObject({ zip: null, state: "VT", zone: 5.5, zoneMap: null, zoneSource: "nearest ZIP" });
    expect(place.warnings.join(" ")).toMatch(/goes by ZIP code\. Zone 5b is that of ZIP 054\d\d/);
  });

  it.each([
    ["in mid-ocean", 35, -45],
    ["in London", 51.5, -0.13],
    ["with a lost minus sign", 44.48, 73.21],
  ])("%s is a place without a climate, that says why", async (_, lat, lon) => {
    const place = await placeOf({ lat, lon });
    expect(place.climate).toBeNull();
    expect(place.fault).toMatch(/No weather station within 150 miles/);
  });

  it.each([
    [{ lat: 95, lon: -73 }, "lat"],
    [{ lat: 44, lon: -200 }, "lon"],
    [{ lat: 44, lon: -73, elevationFt: 99999 }, "elevationFt"],
    [{ lat: 44, lon: -73, elevationFt: -3000 }, "elevationFt"],
    [{ zip: "05401", zone: "14a" }, "zone"],
    [{ zip: "05401", zone: "five" }, "zone"],
    [{ zip: "05401", zone: "0b" }, "zone"],
  ] as const)("cannot be %o", async (key, field) => {
    expect((await faultOf(key)).field).toBe(field);
  });

  it("warns of an elevation far from the ground around", async () => {
    expect((await placeOf({ zip: "44691", elevationFt: 9000 })).warnings.join(" ")).toMatch(/Check the elevation/);
  });
});

describe("the setting of a job", () => {
  it("moves climate, freezes and zone at once, and keeps the ZIP's own climate beside", async () => {
    const [plain, wall] = [await placeOf({ zip: "05401" }), await placeOf({ zip: "05401", microclimate: "south wall", warmingF: 2, spring: "mild" })];
    expect(wall.zone).toBe(6);
    expect(wall.openClimate).toEqual(plain.climate);
    expect(wall.climate?.lastFreezeDay).toBeLessThan(plain.climate?.lastFreezeDay ?? 0);
    const { placeYearOf } = await import("./places");
    expect(placeYearOf(wall)?.degreeDayTotals.at(-1)).toBeGreaterThan(placeYearOf(plain)?.degreeDayTotals.at(-1) ?? Infinity);
  });

  it("does not move a zone set by hand", async () => {
    expect((await placeOf({ zip: "05401", zone: "5a", microclimate: "city court" })).zone).toBe(5);
  });

  it("is stored with the job, and normal in a new one", async () => {
    const { jobChange, jobCreate, jobDuplicate, jobFind, jobPlace } = await import("./jobs");
    const id = await jobCreate("Court", { zip: "05401" });
    expect((await jobFind(id))?.placeKey).toMatchObject({ microclimate: "open", warmingF: 0, spring: "normal" });
    await jobChange(id, { place: { zip: "05401", microclimate: "city court", warmingF: 4, spring: "hard" } });
    const stored = await jobFind(id);
    expect(stored?.placeKey).toMatchObject({ microclimate: "city court", warmingF: 4, spring: "hard" });
    expect(stored && (await jobPlace(stored)).setting).toEqual({ microclimate: "city court", warmingF: 4, spring: "hard" });
    const copyId = await jobDuplicate(id);
    expect(copyId && (await jobFind(copyId))?.placeKey).toMatchObject({ microclimate: "city court" });
  });
});
