/** The day of an instant, by the clock of the person who reads it. @param at ISO instant; null: never */
export function DayText({ at, never = "not yet" }: { at: string | null; never?: string }) {
  return <span suppressHydrationWarning>{at === null ? never : new Date(at).toLocaleDateString("en-US", { month: "short", day: "numeric", year: "numeric" })}</span>;
}

/** Day and minute of an instant, by the clock of the person who reads it. */
export function MomentText({ at }: { at: string }) {
  return (
    <time dateTime={at} suppressHydrationWarning>
      {new Date(at).toLocaleString("en-US", { month: "short", day: "numeric", year: "numeric", hour: "numeric", minute: "2-digit" })}
    </time>
  );
}

/** An ISO date in words, whatever the clock's zone. */
export function dateText(iso: string): string {
  return new Date(`${iso}T00:00:00Z`).toLocaleDateString("en-US", { month: "short", day: "numeric", year: "numeric", timeZone: "UTC" });
}
