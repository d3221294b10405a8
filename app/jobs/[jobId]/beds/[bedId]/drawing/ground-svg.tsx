import { memo, useRef } from "react";
import type { KeepClear } from "@/lib/ground/border";
import { curveLength } from "@/lib/ground/curve";
import type { Standpoint } from "@/lib/ground/layout-sites";
import { lengthText } from "@/lib/ground/length";
import type { Outline } from "@/lib/ground/outline";
import { type PlanOutline, planCurves } from "@/lib/ground/plan-outline";
import { BorderEdge, BorderPatterns, BorderWords } from "./border-marks";
import { outlineTurn, planPath } from "./plan-path";
import { ANCHOR_REACH_PX, ftOfPx, pxOfFt, type SheetView, viewAnchor } from "./sheet-view";
import { ThingMark } from "./thing-mark";

export type GroundProps = {
  readonly edges: PlanOutline;
  readonly outline: Outline;
  readonly things: readonly KeepClear[];
  readonly standpoint: Standpoint;
  readonly view: SheetView;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Keeps the patterns of screen and paper apart. */
  readonly name: string;
  /** Edges are labeled by what lies over the drawing: it says lengths and borders itself. */
  readonly labeled?: boolean;
};

/** Lines of the grid in the view and a little beyond, every so many feet. */
function gridPath(view: SheetView, widthPx: number, heightPx: number, stepFt: number): string {
  const reach = ANCHOR_REACH_PX;
  const [lowX, highY] = ftOfPx(view, [-reach, -reach]);
  const [highX, lowY] = ftOfPx(view, [widthPx + reach, heightPx + reach]);
  let d = "";
  for (let x = Math.ceil(lowX / stepFt) * stepFt; x <= highX; x += stepFt) d += `M${pxOfFt(view, [x, 0])[0].toFixed(1)} ${-reach}V${heightPx + reach}`;
  for (let y = Math.ceil(lowY / stepFt) * stepFt; y <= highY; y += stepFt) d += `M${-reach} ${pxOfFt(view, [0, y])[1].toFixed(1)}H${widthPx + reach}`;
  return d;
}

/** How strongly lines so many pixels apart show: none when they crowd, full when there is room. */
const gridShows = (apartPx: number) => Math.max(0, Math.min(1, (apartPx - 9) / 26));

function Grid({ view, widthPx, heightPx }: Pick<GroundProps, "view" | "widthPx" | "heightPx">) {
  return (
    <g fill="none" stroke="var(--rule)">
      {[1, 5, 20].map((step) => {
        const shows = gridShows(step * view.pxPerFt);
        return shows > 0.02 ? (
          <path key={step} d={gridPath(view, widthPx, heightPx, step)} strokeOpacity={shows * (step === 1 ? 0.55 : 0.8)} strokeWidth={step === 1 ? 0.6 : 0.9} />
        ) : null;
      })}
    </g>
  );
}

const BARS_FT = [1, 2, 5, 10, 20, 50, 100, 200] as const;

function ScaleBar({ view, widthPx, heightPx }: Pick<GroundProps, "view" | "widthPx" | "heightPx">) {
  const feet = BARS_FT.find((ft) => ft * view.pxPerFt >= (widthPx < 600 ? 40 : 80)) ?? 200;
  const length = feet * view.pxPerFt;
  const [x, y] = [widthPx - length - 40, heightPx - 16];
  return (
    <g className="scale-bar" stroke="var(--ink)" strokeWidth="1.1" fill="none">
      <path d={`M${x} ${y - 4}v8M${x + length / 2} ${y - 3}v6M${x + length} ${y - 4}v8M${x} ${y}h${length}`} />
      <path d={`M${x} ${y}h${length / 2}`} strokeWidth="3" />
      <text x={x + length + 6} y={y + 4} className="plan-words" stroke="none">
        {feet} ft
      </text>
    </g>
  );
}

/** The eye that looks at the bed: beyond the middle of the side it looks over. */
function Eye({ at: [x, y], lookAngle }: { at: readonly [number, number]; lookAngle: number }) {
  return (
    <g transform={`translate(${x.toFixed(1)} ${y.toFixed(1)}) rotate(${(90 - (lookAngle * 180) / Math.PI).toFixed(1)})`} stroke="var(--ink)" strokeWidth="1.2" fill="none">
      <path d="M-11 0Q0 -9 11 0Q0 9 -11 0Z" fill="var(--paper)" />
      <circle cy="-1" r="2.6" fill="var(--ink)" />
      <path d="M-7 -9L-12 -19M7 -9L12 -19" strokeDasharray="2 2.5" />
    </g>
  );
}

