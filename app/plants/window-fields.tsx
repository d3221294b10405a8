"use client";

import { MONTHS, type Third, thirdEndDay, thirdOfDay, thirdStartDay } from "@/lib/plants/thirds";

const PARTS = ["early", "mid", "late"] as const;
const THIRDS: readonly Third[] = MONTHS.flatMap((month) => PARTS.map((part): Third => `${part} ${month}`));

/** First and last time of year by thirds of a month. A day that is not touched stays as exact as it was. */
export function WindowFields({
  id,
  from,
  to,
  change,
  words = ["From", "To"],
}: {
  id: string;
  from: number;
  to: number;
  change: (from: number, to: number) => void;
  words?: readonly [string, string];
}) {
  const select = (part: "from" | "to", label: string, day: number, keep: (third: Third) => void) => (
    <div className="field">
      <label htmlFor={`${id}-${part}`}>{label}</label>
      <select
        id={`${id}-${part}`}
        value={thirdOfDay(day)}
        onChange={(event) => {
          const third = THIRDS.find((t) => t === event.target.value);
          if (third) keep(third);
        }}
      >
        {THIRDS.map((third) => (
          <option key={third}>{third}</option>
        ))}
      </select>
    </div>
  );
  return (
    <>
      {select("from", words[0], from, (third) => change(thirdStartDay(third), to))}
      {select("to", words[1], to, (third) => change(from, thirdEndDay(third)))}
    </>
  );
}
