// Outlines from SVG path data (W3C, SVG 2, chapter 9): lines, cubic and quadratic Béziers and elliptical arcs, absolute and relative. Transforms are not applied.
import type { CurveShape } from "./curve";
import type { Point } from "./outline";
import { type DraftResult, draftEdge, faultAt, lineAt, type OutlineDraft } from "./outline-draft";
import type { PlanEdge } from "./plan-outline";
import { arcCubics } from "./svg-arc";

/** Numbers that each command takes. */
const ARGUMENTS: Readonly<Record<string, number>> = { M: 2, L: 2, H: 1, V: 1, C: 6, S: 4, Q: 4, T: 2, A: 7, Z: 0 };
const NUMBER = /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
const SPACE = /[\s,]*/y;
/** More commands than an outline has. */
const COMMANDS_MAX = 5000;

type Pen = { at: Point; start: Point; lastCubic: Point | null; lastQuadratic: Point | null; edges: PlanEdge[]; line: number };

const flipped = ([x, y]: Point): Point => [x, -y + 0];

function penLine(pen: Pen, to: Point, shape?: CurveShape): void {
  if (shape || Math.hypot(to[0] - pen.at[0], to[1] - pen.at[1]) > 0) pen.edges.push(draftEdge(flipped(pen.at), shape));
  pen.at = to;
}

function penCubic(pen: Pen, p: Point, q: Point, to: Point): void {
  penLine(pen, to, { kind: "cubic", control1: flipped(p), control2: flipped(q) });
}

/** One command with its numbers, already absolute. */
function penDraw(pen: Pen, command: string, n: readonly number[]): void {
  const point = (i: number): Point => [n[i] ?? 0, n[i + 1] ?? 0];
  const mirrored = (last: Point | null): Point => (last ? [2 * pen.at[0] - last[0], 2 * pen.at[1] - last[1]] : pen.at);
  let [cubic, quadratic]: [Point | null, Point | null] = [null, null];
  switch (command) {
    case "L":
      penLine(pen, point(0));
      break;
    case "H":
      penLine(pen, [n[0] ?? 0, pen.at[1]]);
      break;
    case "V":
      penLine(pen, [pen.at[0], n[0] ?? 0]);
      break;
    case "C":
    case "S": {
      const first = command === "C" ? point(0) : mirrored(pen.lastCubic);
      const rest = command === "C" ? 2 : 0;
      cubic = point(rest);
      penCubic(pen, first, cubic, point(rest + 2));
      break;
    }
    case "Q":
    case "T": {
      quadratic = command === "Q" ? point(0) : mirrored(pen.lastQuadratic);
      const to = point(command === "Q" ? 2 : 0);
      const toward = (end: Point): Point => [end[0] + (2 / 3) * ((quadratic?.[0] ?? 0) - end[0]), end[1] + (2 / 3) * ((quadratic?.[1] ?? 0) - end[1])];
      penCubic(pen, toward(pen.at), toward(to), to);
      break;
    }
    case "A": {
      const to = point(5);
      const pieces = arcCubics(pen.at, to, { rx: n[0] ?? 0, ry: n[1] ?? 0, turnDeg: n[2] ?? 0, large: n[3] !== 0, sweep: n[4] !== 0 });
      if (pieces.length === 0) penLine(pen, to);
      for (const { control1, control2, to: end } of pieces) penCubic(pen, control1, control2, end);
      break;
    }
  }
  pen.lastCubic = cubic;
  pen.lastQuadratic = quadratic;
}

/** Relative numbers made absolute from where the pen is. */
function absolute(command: string, n: readonly number[], [x, y]: Point): number[] {
  if (command === "H") return n.map((value) => value + x);
  if (command === "V") return n.map((value) => value + y);
  if (command === "A") return n.map((value, i) => (i === 5 ? value + x : i === 6 ? value + y : value));
  return n.map((value, i) => value + (i % 2 === 0 ? x : y));
}

