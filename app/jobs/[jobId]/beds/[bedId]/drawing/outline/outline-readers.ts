// What the fields of the outline mode accept.
import { lengthFromText } from "@/lib/ground/length";

export type Read<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: string };

/** A length of zero or more, at most so many feet; a bare number is feet. */
export const feetRead =
  (mostFt: number) =>
  (typed: string): Read<number> => {
    if (/^0+(\.0*)?\s*(ft|in|'|")?$/.test(typed)) return { ok: true, value: 0 };
    const result = lengthFromText(typed, "ft");
    if (!result.ok) return { ok: false, fault: result.fault };
    return result.feet <= mostFt ? { ok: true, value: result.feet } : { ok: false, fault: `At most ${mostFt.toLocaleString("en-US")} ft.` };
  };

/** A length of zero or more or, with a minus before it, the other way. */
export const signedFeetRead =
  (mostFt: number) =>
  (typed: string): Read<number> => {
    const minus = /^[-−–]\s*/.exec(typed);
    const read = feetRead(mostFt)(minus ? typed.slice(minus[0].length) : typed);
    return read.ok && minus ? { ok: true, value: -read.value + 0 } : read;
  };

/** A length over zero. */
export const lengthRead =
  (mostFt: number) =>
  (typed: string): Read<number> => {
    const read = feetRead(mostFt)(typed);
    return read.ok && read.value <= 0 ? { ok: false, fault: "More than zero, such as 12 ft 6 in." } : read;
  };
