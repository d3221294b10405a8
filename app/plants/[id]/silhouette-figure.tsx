"use client";

import { useState } from "react";
import { lookDays, plantLook } from "@/lib/face/plant-look";
import type { SilhouettePlant } from "@/lib/face/plant-shape";
import { silhouetteScene } from "@/lib/face/silhouette-scene";
import { dayText } from "@/lib/season/sentence";
import type { TaxonSeason } from "@/lib/season/window";
import { SilhouetteSvg } from "./silhouette-svg";

type Props = { readonly id: string; readonly name: string; readonly plant: SilhouettePlant; readonly season: TaxonSeason; readonly sizeWords: string };

/** The day it is best known by: bloom, else fall color, else whatever stands out. */
function firstShown(labels: readonly string[]): number {
  for (const label of ["In bloom", "Fall color", "Midsummer"]) {
    const at = labels.indexOf(label);
    if (at >= 0) return at;
  }
  return 0;
}

/** The plant grown, to scale, on a day that can be chosen. */
export function SilhouetteFigure({ id, name, plant, season, sizeWords }: Props) {
  const days = lookDays(season);
  const [chosen, setChosen] = useState(() => firstShown(days.map((d) => d.label)));
  const shown = days[chosen] ?? days[0];
  if (!shown) return null;
  const look = plantLook(plant, season, shown.day);
  const scene = silhouetteScene(plant, look, id);
  const nothing = scene.plants.every((p) => p.marks.length === 0);
  const words = `${name}, ${sizeWords}, drawn to scale beside a 6 ft person: ${shown.label.toLowerCase()}, ${dayText(shown.day)}`;
  return (
    <figure className="silhouette">
      <fieldset className="look-days screen-only">
        <legend className="visually-hidden">Day of the year shown</legend>
        {days.map((day, i) => (
          <label key={day.label}>
            <input type="radio" name="look-day" checked={i === chosen} onChange={() => setChosen(i)} />
            <span>{day.label}</span>
          </label>
        ))}
      </fieldset>
      <SilhouetteSvg scene={scene} words={words} />
      <figcaption className="small soft">
        {nothing ? "Nothing stands above ground. " : ""}
        {dayText(shown.day)}. {sizeWords}; drawn at the middle{scene.plantCount > 1 ? `, ${scene.plantCount} plants at mature spread` : ""}.
      </figcaption>
    </figure>
  );
}
