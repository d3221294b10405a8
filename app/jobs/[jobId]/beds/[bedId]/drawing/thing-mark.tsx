import type { KeepClear } from "@/lib/ground/border";
import { linePath } from "./plan-path";
import { pxOfFt, type SheetView } from "./sheet-view";

/** A mark for the middle of a round thing, in a circle of radius 1. */
const SPOT_PATHS: Readonly<Record<string, string>> = {
  "existing tree": "M0 -0.5V0.5M-0.5 0H0.5",
  boulder: "M-0.7 0.2L-0.3 -0.5L0.4 -0.6L0.75 0.1L0.3 0.55L-0.4 0.55Z",
  well: "M-0.6 0A0.6 0.6 0 1 0 0.6 0A0.6 0.6 0 1 0 -0.6 0",
  spout: "M-0.5 -0.4L0 0.5L0.5 -0.4",
  outlet: "M-0.5 0.4L0 -0.5L0.5 0.4",
};

/** One thing that plants keep clear of: itself in ink, the ground kept clear as a fine dashed ring or band, and its name. */
export function ThingMark({ thing, view }: { thing: KeepClear; view: SheetView }) {
  if ("path" in thing) {
    const d = linePath(view, thing.path);
    const [x, y] = pxOfFt(view, thing.path[0] ?? [0, 0]);
    const clearPx = 2 * thing.clearFt * view.pxPerFt;
    return (
      <g fill="none" stroke="var(--ink)">
        <path d={d} strokeWidth={clearPx} strokeOpacity="0.06" />
        <path d={d} strokeWidth="1.4" strokeDasharray={thing.what === "buried line" ? "10 3 2 3 2 3" : "12 4"} />
        <text className="plan-words" x={x + 6} y={y - 6} stroke="none">
          {thing.what}
        </text>
      </g>
    );
  }
  const [x, y] = pxOfFt(view, thing.at);
  const radiusPx = Math.max(3, thing.radiusFt * view.pxPerFt);
  const clearPx = (thing.radiusFt + thing.clearFt) * view.pxPerFt;
  return (
    <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)})`} fill="none" stroke="var(--ink)">
      <circle r={clearPx} strokeWidth="0.8" strokeDasharray="2 3" />
      <circle r={radiusPx} strokeWidth="1.2" fill="var(--paper)" />
      <path d={SPOT_PATHS[thing.what]} transform={`scale(${radiusPx})`} strokeWidth={1.1 / radiusPx} />
      <text className="plan-words" y={clearPx + 12} textAnchor="middle" stroke="none">
        {thing.what}
      </text>
    </g>
  );
}
