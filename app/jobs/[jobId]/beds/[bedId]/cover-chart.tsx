"use client";

import { CartesianGrid, Legend, Line, LineChart, ReferenceLine, ResponsiveContainer, Tooltip, XAxis, YAxis } from "recharts";
import type { Cover } from "@/lib/ground/cover";
import { STRATA } from "@/lib/ground/stratum";

const DASHES: Record<(typeof STRATA)[number], string> = { "canopy trees": "8 3", "tall shrubs": "3 3", "low shrubs": "1 3", "herbs and groundcover": "10 3 2 3" };

/** Cover of the bed over twenty years, overall and by stratum. @param year marked, where one is chosen */
export function CoverChart({ cover, year = null }: { cover: readonly Cover[]; year?: number | null }) {
  const data = cover.map((c) => ({ year: c.year, overall: Math.round(c.overall * 100), ...Object.fromEntries(STRATA.map((s) => [s, Math.round(c.byStratum[s] * 100)])) }));
  const strata = STRATA.filter((s) => cover.some((c) => c.byStratum[s] > 0.005));
  const at = (year: number) => data[year]?.overall ?? 0;
  return (
    <figure className="chart">
      <div aria-hidden="true">
        <ResponsiveContainer width="100%" height={220}>
          <LineChart data={data} margin={{ top: 6, right: 12, bottom: 0, left: -10 }} accessibilityLayer={false}>
            <CartesianGrid stroke="var(--rule)" vertical={false} />
            <XAxis dataKey="year" stroke="var(--soft)" ticks={[0, 1, 2, 3, 5, 10, 15, 20]} type="number" domain={[0, 20]} />
            <YAxis stroke="var(--soft)" domain={[0, 100]} unit=" %" width={62} />
            <Tooltip contentStyle={{ background: "var(--paper)", borderColor: "var(--rule-ink)" }} labelFormatter={(year) => `year ${year}`} formatter={(value) => `${value} %`} />
            <Legend />
            {year === null ? null : <ReferenceLine x={year} stroke="var(--ink)" strokeDasharray="2 2" />}
            <Line dataKey="overall" stroke="var(--ink)" strokeWidth={2.5} dot={false} legendType="plainline" isAnimationActive={false} />
            {strata.map((s) => (
              <Line key={s} dataKey={s} stroke="var(--accent)" strokeDasharray={DASHES[s]} strokeWidth={1.5} dot={false} legendType="plainline" isAnimationActive={false} />
            ))}
          </LineChart>
        </ResponsiveContainer>
      </div>
      <figcaption className="soft small">
        {year === null ? null : `Year ${Math.round(year)}: ${at(Math.round(year))} %. `}
        Cover {at(0)} % at hand-over, {at(3)} % in year 3, {at(10)} % in year 10.
      </figcaption>
    </figure>
  );
}
