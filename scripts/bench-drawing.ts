// npm run bench drawing: a bed with 500 plants in a real Chromium on the built program: a group is dragged for three seconds, then the sheet. Prints the intervals
// between frames and the script time of one; fails where the median frame is late for a 60 Hz screen. Without a graphics card Chromium draws in software: a hard case.
import type { CDPSession, Page } from "playwright-core";
import { fillPoints } from "../lib/ground/placement";
import { openBrowser, openPage, WIDE } from "../tests/support/browser";
import { startServer } from "../tests/support/server";

const PLANTS = 500;
const DRAG_MS = 3000;
/** A frame of a 60 Hz screen, and what timers may be off. */
const FRAME_MS = 1000 / 60;
const TOLERANCE_MS = 1;
const MEDIAN_MOST_MS = 17.5;
const TAXA = 12;

/** As text: the compiler that runs this script adds names to functions that a page does not know. */
const WATCH_FRAMES =
  "(function (stamps) { window.stamps = stamps; (function tick(stamp) { if (stamp) stamps.push(stamp); if (window.stamps === stamps) requestAnimationFrame(tick); })(); })([])";

type Frames = { readonly median: number; readonly p95: number; readonly within: number; readonly count: number };

const server = await startServer({ demo: true });
process.env.DATABASE_URL = server.database;
const { bedCreate, bedsOfJob } = await import("../lib/server/beds");
const { database } = await import("../lib/server/database");
const { taxaHeld } = await import("../lib/server/taxa");

const job = await database().job.findFirstOrThrow();
const kinds = new Set(["shrub", "perennial", "grass", "tree"]);
const { byId } = await taxaHeld();
const taxa = [...byId.values()].filter(({ kind }) => kinds.has(kind)).filter((_, i) => i % 17 === 0);
const rows = taxa.slice(0, TAXA).map((taxon, i) => ({
  id: `row${i}`,
  taxonId: taxon.id,
  taxonName: taxon.name,
  quantity: { by: "drawing" as const },
  spacingFt: null,
  size: "#3",
  remarks: "",
  existing: false,
}));
const outline = [
  [0, 0],
  [80, 0],
  [80, 50],
  [0, 50],
] as const;
const places = fillPoints({ outlines: [outline], spacingFt: 2.9, grid: "triangular" }).slice(0, PLANTS);
const plants = places.map((at, i) => ({ id: `p${i}`, rowId: `row${Math.floor(i / 5) % TAXA}`, at, group: Math.floor(i / 5) + 1 }));
await bedCreate(job.id, {
  name: "Five hundred",
  size: { by: "rectangle", lengthFt: 80, widthFt: 50 },
  site: { light: "sun", moisture: "average", ph: null, salt: "none", deer: "none", faces: "" },
  notes: "",
  rows,
  drawing: { plants, things: [], standpoint: { kind: "one side", lookAngle: Math.PI / 2 }, underlay: null },
});
const bed = (await bedsOfJob(job.id)).at(-1);
if (!bed) throw new Error("The bed was not made.");

function framesOf(stamps: readonly number[]): Frames {
  const intervals = stamps
    .slice(1)
    .map((stamp, i) => stamp - (stamps[i] ?? stamp))
    .sort((a, b) => a - b);
  const at = (share: number) => intervals[Math.min(intervals.length - 1, Math.floor(share * intervals.length))] ?? 0;
  return { median: at(0.5), p95: at(0.95), within: intervals.filter((ms) => ms <= FRAME_MS + TOLERANCE_MS).length / Math.max(1, intervals.length), count: intervals.length };
}

async function scriptSeconds(session: CDPSession): Promise<number> {
  const { metrics } = await session.send("Performance.getMetrics");
  return metrics.find(({ name }) => name === "ScriptDuration")?.value ?? 0;
}

/** Presses, moves for three seconds, lets go; the frames meanwhile and milliseconds of script for each. */
async function held(page: Page, session: CDPSession, name: string, from: readonly [number, number], button: "left" | "middle"): Promise<Frames> {
  await page.mouse.move(from[0], from[1]);
  await page.mouse.down({ button });
  await page.mouse.move(from[0] + 12, from[1] + 6, { steps: 3 });
  await page.evaluate(WATCH_FRAMES);
  const before = await scriptSeconds(session);
  const start = Date.now();
  for (let step = 0; Date.now() - start < DRAG_MS; step++) await page.mouse.move(from[0] + 12 + 110 * Math.sin(step / 24), from[1] + 6 + 70 * Math.sin(step / 17));
  const script = (await scriptSeconds(session)) - before;
  const stamps = await page.evaluate<number[]>("[window.stamps, (window.stamps = null)][0]");
  await page.mouse.up({ button });
  const frames = framesOf(stamps);
  console.log(
    `${name}: ${frames.count} frames, median ${frames.median.toFixed(1)} ms, 95 % within ${frames.p95.toFixed(1)} ms, ${Math.round(frames.within * 100)} % within ${(FRAME_MS + TOLERANCE_MS).toFixed(1)} ms; script ${((1000 * script) / Math.max(1, frames.count)).toFixed(2)} ms a frame`,
  );
  return frames;
}

const browser = await openBrowser();
try {
  const page = await openPage(browser, WIDE);
  await page.goto(`${server.url}/jobs/${job.id}/beds/${bed.id}/drawing`);
  await page
    .locator(".drawing-area [role=option]")
    .nth(PLANTS - 1)
    .waitFor({ state: "attached" });
  await page.waitForTimeout(1500);
  const session = await page.context().newCDPSession(page);
  await session.send("Performance.enable");
  const box = await page.locator(".drawing-area").boundingBox();
  if (!box) throw new Error("The drawing has no place on the screen.");
  const middle = [box.x + box.width / 2, box.y + box.height / 2] as const;
  console.log(`${PLANTS} plants of ${TAXA} taxa on ${Math.round(box.width)} × ${Math.round(box.height)} pixels`);
  const drag = await held(page, session, "a group dragged", middle, "left");
  // After a drop the figures of the whole bed are worked out (cover by year, crowding); they are not what is measured here.
  await page.waitForTimeout(4000);
  const pan = await held(page, session, "the sheet dragged", middle, "middle");
  if (drag.median > MEDIAN_MOST_MS || pan.median > MEDIAN_MOST_MS) {
    console.error(`Late for a 60 Hz screen: the median frame is to take at most ${MEDIAN_MOST_MS} ms.`);
    process.exitCode = 1;
  }
} finally {
  await browser.close();
  await server.stop();
}
process.exit(process.exitCode ?? 0);
