// Everything a fresh machine needs before Twelvemonth runs: packages, database client, database, dataset.
// Each step looks first whether it is needed, so a second run takes a second. Plain Node: runs before anything is installed.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

export const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const STAMPS = path.join(ROOT, "node_modules", ".twelvemonth");

/** Runs Node on a script; what it prints goes to standard error. Ends this process when it fails. */
export function nodeRun(args, env = {}) {
  const run = spawnSync(process.execPath, args, { cwd: ROOT, stdio: ["ignore", 2, 2], env: { ...process.env, ...env } });
  if (run.status !== 0) process.exit(run.status ?? 1);
}

function filesUnder(entry) {
  const full = path.join(ROOT, entry);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [entry];
  return readdirSync(full)
    .filter((name) => name !== "generated" && !name.startsWith("."))
    .sort()
    .flatMap((name) => filesUnder(path.join(entry, name)));
}

/** A hash of files and folders: contents for small trees, so that a checkout with new dates is not a change. */
export function fingerprint(entries) {
  const hash = createHash("sha256");
  for (const file of entries.flatMap(filesUnder)) hash.update(file).update(readFileSync(path.join(ROOT, file)));
  return hash.digest("hex");
}

/** Does a step unless its stamp says that it was done for these very files. */
export function stepOnce(name, entries, isThere, perform) {
  const stamp = path.join(STAMPS, name);
  const wanted = fingerprint(entries);
  if (isThere() && existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return false;
  perform();
  mkdirSync(STAMPS, { recursive: true });
  writeFileSync(stamp, wanted);
  return true;
}

const say = (line) => process.stderr.write(`${line}\n`);

/** Whether node_modules holds what the lock file asks for (npm keeps its own list of what it installed). */
function packagesMatch() {
  const installed = path.join(ROOT, "node_modules", ".package-lock.json");
  if (!existsSync(installed)) return false;
  const have = JSON.parse(readFileSync(installed, "utf8")).packages;
  const want = JSON.parse(readFileSync(path.join(ROOT, "package-lock.json"), "utf8")).packages;
  return Object.entries(want).every(([name, { version, optional }]) => name === "" || optional || have[name]?.version === version);
}

function packagesInstall() {
  say("Installing packages (about a minute the first time) …");
  const npm = process.env.npm_execpath;
  // npm's own path is known when npm started this; else the shell finds it (Windows needs a shell for npm.cmd).
  const run = npm
    ? spawnSync(process.execPath, [npm, "ci", "--no-audit", "--no-fund"], { cwd: ROOT, stdio: ["ignore", 2, 2] })
    : spawnSync("npm ci --no-audit --no-fund", { cwd: ROOT, stdio: ["ignore", 2, 2], shell: true });
  if (run.status !== 0) {
    say("The packages could not be installed. Check the network and run the same command again; nothing else was changed.");
    process.exit(run.status ?? 1);
  }
}

/** Packages and database client. */
export function setUpCode() {
  const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
  if (major < 20 || (major === 20 && minor < 19)) {
    say(`Twelvemonth needs Node 20.19 or later; this is ${process.versions.node}.`);
    process.exit(1);
  }
  if (!packagesMatch()) packagesInstall();
  stepOnce(
    "client",
    ["prisma/schema.prisma"],
    () => existsSync(path.join(ROOT, "lib/server/generated/client.ts")),
    () => {
      say("Generating the database client …");
      nodeRun(["scripts/prisma-generate.mjs"]);
    },
  );
}

/** Database: migrated and seeded. @param options demo: plant the demo job once; env: extra environment */
export function setUpDatabase({ demo = true, env = {} } = {}) {
  nodeRun(["node_modules/tsx/dist/cli.mjs", "scripts/db.ts", ...(demo ? [] : ["--no-demo"])], env);
}

/** The production build, when the sources have changed since the last. @param dist folder of the build */
export function setUpBuild() {
  const sources = ["app", "lib", "next.config.ts", "package-lock.json", "tsconfig.json", "prisma/schema.prisma"];
  stepOnce(
    "build",
    sources,
    () => existsSync(path.join(ROOT, ".next/BUILD_ID")),
    () => {
      say("Building the screens (about half a minute) …");
      nodeRun(["node_modules/next/dist/bin/next", "build"], { NEXT_TELEMETRY_DISABLED: "1", NODE_ENV: "production" });
    },
  );
}
