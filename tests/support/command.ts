// The headless command on a database and a folder of a test file's own.
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { afterAll, beforeAll } from "vitest";
import { databaseCopy } from "./base-database";

const ROOT = path.resolve(import.meta.dirname, "../..");

export type CommandRun = { readonly code: number | null; readonly out: string; readonly err: string };

/** Called once at the head of a test file: the command, a folder for its files, and how to write one there. */
export function commandForTests(): { run: (args: readonly string[], input?: string) => CommandRun; dir: string; file: (name: string, content: string | Uint8Array) => string } {
  const dir = mkdtempSync(path.join(tmpdir(), "headless-"));
  let database: ReturnType<typeof databaseCopy> | null = null;
  beforeAll(() => {
    database = databaseCopy();
  });
  afterAll(() => {
    database?.remove();
    rmSync(dir, { recursive: true, force: true });
  });
  return {
    dir,
    file: (name, content) => {
      const target = path.join(dir, name);
      writeFileSync(target, content);
      return target;
    },
    run: (args, input = "") => {
      const env = { ...process.env, DATABASE_URL: database?.url ?? "" };
      const result = spawnSync(process.execPath, ["scripts/twelvemonth.mjs", ...args], { cwd: ROOT, encoding: "utf8", input, maxBuffer: 1e9, env });
      return { code: result.status, out: result.stdout, err: result.stderr };
    },
  };
}
