// The outline of a bed: corners in feet, in order round the bed, either way round; the last side closes back to the first corner.

/** [x, y] in feet. */
export type Point = readonly [number, number];
export type Outline = readonly Point[];

/** More corners than a surveyed bed has; the check of sides against sides stays quick below it. */
export const OUTLINE_MAX_CORNERS = 500;
/** Nearer than this (feet) two places are one: far under what a tape can tell. */
const TOLERANCE_FT = 1e-6;

/** A place where a side meets another. Sides count from 0: side i runs from corner i to corner i + 1. */
export type OutlineCrossing = { readonly kind: "crossing" | "touching" | "folding back"; readonly place: Point; readonly sides: readonly [number, number] };

export type OutlineFault = {
  readonly kind: OutlineCrossing["kind"] | "too few corners" | "too many corners" | "not a number" | "repeated corner" | "no area";
  /** What is wrong, for the person who draws it. Corners and sides are counted from 1. */
  readonly words: string;
  readonly place: Point | null;
};

/** Four corners of a bed so long (x) and so wide (y), in feet, from 0, 0. */
export function rectangleOutline(lengthFt: number, widthFt: number): Outline {
  return [
    [0, 0],
    [lengthFt, 0],
    [lengthFt, widthFt],
    [0, widthFt],
  ];
}

/** Each side with its index. */
function outlineSides(outline: Outline): { from: Point; to: Point; index: number }[] {
  return outline.map((from, index) => ({ from, to: outline[(index + 1) % outline.length] ?? from, index }));
}

/** Twice the signed area of a, b, c; positive when they turn left. */
function turn(a: Point, b: Point, c: Point): number {
  return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
}

function distance(a: Point, b: Point): number {
  return Math.hypot(b[0] - a[0], b[1] - a[1]);
}

/** Distance from a point to a side, in feet. */
function sideDistance(point: Point, from: Point, to: Point): number {
  const length = distance(from, to);
  if (length === 0) return distance(point, from);
  const along = ((point[0] - from[0]) * (to[0] - from[0]) + (point[1] - from[1]) * (to[1] - from[1])) / length ** 2;
  const t = Math.min(1, Math.max(0, along));
  return distance(point, [from[0] + t * (to[0] - from[0]), from[1] + t * (to[1] - from[1])]);
}

/** Area in square feet by the shoelace formula; the same whichever way round the corners run. Meaningful where sides do not cross. */
export function outlineArea(outline: Outline): number {
  const origin = outline[0];
  if (origin === undefined) return 0;
  return Math.abs(outlineSides(outline).reduce((sum, { from, to }) => sum + turn(origin, from, to), 0)) / 2;
}

/** Length all round, in feet. */
export function outlinePerimeter(outline: Outline): number {
  return outlineSides(outline).reduce((sum, { from, to }) => sum + distance(from, to), 0);
}

/** Where two sides that share no corner meet: a true crossing, or a corner that lies on the other side. Null where they keep apart. */
function sidesMeeting(a: Point, b: Point, c: Point, d: Point): { kind: "crossing" | "touching"; place: Point } | null {
  const touches: [Point, Point, Point][] = [
    [a, c, d],
    [b, c, d],
    [c, a, b],
    [d, a, b],
  ];
  for (const [corner, from, to] of touches) if (sideDistance(corner, from, to) <= TOLERANCE_FT) return { kind: "touching", place: corner };
  const [turnC, turnD] = [turn(a, b, c), turn(a, b, d)];
  if (turnC > 0 === turnD > 0 || turn(c, d, a) > 0 === turn(c, d, b) > 0) return null;
  const t = turnC / (turnC - turnD);
  return { kind: "crossing", place: [c[0] + t * (d[0] - c[0]), c[1] + t * (d[1] - c[1])] };
}

/** Whether the way from one corner over the next comes straight back on itself. */
function sidesFoldBack(before: Point, corner: Point, after: Point): boolean {
  const ahead = (before[0] - corner[0]) * (after[0] - corner[0]) + (before[1] - corner[1]) * (after[1] - corner[1]) > 0;
  return ahead && (sideDistance(before, corner, after) <= TOLERANCE_FT || sideDistance(after, corner, before) <= TOLERANCE_FT);
}

