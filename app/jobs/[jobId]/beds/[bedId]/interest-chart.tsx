import { MonthRules } from "@/app/parts/year-strip-svg";
import { interestBars } from "@/lib/papers/interest-bars";
import { FEATURE_KINDS, type FeatureKind } from "@/lib/plants/vocabulary";
import { halfMonthRuns } from "@/lib/season/half-months";
import type { HalfMonthInterest, Targets } from "@/lib/season/interest";

const HEIGHT = 104;
const percent = (day: number) => `${((100 * day) / 365).toFixed(3)}%`;
const share = (value: number) => `${Math.round(value * 100)} %`;

/** Overlays that tell the kinds apart where colors are alike; the same shapes as in the strips above. */
function KindPattern({ kind }: { kind: FeatureKind }) {
  const line = { stroke: "var(--mark-edge)", strokeWidth: 1 };
  switch (kind) {
    case "bloom":
      return null;
    case "spring foliage":
    case "summer foliage":
      return <path d="M0 3H6" {...line} />;
    case "fall color":
      return <path d="M0 6L6 0" {...line} />;
    case "fruit":
      return <circle cx="3" cy="3" r="1.2" fill="var(--mark-edge)" />;
    case "bark":
      return <path d="M1.5 0V6M4.5 0V6" {...line} />;
    case "evergreen":
      return <path d="M0 1.5H6M0 4.5H6" {...line} />;
    case "seedhead":
      return <path d="M3 0V4" {...line} />;
    case "structure":
      return <path d="M0 0L6 6" {...line} />;
  }
}

/** The bed's year against its target, month by month under the strips. */
export function InterestChart({ halfMonths, freezeDays, targets }: { halfMonths: readonly HalfMonthInterest[]; freezeDays: readonly (number | null)[] | null; targets?: Targets }) {
  const bars = interestBars(halfMonths);
  const y = (value: number) => HEIGHT - value * (HEIGHT - 6);
  const bare = halfMonths.filter((h) => h.bare);
  const words = bare.length ? `Bare: ${halfMonthRuns(bare.map((h) => h.index)).join("; ")}.` : "No half-month is bare.";
  return (
    <svg className="interest" role="img" aria-label={`Interest of the bed by half-month against its target. ${words}`} width="100%" height={HEIGHT}>
      <defs>
        {FEATURE_KINDS.map((kind) => (
          <pattern key={kind} id={`kind-${kind.replace(" ", "-")}`} width="6" height="6" patternUnits="userSpaceOnUse">
            <KindPattern kind={kind} />
          </pattern>
        ))}
        <pattern id="bare-hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <line x1="0" y1="0" x2="0" y2="6" stroke="var(--alert)" strokeWidth="2" />
        </pattern>
      </defs>
      {freezeDays ? <MonthRules height="100%" freezeDays={freezeDays} /> : null}
      {bars.marks.map((mark) => {
        const box = { x: percent(mark.fromDay), width: percent(mark.toDay - mark.fromDay), y: y(mark.bottom + mark.height), height: Math.max(0, mark.height * (HEIGHT - 6)) };
        return (
          <g key={`${mark.fromDay}${mark.kind}${mark.hex}${mark.bottom}`} opacity={mark.counted ? 1 : 0.4}>
            <rect {...box} fill={mark.hex} stroke="var(--mark-edge)" strokeWidth="0.5" />
            <rect {...box} fill={`url(#kind-${mark.kind.replace(" ", "-")})`} />
          </g>
        );
      })}
      {bars.bare.map((gap) => (
        <rect
          key={gap.index}
          x={percent(gap.fromDay)}
          width={percent(gap.toDay - gap.fromDay)}
          y={y(gap.top)}
          height={Math.max(2, (gap.top - gap.bottom) * (HEIGHT - 6))}
          fill="url(#bare-hatch)"
          stroke="var(--alert)"
          strokeWidth="1"
        />
      ))}
      {bars.target.map((step) => (
        <line key={step.fromDay} x1={percent(step.fromDay)} x2={percent(step.toDay)} y1={y(step.share)} y2={y(step.share)} stroke="var(--ink)" strokeWidth="1.4" />
      ))}
      {targets ? (
        <g className="chart-words">
          <text x="2" y="10">
            {share(bars.scaleTop)} of the ground
          </text>
          <text x="2" y={y((bars.target[0]?.share ?? 0) + 0.02) - 1}>
            target
          </text>
        </g>
      ) : null}
    </svg>
  );
}

/** The same figures as a table, for screen readers and for whoever wants numbers. */
export function InterestTable({ halfMonths }: { halfMonths: readonly HalfMonthInterest[] }) {
  const kinds = FEATURE_KINDS.filter((kind) => halfMonths.some((h) => h.byKind[kind] >= 0.005));
  return (
    <div className="table-scroll">
      <table className="small figures">
        <caption className="visually-hidden">Share of the ground by kind in each half-month</caption>
        <thead>
          <tr>
            <th scope="col">Half-month</th>
            <th scope="col" className="number">
              Counts
            </th>
            <th scope="col" className="number">
              Target
            </th>
            {kinds.map((kind) => (
              <th key={kind} scope="col" className="number">
                {kind}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {halfMonths.map((h) => (
            <tr key={h.index}>
              <th scope="row">{h.label}</th>
              <td className={h.bare ? "number alert" : "number"}>
                {share(h.interest)}
                {h.bare ? " bare" : ""}
              </td>
              <td className="number">{share(h.target)}</td>
              {kinds.map((kind) => (
                <td key={kind} className="number">
                  {h.byKind[kind] >= 0.005 ? share(h.byKind[kind]) : ""}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
