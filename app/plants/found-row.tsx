"use client";

import Link from "next/link";
import { memo, useMemo } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import { YearStripSvg } from "@/app/parts/year-strip-svg";
import { plantSizeRangeText } from "@/lib/ground/length";
import { yearStrip } from "@/lib/papers/year-strip";
import type { ListedPlant } from "@/lib/plants/plant-list";
import { seasonSentence } from "@/lib/season/sentence";
import type { TaxonSeason } from "@/lib/season/window";

type Props = {
  readonly plant: ListedPlant;
  readonly former: string | null;
  readonly uses: number;
  /** Plants of it in the firm's lots. */
  readonly onHand: number;
  readonly href: string;
  readonly season: TaxonSeason;
  readonly lastFreezeDay: number | null;
  readonly firstFreezeDay: number | null;
};

/** One plant found. Kept as drawn while its figures stay the same: typing redraws only what changes. */
export const FoundRow = memo(function FoundRow({ plant, former, uses, onHand, href, season, lastFreezeDay, firstFreezeDay }: Props) {
  const marks = useMemo(() => yearStrip(season, { lastFreezeDay, firstFreezeDay }), [season, lastFreezeDay, firstFreezeDay]);
  const second = [
    plant.commonNames[0],
    former ? `was ${former}` : "",
    plant.origin === "own" ? "your own" : plant.origin === "corrected" ? "corrected here" : "",
    uses ? `in ${uses} ${uses === 1 ? "bed" : "beds"}` : "",
    onHand ? `${onHand.toLocaleString("en-US")} on hand` : "",
  ].filter(Boolean);
  return (
    <tr>
      <th scope="row" className="found-name">
        <Link className="found-link" href={href} prefetch={false}>
          <BotanicalText taxon={plant} />
        </Link>
        <span className="common second-line">{second.join(" · ")}</span>
      </th>
      <td className="found-size">
        {plantSizeRangeText(plant.heightFt)} × {plantSizeRangeText(plant.spreadFt)}
      </td>
      <td className="found-zones">
        <span className="zone-word">zones </span>
        {plant.zoneLow}–{plant.zoneHigh}
      </td>
      <td className="year-cell">
        <YearStripSvg marks={marks} sentence={seasonSentence(season)} idPrefix={`f-${plant.id}`} freezeDays={null} />
      </td>
    </tr>
  );
});
