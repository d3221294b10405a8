// Fills the database: ZIP codes, the open dataset, the demo job. Each part has a fingerprint; what has not changed is left alone.
import { type Client, createClient } from "@libsql/client";
import { faultText } from "../plants/taxon-load";
import { datasetFingerprint, datasetRead } from "./dataset-files";
import { databaseUrl } from "./environment";
import { zipFingerprint, zipRows } from "./zip-table";

const CHUNK = 400;

/** Replaces a table's rows and sets its mark, in one transaction. Bulk loads go past Prisma: thirty times faster. */
async function tableReplace(client: Client, table: string, columns: readonly string[], rows: readonly (readonly (string | number | null)[])[], mark: string): Promise<void> {
  const statements: { sql: string; args: (string | number | null)[] }[] = [{ sql: `DELETE FROM "${table}"`, args: [] }];
  const names = columns.map((c) => `"${c}"`).join(",");
  const one = `(${columns.map(() => "?").join(",")})`;
  for (let i = 0; i < rows.length; i += CHUNK) {
    const part = rows.slice(i, i + CHUNK);
    statements.push({ sql: `INSERT INTO "${table}" (${names}) VALUES ${part.map(() => one).join(",")}`, args: part.flat() });
  }
  statements.push({ sql: `INSERT INTO "Mark" ("key","value") VALUES (?,?) ON CONFLICT ("key") DO UPDATE SET "value" = excluded."value"`, args: [table, mark] });
  await client.batch(statements, "write");
}

async function markOf(client: Client, key: string): Promise<string | null> {
  const found = await client.execute({ sql: `SELECT "value" FROM "Mark" WHERE "key" = ?`, args: [key] });
  const value = found.rows[0]?.value;
  return typeof value === "string" ? value : null;
}

/** Seeds ZIP codes and dataset. Idempotent. @param say told each step that does work. Throws when the dataset has faults. */
export async function databaseSeed(say: (line: string) => void): Promise<void> {
  const client = createClient({ url: databaseUrl() });
  try {
    await client.execute("PRAGMA busy_timeout=10000");
    const zips = zipFingerprint();
    if ((await markOf(client, "Zip")) !== zips) {
      const rows = zipRows();
      await tableReplace(
        client,
        "Zip",
        ["zip", "lat", "lon", "state", "zone"],
        rows.map((r) => [r.zip, r.lat, r.lon, r.state, r.zone]),
        zips,
      );
      say(`places: ${rows.length.toLocaleString("en-US")} ZIP codes`);
    }
    const plants = datasetFingerprint();
    if ((await markOf(client, "Taxon")) !== plants) {
      const { taxa, faults } = datasetRead();
      if (faults.length) throw new Error(`The plant dataset has ${faults.length} faults:\n${faults.slice(0, 20).map(faultText).join("\n")}`);
      await tableReplace(
        client,
        "Taxon",
        ["id", "name", "kind", "data"],
        taxa.map(({ taxon }) => [taxon.id, taxon.name, taxon.kind, JSON.stringify(taxon)]),
        plants,
      );
      say(`plants: ${taxa.length.toLocaleString("en-US")} taxa`);
    }
  } finally {
    client.close();
  }
}
