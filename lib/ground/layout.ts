// "Set it out for me": from a plant list to places. Ground is shared out (layout-groups.ts), plants pushed apart to their spacing (relax.ts), what still has no room is moved or named.
import { barrierNearest, type GroundPlan } from "./ground-plan";
import { groupsPlaced } from "./layout-groups";
import { type LayoutScore, type LayoutTaxon, layoutScore, type StandingPlant } from "./layout-score";
import { layoutSites, type Site, type Sites, type Standpoint } from "./layout-sites";
import { type Point, pointInside } from "./outline";
import { FILL_EDGE_SHARE } from "./placement";
import { pairNeedFt, plantsRelaxed, type RelaxPlant } from "./relax";
import { barrierRoomFt, EDGE_TOLERANCE_FT } from "./room";
import { seededRandom } from "./seeded";
import { plantCellSqFt } from "./spacing";
import { rangeMiddle, taxonStratum } from "./stratum";

export type LayoutRow = { readonly key: string; readonly taxon: LayoutTaxon; readonly quantity: number; readonly spacingFt: number };
/** A plant that stays where it is. */
export type FixedPlant = { readonly key: string; readonly taxon: LayoutTaxon; readonly spacingFt: number; readonly at: Point };
export type LayoutInput = { readonly plan: GroundPlan; readonly rows: readonly LayoutRow[]; readonly fixed: readonly FixedPlant[]; readonly standpoint: Standpoint };

export type Unplaced = { readonly key: string; readonly quantity: number; readonly why: "no room" | "nowhere allowed"; readonly words: string };

export type Layout = {
  readonly seed: number;
  /** group: plants of one number stand together. Fixed plants are not repeated here. */
  readonly placements: readonly { readonly key: string; readonly at: Point; readonly group: number }[];
  readonly unplaced: readonly Unplaced[];
  /** Share of the spacings asked for that all plants were set at: under 1 where the list is more than the bed holds. */
  readonly spacingShare: number;
  readonly score: LayoutScore;
};

/** Share of the ground that plants of many sizes can fill at their spacings: equal ones on a grid fill it all, mixed ones leave gaps between groups (measured by the tests). */
const FILLED_MAX = 0.86;
/** Spacings are not drawn closer than this; plants are left out instead. */
const SPACING_SHARE_MIN = 0.75;
/** Tried in turn while single plants still find no room: three or six in a hundred closer is less than the eye sees. */
const CLOSER_SHARES = [1, 0.97, 0.94] as const;
/** Spacing counts as kept to this share: half an inch in two feet. */
const KEPT_SHARE = 0.98;
/** A hand's breadth off a wall's or line's room is not too near. */
const ROOM_SLACK_FT = 0.02;
/** What grows under a tree keeps so far from its trunk, besides half its own spacing (common practice, no source). */
const TRUNK_FT = 1;

type Row = LayoutRow & { readonly rooms: readonly number[] };

/** Feet from every barrier for a row's plants when grown: what it borders asks, and a quarter of the spacing from every edge. */
function rowRooms({ taxon, spacingFt }: Pick<LayoutRow, "taxon" | "spacingFt">, plan: GroundPlan, slackFt: number): number[] {
  const mature = { heightFt: rangeMiddle(taxon.heightFt), spreadFt: rangeMiddle(taxon.spreadFt) };
  return plan.barriers.map((barrier) => {
    const strict = barrier.kind !== "edge" || barrier.border.what === "street corner";
    const room = barrierRoomFt(barrier, taxon, mature) - (strict ? 0 : slackFt);
    return barrier.kind === "edge" ? Math.max(room, taxon.kind === "vine" ? 0.5 : Math.min(FILL_EDGE_SHARE.triangular * spacingFt, 2)) : Math.max(0, room);
  });
}

const siteFits = (site: Site, rooms: readonly number[]) => rooms.every((room, b) => (site.awayFt[b] ?? 0) >= room);

/** Rooms with the tolerance of a crown over an edge used only where nothing would fit without it. */
function rowWithRooms(row: LayoutRow, plan: GroundPlan, sites: readonly Site[]): Row {
  const strict = rowRooms(row, plan, 0);
  return { ...row, rooms: sites.some((site) => siteFits(site, strict)) ? strict : rowRooms(row, plan, 0.9 * EDGE_TOLERANCE_FT) };
}

