// What the fields of a truck accept.
import { lengthFromText, lengthText } from "@/lib/ground/length";

type Read<T> = { ok: true; value: T } | { ok: false; fault: string };

/** Pounds: "4,000", "4000 lb", "2.5 t" (short tons). */
export function poundsRead(typed: string): Read<number> {
  const match = /^([\d,]*\.?\d+)\s*(lbs?\.?|pounds?|#|tons?|t)?$/i.exec(typed);
  const lb = match?.[1] ? Number(match[1].replaceAll(",", "")) * (/^t/i.test(match[2] ?? "") ? 2000 : 1) : Number.NaN;
  return lb >= 100 && lb <= 60_000 ? { ok: true, value: Math.round(lb) } : { ok: false, fault: "Pounds the truck may carry, 100 to 60,000, such as 4,000." };
}

/** A length of the deck; a bare number is feet. */
export function deckRead(max: number): (typed: string) => Read<number> {
  return (typed) => {
    const result = lengthFromText(typed, "ft");
    if (!result.ok) return { ok: false, fault: result.fault };
    return result.feet >= 1 && result.feet <= max ? { ok: true, value: result.feet } : { ok: false, fault: `Between 1 and ${max} ft, such as 7 ft 6 in.` };
  };
}

/** Height under the roof; empty or "open": no roof. */
export function clearRead(typed: string): Read<number | null> {
  return typed === "" || /^open$/i.test(typed) ? { ok: true, value: null } : deckRead(14)(typed);
}

export const poundsText = (lb: number): string => lb.toLocaleString("en-US");
export const clearText = (feet: number | null): string => (feet === null ? "open" : lengthText(feet));
