// Before any test: one database with ZIP codes and dataset, made by the real set-up. Tests copy it; none shares one.
import { spawnSync } from "node:child_process";
import { copyFileSync, existsSync, mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

const ROOT = path.resolve(import.meta.dirname, "../..");
const BASE = path.join(ROOT, "test-results", "base.db");

function databaseSetUp(file: string, ...args: string[]): void {
  const run = spawnSync(process.execPath, ["node_modules/tsx/dist/cli.mjs", "scripts/db.ts", ...args], {
    cwd: ROOT,
    encoding: "utf8",
    env: { ...process.env, DATABASE_URL: `file:${file}` },
  });
  if (run.status !== 0) throw new Error(`The test database could not be made:\n${run.stderr}`);
}

/** vitest's global set-up. The base is brought up to date, not made anew: the seed is idempotent. */
export default function setup(): void {
  mkdirSync(path.dirname(BASE), { recursive: true });
  databaseSetUp(BASE, "--no-demo");
}

/** A fresh copy of the base. @param demo plant the demo job in it @returns its URL, and how to remove it */
export function databaseCopy({ demo = false } = {}): { url: string; remove: () => void } {
  const dir = mkdtempSync(path.join(tmpdir(), "twelvemonth-"));
  const file = path.join(dir, "test.db");
  for (const end of ["", "-wal", "-shm"]) if (existsSync(BASE + end)) copyFileSync(BASE + end, file + end);
  if (demo) databaseSetUp(file);
  return { url: `file:${file}`, remove: () => rmSync(dir, { recursive: true, force: true }) };
}
