// What the fields of the sheet accept, in the trade's words.
import { lengthFromText } from "@/lib/ground/length";

type Read<T> = { ok: true; value: T } | { ok: false; fault: string };

/** A count of plants: whole, not negative. */
export function countRead(typed: string): Read<number> {
  const count = Number(typed.replace(/,/g, ""));
  if (typed === "" || !Number.isInteger(count) || count < 0) return { ok: false, fault: "A whole number of plants, such as 7." };
  return count > 100_000 ? { ok: false, fault: "At most 100,000 plants." } : { ok: true, value: count };
}

/** Square feet, more than zero. */
export function areaRead(typed: string): Read<number> {
  const area = Number(typed.replace(/,/g, "").replace(/\s*(sq\.?\s*ft\.?|sf)$/i, ""));
  return typed !== "" && area > 0 && area <= 1_000_000 ? { ok: true, value: area } : { ok: false, fault: "Square feet, such as 60." };
}

/** Spacing on center; empty is at mature spread. A bare number above 8 is inches, else feet. */
export function spacingRead(typed: string): Read<number | null> {
  if (typed === "") return { ok: true, value: null };
  const bare = Number(typed);
  const result = lengthFromText(typed.replace(/\s*(o\.?c\.?|on center)$/i, ""), Number.isFinite(bare) && bare <= 8 ? "ft" : "in");
  if (!result.ok) return { ok: false, fault: result.fault };
  return result.feet >= 0.1 && result.feet <= 200 ? { ok: true, value: result.feet } : { ok: false, fault: "A spacing between 2 in and 200 ft, such as 18 in." };
}

/** A side of the bed: a bare number is feet. */
export function sideRead(typed: string): Read<number> {
  const result = lengthFromText(typed, "ft");
  if (!result.ok) return { ok: false, fault: result.fault };
  return result.feet > 0 && result.feet <= 2000 ? { ok: true, value: result.feet } : { ok: false, fault: "More than zero and at most 2,000 ft." };
}

/** Soil pH; empty is not tested. */
export function phRead(typed: string): Read<number | null> {
  if (typed === "") return { ok: true, value: null };
  const ph = Number(typed);
  return ph >= 3 && ph <= 10 ? { ok: true, value: ph } : { ok: false, fault: "A pH between 3 and 10, such as 6.5; empty where it is not tested." };
}

export const textRead =
  (max: number) =>
  (typed: string): Read<string> =>
    typed.length <= max ? { ok: true, value: typed } : { ok: false, fault: `At most ${max} characters.` };

export const nameRead = (typed: string): Read<string> => (typed ? textRead(120)(typed) : { ok: false, fault: "A name, such as Entrance bed." });
