// tsx scripts/bench-ground-union.ts [SEED]: the exact union of crowns clipped to a bed beside polygon libraries with circles of 64 corners, in one run and on the
// same circles. Prints times, ratios and the libraries' errors; exits with a fault where an aim is missed.
import { circleUnion } from "../lib/ground/circle-union";
import { groundPlan } from "../lib/ground/ground-plan";
import { type Outline, rectangleOutline } from "../lib/ground/outline";
import { plantsGrown } from "../lib/ground/plan-plant";
import { unionArea } from "../lib/ground/union-area";
import { circlesOf, curvedBed, leastMs, medianMs, medianMsWithin, planting } from "../tests/benchmarks/ground-planting";
import { CORNERS, type PolygonUnion, unionByClipper, unionByPolygonClipping } from "../tests/outside/polygon-libraries";

const seed = Number(process.argv[2] ?? 20261125);
/** Floors of the stack sheet times two, in milliseconds, and how many times faster than the best library. */
const AIMS = { ms: { 200: 2, 2000: 18 }, times: 20 } as const;
const LIBRARIES: readonly (readonly [name: string, union: PolygonUnion])[] = [
  ["clipper2-ts 2.0.1", unionByClipper],
  ["polygon-clipping 0.15.7", unionByPolygonClipping],
];

console.log(`circles | bed | method | ms | times ours | error of the area (libraries: ${CORNERS} corners)`);
for (const count of [200, 2000] as const) {
  const plan = groundPlan(curvedBed(count));
  const circles = circlesOf(plantsGrown(planting(count, plan, seed)), 8);
  const side = Math.sqrt(plan.areaSqFt);
  const beds: readonly (readonly [string, Outline])[] = [
    ["4 sides", rectangleOutline(side, side)],
    [`curved, ${plan.outline.length} sides`, plan.outline],
  ];
  for (const [bed, outline] of beds) {
    const exact = unionArea(circles, outline);
    const runs = count === 200 ? 101 : 31;
    const own = medianMsWithin(AIMS.ms[count], runs, () => unionArea(circles, outline));
    const over = own > AIMS.ms[count];
    console.log(`${count} | ${bed} | exact arcs, ours | ${own.toFixed(2)} (≤ ${AIMS.ms[count]}${over ? " MISSED" : ""}) | 1 | about 1e-12, tested`);
    const libraries = LIBRARIES.map(([name, union]) => {
      // The least of a few runs of the library against our median: noise can only make the ratio worse.
      const ms = leastMs(count === 200 ? 9 : 3, () => union(circles, outline));
      const error = union(circles, outline) / exact - 1;
      console.log(`${count} | ${bed} | ${name} | ${ms.toFixed(1)} | ${(ms / own).toFixed(1)} | ${(100 * error).toFixed(3)} %`);
      return ms;
    });
    const times = Math.min(...libraries) / own;
    const slow = times < AIMS.times;
    console.log(`${count} | ${bed} | best library beside ours | | ${times.toFixed(1)} (≥ ${AIMS.times}${slow ? " MISSED" : ""}) |`);
    if (over || slow) process.exitCode = 1;

    // What the program does: the pairs made ready once, then a year of the slider.
    const radii = Float64Array.from(circles, (c) => c.radiusFt);
    const ready = circleUnion(
      circles.map((c) => c.center),
      radii,
      outline,
    );
    const year = medianMs(runs, () => ready.areaAt(radii));
    console.log(`${count} | ${bed} | ours, one year more of a union made ready | ${year.toFixed(2)} | ${(year / own).toFixed(2)} |`);
  }
}
