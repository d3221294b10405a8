// How a plant stands on the truck: the width of its ball or pot and the height of its top.
import type { LineSize } from "../nursery/size-read";
import { type RootBall, trayCount } from "./root-ball";

type Table = readonly (readonly [size: number, value: number])[];

/** Width across the rim in inches by trade gallons (common practice, no source). */
const POT_WIDTH_IN: Table = [
  [0.03, 2.5],
  [0.125, 4],
  [0.25, 5],
  [1, 6.5],
  [2, 8.5],
  [3, 11],
  [5, 12],
  [7, 14],
  [10, 16],
  [15, 18],
  [25, 23],
  [45, 28],
  [65, 34],
  [100, 40],
];
/** Height of the plant with its pot in feet by trade gallons, where the size does not say (common practice, no source). */
const POT_HEIGHT_FT: Table = [
  [0.25, 0.8],
  [1, 1.5],
  [3, 2.5],
  [5, 3.5],
  [7, 5],
  [15, 8],
  [25, 11],
  [45, 14],
  [100, 16],
];
/** Height in feet of shade trees by caliper in inches (stock standard, from memory; the upper figure). */
const TREE_HEIGHT_FT: Table = [
  [0.5, 6],
  [1, 10],
  [1.5, 12],
  [2, 14],
  [3, 16],
  [4, 18],
  [6, 24],
];
/** A tray or flat on the deck, 21 in long (the usual 1020 tray; common practice, no source), and a bare-root plant or bag of bulbs heeled in a bundle. */
const TRAY_WIDTH_IN = 21;
const BUNDLE_WIDTH_IN = 4;
const UNKNOWN_WIDTH_IN = 12;

function nearest(table: Table, size: number): number {
  let found = table[0]?.[1] ?? 0;
  for (const [at, value] of table) if (size >= at - 1e-9) found = value;
  return found;
}

/** Inches across as it stands on the deck; trays count as one. */
export function standWidthIn(size: LineSize, ball: Pick<RootBall, "diameterIn"> | null): number {
  if (ball) return ball.diameterIn;
  if (trayCount(size) !== null) return TRAY_WIDTH_IN;
  if (size.containerGal !== null) return nearest(POT_WIDTH_IN, size.containerGal);
  return size.root === "bare root" || size.root === "bulb" ? BUNDLE_WIDTH_IN : UNKNOWN_WIDTH_IN;
}

/** Feet from the deck to the top when it stands upright, ball or pot with it. */
export function standHeightFt(size: LineSize, ball: Pick<RootBall, "depthIn"> | null): number {
  const ballFt = (ball?.depthIn ?? 0) / 12;
  if (size.heightIn) return size.heightIn[1] / 12 + ballFt;
  if (size.caliperIn) return nearest(TREE_HEIGHT_FT, size.caliperIn[1]) + ballFt;
  if (trayCount(size) !== null) return 0.7;
  if (size.containerGal !== null) return nearest(POT_HEIGHT_FT, size.containerGal);
  return size.root === "bulb" ? 0.7 : 2 + ballFt;
}
