// The environment, checked once at the edge. Nothing else reads process.env.
import { mkdirSync } from "node:fs";
import path from "node:path";
import { z } from "zod";

const schema = z.object({ DATABASE_URL: z.string().startsWith("file:", "DATABASE_URL must begin with file: (a SQLite file)").default("file:./data/twelvemonth.db") });

/** Path of a file of the project, from its root. */
export function projectPath(...parts: string[]): string {
  return path.join(/* turbopackIgnore: true */ process.cwd(), ...parts);
}

/** The database file's URL (absolute); its folder is made. Throws when the environment is wrong: nothing can run then. */
export function databaseUrl(): string {
  const url = schema.parse({ DATABASE_URL: process.env.DATABASE_URL || undefined }).DATABASE_URL;
  const file = path.resolve(/* turbopackIgnore: true */ process.cwd(), url.replace(/^file:/, ""));
  mkdirSync(path.dirname(file), { recursive: true });
  return `file:${file}`;
}
