// npm start: sets up what is missing, then serves on 127.0.0.1. PORT chooses the port (else 3000, or the next free one).
// npm run dev: the same with live reloading. npm run build: set-up and build only.
import { spawn } from "node:child_process";
import { createServer } from "node:net";
import { ROOT, setUpBuild, setUpCode, setUpDatabase } from "./setup.mjs";

const dev = process.argv.includes("--dev");
process.env.NEXT_TELEMETRY_DISABLED = "1";

const isFree = (port) =>
  new Promise((resolve) => {
    const probe = createServer().once("error", () => resolve(false));
    probe.listen(port, "127.0.0.1", () => probe.close(() => resolve(true)));
  });

async function portChosen() {
  if (process.env.PORT) {
    if (await isFree(Number(process.env.PORT))) return Number(process.env.PORT);
    process.stderr.write(`Port ${process.env.PORT} is taken. Choose another: PORT=3100 npm start\n`);
    process.exit(1);
  }
  for (let port = 3000; port < 3020; port++) if (await isFree(port)) return port;
  process.stderr.write("Ports 3000 to 3019 are all taken. Choose one: PORT=3100 npm start\n");
  process.exit(1);
}

setUpCode();
if (!dev) setUpBuild();
if (process.argv.includes("--build-only")) process.exit(0);
process.stderr.write("Preparing the database …\n");
setUpDatabase();
const port = await portChosen();
const child = spawn(process.execPath, ["node_modules/next/dist/bin/next", dev ? "dev" : "start", "-p", String(port), "-H", "127.0.0.1"], { cwd: ROOT, stdio: "inherit" });
process.stdout.write(`\nTwelvemonth is at http://127.0.0.1:${port} (Ctrl+C stops it)\n\n`);
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => child.kill(signal));
child.on("exit", (code, signal) => process.exit(code ?? (signal ? 0 : 1)));
