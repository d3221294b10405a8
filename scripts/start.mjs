// npm start: sets up what is missing, then serves on 127.0.0.1. PORT chooses the port (else 3000, or the next free one).
// HOST=0.0.0.0 lets phones of the same network in; with TLS_CERT and TLS_KEY (PEM files) it is served over https.
// npm run dev: the same with live reloading. npm run build: set-up and build only.
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import { createServer } from "node:net";
import { httpsFront } from "./https-front.mjs";
import { ROOT, setUpBuild, setUpCode, setUpDatabase } from "./setup.mjs";

const dev = process.argv.includes("--dev");
process.env.NEXT_TELEMETRY_DISABLED = "1";

const host = process.env.HOST || "127.0.0.1";
const certFile = process.env.TLS_CERT;
const keyFile = process.env.TLS_KEY;
if (Boolean(certFile) !== Boolean(keyFile) || [certFile, keyFile].some((file) => file && !existsSync(file))) {
  process.stderr.write("TLS_CERT and TLS_KEY go together: the certificate and its key, each a PEM file that is there.\n");
  process.exit(1);
}

const isFree = (port) =>
  new Promise((resolve) => {
    const probe = createServer().once("error", () => resolve(false));
    probe.listen(port, host, () => probe.close(() => resolve(true)));
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
const isHttps = Boolean(certFile && keyFile);
const innerPort = isHttps ? port + 1000 : port;
const innerHost = isHttps ? "127.0.0.1" : host;
const child = spawn(process.execPath, ["node_modules/next/dist/bin/next", dev ? "dev" : "start", "-p", String(innerPort), "-H", innerHost], { cwd: ROOT, stdio: "inherit" });
if (isHttps) httpsFront({ host, port, innerPort, certFile, keyFile });
process.stdout.write(`\nTwelvemonth is at ${isHttps ? "https" : "http"}://${host === "0.0.0.0" ? "THIS-MACHINE" : host}:${port} (Ctrl+C stops it)\n`);
if (host !== "127.0.0.1") process.stdout.write("Anyone in this network can open it and change what is in it: there is no login.\n");
process.stdout.write("\n");
for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"]) process.on(signal, () => child.kill(signal));
child.on("exit", (code, signal) => process.exit(code ?? (signal ? 0 : 1)));
