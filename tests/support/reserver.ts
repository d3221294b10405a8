// tsx tests/support/reserver.ts JOB LOT BED ROW COUNT EACH: one of several processes that want plants of a lot at the same time. Prints what each try got.
import { reservationsMake } from "../../lib/server/reservations";

const [jobId = "", lotId = "", bedId = "", rowId = "", count = "1", each = "1"] = process.argv.slice(2);
const tries = Array.from({ length: Number(count) }, (_, i) => reservationsMake(jobId, [{ lotId, bedId, rowId, quantity: Number(each), steps: 0 }], `process ${process.pid} ${i}`));
process.stdout.write(`${JSON.stringify(await Promise.all(tries))}\n`);
process.exit(0);
