import type { PlacedPlant } from "@/lib/ground/bed-drawing";
import type { GroundPlan } from "@/lib/ground/ground-plan";
import { matureGroundSpread, taxonStratum } from "@/lib/ground/stratum";
import type { BedViewRow } from "@/lib/papers/bed-view";
import type { Taxon } from "@/lib/plants/taxon";

/** The color a plant is chosen for: its best flower, else its best other feature. */
function taxonHex({ features }: Taxon): string {
  const best = [...features].sort((a, b) => Number(b.kind === "bloom") - Number(a.kind === "bloom") || b.show - a.show)[0];
  return best?.hex ?? "#888888";
}

/** An arrangement as a small drawing: crowns when grown, in the color of their flower, each group with its letter. */
export function LayoutFigure({ plants, plan, rows }: { plants: readonly PlacedPlant[]; plan: GroundPlan; rows: readonly BedViewRow[] }) {
  const xs = plan.outline.map((p) => p[0]);
  const ys = plan.outline.map((p) => p[1]);
  const [left, right, low, high] = [Math.min(...xs) - 1, Math.max(...xs) + 1, Math.min(...ys) - 1, Math.max(...ys) + 1];
  const letterFt = Math.max(right - left, high - low) / 26;
  const rowOf = new Map(rows.map((r) => [r.row.id, r]));
  const stands = plants
    .flatMap(({ id, rowId, at, group }) => {
      const own = rowOf.get(rowId);
      if (!own?.placed) return [];
      const { taxon } = own.placed;
      return [{ id, at, group, letter: own.letter, radiusFt: matureGroundSpread(taxon) / 2, tree: taxonStratum(taxon) === "canopy trees", hex: taxonHex(taxon) }];
    })
    .sort((a, b) => Number(a.tree) - Number(b.tree) || b.radiusFt - a.radiusFt);
  const groups = new Map<string, (typeof stands)[number][]>();
  for (const stand of stands) {
    const key = `${stand.group} ${stand.letter}`;
    groups.set(key, [...(groups.get(key) ?? []), stand]);
  }
  const y = (feet: number) => high + low - feet;
  return (
    <svg className="layout-figure" viewBox={`${left} ${low} ${right - left} ${high - low}`} aria-hidden="true">
      <polygon className="layout-ground" points={plan.outline.map(([px, py]) => `${px},${y(py)}`).join(" ")} />
      {stands.map(({ id, at, radiusFt, hex, tree }) => (
        <circle key={id} className="layout-crown" cx={at[0]} cy={y(at[1])} r={radiusFt} fill={hex} fillOpacity={tree ? 0.12 : 0.75} />
      ))}
      {[...groups].map(([key, members]) => {
        const middle = members.reduce(([sx, sy], { at }) => [sx + at[0] / members.length, sy + at[1] / members.length] as const, [0, 0] as readonly [number, number]);
        return (
          <text key={key} className="layout-letter" x={middle[0]} y={y(middle[1])} fontSize={letterFt} strokeWidth={letterFt / 4}>
            {members[0]?.letter}
          </text>
        );
      })}
    </svg>
  );
}
