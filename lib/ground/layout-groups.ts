// Where each group of a plant list goes: the bed's sites are shared out, evergreens first, then the back and the front before the middle, each group taking as much ground as it needs when grown.
import { hidesInWinter, isEvergreen, type LayoutTaxon, towardEye } from "./layout-score";
import type { Site, Sites, Standpoint } from "./layout-sites";
import type { Point } from "./outline";
import { groupPoints, groupSizes } from "./plant-group";
import { plantCellSqFt } from "./spacing";
import { matureGroundSpread, rangeMiddle, taxonStratum } from "./stratum";

export type GroupRow = {
  readonly key: string;
  readonly taxon: LayoutTaxon;
  readonly quantity: number;
  readonly spacingFt: number /** Whether a site has the room. */;
  readonly fits: (site: Site) => boolean;
};
export type PlacedGroup = { readonly row: GroupRow; readonly middle: Point; readonly places: readonly Point[] };

/** Plants in a group, wanted; then made odd. Trees and vines stand alone, covers in masses (groups of 3, 5 or 7: common practice). */
const GROUP_WANTED = { tree: 1, conifer: 3, shrub: 3, perennial: 5, grass: 5, fern: 5, bulb: 9, vine: 1, groundcover: 15, annual: 9 } as const satisfies Record<
  LayoutTaxon["kind"],
  number
>;

/** Where trees stand: behind the middle, share of the depth. */
const TREE_DEPTH = 0.7;
/** How much a group may stray from its band, so that rows do not stand like soldiers. */
const DEPTH_PLAY = 0.06;
/** How much farther a step back or forward counts than one along the bed when a group takes its ground: groups lie along the bed. */
const BAND_SHARE = 4;
/** What being out of depth, off its turn along the bed, and in the way of evergreens weigh against each other. Judgement, no source. */
const COST = { depth: 15, along: 2, hidden: 2, crowd: 0.5 } as const;

function groupWanted({ taxon, spacingFt }: GroupRow): number {
  return taxonStratum(taxon) === "canopy trees" || spacingFt >= 10 ? 1 : GROUP_WANTED[taxon.kind];
}

/** An evergreen about as high as a bare shrub stands before it: it is ranked this share of its height. */
const EVERGREEN_RANK = 0.8;
const standingHeight = (taxon: LayoutTaxon) => rangeMiddle(taxon.heightFt) * (isEvergreen(taxon) ? EVERGREEN_RANK : 1);

/** Depth that each row is to stand at: the low ones from the front by the ground they take, so that tall and low each have a band that holds them. */
function rowDepths(rows: readonly GroupRow[]): Map<GroupRow, number> {
  const low = rows.filter(({ taxon }) => taxonStratum(taxon) !== "canopy trees").sort((a, b) => standingHeight(a.taxon) - standingHeight(b.taxon));
  const needs = low.map(({ quantity, spacingFt }) => quantity * plantCellSqFt(spacingFt, "triangular"));
  const total = needs.reduce((sum, need) => sum + need, 0);
  let before = 0;
  const depths = new Map(rows.map((row): [GroupRow, number] => [row, TREE_DEPTH]));
  for (const [i, row] of low.entries()) {
    const need = needs[i] ?? 0;
    depths.set(row, (before + need / 2) / total);
    before += need;
  }
  return depths;
}

/** Tallest, lowest, second tallest, second lowest …: the middle of the bed takes what is left over, where it shows least. */
function rowsFromEnds(rows: readonly GroupRow[]): GroupRow[] {
  const down = [...rows].sort((a, b) => standingHeight(b.taxon) - standingHeight(a.taxon) || (a.key < b.key ? -1 : 1));
  return down.flatMap((row, i) => {
    const mirror = down[down.length - 1 - i];
    if (i > down.length - 1 - i || !mirror) return [];
    return mirror === row ? [row] : [row, mirror];
  });
}

/** The nearest places to a set of sites that so many plants can share evenly (Lloyd 1982, a few rounds from a compact group). */
function placesShared(sites: readonly Site[], middle: Point, quantity: number, spacingFt: number, angle: number): Point[] {
  let places = groupPoints(middle, quantity, spacingFt, angle);
  for (let round = 0; round < 6; round++) {
    const sums = places.map(() => ({ x: 0, y: 0, count: 0 }));
    for (const { at } of sites) {
      let [best, least] = [0, Number.POSITIVE_INFINITY];
      for (const [p, place] of places.entries()) {
        const far = (place[0] - at[0]) ** 2 + (place[1] - at[1]) ** 2;
        if (far < least) [best, least] = [p, far];
      }
      const sum = sums[best];
      if (sum) {
        sum.x += at[0];
        sum.y += at[1];
        sum.count++;
      }
    }
    places = places.map((place, p): Point => {
      const sum = sums[p];
      return sum && sum.count > 0 ? [sum.x / sum.count, sum.y / sum.count] : place;
    });
  }
  return places;
}

