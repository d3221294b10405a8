"use client";

import { useEffect, useState } from "react";
import { YEARS_AHEAD } from "@/lib/ground/growth";
import { MONTH_STARTS, MONTHS } from "@/lib/plants/thirds";
import { dayText } from "@/lib/season/sentence";

const PLAY_MS = 110;
const PLAY_DAYS = 3;
/** With reduced motion the year goes by in whole months, one a second. */
const STILL_MS = 1000;

export const yearText = (year: number): string => (year === 0 ? "planting day" : `${year} ${year === 1 ? "year" : "years"} after planting`);

/** Day of the year and year after planting; the plan follows both. Play runs through the year once. */
export function TimeSliders({ year, setYear, day, setDay }: { year: number; setYear: (year: number) => void; day: number; setDay: (day: number) => void }) {
  const [left, setLeft] = useState(0);
  useEffect(() => {
    if (left <= 0) return;
    const still = window.matchMedia("(prefers-reduced-motion: reduce)").matches;
    const timer = setTimeout(
      () => {
        const next = still ? MONTH_STARTS.find((start) => start + 15 > day + 5 && start < 365) : undefined;
        const to = still ? (next === undefined ? 16 : next + 15) : day + PLAY_DAYS;
        setDay(to > 365 ? to - 365 : to);
        setLeft(Math.max(0, left - (still ? 31 : PLAY_DAYS)));
      },
      still ? STILL_MS : PLAY_MS,
    );
    return () => clearTimeout(timer);
  }, [left, day, setDay]);
  return (
    <div className="time-sliders screen-only">
      <label className="slider">
        <span>Year</span>
        <input type="range" min={0} max={YEARS_AHEAD} step={1} value={year} aria-valuetext={yearText(year)} onChange={(event) => setYear(Number(event.target.value))} />
        <output>{yearText(year)}</output>
      </label>
      <div className="slider">
        <label htmlFor="day-slider">Day</label>
        <span className="day-track">
          <input
            id="day-slider"
            type="range"
            min={1}
            max={365}
            step={1}
            value={day}
            aria-valuetext={dayText(day)}
            onChange={(event) => {
              setLeft(0);
              setDay(Number(event.target.value));
            }}
          />
          <span className="day-months" aria-hidden="true">
            {MONTHS.map((month) => (
              <span key={month}>{month}</span>
            ))}
          </span>
        </span>
        <span className="row day-words">
          <output htmlFor="day-slider">{dayText(day)}</output>
          <button type="button" aria-pressed={left > 0} onClick={() => setLeft(left > 0 ? 0 : 365)}>
            {left > 0 ? "Stop" : "Play the year"}
          </button>
        </span>
      </div>
    </div>
  );
}
