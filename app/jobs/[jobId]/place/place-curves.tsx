"use client";

import type { ReactElement } from "react";
import { Area, CartesianGrid, ComposedChart, Legend, Line, ReferenceLine, ResponsiveContainer, Tooltip, XAxis, YAxis } from "recharts";
import { MONTH_STARTS, MONTHS } from "@/lib/plants/thirds";
import { dayText } from "@/lib/season/sentence";

export type PlaceDay = {
  readonly day: number;
  readonly low: number;
  readonly high: number;
  /** The ZIP's open ground, where the site is set apart from it. */
  readonly openLow: number | null;
  readonly openHigh: number | null;
  readonly openDegreeDays: number | null;
  readonly degreeDays: number;
  /** Degree days gathered in a hard and in a mild spring. */
  readonly hard: number;
  readonly mild: number;
  readonly reference: number;
  readonly light: number;
};

const TICKS = MONTH_STARTS.slice(0, 12).map((d) => d + 15);
const monthOf = (day: number) => MONTHS[Math.min(11, Math.floor(day / 30.5))] ?? "";
const axis = { stroke: "var(--soft)", tickLine: false } as const;

function Frame({ title, words, children }: { title: string; words: string; children: ReactElement }) {
  return (
    <figure className="chart">
      <figcaption>
        <h3>{title}</h3>
        <span className="soft small">{words}</span>
      </figcaption>
      <div aria-hidden="true">
        <ResponsiveContainer width="100%" height={230}>
          {children}
        </ResponsiveContainer>
      </div>
    </figure>
  );
}

const grid = <CartesianGrid stroke="var(--rule)" vertical={false} />;
const months = <XAxis dataKey="day" type="number" domain={[1, 365]} ticks={TICKS} tickFormatter={(day: number) => monthOf(day).charAt(0)} interval={0} {...axis} />;
const tip = (unit: string) => (
  <Tooltip
    contentStyle={{ background: "var(--paper)", borderColor: "var(--rule-ink)" }}
    labelFormatter={(day) => dayText(Number(day))}
    formatter={(value) => (Array.isArray(value) ? `${value.join(" to ")}${unit}` : `${Number(value).toLocaleString("en-US")}${unit}`)}
  />
);

/** Lines of the ZIP's open ground, thin and dotted. */
const openLine = { stroke: "var(--faint)", strokeDasharray: "2 3", dot: false, isAnimationActive: false } as const;

/**
 * The place's year as three pictures: temperature with the freezes, warmth beside the reference climate, day length.
 * @param moved whether the site is set apart from its ZIP's open ground, which is then drawn along
 */
export function PlaceCurves({ days, freeze, place, moved }: { days: readonly PlaceDay[]; freeze: readonly (number | null)[]; place: string; moved: boolean }) {
  const data = days.map((d) => ({ ...d, band: [d.low, d.high], springs: [d.hard, d.mild] }));
  const longest = days.reduce((a, b) => (b.light > a.light ? b : a));
  const shortest = days.reduce((a, b) => (b.light < a.light ? b : a));
  const coldest = days.reduce((a, b) => (b.low < a.low ? b : a));
  const warmest = days.reduce((a, b) => (b.high > a.high ? b : a));
  const last = days.at(-1);
  return (
    <section aria-label="The year here" className="place-charts">
      <Frame
        title="Temperature, °F"
        words={`average low and high by day; lows to ${coldest.low.toFixed(0)} in ${monthOf(coldest.day)}, highs to ${warmest.high.toFixed(0)} in ${monthOf(warmest.day)}; dashed: last and first freeze${moved ? "; dotted: open ground at the ZIP" : ""}`}
      >
        <ComposedChart data={data} accessibilityLayer={false}>
          {grid}
          {months}
          <YAxis unit="°" width={46} {...axis} />
          {tip(" °F")}
          <Area dataKey="band" name="low to high" stroke="var(--accent)" fill="var(--accent)" fillOpacity={0.16} isAnimationActive={false} />
          {moved ? <Line dataKey="openLow" name="open ground, low" {...openLine} /> : null}
          {moved ? <Line dataKey="openHigh" name="open ground, high" {...openLine} /> : null}
          <ReferenceLine y={32} stroke="var(--faint)" />
          {freeze.map((day) =>
            day === null ? null : (
              <ReferenceLine key={day} x={day} stroke="var(--ink)" strokeDasharray="3 3" label={{ value: dayText(day), position: "insideTop", fill: "var(--ink)", fontSize: 12 }} />
            ),
          )}
        </ComposedChart>
      </Frame>
      <Frame
        title="Warmth gathered, degree days base 50 °F"
        words={`${last?.degreeDays.toLocaleString("en-US") ?? ""} by year's end at ${place}, ${last?.reference.toLocaleString("en-US") ?? ""} at the reference climate, Wooster, Ohio; shaded: from a hard to a mild spring, as one year in six goes beyond either`}
      >
        <ComposedChart data={data} accessibilityLayer={false}>
          {grid}
          {months}
          <YAxis width={52} {...axis} />
          {tip(" degree days")}
          <Legend />
          <Area dataKey="springs" name="hard to mild spring" stroke="none" fill="var(--accent)" fillOpacity={0.18} isAnimationActive={false} />
          {moved ? <Line dataKey="openDegreeDays" name="open ground" {...openLine} /> : null}
          <Line dataKey="degreeDays" name="here" stroke="var(--accent)" strokeWidth={2.4} dot={false} isAnimationActive={false} />
          <Line dataKey="reference" name="Wooster, Ohio" stroke="var(--soft)" strokeDasharray="5 4" dot={false} isAnimationActive={false} />
        </ComposedChart>
      </Frame>
      <Frame title="Day length, hours" words={`${shortest.light.toFixed(1)} h in ${monthOf(shortest.day)} to ${longest.light.toFixed(1)} h in ${monthOf(longest.day)}`}>
        <ComposedChart data={data} accessibilityLayer={false}>
          {grid}
          {months}
          <YAxis width={40} domain={[6, 18]} {...axis} />
          {tip(" h")}
          <Line dataKey="light" name="day length" stroke="var(--accent)" strokeWidth={2.2} dot={false} isAnimationActive={false} />
        </ComposedChart>
      </Frame>
    </section>
  );
}
