import Link from "next/link";
import type { BedView } from "@/lib/papers/bed-view";
import { groundDensities, offDrawingText } from "@/lib/papers/ground-view";

/** Density in words, and whether cover and interest go by the drawing or by area. */
export function GroundWords({ view, path }: { view: BedView; path: string }) {
  const { atHandOver } = groundDensities(view);
  return (
    <>
      <p>
        Planting density <b>{view.ground.density} of 10</b>: {view.ground.densityWords} At hand-over it is {atHandOver.label} of 10.
      </p>
      <p className="small soft">
        {view.groundBy === "drawing"
          ? "By the places of the "
          : view.drawn
            ? `By area and count; on the drawing are not ${offDrawingText(view) || "plants that left the dataset"}. `
            : "By area and count, as if in even groups. "}
        <Link href={`${path}/drawing`}>{view.groundBy === "drawing" ? "drawing" : view.drawn ? "To the drawing" : "Set it out on the drawing"}</Link>
        {view.groundBy === "drawing" ? ", every plant where it stands." : ""}
      </p>
    </>
  );
}
