// Root balls: diameter by caliper or height, depth, weight; weights of containers; how a plant is dug and lifted.
import type { LineSize } from "../nursery/size-read";
import type { Kind } from "../plants/vocabulary";

type Table = readonly (readonly [size: number, value: number])[];

/**
 * Caliper in inches -> least ball diameter in inches of shade trees. 1.5: Batavia, Illinois city code after the nursery stock standard;
 * 2, 3, 4 and 5: UF/IFAS, Root ball size standards (1996 stock standard), as quoted on other pages; the others from memory of the standard
 * (common practice, no source).
 */
export const BALL_BY_CALIPER: Table = [
  [0.5, 12],
  [0.75, 14],
  [1, 16],
  [1.25, 18],
  [1.5, 20],
  [1.75, 22],
  [2, 24],
  [2.5, 28],
  [3, 32],
  [3.5, 38],
  [4, 42],
  [4.5, 48],
  [5, 54],
  [5.5, 57],
  [6, 60],
  [7, 70],
  [8, 80],
];
/** Height in inches -> least ball diameter in inches (from memory of the stock standard; common practice, no source). */
export const BALL_BY_SHRUB_HEIGHT: Table = [
  [12, 8],
  [15, 9],
  [18, 10],
  [24, 12],
  [36, 14],
  [48, 16],
  [60, 18],
  [72, 20],
];
/** The same of upright conifers. */
export const BALL_BY_CONIFER_HEIGHT: Table = [
  [18, 10],
  [24, 12],
  [36, 14],
  [48, 16],
  [60, 20],
  [72, 22],
  [84, 24],
  [96, 27],
  [108, 30],
  [120, 34],
  [144, 38],
];
/** Small trees graded by height: 16 in at 5 ft (Batavia, Illinois city code); beyond, two inches a foot (common practice, no source). */
const BALL_BY_TREE_HEIGHT: Table = [
  [48, 14],
  [60, 16],
  [72, 18],
  [96, 22],
  [120, 28],
  [144, 32],
];

/** Weight in pounds of a full container by trade gallons, middle of the usual range (common practice, no source). */
const CONTAINER_LB: Table = [
  [0.03, 0.3],
  [0.125, 0.8],
  [0.25, 1.8],
  [1, 7],
  [2, 13.5],
  [3, 21.5],
  [5, 37.5],
  [7, 55],
  [15, 125],
  [25, 225],
  [45, 400],
  [65, 600],
  [100, 900],
];
/** A plug tray or a flat of small plants, watered (common practice, no source). */
const TRAY_LB = 20;
/** A bare-root or bulb plant (common practice, no source); trees by an inch of caliper. */
const BARE_ROOT_LB = 2;
const BARE_ROOT_TREE_LB_PER_IN = 10;
const BULB_LB = 0.15;

/**
 * Pounds a cubic foot of the full cylinder of ball diameter and depth. Bluegrass Farms (bluegrassfarms.net, FAQ) prints weights of 78–90,
 * UF/IFAS (Field grown trees) of 46–62; 85 is the planning figure, since what is too heavy on the truck is worse than what is too light.
 */
const BALL_LB_PER_CU_FT = { low: 45, likely: 85, high: 91 } as const;

/** Read in a straight line; beyond its ends in the proportion of the end row. */
function tableRead(table: Table, size: number): number {
  const first = table[0] ?? [1, 1];
  if (size <= first[0]) return (first[1] * size) / first[0];
  let below = first;
  for (const row of table) {
    if (row[0] >= size) return row[0] === below[0] ? row[1] : below[1] + ((size - below[0]) / (row[0] - below[0])) * (row[1] - below[1]);
    below = row;
  }
  return (below[1] * size) / below[0];
}

/** Share of its diameter that a ball is deep: 75 % under 20 in, 66 % from 20 to 30, 60 % above (UF/IFAS, Root ball depth and diameter). */
export function ballDepthShare(diameterIn: number): number {
  return diameterIn < 20 ? 0.75 : diameterIn <= 30 ? 0.66 : 0.6;
}

