"use client";

import { useRouter, useSearchParams } from "next/navigation";
import { useTransition } from "react";
import type { PlaceChoice } from "@/lib/server/plant-places";

/** Whose year is shown: a job's place, or the reference climate. Kept in the address; everything else of the address stays. */
export function PlaceSelect({ choices, chosen }: { choices: readonly PlaceChoice[]; chosen: string }) {
  const router = useRouter();
  const params = useSearchParams();
  const [busy, start] = useTransition();
  const choose = (key: string) => {
    const next = new URLSearchParams(params);
    next.set("place", key);
    start(() => router.push(`?${next.toString()}`, { scroll: false }));
  };
  return (
    <span className="row place-select">
      <label htmlFor="plants-place">Windows at</label>
      <select id="plants-place" value={chosen} aria-busy={busy} onChange={(event) => choose(event.target.value)}>
        {choices.map((choice) => (
          <option key={choice.key} value={choice.key}>
            {choice.label}
          </option>
        ))}
      </select>
    </span>
  );
}
