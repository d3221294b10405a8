// tsx scripts/db.ts: migrates and seeds the database, saying what it did.

import { demoPlant } from "../lib/server/demo";
import { demoStockPlant } from "../lib/server/demo-stock";
import { databaseMigrate } from "../lib/server/migrate";
import { databaseSeed } from "../lib/server/seed";

const say = (line: string) => console.error(`  ${line}`);
const applied = await databaseMigrate();
if (applied.length) say(`database: ${applied.length} migration${applied.length === 1 ? "" : "s"} applied`);
await databaseSeed(say);
if (!process.argv.includes("--no-demo")) {
  await demoPlant(say);
  await demoStockPlant(say);
}
process.exit(0);
