import { memo } from "react";
import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import type { Point } from "@/lib/ground/outline";
import { plantsInOrder } from "./plan-choice";
import type { Figures } from "./plan-figure";
import { plantText } from "./plan-words";

/** The plants of the drawing as a list to be heard: what, where, and with which others. The keyboard chooses on the drawing around it. */
export const PlanOptions = memo(function PlanOptions({
  plants,
  figures,
  chosen,
  corner,
}: {
  plants: readonly PlacedPlant[];
  figures: Figures;
  chosen: ReadonlySet<string>;
  corner: Point;
}) {
  const sizes = new Map<number, number>();
  for (const { group } of plants) sizes.set(group, (sizes.get(group) ?? 0) + 1);
  return (
    <div className="visually-hidden" role="presentation">
      {plantsInOrder(plants).map((plant) => (
        <div key={plant.id} id={`stand-${plant.id}`} role="option" tabIndex={-1} aria-selected={chosen.has(plant.id)}>
          {plantText(plant, figures, sizes.get(plant.group) ?? 1, corner)}
        </div>
      ))}
    </div>
  );
});
