"use client";

import { useEffect, useMemo } from "react";
import type { Climate } from "@/lib/place/climate";
import { placeYear } from "@/lib/place/place-year";
import type { ListedPlant } from "@/lib/plants/plant-list";
import { type MonthColor, monthColors } from "@/lib/season/month-colors";
import { taxonSeason } from "@/lib/season/taxon-season";
import type { TaxonSeason } from "@/lib/season/window";

export type PlantYear = { readonly seasonOf: (plant: ListedPlant) => TaxonSeason; readonly colorsOf: (plant: ListedPlant) => readonly MonthColor[] };

/** Plants dated in one idle stretch. */
const STRETCH = 150;

function plantYear(climate: Climate): PlantYear {
  const year = placeYear(climate);
  const seasons = new Map<ListedPlant, TaxonSeason>();
  const colors = new Map<ListedPlant, readonly MonthColor[]>();
  const seasonOf = (plant: ListedPlant) => {
    const kept = seasons.get(plant) ?? taxonSeason(plant, year);
    seasons.set(plant, kept);
    return kept;
  };
  return {
    seasonOf,
    colorsOf: (plant) => {
      const kept = colors.get(plant) ?? monthColors(seasonOf(plant).windows);
      colors.set(plant, kept);
      return kept;
    },
  };
}

const whenIdle = (work: () => void): (() => void) => {
  // Safari has no idle callback.
  if (typeof window.requestIdleCallback !== "function") {
    const timer = setTimeout(work, 30);
    return () => clearTimeout(timer);
  }
  const handle = window.requestIdleCallback(work);
  return () => window.cancelIdleCallback(handle);
};

/** The year of every plant at a place: dated when first looked at, and all of them ahead of time while the page is idle. */
export function usePlantYear(climate: Climate, plants: readonly ListedPlant[] | null): PlantYear {
  const key = JSON.stringify(climate);
  const year = useMemo(() => plantYear(JSON.parse(key) as Climate), [key]);
  useEffect(() => {
    if (!plants) return;
    let cancel = () => {};
    const stretch = (from: number) => {
      if (from >= plants.length) return;
      for (const plant of plants.slice(from, from + STRETCH)) year.colorsOf(plant);
      cancel = whenIdle(() => stretch(from + STRETCH));
    };
    cancel = whenIdle(() => stretch(0));
    return () => cancel();
  }, [plants, year]);
  return year;
}
