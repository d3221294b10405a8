// How good an arrangement is, part by part, 0–1 each.
import type { Taxon } from "../plants/taxon";
import type { Standpoint } from "./layout-sites";
import type { Point } from "./outline";
import { type GroundTaxon, matureGroundSpread, rangeMiddle, taxonStratum } from "./stratum";

export type LayoutTaxon = GroundTaxon & Pick<Taxon, "foliage">;
export type StandingPlant = { readonly key: string; readonly taxon: LayoutTaxon; readonly at: Point; readonly group: number };

export type LayoutScore = {
  /** 0–100, the parts weighed together. */
  readonly overall: number;
  /** Share of neighbors, one behind the other, of which the hinder is not the lower. */
  readonly order: number;
  /** Share of the evergreens that no bare shrub or tree hides in winter. */
  readonly evergreensSeen: number;
  /** How evenly the groups of each repeated taxon are spread along the bed. */
  readonly spread: number;
  /** Share of the plants that found a place at their spacing, times the share of the spacing kept. */
  readonly room: number;
};

/** What each part weighs. Judgement, no source. */
const WEIGHTS = { order: 0.35, evergreensSeen: 0.2, spread: 0.15, room: 0.3 } as const;
/** Heights within this share of each other count as level. */
const LEVEL_SHARE = 0.15;
/** Plants farther apart than this many of the larger's spread do not stand before each other to the eye. */
const NEAR_SPREADS = 1.5;

/** Unit vector from a plant toward the eye: against the look, or outward from the middle of an island. */
export function towardEye(at: Point, standpoint: Standpoint, middle: Point): Point {
  if (standpoint.kind === "one side") return [-Math.cos(standpoint.lookAngle), -Math.sin(standpoint.lookAngle)];
  const [dx, dy] = [at[0] - middle[0], at[1] - middle[1]];
  const away = Math.hypot(dx, dy);
  return away < 1e-9 ? [0, -1] : [dx / away, dy / away];
}

/** Whether `front` stands before `back`: nearer to the eye, its crown across the line of sight to the other's middle, and near enough to matter. */
export function standsBefore(front: StandingPlant, back: StandingPlant, standpoint: Standpoint, middle: Point): boolean {
  const [ux, uy] = towardEye(back.at, standpoint, middle);
  const [dx, dy] = [front.at[0] - back.at[0], front.at[1] - back.at[1]];
  const along = dx * ux + dy * uy;
  const reach = Math.max(matureGroundSpread(front.taxon), matureGroundSpread(back.taxon));
  return along > 0.1 && along < NEAR_SPREADS * reach && Math.abs(dx * uy - dy * ux) < matureGroundSpread(front.taxon) / 2;
}

/** Woody, bare in winter, but thick enough with twigs to hide what is behind: shrubs and low-branched plants, not a tree's clear stem. */
export function hidesInWinter(taxon: LayoutTaxon): boolean {
  return taxon.foliage === "deciduous" && taxonStratum(taxon) !== "canopy trees" && (taxon.kind === "shrub" || taxon.kind === "vine" || taxon.kind === "conifer");
}

export function isEvergreen(taxon: LayoutTaxon): boolean {
  return taxon.foliage === "evergreen";
}

/** Evergreens that stand in winter behind a bare woody plant as high as they are or higher. */
export function evergreensHidden(plants: readonly StandingPlant[], standpoint: Standpoint, middle: Point): StandingPlant[] {
  const screens = plants.filter(({ taxon }) => hidesInWinter(taxon));
  return plants.filter(
    (plant) =>
      isEvergreen(plant.taxon) &&
      screens.some((screen) => rangeMiddle(screen.taxon.heightFt) >= rangeMiddle(plant.taxon.heightFt) && standsBefore(screen, plant, standpoint, middle)),
  );
}

function orderShare(plants: readonly StandingPlant[], standpoint: Standpoint, middle: Point): number {
  let [pairs, right] = [0, 0];
  const low = plants.filter(({ taxon }) => taxonStratum(taxon) !== "canopy trees");
  for (const back of low)
    for (const front of low) {
      if (front.key === back.key || !standsBefore(front, back, standpoint, middle)) continue;
      pairs++;
      if (rangeMiddle(front.taxon.heightFt) <= (1 + LEVEL_SHARE) * rangeMiddle(back.taxon.heightFt)) right++;
    }
  return pairs === 0 ? 1 : right / pairs;
}

/** For taxa in several groups: the smallest distance between two groups' middles against what even spreading over the bed would give. */
function spreadShare(plants: readonly StandingPlant[], extentFt: number): number {
  const shares: number[] = [];
  for (const key of new Set(plants.map((plant) => plant.key))) {
    const groups = new Map<number, Point[]>();
    for (const plant of plants) if (plant.key === key) groups.set(plant.group, [...(groups.get(plant.group) ?? []), plant.at]);
    if (groups.size < 2) continue;
    const middles = [...groups.values()].map((points) => points.reduce(([x, y], p): Point => [x + p[0] / points.length, y + p[1] / points.length], [0, 0] as Point));
    const gaps = middles.map((a, i) => Math.min(...middles.filter((_, j) => j !== i).map((b) => Math.hypot(a[0] - b[0], a[1] - b[1]))));
    shares.push(Math.min(1, gaps.reduce((sum, gap) => sum + gap, 0) / gaps.length / (extentFt / groups.size)));
  }
  return shares.length === 0 ? 1 : shares.reduce((sum, share) => sum + share, 0) / shares.length;
}

/**
 * The score of an arrangement.
 * @param extentFt length of the bed along its front (round an island: its perimeter's half)
 * @param room share of plants placed times share of spacing kept
 */
export function layoutScore(plants: readonly StandingPlant[], standpoint: Standpoint, middle: Point, extentFt: number, room: number): LayoutScore {
  const evergreens = plants.filter(({ taxon }) => isEvergreen(taxon)).length;
  const parts = {
    order: orderShare(plants, standpoint, middle),
    evergreensSeen: evergreens === 0 ? 1 : 1 - evergreensHidden(plants, standpoint, middle).length / evergreens,
    spread: spreadShare(plants, extentFt),
    room,
  };
  const overall = 100 * (WEIGHTS.order * parts.order + WEIGHTS.evergreensSeen * parts.evergreensSeen + WEIGHTS.spread * parts.spread + WEIGHTS.room * parts.room);
  return { overall, ...parts };
}