/** Path data: the text itself, or that of the first `d="…"` of a document. */
function pathData(text: string): { readonly data: string; readonly offset: number } | null {
  if (!text.includes("<")) return { data: text, offset: 0 };
  const found = /<path\b[^>]*?\sd\s*=\s*(?:"([^"]*)"|'([^']*)')/.exec(text);
  if (!found) return null;
  const data = found[1] ?? found[2] ?? "";
  return { data, offset: found.index + found[0].length - data.length - 1 };
}

/** Every closed shape of a path, one for each "move to". Shapes that are not closed are closed with a straight edge. */
export function draftsFromSvg(text: string): DraftResult {
  const found = pathData(text);
  if (!found) return faultAt(null, "path", "The drawing has no path. Send an outline drawn as one path.");
  const { data, offset } = found;
  const drafts: OutlineDraft[] = [];
  const pen: Pen = { at: [0, 0], start: [0, 0], lastCubic: null, lastQuadratic: null, edges: [], line: lineAt(text, offset) };
  const finish = () => {
    // A drawn closing edge of no length ends where it begins: the corner counts once.
    if (pen.edges.length > 0) {
      if (Math.hypot(pen.at[0] - pen.start[0], pen.at[1] - pen.start[1]) > 1e-9) pen.edges.push(draftEdge(flipped(pen.at)));
      drafts.push({ name: `shape ${drafts.length + 1}`, line: pen.line, edges: pen.edges });
    }
    pen.edges = [];
  };
  let [at, command, commands] = [0, "", 0];
  const skip = () => {
    SPACE.lastIndex = at;
    at += SPACE.exec(data)?.[0].length ?? 0;
  };
  /** One number; a flag of an arc is a single digit and may touch the next. */
  const number = (flag: boolean): number | null => {
    skip();
    if (flag && /[01]/.test(data.charAt(at))) return Number(data.charAt(at++));
    NUMBER.lastIndex = at;
    const match = flag ? null : NUMBER.exec(data);
    if (!match) return null;
    at += match[0].length;
    return Number(match[0]);
  };
  for (skip(); at < data.length; skip()) {
    const letter = data.charAt(at);
    const line = lineAt(text, offset + at);
    if (/[a-zA-Z]/.test(letter)) {
      if (ARGUMENTS[letter.toUpperCase()] === undefined) return faultAt(line, letter, `“${letter}” is not a command of path data.`);
      command = letter;
      at++;
    } else if (command === "" || command.toUpperCase() === "Z") return faultAt(line, data.slice(at, at + 12), "A path begins with a “move to” (M) before its numbers.");
    if (drafts.length === 0 && pen.edges.length === 0 && commands === 0 && command.toUpperCase() !== "M") return faultAt(line, command, "A path begins with a “move to” (M).");
    if (++commands > COMMANDS_MAX) return faultAt(line, command, `The path has more than ${COMMANDS_MAX} pieces: too fine for a bed.`);
    const upper = command.toUpperCase();
    const numbers: number[] = [];
    for (let i = 0; i < (ARGUMENTS[upper] ?? 0); i++) {
      const value = number(upper === "A" && (i === 3 || i === 4));
      if (value === null || !Number.isFinite(value)) return faultAt(line, command, `Number ${i + 1} of “${command}” is missing or cannot be read: “${data.slice(at, at + 12)}”.`);
      numbers.push(value);
    }
    const values = command === upper ? numbers : absolute(upper, numbers, pen.at);
    if (upper === "M") {
      finish();
      pen.at = [values[0] ?? 0, values[1] ?? 0];
      pen.start = pen.at;
      pen.lastCubic = null;
      pen.lastQuadratic = null;
      pen.line = line;
      // Numbers after the first pair of a "move to" are "line to".
      command = command === "M" ? "L" : "l";
    } else if (upper === "Z") {
      finish();
      pen.at = pen.start;
    } else penDraw(pen, upper, values);
  }
  finish();
  return { ok: true, drafts, unitSaid: null };
}
