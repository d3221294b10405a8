// Plan symbols of herbs, grasses, ferns and mats: leaves, blades and fronds from above, and flowers with petals. Feet, y up.
import type { FaceMark } from "./face-mark";
import { pen } from "./face-mark";
import { type Point, pathCircle, pathCurve, pathLine } from "./face-path";
import { crownPath, ring, spread } from "./plan-symbol-paths";
import { toneDark, toneLight } from "./tone";

const figure = (n: number): string => String(Math.round(n * 1000) / 1000);
const at = ([x, y]: Point): string => `${figure(x)} ${figure(-y)}`;
const thinFt = (radiusFt: number) => Math.min(0.035, 0.014 + radiusFt * 0.008);

/** A leaf from near the middle to the rim, pointed at both ends, so wide. */
function leafPath(turn: number, fromFt: number, toFt: number, wideFt: number): string {
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const go = (far: number, aside: number): Point => [far * cos - aside * sin, far * sin + aside * cos];
  const middle = fromFt + (toFt - fromFt) * 0.55;
  return `M${at(go(fromFt, 0))}Q${at(go(middle, wideFt))} ${at(go(toFt, 0))}Q${at(go(middle, -wideFt))} ${at(go(fromFt, 0))}Z`;
}

/** A clump of leaves round the middle in two whorls, over a soft ground of its color. */
export function leafMarks(radiusFt: number, hex: string, leaves: number, wide: number, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  draw.fill("leaf", toneDark(hex, 0.16), crownPath(Math.max(7, Math.round(leaves * 0.8)), radiusFt * 0.94, 0.08, 0.3, chance));
  const width = ((Math.PI * radiusFt) / leaves) * wide;
  for (const [share, tone, count] of [
    [1, 0, leaves],
    [0.66, 0.2, Math.max(5, Math.round(leaves * 0.62))],
  ] as const) {
    const whorl = ring(count, chance, 0.1).map(([x, y]) => leafPath(Math.atan2(y, x), radiusFt * 0.06, radiusFt * share * Math.hypot(x, y), width * (share < 1 ? 0.85 : 1)));
    draw.fill("leaf", tone ? toneLight(hex, tone) : hex, ...whorl);
    draw.line("leaf", toneDark(hex, 0.38), thinFt(radiusFt), ...whorl);
  }
  return draw.marks();
}

/** Blades that arch from the middle, as a grass or an iris from above. */
export function bladeMarks(radiusFt: number, hex: string, blades: number, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  draw.fill("leaf", toneLight(hex, 0.28), crownPath(11, radiusFt * 0.72, 0.12, 0.3, chance));
  const arch = (share: number, count: number) =>
    ring(count, chance, 0.16).map(([x, y]): string => {
      const tip: Point = [x * radiusFt * share, y * radiusFt * share];
      const bend = (chance() - 0.5) * 0.5;
      return pathCurve([tip[0] * 0.05, tip[1] * 0.05], [tip[0] * 0.6 - tip[1] * bend * 0.5, tip[1] * 0.6 + tip[0] * bend * 0.5], tip);
    });
  draw.line("leaf", toneDark(hex, 0.34), Math.max(thinFt(radiusFt), radiusFt * 0.034), ...arch(1, blades));
  draw.line("leaf", hex, Math.max(thinFt(radiusFt), radiusFt * 0.03), ...arch(0.86, Math.round(blades * 0.7)));
  return draw.marks();
}

/** Fronds: a midrib each with pinnae to both sides. */
export function frondMarks(radiusFt: number, hex: string, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  const fronds = ring(9, chance, 0.1);
  draw.fill("leaf", hex, ...fronds.map(([x, y]) => leafPath(Math.atan2(y, x), radiusFt * 0.04, radiusFt * Math.hypot(x, y), radiusFt * 0.26)));
  draw.line(
    "leaf",
    toneDark(hex, 0.4),
    thinFt(radiusFt),
    ...fronds.map(([x, y]) =>
      pathLine([
        [x * radiusFt * 0.05, y * radiusFt * 0.05],
        [x * radiusFt * 0.95, y * radiusFt * 0.95],
      ]),
    ),
  );
  draw.line(
    "leaf",
    toneDark(hex, 0.28),
    thinFt(radiusFt) * 0.8,
    ...fronds.flatMap(([x, y]) =>
      [0.28, 0.42, 0.56, 0.7, 0.82].flatMap((far) =>
        [-1, 1].map((side): string => {
          const aside = side * 0.13 * (1.15 - far);
          return pathLine([
            [x * radiusFt * far, y * radiusFt * far],
            [(x * (far + 0.07) - y * aside) * radiusFt, (y * (far + 0.07) + x * aside) * radiusFt],
          ]);
        }),
      ),
    ),
  );
  return draw.marks();
}

/** A mat: a low cloud of small leaves without a middle. */
export function matMarks(radiusFt: number, hex: string, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  const outline = crownPath(12, radiusFt, 0.2, 0.42, chance);
  draw.fill("leaf", hex, outline);
  const leaf = Math.max(0.05, Math.min(0.16, radiusFt * 0.13));
  const places = spread(Math.max(9, Math.min(60, Math.round((radiusFt / leaf) ** 2 * 0.22))), radiusFt * 0.82, chance);
  draw.fill("leaf", toneLight(hex, 0.26), ...places.map((place) => pathCircle(place, leaf * 0.7)));
  draw.line(
    "leaf",
    toneDark(hex, 0.28),
    thinFt(radiusFt) * 0.8,
    ...places.map(([x, y]) =>
      pathLine([
        [x - leaf, y - leaf * 0.4],
        [x, y - leaf],
        [x + leaf, y - leaf * 0.3],
      ]),
    ),
  );
  draw.line("leaf", toneDark(hex, 0.36), thinFt(radiusFt), outline);
  return draw.marks();
}

/** Flowers with five petals and an eye, as many as their show allows. */
export function petalFlowers(radiusFt: number, hex: string, share: number, chance: () => number): readonly FaceMark[] {
  const draw = pen();
  const sizeFt = Math.max(0.09, Math.min(0.26, radiusFt * 0.2));
  const count = Math.max(3, Math.min(48, Math.round((share * 1.25 * radiusFt ** 2) / sizeFt ** 2)));
  const places = spread(count, Math.max(0, radiusFt - sizeFt), chance);
  const petals = places.flatMap(([x, y]) => {
    const start = chance() * 6.28;
    return Array.from({ length: 5 }, (_, i) => pathCircle([x + sizeFt * 0.52 * Math.cos(start + i * 1.2566), y + sizeFt * 0.52 * Math.sin(start + i * 1.2566)], sizeFt * 0.44));
  });
  draw.fill("flower", toneDark(hex, 0.24), ...places.map((place) => pathCircle(place, sizeFt * 1.02)));
  draw.fill("flower", hex, ...petals);
  draw.fill("flower", toneDark(hex, 0.42), ...places.map((place) => pathCircle(place, sizeFt * 0.17)));
  return draw.marks();
}