/** Whether a plant at one place would stand in winter between the eye and another place. */
function between(front: Point, back: Point, frontSpreadFt: number, standpoint: Standpoint, middle: Point): boolean {
  const [ux, uy] = towardEye(back, standpoint, middle);
  const [dx, dy] = [front[0] - back[0], front[1] - back[1]];
  return dx * ux + dy * uy > 0 && dx * ux + dy * uy < 2 * frontSpreadFt && Math.abs(dx * uy - dy * ux) < frontSpreadFt / 2;
}

/**
 * A place for every group. Rows for which no site fits get none. Trees share the ground with what grows under them.
 * @param random the only chance in it: where along the bed each taxon begins, the play in depth, how groups are turned
 */
export function groupsPlaced(rows: readonly GroupRow[], { sites, sqFtEach, middle, depthFt }: Sites, standpoint: Standpoint, random: () => number): PlacedGroup[] {
  const depths = rowDepths(rows);
  const round = standpoint.kind === "all round";
  const claimed = { trees: new Uint8Array(sites.length), low: new Uint8Array(sites.length) };
  const placed: PlacedGroup[] = [];
  const evergreens = rows.filter(({ taxon }) => isEvergreen(taxon) && taxonStratum(taxon) !== "herbs and groundcover");
  for (const row of [...rowsFromEnds(evergreens), ...rowsFromEnds(rows.filter((one) => !evergreens.includes(one)))]) {
    const taken = taxonStratum(row.taxon) === "canopy trees" ? claimed.trees : claimed.low;
    const fitting = sites.map((site, index) => ({ site, index })).filter(({ site }) => row.fits(site));
    const sizes = groupSizes(row.quantity, groupWanted(row));
    const phase = 0.2 + 0.6 * random();
    for (const [turn, size] of sizes.entries()) {
      const slot = (turn + phase) / sizes.length;
      const depth = (depths.get(row) ?? 0.5) + DEPTH_PLAY * (2 * random() - 1);
      const angle = random() * Math.PI;
      const free = fitting.filter(({ index }) => taken[index] === 0);
      const choice = free.length > 0 ? free : fitting;
      const needSites = Math.max(1, Math.round((size * plantCellSqFt(row.spacingFt, "triangular")) / sqFtEach));
      const widthFt = (Math.sqrt(size) - 1) * row.spacingFt;
      const evergreen = isEvergreen(row.taxon);
      const watched = placed.filter((group) => (evergreen ? hidesInWinter(group.row.taxon) : hidesInWinter(row.taxon) && isEvergreen(group.row.taxon)));
      let best: { cost: number; at: Point } | null = null;
      for (const { site } of choice) {
        const off = Math.abs(site.along - slot);
        let cost = COST.depth * (site.depth - depth) ** 2 + COST.along * (round ? Math.min(off, 1 - off) : off) ** 2;
        for (const group of watched) {
          const own = rangeMiddle(row.taxon.heightFt);
          const other = rangeMiddle(group.row.taxon.heightFt);
          const hides = evergreen
            ? other >= own && group.places.some((place) => between(place, site.at, matureGroundSpread(group.row.taxon) + widthFt, standpoint, middle))
            : own >= other && group.places.some((place) => between(site.at, place, matureGroundSpread(row.taxon) + widthFt, standpoint, middle));
          if (hides) cost += COST.hidden;
        }
        for (const group of placed) {
          if (group.row !== row) continue;
          const far = Math.hypot(group.middle[0] - site.at[0], group.middle[1] - site.at[1]);
          cost += COST.crowd * Math.exp(-far / (3 * row.spacingFt));
        }
        if (!best || cost < best.cost) best = { cost, at: site.at };
      }
      if (!best) continue;
      const from = best.at;
      const own = choice
        .map((entry) => ({ ...entry, far: (entry.site.at[0] - from[0]) ** 2 + (entry.site.at[1] - from[1]) ** 2 + (BAND_SHARE * depthFt * (entry.site.depth - depth)) ** 2 }))
        .sort((a, b) => a.far - b.far || a.index - b.index)
        .slice(0, needSites);
      for (const { index } of own) taken[index] = 1;
      const groupMiddle = own.reduce(([x, y], { site }): Point => [x + site.at[0] / own.length, y + site.at[1] / own.length], [0, 0] as Point);
      const places = placesShared(
        own.map(({ site }) => site),
        groupMiddle,
        size,
        row.spacingFt,
        angle,
      );
      placed.push({ row, middle: groupMiddle, places });
    }
  }
  return placed;
}
