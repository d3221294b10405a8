// npm run check: formatting, lint, types, schema drift, dataset, then all tests. Stops at the first that fails.
import { nodeRun, setUpCode } from "./setup.mjs";

setUpCode();
const step = (name, args) => {
  process.stderr.write(`\n— ${name}\n`);
  nodeRun(args);
};
step("format and lint", ["node_modules/@biomejs/biome/bin/biome", "check"]);
step("types", ["node_modules/typescript/bin/tsc", "--noEmit"]);
step("schema and migrations", ["node_modules/tsx/dist/cli.mjs", "scripts/db-new.ts", "--check"]);
step("plant dataset", ["node_modules/tsx/dist/cli.mjs", "scripts/plants-validate.ts"]);
step("tests", ["scripts/test.mjs"]);
