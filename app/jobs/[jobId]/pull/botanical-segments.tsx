import type { NameSegment } from "@/lib/plants/botanical-name";

/** A name whose pieces are known already, set as BotanicalText sets it. */
export function BotanicalSegments({ segments }: { segments: readonly NameSegment[] }) {
  return (
    <span className="botanical">
      {segments.map(({ text, style }, i) => {
        const shown = `${i > 0 ? " " : ""}${text}`;
        const key = `${i}${text}`;
        if (style === "italic") return <i key={key}>{shown}</i>;
        return (
          <span key={key} className={style === "trade" ? "trade" : undefined}>
            {shown}
          </span>
        );
      })}
    </span>
  );
}
