import { nameSegments } from "@/lib/plants/botanical-name";
import type { Taxon } from "@/lib/plants/taxon";

/** A plant's name set by the rules of the nomenclatural code: italic genus and species, 'Cultivar' roman, trade designation in small capitals. */
export function BotanicalText({ taxon }: { taxon: Pick<Taxon, "botanical" | "cultivar" | "group" | "tradeDesignation"> }) {
  return (
    <span className="botanical">
      {nameSegments(taxon).map((segment, i) => {
        const key = `${i}${segment.text}`;
        const space = i > 0 ? " " : "";
        if (segment.style === "italic")
          return (
            <i key={key}>
              {space}
              {segment.text}
            </i>
          );
        return (
          <span key={key} className={segment.style === "trade" ? "trade" : undefined}>
            {space}
            {segment.text}
          </span>
        );
      })}
    </span>
  );
}
