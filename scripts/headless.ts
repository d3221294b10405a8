// The headless command: parse, call, print. One JSON value on standard output; faults on standard error, exit 2.
import { headlessAnswer } from "../lib/server/headless";

const answer = await headlessAnswer(process.argv.slice(2));
if (answer.kind === "answer") {
  await new Promise<void>((done) => process.stdout.write(`${JSON.stringify(answer.value, null, process.stdout.isTTY ? 2 : undefined)}\n`, () => done()));
  process.exit(0);
}
process.stderr.write(`${answer.message}\n`);
process.exit(2);
