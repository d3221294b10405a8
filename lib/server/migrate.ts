// Applies prisma/migrations in order, each in one transaction, and records them in _prisma_migrations
// just as `prisma migrate deploy` does, so the stock tool can take over where its engine can be downloaded.
import { createHash, randomUUID } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { type Client, createClient } from "@libsql/client";
import { databaseUrl, projectPath } from "./environment";

const TOKEN = /--[^\n]*|\/\*[\s\S]*?\*\/|'(?:[^']|'')*'|"(?:[^"]|"")*"|\bCREATE\s+(?:TEMP\w*\s+)?TRIGGER\b|\b(?:BEGIN|CASE|END)\b|;|[\s\S]/gi;

/** Splits SQL on ; outside quotes, comments and (for triggers) BEGIN…END. */
export function sqlStatements(sql: string): string[] {
  const out: string[] = [];
  let current = "";
  let depth = 0;
  for (const [token] of sql.matchAll(TOKEN)) {
    if (token.startsWith("--") || token.startsWith("/*")) continue;
    if (/^CREATE/i.test(token)) depth = 0.5;
    else if (depth && /^(BEGIN|CASE)$/i.test(token)) depth += 1;
    else if (depth && /^END$/i.test(token)) depth = depth - 1 <= 0.5 ? 0 : depth - 1;
    if (token === ";" && depth === 0) {
      if (current.trim()) out.push(current.trim());
      current = "";
    } else current += token;
  }
  if (current.trim()) out.push(current.trim());
  return out;
}

const TABLE = `CREATE TABLE IF NOT EXISTS "_prisma_migrations" (
  "id" TEXT PRIMARY KEY NOT NULL, "checksum" TEXT NOT NULL, "finished_at" DATETIME, "migration_name" TEXT NOT NULL, "logs" TEXT,
  "rolled_back_at" DATETIME, "started_at" DATETIME NOT NULL DEFAULT current_timestamp, "applied_steps_count" INTEGER UNSIGNED NOT NULL DEFAULT 0)`;

async function applyOne(client: Client, name: string, sql: string): Promise<boolean> {
  const checksum = createHash("sha256").update(sql).digest("hex");
  await client.execute("PRAGMA foreign_keys=OFF"); // has no effect inside a transaction, so before it
  await client.execute("BEGIN IMMEDIATE"); // two starters at once: the second waits, then sees it done
  try {
    const found = await client.execute({
      sql: `SELECT "checksum" FROM "_prisma_migrations" WHERE "migration_name" = ? AND "finished_at" IS NOT NULL AND "rolled_back_at" IS NULL`,
      args: [name],
    });
    const row = found.rows[0];
    if (row) {
      if (row.checksum !== checksum) throw new Error("it was changed after it was applied");
      await client.execute("ROLLBACK");
      return false;
    }
    const started = new Date().toISOString();
    for (const statement of sqlStatements(sql)) await client.execute(statement);
    if ((await client.execute("PRAGMA foreign_key_check")).rows.length) throw new Error("it breaks foreign keys");
    await client.execute({
      sql: `INSERT INTO "_prisma_migrations" ("id","checksum","migration_name","started_at","finished_at","applied_steps_count") VALUES (?,?,?,?,?,1)`,
      args: [randomUUID(), checksum, name, started, new Date().toISOString()],
    });
    await client.execute("COMMIT");
    return true;
  } catch (error) {
    await client.execute("ROLLBACK");
    throw new Error(`Migration ${name} failed, nothing of it was kept: ${error instanceof Error ? error.message : String(error)}`, { cause: error });
  }
}

/** Applies what is not applied yet. @returns the names applied now. Throws when a migration fails; nothing of that one is kept. */
export async function databaseMigrate(): Promise<string[]> {
  const dir = projectPath("prisma", "migrations");
  const names = readdirSync(dir)
    .filter((name) => existsSync(path.join(dir, name, "migration.sql")))
    .sort();
  const client = createClient({ url: databaseUrl() });
  try {
    for (const pragma of ["PRAGMA journal_mode=WAL", "PRAGMA busy_timeout=10000", TABLE]) await client.execute(pragma);
    const done: string[] = [];
    for (const name of names) if (await applyOne(client, name, readFileSync(path.join(dir, name, "migration.sql"), "utf8"))) done.push(name);
    return done;
  } finally {
    client.close();
  }
}
