import { databaseUrl } from "./environment";
import { PrismaClient } from "./generated/client";
import { SqliteAdapter } from "./sqlite-adapter";

const holder = globalThis as { twelvemonthDatabase?: PrismaClient };

/** The one Prisma client of the process. */
export function database(): PrismaClient {
  holder.twelvemonthDatabase ??= new PrismaClient({ adapter: new SqliteAdapter({ url: databaseUrl() }) });
  return holder.twelvemonthDatabase;
}

/** What a transaction works with. */
export type Transaction = Parameters<Parameters<PrismaClient["$transaction"]>[0]>[0];