/** Feet by which a place misses what it needs from barriers and from the other plants; 0 where all is kept. */
function placeMisses(at: Point, plant: RelaxPlant, others: readonly RelaxPlant[], places: readonly (Point | null)[], own: number, plan: GroundPlan): number {
  let worst = 0;
  for (const [j, other] of others.entries()) {
    const place = places[j];
    if (j === own || !place) continue;
    const need = KEPT_SHARE * pairNeedFt(plant, other);
    const [dx, dy] = [place[0] - at[0], place[1] - at[1]];
    if (dx * dx + dy * dy < need * need) worst = Math.max(worst, need - Math.sqrt(dx * dx + dy * dy));
  }
  for (const [b, barrier] of plan.barriers.entries()) {
    const room = plant.rooms[b] ?? 0;
    if (room > 0) worst = Math.max(worst, room - ROOM_SLACK_FT - barrierNearest(at, barrier).awayFt);
  }
  return pointInside(at, plan.outline) ? worst : Math.max(worst, 1);
}

/** What still misses its room is set on the nearest free site, the worst first; null where there is none. */
function placesRepaired(plants: readonly RelaxPlant[], relaxed: readonly Point[], sites: readonly Site[], plan: GroundPlan): (Point | null)[] {
  const places: (Point | null)[] = [...relaxed];
  const misses = plants.map((plant, i) => (plant.fixed ? 0 : placeMisses(relaxed[i] ?? plant.at, plant, plants, places, i, plan)));
  const order = misses.map((_, i) => i).filter((i) => (misses[i] ?? 0) > 0);
  order.sort((a, b) => (misses[b] ?? 0) - (misses[a] ?? 0) || a - b);
  for (const i of order) {
    const plant = plants[i];
    const at = places[i];
    if (!plant || !at || placeMisses(at, plant, plants, places, i, plan) === 0) continue;
    places[i] = null;
    const near = sites
      .filter((site) => siteFits(site, plant.rooms))
      .map((site) => ({ site, far: (site.at[0] - at[0]) ** 2 + (site.at[1] - at[1]) ** 2 }))
      .sort((a, b) => a.far - b.far);
    places[i] = near.find(({ site }) => placeMisses(site.at, plant, plants, places, i, plan) === 0)?.site.at ?? null;
  }
  return places;
}

function rowUnplaced(row: Row, sites: readonly Site[], quantity: number): Unplaced {
  if (!sites.some((site) => siteFits(site, row.rooms))) {
    const words = "No place in the bed is far enough from its edges, windows and lines for this plant when grown.";
    return { key: row.key, quantity, why: "nowhere allowed", words };
  }
  const plants = quantity === 1 ? "plant has" : "plants have";
  return { key: row.key, quantity, why: "no room", words: `${quantity} ${plants} no room at this spacing: fewer of them, a closer spacing or a larger bed.` };
}

const isTree = (taxon: LayoutTaxon) => taxonStratum(taxon) === "canopy trees";

/**
 * One arrangement of a plant list, the same for the same input and seed. Every plant that is placed has its spacing (times `spacingShare`, within 2 %) from
 * every other of its layer, and its room from walls, windows, walks and lines when grown; what has none is named in `unplaced`. A list that is too much for
 * the bed, or almost, is set closer, all plants alike, down to three quarters of the spacing.
 */
export function layoutFromSeed(given: LayoutInput, seed: number): Layout {
  const { plan, standpoint, fixed } = given;
  const input = { ...given, rows: given.rows.filter(({ quantity, spacingFt }) => quantity > 0 && spacingFt > 0) };
  const quantity = input.rows.reduce((sum, row) => sum + row.quantity, 0);
  const sites = layoutSites(plan, standpoint, Math.min(2500, Math.max(500, 4 * quantity)));
  const need = [...input.rows, ...fixed.map((plant) => ({ ...plant, quantity: 1 }))].reduce(
    (sum, row) => (isTree(row.taxon) ? sum : sum + row.quantity * plantCellSqFt(row.spacingFt, "triangular")),
    0,
  );
  const firstShare = Math.min(1, Math.sqrt((FILLED_MAX * plan.areaSqFt) / Math.max(need, 1e-9)));
  let best: Layout | null = null;
  for (const closer of CLOSER_SHARES) {
    const layout = layoutAtSpacing(input, sites, seed, Math.max(SPACING_SHARE_MIN, firstShare * closer));
    if (best === null || countOf(layout.unplaced) < countOf(best.unplaced)) best = layout;
    if (layout.spacingShare <= SPACING_SHARE_MIN || layout.unplaced.every(({ why }) => why !== "no room")) break;
  }
  return best ?? layoutAtSpacing(input, sites, seed, 1);
}