export type RootBall = {
  readonly diameterIn: number;
  readonly depthIn: number;
  /** Planning weight in pounds, and the range that published weights of balls leave. */
  readonly weightLb: number;
  readonly weightRangeLb: readonly [number, number];
  /** Where the diameter comes from. */
  readonly by: "stated" | "caliper" | "height";
};

/** Weight in pounds of a ball: the cylinder of its diameter and depth (inches) at the planning density. */
export function ballWeightLb(diameterIn: number, lbPerCuFt: number = BALL_LB_PER_CU_FT.likely): number {
  const cubicFeet = (Math.PI / 4) * (diameterIn / 12) ** 2 * ((diameterIn * ballDepthShare(diameterIn)) / 12);
  return cubicFeet * lbPerCuFt;
}

function ballOf(diameterIn: number, by: RootBall["by"]): RootBall {
  const rounded = Math.ceil(diameterIn - 1e-6);
  return {
    diameterIn: rounded,
    depthIn: Math.ceil(rounded * ballDepthShare(rounded) - 1e-6),
    weightLb: Math.round(ballWeightLb(rounded)),
    weightRangeLb: [Math.round(ballWeightLb(rounded, BALL_LB_PER_CU_FT.low)), Math.round(ballWeightLb(rounded, BALL_LB_PER_CU_FT.high))],
    by,
  };
}

/**
 * The ball of a dug plant: as stated, else by the upper figure of its caliper, else of its height by the table of its kind.
 * Null for plants that are not dug with a ball, or whose size says neither.
 */
export function rootBall(size: LineSize, kind: Kind): RootBall | null {
  if (size.root !== "ball" && size.ballIn === null) return null;
  if (size.ballIn !== null) return ballOf(size.ballIn, "stated");
  if (size.caliperIn) return ballOf(tableRead(BALL_BY_CALIPER, size.caliperIn[1]), "caliper");
  const heightIn = (size.heightIn ?? size.spreadIn)?.[1];
  if (heightIn === undefined) return null;
  return ballOf(tableRead(kind === "conifer" ? BALL_BY_CONIFER_HEIGHT : kind === "tree" ? BALL_BY_TREE_HEIGHT : BALL_BY_SHRUB_HEIGHT, heightIn), "height");
}

/** Plants in a tray or flat of which the size says no number (common practice, no source). */
const TRAY_PLANTS = 32;

/** Plants that are handled as one: those of a plug tray or flat; null for plants handled one by one. */
export function trayCount(size: LineSize): number | null {
  const counted = size.plugCount ?? size.flatCount;
  if (counted !== null) return Math.max(1, counted);
  return size.root === "plug" || size.containerClass === "flat" ? TRAY_PLANTS : null;
}

/** Weight in pounds of one plant as it is handled (one tray for plugs and flats); null where the size does not tell. */
export function plantWeightLb(size: LineSize, kind: Kind): number | null {
  const ball = rootBall(size, kind);
  if (ball) return ball.weightLb;
  if (trayCount(size) !== null) return TRAY_LB;
  if (size.containerGal !== null) return Math.round(tableRead(CONTAINER_LB, size.containerGal) * 10) / 10;
  if (size.root === "bare root") return size.caliperIn ? Math.round(size.caliperIn[1] * BARE_ROOT_TREE_LB_PER_IN) : BARE_ROOT_LB;
  return size.root === "bulb" ? BULB_LB : null;
}

export type Lift = "one person" | "two people" | "machine";

/** Who lifts it: one person up to 50 lb, two up to 100, above that a machine (after the 51 lb load constant of NIOSH's revised lifting equation, Pub. 94-110). */
export function liftClass(weightLb: number): Lift {
  return weightLb <= 50 ? "one person" : weightLb <= 100 ? "two people" : "machine";
}

/** How a ball is dug: by hand up to 20 in, else the smallest tree spade that cuts it (44, 60 and 90 in; common practice, no source); null: too big for these. */
export function digMethod(diameterIn: number): string | null {
  if (diameterIn <= 20) return "by hand";
  const spade = [44, 60, 90].find((width) => width >= diameterIn);
  return spade === undefined ? null : `${spade} in tree spade`;
}
