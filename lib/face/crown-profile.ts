// The outline of a crown by habit: its half width (0–1) at each height (0 foot of the crown, 1 top).
import type { Habit } from "../plants/vocabulary";
import type { Point } from "./face-path";

export type Profile = (t: number) => number;

const clamp = (t: number): number => Math.min(1, Math.max(0, t));
/** An ellipse stretched so that its widest part lies at `widest`; `square` > 2 is fuller, < 2 leaner. */
const egg =
  (widest: number, square = 2): Profile =>
  (raw) => {
    const t = clamp(raw);
    const s = t < widest ? (widest - t) / widest : (t - widest) / (1 - widest);
    return (1 - s ** square) ** (1 / square);
  };
const cone: Profile = (raw) => {
  const t = clamp(raw);
  return t < 0.06 ? 0.75 + (t / 0.06) * 0.25 : (1 - (t - 0.06) / 0.94) ** 0.9;
};
const vase: Profile = (raw) => {
  const t = clamp(raw);
  return t < 0.72 ? 0.3 + 0.7 * (t / 0.72) ** 0.95 : (1 - ((t - 0.72) / 0.28) ** 2.2) ** (1 / 2.2);
};

const PROFILES: Record<Habit, Profile> = {
  upright: egg(0.58, 2.2),
  oval: egg(0.42, 2.1),
  rounded: egg(0.48, 2.3),
  spreading: egg(0.4, 2.6),
  vase,
  weeping: egg(0.55, 2.4),
  columnar: egg(0.45, 3.4),
  conical: cone,
  mounded: egg(0.18, 2.2),
  mat: egg(0.1, 2.4),
  fountain: egg(0.62, 2.2),
  clump: egg(0.5, 2.4),
  rosette: egg(0.3, 2),
  climbing: egg(0.55, 3.2),
  irregular: egg(0.55, 2.2),
};

/** The profile of a habit. */
export function crownProfile(habit: Habit): Profile {
  return PROFILES[habit];
}

/** A crown in feet: where its foot and (0 unless said) its middle are, how high and how wide it is. */
export type Crown = { readonly middleFt?: number; readonly footFt: number; readonly heightFt: number; readonly widthFt: number; readonly profile: Profile };

/**
 * Points around a crown, counterclockwise from its foot, about `edgeFt` apart, each moved in or out a little.
 * @param lean −1…1: pushes the upper crown sideways (irregular habits)
 */
export function crownOutline(crown: Crown, edgeFt: number, rough: number, random: () => number, lean = 0): Point[] {
  const { middleFt = 0, footFt, heightFt, widthFt, profile } = crown;
  const half = widthFt / 2;
  // Walk the right side finely, then take points at even distances along it.
  const side: Point[] = Array.from({ length: 61 }, (_, i) => [profile(i / 60) * half, footFt + (heightFt * i) / 60]);
  const edges = side.slice(1).map((p, i) => Math.hypot(p[0] - (side[i]?.[0] ?? 0), p[1] - (side[i]?.[1] ?? 0)));
  const total = edges.reduce((sum, e) => sum + e, 0);
  const count = Math.max(4, Math.round(total / edgeFt));
  const along = (share: number): Point => {
    let rest = share * total;
    for (let i = 0; i < edges.length; i++) {
      const edge = edges[i] ?? 0;
      const [a, b] = [side[i] ?? [0, 0], side[i + 1] ?? [0, 0]];
      if (rest <= edge) {
        const t = edge ? rest / edge : 0;
        return [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
      }
      rest -= edge;
    }
    return side.at(-1) ?? [0, footFt + heightFt];
  };
  const moved = ([x, y]: Point, sign: 1 | -1): Point => {
    const out = 1 + (random() - 0.5) * rough;
    const middle = footFt + heightFt / 2;
    const t = (y - footFt) / heightFt;
    return [middleFt + sign * x * out + lean * half * 0.35 * t, Math.max(0, middle + (y - middle) * (1 + (random() - 0.5) * rough * 0.6))];
  };
  const right = Array.from({ length: count }, (_, i) => moved(along((i + 0.5) / count), 1));
  const left = Array.from({ length: count }, (_, i) => moved(along(1 - (i + 0.5) / count), -1));
  return [...right, ...left];
}

/** Points inside a crown, evenly scattered: a jittered grid of cells `cellFt` wide, those that fall inside the profile shrunk by `shrink`. */
export function crownPoints(crown: Crown, cellFt: number, shrink: number, random: () => number): Point[] {
  const { middleFt = 0, footFt, heightFt, widthFt, profile } = crown;
  const out: Point[] = [];
  const rows = Math.max(1, Math.round(heightFt / cellFt));
  for (let r = 0; r < rows; r++) {
    const t = (r + 0.5) / rows;
    const half = profile(t) * (widthFt / 2) * shrink;
    const n = Math.max(1, Math.round((2 * half) / cellFt));
    for (let c = 0; c < n; c++) {
      const x = middleFt - half + ((c + 0.15 + random() * 0.7) * 2 * half) / n;
      const y = footFt + heightFt * (0.5 + (t + ((random() - 0.5) * 0.7) / rows - 0.5) * shrink);
      out.push([x, y]);
    }
  }
  return out;
}
