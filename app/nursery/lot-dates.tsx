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