/**
 * The first place where the outline crosses or touches itself, or folds straight back along a side; null for a simple outline.
 * Every side is held against every other (n² / 2), which is quick for the corners a bed has.
 */
export function outlineCrossing(outline: Outline): OutlineCrossing | null {
  const sides = outlineSides(outline);
  const last = sides.length - 1;
  for (const side of sides) {
    const next = sides[side.index === last ? 0 : side.index + 1];
    if (next && sidesFoldBack(side.from, side.to, next.to)) return { kind: "folding back", place: side.to, sides: [side.index, next.index] };
  }
  for (const side of sides)
    for (const other of sides.slice(side.index + 2)) {
      if (side.index === 0 && other.index === last) continue;
      const meeting = sidesMeeting(side.from, side.to, other.from, other.to);
      if (meeting) return { ...meeting, sides: [side.index, other.index] };
    }
  return null;
}

/** Without a last corner that repeats the first, as survey files close their outlines. */
export function outlineOpened(outline: Outline): Outline {
  const [first, last] = [outline[0], outline[outline.length - 1]];
  return first && last && outline.length > 1 && distance(first, last) <= TOLERANCE_FT ? outline.slice(0, -1) : outline;
}

function placeText([x, y]: Point): string {
  const short = (value: number) => String(Math.round(value * 100) / 100 + 0);
  return `${short(x)} ft, ${short(y)} ft`;
}

function crossingWords({ kind, place, sides }: OutlineCrossing): string {
  const where = `at ${placeText(place)} (sides ${sides[0] + 1} and ${sides[1] + 1})`;
  switch (kind) {
    case "crossing":
      return `The outline crosses itself ${where}. Move a corner so that the sides keep apart.`;
    case "touching":
      return `The outline touches itself ${where}. Move the corner away from the other side, or enter two beds.`;
    case "folding back":
      return `The outline folds back on itself ${where}. Take out the corner at the tip.`;
  }
}

/** What keeps an outline from being a bed, the first fault only; null when it is sound. A repeated closing corner is forgiven. */
export function outlineFault(drawn: Outline): OutlineFault | null {
  if (drawn.length > OUTLINE_MAX_CORNERS) return { kind: "too many corners", words: `An outline has at most ${OUTLINE_MAX_CORNERS} corners.`, place: null };
  const wild = drawn.findIndex(([x, y]) => !Number.isFinite(x) || !Number.isFinite(y));
  if (wild >= 0) return { kind: "not a number", words: `Corner ${wild + 1} needs two numbers, in feet.`, place: null };
  const outline = outlineOpened(drawn);
  if (outline.length < 3) return { kind: "too few corners", words: "An outline needs at least three corners.", place: null };
  for (const { from, to, index } of outlineSides(outline))
    if (distance(from, to) <= TOLERANCE_FT) {
      const words = `Corners ${index + 1} and ${((index + 1) % outline.length) + 1} are the same place, ${placeText(from)}. Take one out.`;
      return { kind: "repeated corner", words, place: from };
    }
  const crossing = outlineCrossing(outline);
  if (crossing) return { kind: crossing.kind, words: crossingWords(crossing), place: crossing.place };
  if (outlineArea(outline) <= TOLERANCE_FT) return { kind: "no area", words: "The outline encloses no area: its corners lie in one line.", place: outline[0] ?? null };
  return null;
}

/** Whether a point is strictly inside, by ray casting without tolerance; on the edge it may say either. Any simple outline, convex or not. */
export function pointInside(point: Point, outline: Outline): boolean {
  let inside = false;
  for (const { from, to } of outlineSides(outline)) {
    const straddles = from[1] > point[1] !== to[1] > point[1];
    if (straddles && point[0] < from[0] + ((point[1] - from[1]) / (to[1] - from[1])) * (to[0] - from[0])) inside = !inside;
  }
  return inside;
}

/** Feet from a point, inside or out, to the nearest side. */
export function outlineDistance(point: Point, outline: Outline): number {
  return outlineSides(outline).reduce((least, { from, to }) => Math.min(least, sideDistance(point, from, to)), Number.POSITIVE_INFINITY);
}

/** Whether a point is inside or on the edge (within a millionth of a foot). */
export function pointInOutline(point: Point, outline: Outline): boolean {
  return outlineDistance(point, outline) <= TOLERANCE_FT || pointInside(point, outline);
}
