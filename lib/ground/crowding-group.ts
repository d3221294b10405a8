// Crowding told as a person would tell it: not pair by pair, but which rows of the list crowd which, or what they crowd, and from when.
import { borderText } from "./border";
import type { Crowding } from "./crowding";
import type { Barrier, GroundPlan } from "./ground-plan";
import { lengthText } from "./length";
import type { GrownPlant } from "./plan-plant";

export type CrowdingGroup = {
  /** The same for the same rows and the same thing crowded. */
  readonly id: string;
  /** One row that crowds itself or a barrier, or two that crowd each other: keys of their plants, in the order of `rowOrder`. */
  readonly rows: readonly string[];
  /** "the house wall"; null where plants crowd plants. */
  readonly against: string | null;
  /** Grown into it, or near it, someone may come to harm or a rule be broken: windows, lines overhead and underground, street corners. */
  readonly safety: boolean;
  /** The first year in which any of them overlap more than is tolerated. */
  readonly year: number;
  /** The most that any of them is over its room at 20 years. */
  readonly overFt: number;
  /** Soonest first. */
  readonly members: readonly Crowding[];
  /** Plants that take part, each once. */
  readonly plantIds: readonly string[];
};

/** What a plant stands too near to, as a sentence has it. */
export function barrierText(barrier: Barrier): string {
  switch (barrier.kind) {
    case "edge":
      return barrier.border.what === "retaining wall" ? `the ${barrier.border.bedAt} of the retaining wall` : borderText(barrier.border);
    case "window":
      return `the window with its sill at ${lengthText(barrier.window.sillFt)}`;
    case "thing":
      return `the ${barrier.thing.what}`;
  }
}

function barrierIsSafety(barrier: Barrier): boolean {
  if (barrier.kind === "window") return true;
  if (barrier.kind === "edge") return barrier.border.what === "street corner";
  return barrier.thing.what === "overhead line" || barrier.thing.what === "buried line";
}

/** Ids of the plants of one crowding. */
export const crowdingIds = (one: Crowding): readonly string[] => (one.kind === "pair" ? one.ids : [one.id]);

/**
 * The crowding of a drawing by rows of the list and by what is crowded, the soonest group first.
 * @param rowOrder keys of the rows as the list has them; a pair is told in that order
 */
export function crowdingGroups(crowding: readonly Crowding[], plants: readonly GrownPlant[], plan: GroundPlan, rowOrder: readonly string[]): CrowdingGroup[] {
  const keys = new Map(plants.map(({ id, key }) => [id, key]));
  const turn = new Map(rowOrder.map((key, i) => [key, i]));
  const groups = new Map<string, { rows: string[]; against: string | null; safety: boolean; members: Crowding[] }>();
  for (const one of crowding) {
    const rows = [...new Set(crowdingIds(one).flatMap((id) => keys.get(id) ?? []))].sort((a, b) => (turn.get(a) ?? 0) - (turn.get(b) ?? 0));
    const barrier = one.kind === "barrier" ? plan.barriers[one.barrier] : undefined;
    const against = barrier ? barrierText(barrier) : null;
    const id = [...rows, against ?? ""].join(" · ");
    const group = groups.get(id) ?? { rows, against, safety: barrier ? barrierIsSafety(barrier) : false, members: [] };
    group.members.push(one);
    groups.set(id, group);
  }
  const found = [...groups].map(([id, group]): CrowdingGroup => {
    const members = [...group.members].sort((a, b) => a.year - b.year || b.overFt - a.overFt);
    return {
      ...group,
      id,
      members,
      year: members[0]?.year ?? 0,
      overFt: Math.max(...members.map(({ overFt }) => overFt)),
      plantIds: [...new Set(members.flatMap(crowdingIds))],
    };
  });
  return found.sort((a, b) => a.year - b.year || Number(b.safety) - Number(a.safety) || b.overFt - a.overFt || (a.id < b.id ? -1 : 1));
}
