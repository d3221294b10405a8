import { describe, expect, it } from "vitest";
import { commandForTests } from "../support/command";

const { run, file } = commandForTests();
const matched = (name: string, content: string | Uint8Array) => run(["match", file(name, content), "--json"]);

describe("twelvemonth match", () => {
  it("gives every line of a list with its plant, size, quantity and price", () => {
    const csv = `Fall list,,\nItem,Avail,Price\nHYDR PAN LIMELT TM #3,250+,$18.50\nThuja occ. Smaragd 5-6' BB,call,"$1,062.00"\n"Acer rub. 'October Glory' 2-2.5""",Spring 26,185\nWholly unknown thing #1,10 flats,4\n`;
    const { code, out } = matched("list.csv", csv);
    expect(code).toBe(0);
    const size = { root: null, containerClass: null, caliperIn: null, heightIn: null, other: null };
    expect(JSON.parse(out)).toEqual({
      lines: [
        {
          row: 3,
          text: "HYDR PAN LIMELT TM #3 | 250+ | $18.50",
          name: "Hydrangea paniculata 'Limelight'",
          sure: true,
          candidates: [],
          size: { ...size, root: "container", containerClass: "#3" },
          quantity: 250,
          priceCents: 1850,
          remarks: "or more",
        },
        {
          row: 4,
          text: "Thuja occ. Smaragd 5-6' BB | call | $1,062.00",
          name: "Thuja occidentalis 'Smaragd'",
          sure: true,
          candidates: [],
          size: { ...size, root: "ball", heightIn: [60, 72] },
          quantity: null,
          priceCents: 106200,
          remarks: "call",
        },
        {
          row: 5,
          text: `Acer rub. 'October Glory' 2-2.5" | Spring 26 | 185`,
          name: "Acer rubrum 'October Glory'",
          sure: true,
          candidates: [],
          size: { ...size, caliperIn: [2, 2.5] },
          quantity: null,
          priceCents: 18500,
          remarks: "ready Spring 26",
        },
        expect.objectContaining({ row: 6, name: null, sure: false, quantity: 10, priceCents: 400 }),
      ],
    });
  });

  it("says in plain words why a file is not read", () => {
    const { code, err } = matched("book.xlsx", new Uint8Array([0x50, 0x4b, 3, 4]));
    expect(code).toBe(2);
    expect(err).toContain("save the sheet as CSV");
  });
});
