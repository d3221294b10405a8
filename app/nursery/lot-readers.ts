// What the fields of a lot accept, in the trade's words.
import { countRead } from "@/app/jobs/[jobId]/beds/[bedId]/field-readers";

/** Plants counted: whole, not negative. */
export function onHandRead(typed: string): ReturnType<typeof countRead> {
  if (/^[-−–]\s*\d/.test(typed)) return { ok: false, fault: "There cannot be fewer than 0 plants on hand." };
  return countRead(typed);
}

/** A price of one plant in whole cents; empty is not priced. */
export function priceRead(typed: string): { ok: true; value: number | null } | { ok: false; fault: string } {
  if (typed === "") return { ok: true, value: null };
  const amount = /^\$?\s*(\d[\d,]*(?:\.\d{1,2})?|\.\d{1,2})$/.exec(typed)?.[1];
  const cents = Math.round(Number(amount?.replace(/,/g, "")) * 100);
  if (amount === undefined || !Number.isFinite(cents)) return { ok: false, fault: "Dollars and cents, such as 24.50; empty where it is not priced." };
  return cents <= 100_000_000 ? { ok: true, value: cents } : { ok: false, fault: "At most $1,000,000." };
}

/** A price as the field shows it. @param cents null: not priced */
export function priceText(cents: number | null): string {
  return cents === null ? "" : `$${(cents / 100).toLocaleString("en-US", { minimumFractionDigits: 2, maximumFractionDigits: 2 })}`;
}
