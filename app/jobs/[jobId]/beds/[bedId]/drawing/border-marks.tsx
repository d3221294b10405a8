import type { Border } from "@/lib/ground/border";
import { type Curve, curveLength } from "@/lib/ground/curve";
import { curveStretch } from "@/lib/ground/edge-window";
import { lengthText } from "@/lib/ground/length";
import { curveMiddle, curvePath, linePath } from "./plan-path";
import { pxOfFt, type SheetView } from "./sheet-view";

/** Pixels of the band outside an edge that shows what lies there. */
const BAND_PX = 20;

/** How each neighbor of a bed is drawn: by pattern, so that it needs no color. */
export function BorderPatterns({ name }: { name: string }) {
  const line = { fill: "none", stroke: "var(--faint)" };
  return (
    <>
      <pattern id={`${name}-walk`} width="9" height="9" patternUnits="userSpaceOnUse">
        <circle cx="2" cy="2.4" r="0.75" fill="var(--faint)" />
        <circle cx="6.6" cy="6.4" r="0.55" fill="var(--faint)" />
        <circle cx="7" cy="1.6" r="0.4" fill="var(--faint)" />
      </pattern>
      <pattern id={`${name}-drive`} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path d="M0 0V7" {...line} strokeWidth="0.9" />
      </pattern>
      <pattern id={`${name}-lawn`} width="13" height="10" patternUnits="userSpaceOnUse">
        <path d="M2 5l-1 -4M2.6 5V0.6M3.2 5l1 -3.6M8.4 9.6l-1 -4M9 9.6V5.2M9.6 9.6l1 -3.6" {...line} strokeWidth="0.7" />
      </pattern>
      <pattern id={`${name}-water`} width="18" height="7" patternUnits="userSpaceOnUse">
        <path d="M0 3.5Q4.5 0 9 3.5T18 3.5" {...line} strokeWidth="0.8" />
      </pattern>
    </>
  );
}

/** Ticks across a line, to its outer (1) or inner (−1) side. */
function ticksPath(curve: Curve, view: SheetView, apartPx: number, lengthPx: number, side: number): string {
  const count = Math.max(1, Math.floor((curveLength(curve) * view.pxPerFt) / apartPx));
  let d = "";
  for (let i = 0; i < count; i++) {
    const length = curveLength(curve);
    const [a, b] = curveStretch(curve, ((i + 0.45) / count) * length, ((i + 0.55) / count) * length).filter((_, k, all) => k === 0 || k === all.length - 1);
    if (!a || !b) continue;
    const [ax, ay] = pxOfFt(view, a);
    const [bx, by] = pxOfFt(view, b);
    const far = Math.hypot(bx - ax, by - ay) || 1;
    d += `M${ax.toFixed(1)} ${ay.toFixed(1)}l${((-(by - ay) / far) * lengthPx * side).toFixed(1)} ${(((bx - ax) / far) * lengthPx * side).toFixed(1)}`;
  }
  return d;
}

type EdgeProps = { readonly border: Border; readonly curve: Curve; readonly view: SheetView; readonly turn: 1 | -1 };

/** What one edge borders: the band of ground beyond it, or the line itself (walls with their windows, corners of sight). */
export function BorderEdge({ border, curve, view, name, part, turn }: EdgeProps & { name: string; part: "band" | "line" }) {
  const d = curvePath(view, curve);
  if (part === "band") {
    switch (border.what) {
      case "walk":
      case "drive":
      case "lawn":
      case "water":
        return <path d={d} fill="none" stroke={`url(#${name}-${border.what})`} strokeWidth={2 * BAND_PX} />;
      case "house wall":
        return <path d={d} fill="none" stroke="var(--rule)" strokeWidth={BAND_PX} />;
      default:
        return null;
    }
  }
  switch (border.what) {
    case "house wall":
      return (
        <g fill="none">
          <path d={d} stroke="var(--ink)" strokeWidth="6" />
          {border.windows.map(({ fromFt, toFt }) => {
            const stretch = linePath(view, curveStretch(curve, fromFt, toFt));
            return (
              <g key={`${fromFt} ${toFt}`}>
                <path d={stretch} stroke="var(--paper)" strokeWidth="4.4" />
                <path d={stretch} stroke="var(--ink)" strokeWidth="1" />
              </g>
            );
          })}
        </g>
      );
    case "retaining wall":
      return (
        <g fill="none" stroke="var(--ink)">
          <path d={d} strokeWidth="3.6" />
          <path d={ticksPath(curve, view, 15, 9, turn * (border.bedAt === "top" ? 1 : -1))} strokeWidth="1" />
        </g>
      );
    case "street corner":
      return <path d={d} fill="none" stroke="var(--ink)" strokeWidth="2.4" strokeDasharray="14 4 2 4" />;
    case "walk":
    case "drive":
      return <path d={d} fill="none" stroke="var(--ink)" strokeWidth="1.6" />;
    case "water":
    case "lawn":
    case "open":
      return null;
  }
}

function borderWords(border: Border): string {
  switch (border.what) {
    case "open":
      return "";
    case "retaining wall":
      return `retaining wall ${lengthText(border.heightFt)}, bed at its ${border.bedAt}`;
    case "street corner":
      return `street corner: nothing over ${lengthText(border.maxHeightFt)} within ${lengthText(border.withinFt)}`;
    case "house wall":
      return border.windows.length ? `house wall, ${border.windows.length} ${border.windows.length === 1 ? "window" : "windows"}` : "house wall";
    default:
      return border.what;
  }
}

/** The name of what an edge borders, along it on its outer side; the short name where the edge is short, none where even that has no room. */
export function BorderWords({ border, curve, lengthPx, view, turn }: EdgeProps & { lengthPx: number }) {
  const fits = [borderWords(border), border.what].find((text) => text && border.what !== "open" && text.length * 5.6 < lengthPx);
  if (!fits) return null;
  const { at, turn: degrees, out } = curveMiddle(view, curve, turn);
  const off = border.what === "retaining wall" ? 17 : 12;
  return (
    <text
      className="plan-words edge-words"
      transform={`translate(${(at[0] + out[0] * off).toFixed(1)} ${(at[1] + out[1] * off).toFixed(1)}) rotate(${degrees.toFixed(1)})`}
      textAnchor="middle"
      dominantBaseline="central"
    >
      {fits}
    </text>
  );
}
