// npm test: set-up, then unit and integration tests, then browser tests in a real Chromium. The last line adds up all runs.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import path from "node:path";
import { ROOT, setUpBuild, setUpCode } from "./setup.mjs";

setUpCode();
const { chromiumPath } = await import("./chromium.mjs");
process.env.CHROMIUM_PATH = await chromiumPath();
setUpBuild();

const results = path.join(ROOT, "test-results");
mkdirSync(results, { recursive: true });
const total = { passed: 0, failed: 0, skipped: 0 };
let broken = false;
for (const project of ["unit", "browser"]) {
  const report = path.join(results, `${project}.json`);
  rmSync(report, { force: true });
  const args = ["node_modules/vitest/vitest.mjs", "run", "--project", project, "--reporter", "default", "--reporter", "json", `--outputFile.json=${report}`];
  const run = spawnSync(process.execPath, args, { cwd: ROOT, stdio: "inherit", env: process.env });
  if (run.status !== 0) broken = true;
  if (!existsSync(report)) continue;
  const summary = JSON.parse(readFileSync(report, "utf8"));
  total.passed += summary.numPassedTests;
  total.failed += summary.numFailedTests;
  total.skipped += summary.numPendingTests + (summary.numTodoTests ?? 0);
  // A file that cannot even be loaded has no tests to count as failed.
  const dead = summary.testResults.filter((file) => file.status === "failed" && file.assertionResults.length === 0).length;
  total.failed += dead;
}
if (broken && total.failed === 0) total.failed = 1;
process.stdout.write(`\n${total.passed} passed, ${total.failed} failed${total.skipped ? `, ${total.skipped} skipped` : ""}\n`);
process.exit(total.failed || !total.passed ? 1 : 0);
