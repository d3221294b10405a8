import { type ChildProcess, spawn } from "node:child_process";
import { createServer } from "node:net";
import path from "node:path";
import { databaseCopy } from "./base-database";

const ROOT = path.resolve(import.meta.dirname, "../..");

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer().once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const address = probe.address();
      probe.close(() => (address && typeof address === "object" ? resolve(address.port) : reject(new Error("no port"))));
    });
  });
}

function stopped(child: ChildProcess): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode) return resolve();
    child.once("exit", () => resolve());
    child.kill("SIGTERM");
  });
}

export type TestServer = { readonly url: string; readonly database: string; stop(): Promise<void>; restart(): Promise<void> };

/** The built program on a database of its own, started directly by Node (npm would leave it behind when killed). */
export async function startServer(options: { demo?: boolean } = {}): Promise<TestServer> {
  const database = databaseCopy(options);
  const port = await freePort();
  const url = `http://127.0.0.1:${port}`;
  let child: ChildProcess;
  const begin = async () => {
    const env = { ...process.env, NODE_ENV: "production" as const, NEXT_TELEMETRY_DISABLED: "1", DATABASE_URL: database.url };
    child = spawn(process.execPath, ["node_modules/next/dist/bin/next", "start", "-p", String(port), "-H", "127.0.0.1"], { cwd: ROOT, env, stdio: ["ignore", "pipe", "pipe"] });
    let log = "";
    for (const stream of [child.stdout, child.stderr]) stream?.on("data", (data) => (log += String(data)));
    for (let i = 0; i < 300; i++) {
      if (child.exitCode !== null) throw new Error(log);
      const ready = await fetch(url).then(
        (response) => response.ok,
        () => false,
      );
      if (ready) return;
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
    await stopped(child);
    throw new Error(`The server did not answer.\n${log}`);
  };
  await begin();
  return {
    url,
    database: database.url,
    stop: async () => {
      await stopped(child);
      database.remove();
    },
    restart: async () => {
      await stopped(child);
      await begin();
    },
  };
}
