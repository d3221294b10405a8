// npm run bench [NAME]: the kept benchmarks, scripts/bench-*.ts, one after another (or only those with NAME in theirs). Fails where one of them does.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import path from "node:path";

const root = path.resolve(import.meta.dirname, "..");
const wanted = process.argv[2] ?? "";
const names = readdirSync(path.join(root, "scripts"))
  .filter((name) => /^bench-.*\.ts$/.test(name) && name.includes(wanted))
  .sort();
if (names.length === 0) {
  console.error(`No benchmark has “${wanted}” in its name.`);
  process.exitCode = 1;
}
for (const name of names) {
  console.log(`\n— ${name}`);
  const { status } = spawnSync(process.execPath, [path.join("node_modules", "tsx", "dist", "cli.mjs"), path.join("scripts", name)], { cwd: root, stdio: "inherit" });
  if (status !== 0) {
    console.error(`${name} missed an aim or failed.`);
    process.exitCode = 1;
  }
}
