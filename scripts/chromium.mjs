// Finds a Chromium for the browser tests, or installs one. Order: CHROMIUM_PATH, a browser of the system, the browser tool's own,
// Debian's package (where we may install), the browser tool's own installer.
import { spawnSync } from "node:child_process";
import { existsSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { ROOT } from "./setup.mjs";

const SYSTEM = [
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/snap/bin/chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Google\\Chrome\\Application\\chrome.exe",
];

const run = (command, args) => spawnSync(command, args, { stdio: ["ignore", 2, 2], cwd: ROOT, env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } }).status === 0;

async function toolBrowser() {
  const { chromium } = createRequire(path.join(ROOT, "package.json"))("playwright-core");
  const file = chromium.executablePath();
  return file && existsSync(file) ? file : null;
}

/** Path of a Chromium. Ends the process with what to do when there is none. */
export async function chromiumPath() {
  if (process.env.CHROMIUM_PATH && existsSync(process.env.CHROMIUM_PATH)) return process.env.CHROMIUM_PATH;
  const found = SYSTEM.find((file) => existsSync(file)) ?? (await toolBrowser());
  if (found) return found;
  process.stderr.write("No Chromium found; installing one for the browser tests …\n");
  const root = typeof process.getuid === "function" && process.getuid() === 0;
  if (existsSync("/usr/bin/apt-get")) {
    const apt = root ? ["apt-get", []] : ["sudo", ["-n", "apt-get"]];
    if (run(apt[0], [...apt[1], "update", "-q"]) && run(apt[0], [...apt[1], "install", "-y", "-q", "--no-install-recommends", "chromium"]) && existsSync("/usr/bin/chromium"))
      return "/usr/bin/chromium";
  }
  if (run(process.execPath, [path.join(ROOT, "node_modules/playwright-core/cli.js"), "install", "chromium"])) {
    const own = await toolBrowser();
    if (own) return own;
  }
  process.stderr.write("No Chromium could be installed. Install Chromium or Chrome by hand and name it: CHROMIUM_PATH=/path/to/chromium npm test\n");
  process.exit(1);
}