const countOf = (list: readonly { readonly quantity: number }[]) => list.reduce((sum, { quantity }) => sum + quantity, 0);

/** One arrangement with all spacings at one share of what was asked. */
function layoutAtSpacing({ plan, rows: wanted, fixed, standpoint }: LayoutInput, spread: Sites, seed: number, spacingShare: number): Layout {
  const random = seededRandom(seed);
  const { sites, middle } = spread;
  const quantity = countOf(wanted);
  const sized = wanted.map((row) => rowWithRooms({ ...row, spacingFt: row.spacingFt * spacingShare }, plan, sites));
  const openTo = (row: Row) => (site: Site) =>
    siteFits(site, row.rooms) &&
    fixed.every(({ at, spacingFt, taxon }) => {
      if (isTree(taxon) !== isTree(row.taxon)) return true;
      return Math.hypot(at[0] - site.at[0], at[1] - site.at[1]) >= (spacingFt * spacingShare + (isTree(taxon) ? row.spacingFt : 0)) / 2;
    });
  const groups = groupsPlaced(
    sized.map((row) => ({ ...row, fits: openTo(row) })),
    spread,
    standpoint,
    random,
  );
  const rowOf = new Map(sized.map((row) => [row.key, row]));
  const members = groups.flatMap(({ row, places }, group) => places.map((at) => ({ key: row.key, at, group, row: rowOf.get(row.key) })));
  const moving = members.map(
    ({ at, row }): RelaxPlant => ({ at, home: at, halfFt: (row?.spacingFt ?? 0) / 2, trunkFt: row && isTree(row.taxon) ? TRUNK_FT : null, fixed: false, rooms: row?.rooms ?? [] }),
  );
  const staying = fixed.map(
    ({ at, taxon, spacingFt }): RelaxPlant => ({ at, home: at, halfFt: (spacingFt * spacingShare) / 2, trunkFt: isTree(taxon) ? TRUNK_FT : null, fixed: true, rooms: [] }),
  );
  const plants = [...moving, ...staying];
  const places = placesRepaired(plants, plantsRelaxed(plants, plan), sites, plan);
  const placements = members.flatMap(({ key, group }, i) => {
    const at = places[i];
    return at ? [{ key, at, group }] : [];
  });
  const unplaced = sized.flatMap((row) => {
    const missing = row.quantity - placements.filter(({ key }) => key === row.key).length;
    return missing > 0 ? [rowUnplaced(row, sites, missing)] : [];
  });
  const standing: StandingPlant[] = placements.flatMap(({ key, at, group }) => {
    const row = rowOf.get(key);
    return row ? [{ key, at, group, taxon: row.taxon }] : [];
  });
  const all = [...standing, ...fixed.map(({ key, at, taxon }, i): StandingPlant => ({ key: `fixed ${key}`, at, taxon, group: -1 - i }))];
  const room = quantity === 0 ? 1 : (placements.length / quantity) * spacingShare;
  return { seed, placements, unplaced, spacingShare, score: layoutScore(all, standpoint, middle, frontExtentFt(plan, standpoint), room) };
}

/** Length of the bed across the line of sight; for an island its longest way. */
function frontExtentFt({ outline }: GroundPlan, standpoint: Standpoint): number {
  const across = (angle: number) => {
    const values = outline.map(([x, y]) => y * Math.cos(angle) - x * Math.sin(angle));
    return Math.max(...values) - Math.min(...values);
  };
  return standpoint.kind === "one side" ? across(standpoint.lookAngle) : Math.max(across(0), across(Math.PI / 2));
}

/** An arrangement for each seed, the best first. */
export function layoutsOffered(input: LayoutInput, seeds: readonly number[]): Layout[] {
  return seeds.map((seed) => layoutFromSeed(input, seed)).sort((a, b) => b.score.overall - a.score.overall || a.seed - b.seed);
}