function Eyes({ standpoint, outline, view }: Pick<GroundProps, "standpoint" | "outline" | "view">) {
  const angles = standpoint.kind === "one side" ? [standpoint.lookAngle] : [0, Math.PI / 2, Math.PI, -Math.PI / 2];
  return angles.map((lookAngle) => {
    const [cos, sin] = [Math.cos(lookAngle), Math.sin(lookAngle)];
    const ahead = outline.map(([x, y]) => x * cos + y * sin);
    const aside = outline.map(([x, y]) => y * cos - x * sin);
    const [near, middle] = [Math.min(...ahead) - 29 / view.pxPerFt, (Math.min(...aside) + Math.max(...aside)) / 2];
    return <Eye key={lookAngle} lookAngle={lookAngle} at={pxOfFt(view, [near * cos - middle * sin, near * sin + middle * cos])} />;
  });
}

/** Length and depth over all, as a drawing has them. */
function OverAll({ outline, view }: Pick<GroundProps, "outline" | "view">) {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const [low, high] = [
    [Math.min(...xs), Math.min(...ys)],
    [Math.max(...xs), Math.max(...ys)],
  ] as const;
  const [x0, y0] = pxOfFt(view, low);
  const [x1, y1] = pxOfFt(view, high);
  const [below, right] = [y0 + 60, x1 + 46];
  return (
    <g className="over-all" stroke="var(--soft)" strokeWidth="0.8" fill="none">
      <path d={`M${x0} ${below}H${x1}M${x0 - 3} ${below + 4}l6 -8M${x1 - 3} ${below + 4}l6 -8M${x0} ${below - 8}v12M${x1} ${below - 8}v12`} />
      <path d={`M${right} ${y0}V${y1}M${right - 3} ${y0 + 4}l6 -8M${right - 3} ${y1 + 4}l6 -8M${right - 8} ${y0}h12M${right - 8} ${y1}h12`} />
      <g className="plan-words" stroke="none">
        <text x={(x0 + x1) / 2} y={below - 5} textAnchor="middle">
          {lengthText(high[0] - low[0])}
        </text>
        <text transform={`translate(${right - 5} ${(y0 + y1) / 2}) rotate(-90)`} textAnchor="middle">
          {lengthText(high[1] - low[1])}
        </text>
      </g>
    </g>
  );
}

/** Everything of the ground that moves with it, at one view. */
const GroundMarks = memo(function GroundMarks({ edges, outline, things, standpoint, view, widthPx, heightPx, name, labeled = false }: GroundProps) {
  const bed = planPath(view, edges);
  const turn = outlineTurn(outline);
  const curves = planCurves(edges);
  const sides = edges.flatMap(({ border }, index) => {
    const curve = curves[index];
    return curve ? [{ id: `edge-${index}`, border, curve, lengthPx: curveLength(curve) * view.pxPerFt }] : [];
  });
  return (
    <>
      <defs>
        <BorderPatterns name={name} />
        <clipPath id={`${name}-outside`}>
          <path d={`M-9999 -9999H19999V19999H-9999Z${bed}`} clipRule="evenodd" />
        </clipPath>
      </defs>
      <Grid view={view} widthPx={widthPx} heightPx={heightPx} />
      <g clipPath={`url(#${name}-outside)`}>
        {sides.map(({ id, border, curve }) => (
          <BorderEdge key={id} border={border} curve={curve} view={view} name={name} part="band" turn={turn} />
        ))}
      </g>
      <path className="bed-ground" d={bed} />
      {things.map((thing, index) => (
        <ThingMark key={`${thing.what} ${String(index)}`} thing={thing} view={view} />
      ))}
      <path className="bed-line" d={bed} />
      {sides.map(({ id, border, curve }) => (
        <BorderEdge key={id} border={border} curve={curve} view={view} name={name} part="line" turn={turn} />
      ))}
      {labeled ? null : (
        <>
          {sides.map(({ id, border, curve, lengthPx }) => (
            <BorderWords key={id} border={border} curve={curve} lengthPx={lengthPx} view={view} turn={turn} />
          ))}
          <OverAll outline={outline} view={view} />
          <Eyes standpoint={standpoint} outline={outline} view={view} />
        </>
      )}
    </>
  );
});

/**
 * The ground of a bed in plan: grid, outline with real curves, what its edges border, what to keep clear of, where it is looked at from, and its scale.
 * A view pushed about only pushes what is drawn; it is drawn anew where it was pushed far, or zoomed.
 */
export function GroundSvg({ view, widthPx, heightPx, ...ground }: GroundProps) {
  const before = useRef<SheetView | null>(null);
  const { anchor, pushPx } = viewAnchor(view, before.current);
  before.current = anchor;
  return (
    <svg className="ground" width={widthPx} height={heightPx} viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true" focusable="false">
      <g transform={`translate(${pushPx[0]} ${pushPx[1]})`}>
        <GroundMarks {...ground} view={anchor} widthPx={widthPx} heightPx={heightPx} />
      </g>
      <ScaleBar view={view} widthPx={widthPx} heightPx={heightPx} />
    </svg>
  );
}
