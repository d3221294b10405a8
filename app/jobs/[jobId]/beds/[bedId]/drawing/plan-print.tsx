import type { Outline } from "@/lib/ground/outline";
import { type GroundProps, GroundSvg } from "./ground-svg";
import type { PlanStand } from "./plan-figure";
import { pxOfFt, viewOfAll } from "./sheet-view";

/** Size of the printed drawing in its own units: the width of the sheet's type area is 960. */
const WIDTH = 960;
const HEIGHT_MOST = 520;
const MARGIN = 74;

/** Scales that a scale ruler has, in feet to the inch; the paper's 960 units are about ten inches. */
const SCALES_FT = [1, 2, 4, 5, 8, 10, 16, 20, 30, 40, 50, 60, 100] as const;
const UNITS_PER_INCH = 96;

/** The scale at which a bed is drawn on paper, in feet to the inch. */
export function printScaleFt(outline: Outline): number {
  const { pxPerFt } = viewOfAll(outline, WIDTH, HEIGHT_MOST, MARGIN);
  return SCALES_FT.find((feet) => UNITS_PER_INCH / feet <= pxPerFt) ?? Math.ceil(UNITS_PER_INCH / pxPerFt);
}

/** The plan on paper: the marks of the screen as vectors, at a scale that a ruler has. Rendered while printing only. */
export function PlanPrint({ ground, stands, label }: { ground: Omit<GroundProps, "view" | "widthPx" | "heightPx" | "name">; stands: readonly PlanStand[]; label: string }) {
  const pxPerFt = UNITS_PER_INCH / printScaleFt(ground.outline);
  const ys = ground.outline.map(([, y]) => y);
  const xs = ground.outline.map(([x]) => x);
  const [low, high] = [Math.min(...ys), Math.max(...ys)];
  const height = Math.min(HEIGHT_MOST, (high - low) * pxPerFt + 2 * MARGIN);
  const view = { pxPerFt, originPx: [(WIDTH - (Math.max(...xs) + Math.min(...xs)) * pxPerFt) / 2, (height + (high + low) * pxPerFt) / 2] as const };
  const looks = new Map(stands.map(({ figure, form }) => [`${figure.look} ${form}`, { figure, form }]));
  const ids = new Map([...looks.keys()].map((look, index) => [look, `plan-symbol-${index}`]));
  return (
    <div className="plan-print print-only">
      <GroundSvg {...ground} view={view} widthPx={WIDTH} heightPx={height} name="paper" />
      <svg className="plan-print-plants" viewBox={`0 0 ${WIDTH} ${height}`} role="img" aria-label={label}>
        <defs>
          {[...looks].map(([look, { figure, form }]) => (
            <g key={look} id={ids.get(look)} strokeLinecap="round" strokeLinejoin="round">
              {figure.marksOf(form).map(({ d, fill, stroke, strokeFt, opacity }, piece) => (
                <path key={`piece-${String(piece)}`} d={d} fill={fill} stroke={stroke} strokeWidth={strokeFt} opacity={opacity} />
              ))}
            </g>
          ))}
        </defs>
        {stands.map(({ plant, figure }) => {
          const [x, y] = pxOfFt(view, plant.at);
          return figure.matureFt > figure.radiusFt * 1.04 ? (
            <circle key={plant.id} cx={x} cy={y} r={figure.matureFt * pxPerFt} fill="none" stroke="var(--soft)" strokeOpacity="0.5" strokeWidth="0.5" />
          ) : null;
        })}
        {stands.map(({ plant, figure, form }) => {
          const [x, y] = pxOfFt(view, plant.at);
          return (
            <use
              key={plant.id}
              href={`#${ids.get(`${figure.look} ${form}`)}`}
              transform={`translate(${x.toFixed(2)} ${y.toFixed(2)}) scale(${pxPerFt})`}
              opacity={figure.over ? 0.74 : 1}
            />
          );
        })}
        {stands.map(({ plant, figure }) => {
          const [x, y] = pxOfFt(view, plant.at);
          return (
            <text key={plant.id} x={x} y={y} className="plan-letter" fontSize={Math.max(6, Math.min(13, figure.radiusFt * pxPerFt * 0.62))}>
              {figure.letter}
            </text>
          );
        })}
      </svg>
    </div>
  );
}
