// The verb "match" as scripts call it.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { databaseCopy } from "../support/base-database";

const ROOT = path.resolve(import.meta.dirname, "../..");
const dir = mkdtempSync(path.join(tmpdir(), "headless-match-"));
let database: ReturnType<typeof databaseCopy>;
beforeAll(() => {
  database = databaseCopy();
});
afterAll(() => {
  database.remove();
  rmSync(dir, { recursive: true, force: true });
});

function matched(file: string, content: string | Uint8Array) {
  const target = path.join(dir, file);
  writeFileSync(target, content);
  const result = spawnSync(process.execPath, ["scripts/twelvemonth.mjs", "match", target, "--json"], {
    cwd: ROOT,
    encoding: "utf8",
    env: { ...process.env, DATABASE_URL: database.url },
  });
  return { code: result.status, out: result.stdout, err: result.stderr };
}

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
