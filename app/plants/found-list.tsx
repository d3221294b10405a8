"use client";

import type { CSSProperties } from "react";
import type { ListedPlant } from "@/lib/plants/plant-list";
import { MONTHS } from "@/lib/plants/thirds";
import { dayText } from "@/lib/season/sentence";
import type { TaxonSeason } from "@/lib/season/window";
import { FoundRow } from "./found-row";
import type { FinderPlace } from "./plant-finder";

type Props = {
  readonly plants: readonly ListedPlant[];
  /** Rows there will be: keeps the page as high while the last of them are still to be drawn. */
  readonly rows: number;
  readonly former: ReadonlyMap<string, string> | null;
  readonly uses: Readonly<Record<string, number>>;
  readonly onHand: Readonly<Record<string, number>>;
  readonly place: FinderPlace;
  readonly seasonOf: (plant: ListedPlant) => TaxonSeason;
  readonly hrefOf: (plant: ListedPlant) => string;
};

const across = (day: number | null): string => (day === null ? "-10px" : `${((100 * day) / 365).toFixed(2)}%`);

/** The results: one table, a row a plant, its year in the same row, months ruled through all. */
export function FoundList({ plants, rows, former, uses, onHand, place, seasonOf, hrefOf }: Props) {
  const { lastFreezeDay, firstFreezeDay } = place;
  const lines = { "--last-freeze": across(lastFreezeDay), "--first-freeze": across(firstFreezeDay) } as CSSProperties;
  const table = (
    <table className="found" style={lines}>
      <thead>
        <tr>
          <th scope="col">Plant</th>
          <th scope="col">Height × spread</th>
          <th scope="col">Zones</th>
          <th scope="col" className="year-cell">
            <span className="visually-hidden">The year at {place.label}, January to December</span>
            <div className="year-head" aria-hidden="true">
              <div className="freeze-line">
                {lastFreezeDay === null ? null : (
                  <span style={{ left: across(lastFreezeDay) }} title={dayText(lastFreezeDay)}>
                    last freeze
                  </span>
                )}
                {firstFreezeDay === null ? null : (
                  <span style={{ left: across(firstFreezeDay) }} title={dayText(firstFreezeDay)}>
                    first freeze
                  </span>
                )}
              </div>
              <div className="month-foot">
                {MONTHS.map((month) => (
                  <span key={month}>{month.charAt(0)}</span>
                ))}
              </div>
            </div>
          </th>
        </tr>
      </thead>
      <tbody>
        {plants.map((plant) => (
          <FoundRow
            key={plant.id}
            plant={plant}
            former={former?.get(plant.id) ?? null}
            uses={uses[plant.id] ?? 0}
            onHand={onHand[plant.id] ?? 0}
            href={hrefOf(plant)}
            season={seasonOf(plant)}
            lastFreezeDay={lastFreezeDay}
            firstFreezeDay={firstFreezeDay}
          />
        ))}
      </tbody>
    </table>
  );
  return <div style={plants.length < rows ? { minHeight: `${rows * 45}px` } : undefined}>{table}</div>;
}
