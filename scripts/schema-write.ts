// tsx scripts/schema-write.ts [--check]: the bed file's zod schema as JSON Schema, to public/schema/bed.schema.json.
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { z } from "zod";
import { bedFile } from "../lib/papers/bed-file";

const FILE = "public/schema/bed.schema.json";
const schema = { $id: "bed.schema.json", title: "Twelvemonth bed file", ...z.toJSONSchema(bedFile, { io: "input", unrepresentable: "any" }) };
const text = `${JSON.stringify(schema, null, 2)}\n`;
if (process.argv.includes("--check")) {
  if (readFileSync(FILE, "utf8") !== text) {
    console.error(`${FILE} is not what lib/papers/bed-file.ts says: run node_modules/.bin/tsx scripts/schema-write.ts`);
    process.exit(1);
  }
} else {
  mkdirSync("public/schema", { recursive: true });
  writeFileSync(FILE, text);
}
