// Draws the marks of a year strip. Positions are percentages, so one drawing fits any width, on screen and on paper.

import { STRIP_DAYS, STRIP_HEIGHT, type StripMark } from "@/lib/papers/year-strip";
import { MONTH_STARTS } from "@/lib/plants/thirds";

const percent = (day: number) => `${((100 * day) / STRIP_DAYS).toFixed(3)}%`;
const steps = (from: number, to: number, step: number) => {
  const count = Math.max(1, Math.floor((to - from) / step));
  return Array.from({ length: count }, (_, i) => from + ((i + 0.5) * (to - from)) / count);
};

/** The thin lines that run through every strip: months, and freeze dates dashed. (In the plant list the table draws them, through all rows.) */
export function MonthRules({ height, freezeDays }: { height: number | string; freezeDays: readonly (number | null)[] }) {
  return (
    <g>
      {MONTH_STARTS.map((day) => (
        <line key={day} x1={percent(day)} x2={percent(day)} y1="0" y2={height} stroke="var(--rule)" strokeWidth="1" />
      ))}
      {freezeDays.map((day) =>
        day === null ? null : <line key={`f${day}`} x1={percent(day)} x2={percent(day)} y1="0" y2={height} stroke="var(--faint)" strokeWidth="1" strokeDasharray="2 2" />,
      )}
    </g>
  );
}

function MarkShape({ mark, id }: { mark: StripMark; id: string }) {
  const { fromDay, toDay, y, height, hex, hexTo } = mark;
  const box = { x: percent(fromDay), width: percent(Math.max(1.5, toDay - fromDay)), y, height };
  const fill = hexTo ? `url(#${id})` : hex;
  const colorAt = (day: number) => (hexTo && day > (fromDay + toDay) / 2 ? hexTo : hex);
  const edge = { stroke: "var(--mark-edge)", strokeWidth: 0.6 };
  switch (mark.shape) {
    case "block":
      return <rect {...box} y={y + (3 - mark.show) * 1.5} height={height - (3 - mark.show) * 1.5} rx="1.2" fill={fill} {...edge} />;
    case "band":
      return <rect {...box} fill={fill} {...edge} />;
    case "leaf":
      return <rect {...box} fill="var(--leaf-line)" />;
    case "bar":
      return <rect {...box} fill={fill} {...edge} />;
    case "line":
      return <rect {...box} rx="1" fill={fill} {...edge} />;
    case "wedge":
      // Full at its beginning, running out as the leaves fall.
      return (
        <>
          <clipPath id={`${id}-wedge`} clipPathUnits="objectBoundingBox">
            <path d="M0 1V0.05L1 0.6V1Z" />
          </clipPath>
          <rect {...box} fill={fill} clipPath={`url(#${id}-wedge)`} />
        </>
      );
    case "dots":
      return (
        <>
          {steps(fromDay, toDay, 5.5).map((day) => (
            <circle key={day} cx={percent(day)} cy={y + height / 2} r={1.5 + mark.show * 0.25} fill={colorAt(day)} {...edge} />
          ))}
        </>
      );
    case "ticks":
      return (
        <>
          {steps(fromDay, toDay, 4).map((day) => (
            <line key={day} x1={percent(day)} x2={percent(day)} y1={y} y2={y + height} stroke={hex} strokeWidth="1.7" />
          ))}
        </>
      );
    case "slants":
      return (
        <>
          {steps(fromDay, toDay, 7).map((day) => (
            <line key={day} x1={percent(day - 1.5)} x2={percent(day + 1.5)} y1={y + height} y2={y} stroke={hex} strokeWidth="1.5" />
          ))}
        </>
      );
  }
}

/** Whiskers of a window's spread: dates are not certain to the day. */
function SoftEnds({ mark }: { mark: StripMark }) {
  if (mark.softDays < 1 || (mark.shape !== "block" && mark.shape !== "wedge")) return null;
  const middle = mark.y + mark.height / 2 + 1;
  const soft = { stroke: mark.hex, strokeWidth: 1.4, opacity: 0.75 };
  return (
    <>
      <line x1={percent(Math.max(0, mark.fromDay - mark.softDays))} x2={percent(mark.fromDay)} y1={middle} y2={middle} {...soft} />
      <line x1={percent(mark.toDay)} x2={percent(Math.min(STRIP_DAYS, mark.toDay + mark.softDays))} y1={middle} y2={middle} {...soft} />
    </>
  );
}

/** One plant's year. `sentence` is what a screen reader says for it. */
export function YearStripSvg({
  marks,
  sentence,
  idPrefix,
  freezeDays,
}: {
  marks: readonly StripMark[];
  sentence: string;
  idPrefix: string;
  /** Draws the month and freeze lines too; null where the table draws them. */
  freezeDays: readonly (number | null)[] | null;
}) {
  return (
    <svg className="strip" role="img" aria-label={sentence} width="100%" height={STRIP_HEIGHT}>
      <title>{sentence}</title>
      {freezeDays ? <MonthRules height="100%" freezeDays={freezeDays} /> : null}
      {marks.map((mark, i) => {
        const id = `${idPrefix}-${i}`;
        return (
          <g key={id}>
            {mark.hexTo ? (
              <linearGradient id={id}>
                <stop offset="0.35" stopColor={mark.hex} />
                <stop offset="0.85" stopColor={mark.hexTo} />
              </linearGradient>
            ) : null}
            <SoftEnds mark={mark} />
            <MarkShape mark={mark} id={id} />
          </g>
        );
      })}
    </svg>
  );
}
