// How a plant is dug in the field: by hand or by which spade, how long it takes, how it is moved, and what speaks against digging it then.
import type { RootForm } from "../ground/nursery-size";
import { MONTH_STARTS } from "../plants/thirds";
import type { Flag } from "../plants/vocabulary";
import { dayText } from "../season/sentence";
import { digMethod, type RootBall } from "./root-ball";

export type DigPlan = {
  /** "by hand", "44 in tree spade", "by hand, bare root", "tree mover". */
  readonly method: string;
  /** A machine digs it: overhead lines and ground to drive on matter. */
  readonly byMachine: boolean;
  /** Minutes for one plant, dug and wrapped, from–to; null where nobody publishes any. */
  readonly minutes: readonly [low: number, high: number] | null;
  /** How it leaves the hole. */
  readonly moving: string;
};

/**
 * Minutes to dig and wrap by hand a ball of 24 in: 60–90 for one of about 2 ft in clay (a contractor's figure in a trade forum, lawnsite.com thread 60981, 2004).
 * Other balls by the cut face, which grows with the square of the diameter (derived).
 */
const HAND_MINUTES_24_IN = [60, 90] as const;
/** Minutes a plant by the spade's size, with basket and lacing (common practice, no source). */
const SPADE_MINUTES: Readonly<Record<string, readonly [number, number]>> = { "44 in tree spade": [10, 20], "60 in tree spade": [15, 30], "90 in tree spade": [25, 45] };
/** Bare root with a spade, by one plant (common practice, no source). */
const BARE_ROOT_MINUTES = [5, 15] as const;

/** How so many pounds are moved (limits are rated loads of usual machines: common practice, no source; look at the machine's own plate). */
export function movingTool(weightLb: number): string {
  if (weightLb <= 50) return "carried by one";
  if (weightLb <= 100) return "two people, or a ball cart";
  if (weightLb <= 1500) return "skid steer with forks or ball tongs";
  return weightLb <= 4000 ? "wheel loader or telehandler" : "crane or boom truck";
}

/** The plan for a plant with this ball, or for one dug bare root (ball null). */
export function digPlan(ball: Pick<RootBall, "diameterIn" | "weightLb"> | null): DigPlan {
  if (!ball) return { method: "by hand, bare root", byMachine: false, minutes: BARE_ROOT_MINUTES, moving: "carried by one, roots wet and covered" };
  const moving = movingTool(ball.weightLb);
  const method = digMethod(ball.diameterIn);
  if (method === null) return { method: "tree mover", byMachine: true, minutes: null, moving: "the tree mover's own machine" };
  if (method !== "by hand") return { method, byMachine: true, minutes: SPADE_MINUTES[method] ?? null, moving };
  const share = (ball.diameterIn / 24) ** 2;
  return { method, byMachine: false, minutes: [Math.ceil(HAND_MINUTES_24_IN[0] * share), Math.ceil(HAND_MINUTES_24_IN[1] * share)], moving };
}

/** The day of an ISO date, 1–365; 29 February folds into 28. */
export function isoDayOfYear(iso: string): number {
  const month = Number(iso.slice(5, 7));
  const date = Number(iso.slice(8, 10));
  return (MONTH_STARTS[month - 1] ?? 0) + (month === 2 ? Math.min(28, date) : date);
}

export type DigPlant = {
  readonly flags: readonly Flag[];
  /** When its leaves are out and gone at the place; null: evergreen. */
  readonly leaves: { readonly onDay: number; readonly offDay: number } | null;
};
/** From this day (1 August) digging is fall digging (common practice, no source). */
const FALL_FROM = 213;
/** New growth of evergreens is soft for so many days after the last freeze (common practice, no source). */
const SOFT_DAYS = 60;

/**
 * What speaks against digging a plant on a day, in plain words; none: nothing known. All common practice, no source; the fall-dig flag is the dataset's.
 * @param digOn ISO date, null: not set @param lastFreezeDay median last 32 °F, day of year
 */
export function digHazards(plant: DigPlant, root: RootForm, digOn: string | null, lastFreezeDay: number | null): string[] {
  const risky = plant.flags.includes("fall-dig-hazard");
  if (digOn === null)
    return [...(risky ? ["Fall-dig hazard: dig in spring before bud break."] : []), ...(root === "bare root" && plant.leaves ? ["Bare root only while it is dormant."] : [])];
  const day = isoDayOfYear(digOn);
  const hazards = risky && day >= FALL_FROM ? [`Fall-dig hazard: not to be dug for ${dayText(day)}. Dig in spring before bud break, or take one that is dug already.`] : [];
  const { leaves } = plant;
  if (leaves && day > leaves.onDay && day < leaves.offDay)
    hazards.push(
      `In leaf on ${dayText(day)} (about ${dayText(leaves.onDay)} to ${dayText(leaves.offDay)}): ${root === "bare root" ? "dig bare root only while it is dormant" : "dig it while dormant, or keep it shaded and watered until it has hardened off"}.`,
    );
  if (!leaves && lastFreezeDay !== null && day > lastFreezeDay && day < lastFreezeDay + SOFT_DAYS)
    hazards.push(`New growth is soft on ${dayText(day)}: wait until it has hardened, about ${dayText(lastFreezeDay + SOFT_DAYS)}.`);
  return hazards;
}

/** Cautions for everybody who digs these; local law goes before. */
export function digCautions(plans: readonly DigPlan[]): string[] {
  if (plans.length === 0) return [];
  const machine = plans.some(({ byMachine, moving }) => byMachine || /skid|loader|crane|boom/.test(moving));
  return [
    "Call 811 before digging, also in your own fields, and wait until the lines are marked. Irrigation, wells and other private lines are not marked by 811: find them first.",
    ...(machine
      ? ["Overhead lines: keep spade, boom and tree tops at least 10 ft away (more above 50 kV; OSHA 29 CFR 1926.1408, from memory). Keep people out from under a lifted ball."]
      : []),
    "Lift balls by the ball, never by the trunk. Weights are planning figures: wet clay is heavier. Look at the machine's rated load, and follow local law.",
  ];
}
