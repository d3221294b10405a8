// A bed's sides as flat numbers, for the one place where they are asked a hundred thousand times: the union of crowns.
import type { Outline, Point } from "./outline";

/** Counterclockwise, each from its start (ax, ay) to its end (bx, by), feet from an origin of the caller's. */
export type BedSides = { readonly ax: Float64Array; readonly ay: Float64Array; readonly bx: Float64Array; readonly by: Float64Array };

/** The sides of an outline, whichever way round it runs, about an origin. */
export function bedSides(outline: Outline, [originX, originY]: Point): BedSides {
  const moved = outline.map(([x, y]): Point => [x - originX, y - originY]);
  const doubled = moved.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = moved[(i + 1) % moved.length] ?? [x, y];
    return sum + (x * nextY - nextX * y);
  }, 0);
  if (doubled < 0) moved.reverse();
  const ends = moved.map((_, i) => moved[(i + 1) % moved.length] ?? moved[i] ?? [0, 0]);
  return {
    ax: Float64Array.from(moved, ([x]) => x),
    ay: Float64Array.from(moved, ([, y]) => y),
    bx: Float64Array.from(ends, ([x]) => x),
    by: Float64Array.from(ends, ([, y]) => y),
  };
}

/** Whether a point lies within the sides, by ray casting; on a side it may say either. */
export function sidesHold({ ax, ay, bx, by }: BedSides, x: number, y: number): boolean {
  let inside = false;
  for (let s = 0; s < ax.length; s++) {
    const fromY = ay[s] ?? 0;
    const toY = by[s] ?? 0;
    if (fromY > y !== toY > y && x < (ax[s] ?? 0) + ((y - fromY) / (toY - fromY)) * ((bx[s] ?? 0) - (ax[s] ?? 0))) inside = !inside;
  }
  return inside;
}

/** Feet from a point to one side. */
export function sideAwayFt({ ax, ay, bx, by }: BedSides, side: number, x: number, y: number): number {
  const fromX = ax[side] ?? 0;
  const fromY = ay[side] ?? 0;
  const dx = (bx[side] ?? 0) - fromX;
  const dy = (by[side] ?? 0) - fromY;
  const squared = dx * dx + dy * dy;
  const share = squared === 0 ? 0 : Math.min(1, Math.max(0, ((x - fromX) * dx + (y - fromY) * dy) / squared));
  const px = x - fromX - share * dx;
  const py = y - fromY - share * dy;
  return Math.sqrt(px * px + py * py);
}

/** For each circle the sides that it can reach (flat, as `CirclePairs`), its distance to the nearest of them, and whether its middle is in the bed. */
export type SideReach = { readonly start: Int32Array; readonly side: Int32Array; readonly nearestFt: Float64Array; readonly inside: Uint8Array };

/** Which sides each circle reaches at its radius. */
export function sideReach(sides: BedSides, x: Float64Array, y: Float64Array, radiusFt: Float64Array): SideReach {
  const start = new Int32Array(x.length + 1);
  const side: number[] = [];
  const nearestFt = new Float64Array(x.length).fill(Number.POSITIVE_INFINITY);
  const inside = new Uint8Array(x.length);
  for (let i = 0; i < x.length; i++) {
    const cx = x[i] ?? 0;
    const cy = y[i] ?? 0;
    const reach = (radiusFt[i] ?? 0) * (1 + 1e-9);
    for (let s = 0; s < sides.ax.length; s++) {
      const ax = sides.ax[s] ?? 0;
      const bx = sides.bx[s] ?? 0;
      const ay = sides.ay[s] ?? 0;
      const by = sides.by[s] ?? 0;
      if ((ax < cx - reach && bx < cx - reach) || (ax > cx + reach && bx > cx + reach) || (ay < cy - reach && by < cy - reach) || (ay > cy + reach && by > cy + reach)) continue;
      const away = sideAwayFt(sides, s, cx, cy);
      if (away > reach) continue;
      side.push(s);
      nearestFt[i] = Math.min(nearestFt[i] ?? 0, away);
    }
    start[i + 1] = side.length;
    inside[i] = sidesHold(sides, cx, cy) ? 1 : 0;
  }
  return { start, side: Int32Array.from(side), nearestFt, inside };
}
