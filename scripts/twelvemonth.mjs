// npm run -s twelvemonth -- VERB …: the engine without the browser. Sets up what is missing (said on standard error), then hands over.
import { spawn } from "node:child_process";
import path from "node:path";
import { ROOT, setUpCode } from "./setup.mjs";

setUpCode();
const child = spawn(process.execPath, [path.join(ROOT, "node_modules/tsx/dist/cli.mjs"), path.join(ROOT, "scripts/headless.ts"), ...process.argv.slice(2)], {
  cwd: ROOT,
  stdio: "inherit",
});
for (const signal of ["SIGINT", "SIGTERM"]) process.on(signal, () => child.kill(signal));
child.on("exit", (code) => process.exit(code ?? 1));
