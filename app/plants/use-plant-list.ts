"use client";

import { useEffect, useState } from "react";
import { type ListedPlant, type PlantListFile, plantListDecode } from "@/lib/plants/plant-list";

/** Lists read in this window, by address. The address names the content, so a list read once is good as long as the window is open. */
const lists = new Map<string, readonly ListedPlant[]>();

async function listFetch(address: string, cache: RequestCache): Promise<readonly ListedPlant[]> {
  const response = await fetch(address, { cache });
  if (!response.ok) throw new Error(`The list answered ${response.status}`);
  const file = (await response.json()) as PlantListFile;
  if (file.version !== 1) throw new Error(`List version ${file.version} is not known here`);
  return plantListDecode(file);
}

export type PlantList = { readonly plants: readonly ListedPlant[] | null; readonly failed: boolean; readonly again: () => void };

/** The compact list, fetched once; null until it is there. */
export function usePlantList(address: string): PlantList {
  const [plants, setPlants] = useState(() => lists.get(address) ?? null);
  const [failed, setFailed] = useState(false);
  const [turn, setTurn] = useState(0);
  useEffect(() => {
    let gone = false;
    const known = lists.get(address);
    if (known) {
      setPlants(known);
      return;
    }
    setFailed(false);
    listFetch(address, turn > 0 ? "reload" : "default").then(
      (read) => {
        lists.set(address, read);
        if (!gone) setPlants(read);
      },
      () => {
        if (!gone) setFailed(true);
      },
    );
    return () => {
      gone = true;
    };
  }, [address, turn]);
  return { plants, failed, again: () => setTurn(turn + 1) };
}
