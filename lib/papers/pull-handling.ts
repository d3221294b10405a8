// How a plant of a pull sheet is handled, in the words of the list.
import type { PullSheetLine } from "../pulls/pull-sheet";

/** "28 × 19 in": diameter by depth of the ball; "" where there is none. */
export function ballText({ ball }: Pick<PullSheetLine, "ball">): string {
  return ball ? `${ball.diameterIn} × ${ball.depthIn} in` : "";
}

/** "1 h 10 min", "25 min". */
export function minutesText(minutes: number): string {
  const whole = Math.round(minutes);
  const hours = Math.floor(whole / 60);
  const rest = whole % 60;
  return [hours > 0 ? `${hours.toLocaleString("en-US")} h` : "", rest > 0 || hours === 0 ? `${rest} min` : ""].filter(Boolean).join(" ");
}

/** "20–30 min"; "" where nobody publishes any. */
export function minutesSpanText(minutes: readonly [low: number, high: number] | null): string {
  if (!minutes) return "";
  return minutes[1] < 60 ? `${minutes[0]}–${minutes[1]} min` : `${minutesText(minutes[0])} to ${minutesText(minutes[1])}`;
}

/** "450–910 lb". */
export function weightSpanText([low, high]: readonly [low: number, high: number]): string {
  return `${low.toLocaleString("en-US")}–${high.toLocaleString("en-US")} lb`;
}
