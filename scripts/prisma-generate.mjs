// prisma/schema.prisma -> lib/server/generated.
// The Prisma CLI wants to download its schema engine before any command, though `generate` never runs it:
// naming an existing program as the engine stops that, so this works with no network.
import { spawnSync } from "node:child_process";
import { createRequire } from "node:module";

const cli = createRequire(import.meta.url).resolve("prisma/build/index.js");
const run = spawnSync(process.execPath, [cli, "generate"], {
  stdio: ["ignore", "pipe", "pipe"],
  encoding: "utf8",
  env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, PRISMA_HIDE_UPDATE_MESSAGE: "1", CHECKPOINT_DISABLE: "1" },
});
if (run.status !== 0) process.stderr.write(`${run.stdout}${run.stderr}`);
process.exit(run.status ?? 1);
