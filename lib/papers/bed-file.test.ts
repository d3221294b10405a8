import { describe, expect, it } from "vitest";
import { type Bed, EMPTY_BED } from "../ground/bed";
import { bedFileOf, bedFileRead, bedOfFile } from "./bed-file";

const bed: Bed = {
  ...EMPTY_BED,
  name: "Walk",
  size: {
    by: "outline",
    points: [
      [0, 0],
      [20, 0],
      [18, 6],
      [0, 8],
    ],
  },
  notes: "plowed snow",
  rows: [
    { id: "x", taxonId: "acer-rubrum", taxonName: "Acer rubrum", quantity: { by: "count", count: 1 }, spacingFt: null, size: "2 in cal B&B", remarks: "matched", existing: true },
    { id: "y", taxonId: "hosta-halcyon", taxonName: "Hosta 'Halcyon'", quantity: { by: "area", areaSqFt: 30 }, spacingFt: 1.5, size: "#1", remarks: "", existing: false },
  ],
};
const names: Record<string, string> = { "acer-rubrum": "Acer rubrum", "hosta-halcyon": "Hosta 'Halcyon'" };
const find = (name: string) => {
  const id = Object.keys(names).find((key) => names[key] === name);
  return id ? { id, name } : null;
};

describe("the bed file", () => {
  it("gives back the bed it was made of", () => {
    const file = bedFileOf(bed, { zip: "05401", town: "", lat: null }, { growing: 0.3, winter: 0.2 }, (id) => names[id] ?? null);
    const read = bedFileRead(JSON.stringify(file));
    expect(read.kind).toBe("file");
    if (read.kind !== "file") return;
    expect(read.file.place).toEqual({ zip: "05401" });
    const made = bedOfFile(read.file, find);
    expect(made).toEqual({ kind: "bed", bed: { ...bed, drawing: null, rows: bed.rows.map((row, i) => ({ ...row, id: `p${i + 1}` })) } });
  });
  it("takes a bare minimum and fills in the rest", () => {
    const read = bedFileRead('{"place":{"lat":44,"lon":-73},"size":{"lengthFt":10,"widthFt":4}}');
    expect(read).toMatchObject({ kind: "file", file: { name: "Bed", plants: [], site: { light: "sun" }, targets: { growing: 0.27, winter: 0.2 } } });
  });
  it("names the field of a fault as it stands in the file", () => {
    const at = (data: unknown) => {
      const read = bedFileRead(JSON.stringify(data));
      return read.kind === "fault" ? read.field : "none";
    };
    const base = { place: { zip: "05401" }, size: { lengthFt: 10, widthFt: 4 } };
    expect(at({ ...base, site: { light: "bright" } })).toBe("site.light");
    expect(at({ ...base, plants: [{ name: "Acer rubrum", quantity: 1, spacingFt: -1 }] })).toBe("plants[0].spacingFt");
    expect(
      at({
        ...base,
        size: {
          outlineFt: [
            [0, 0],
            [1, 1],
          ],
        },
      }),
    ).toBe("size.outlineFt");
    expect(at({ ...base, place: {} })).toBe("place");
  });
});
