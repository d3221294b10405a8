import { type CrowdingGroup, crowdingGroups } from "../ground/crowding-group";
import { barrierNearest } from "../ground/ground-plan";
import { lengthText } from "../ground/length";
import { pointInOutline } from "../ground/outline";
import { taxonStratum } from "../ground/stratum";
import { type Check, type CheckContext, type CheckedRow, rowFinding, SEVERITIES, type Severity } from "./finding";
import { spacing } from "./spacing";

/** Crowding that begins so soon was drawn in. */
const SOON_YEARS = 3;
/** Crowding that begins within so many years will be seen by the client; after it, as plants that are full grown by then, it is known and accepted. */
const SEEN_YEARS = 10;
/** Nobody sets a plant more exactly than this, nor sees it (common practice, no source): shown in the drawing's list, not told as a finding. */
const TOLD_FROM_FT = 0.25;
/** From so many feet too close, herbs do not merely knit together but smother each other. Judgement, no source. */
const HERBS_KNIT_FT = 0.75;

const isHerb = (r: CheckedRow) => taxonStratum(r.taxon) === "herbs and groundcover";

/** Herbs are lifted and divided every few years, so that their knitting together is a chore, not a fault: one step milder. */
function groupSeverity(group: CrowdingGroup, rows: readonly CheckedRow[]): Severity {
  if (group.safety) return "fix";
  const grownYears = Math.max(SEEN_YEARS, ...rows.map((r) => r.taxon.matureYears));
  const plain: Severity = group.year <= SOON_YEARS ? "fix" : group.year <= grownYears ? "consider" : "note";
  const knits = group.against === null && rows.every(isHerb) && group.overFt < HERBS_KNIT_FT;
  return knits ? (SEVERITIES[SEVERITIES.indexOf(plain) + 1] ?? "note") : plain;
}

const begins = (year: number) => (year === 0 ? "from planting day" : year === 1 ? "in the first season" : `from year ${year}`);
const plantsText = (count: number) => (count === 1 ? "1 plant" : `${count} plants`);

function message(group: CrowdingGroup, rows: readonly CheckedRow[]): string {
  const [, other] = rows;
  const room = `up to ${lengthText(group.overFt)} more than they have room for`;
  if (group.against !== null) {
    const alone = group.plantIds.length === 1;
    const grown = `${plantsText(group.plantIds.length)} on the drawing ${alone ? "grows" : "grow"} against ${group.against} ${begins(group.year)}`;
    return `${grown}, up to ${lengthText(group.overFt)} too near when grown. Move ${alone ? "it" : "them"} away or take a smaller plant.`;
  }
  const pairs = group.members.length === 1 ? "" : ` (${group.members.length} pairs)`;
  if (!other) return `${plantsText(group.plantIds.length)} on the drawing press each other ${begins(group.year)}${pairs}, ${room}. Set them farther apart or leave some out.`;
  const name = `${other.letter} ${other.taxon.name}`;
  return `presses ${name} on the drawing ${begins(group.year)}${pairs}, ${room}. Move one, leave one out or take a smaller plant.`;
}

/** Whether the spacing check already says that a row is set too close; then its plants pressing each other is no news. */
const saidBySpacing = (r: CheckedRow, context: CheckContext) => spacing.look({ ...context, rows: [r] }).some(({ severity }) => severity !== "note");

/** Plants of the drawing that will be in each other's way, or in the way of a wall, window, walk or line: one finding for each two rows, or row and border. */
export const crowding: Check = {
  id: "crowding",
  look: (context) => {
    if (!context.drawn) return [];
    const { crowding: found, plants, plan } = context.drawn;
    const rowOf = new Map(context.rows.map((r) => [r.row.id, r]));
    return crowdingGroups(found, plants, plan, [...rowOf.keys()]).flatMap((group) => {
      // What stands there already is nobody's mistake: the finding is the new plant's.
      const rows = group.rows.flatMap((key) => rowOf.get(key) ?? []).sort((a, b) => Number(a.row.existing) - Number(b.row.existing));
      const [first] = rows;
      if (!first || rows.length < group.rows.length || (group.overFt < TOLD_FROM_FT && !group.safety)) return [];
      if (group.against === null && rows.length === 1 && saidBySpacing(first, context)) return [];
      return [rowFinding(first, groupSeverity(group, rows), message(group, rows))];
    });
  },
};

/** Cautions that go with lines and corners on the drawing, whether or not a plant is near them. They defer to utility and local code. */
export const lines: Check = {
  id: "lines",
  look: ({ borders }) => {
    const said: string[] = [];
    const has = (what: string) => borders.has(what);
    if (has("buried line"))
      said.push(
        "A buried line crosses the drawing: call 811 a few working days before anyone digs, and dig by hand at the marks. The drawing shows where it was thought to be, not where it is.",
      );
    if (has("overhead line"))
      said.push("An overhead line crosses the drawing: ask the utility what clearance it wants before tall plants, ladders or a loader come near. Treat every wire as live.");
    if (has("street corner"))
      said.push("The bed lies at a street corner: the sight triangle of the local ordinance goes before the figures on the drawing; ask for it before planting.");
    return said.map((words) => ({ severity: "note" as const, rowId: null, plant: null, message: words, remedy: null }));
  },
};

/** Thorny plants from a public walk (Ogden UT code); stated as one city's figure, the local code goes before. */
export const THORNS_FROM_WALK_FT = 10;

/** Thorny plants of the drawing near a walk that the bed borders. */
export const thorns: Check = {
  id: "thorns",
  look: ({ drawn, rows }) => {
    const walks = drawn?.plan.barriers.filter((barrier) => barrier.kind === "edge" && barrier.border.what === "walk") ?? [];
    if (!drawn || walks.length === 0) return [];
    return rows.flatMap((r) => {
      if (r.row.existing || !r.taxon.flags.includes("thorns")) return [];
      const away = drawn.plants.filter(({ key }) => key === r.row.id).map(({ at }) => Math.min(...walks.map((walk) => barrierNearest(at, walk).awayFt)));
      const near = away.filter((feet) => feet < THORNS_FROM_WALK_FT);
      if (near.length === 0) return [];
      const stand = `${plantsText(near.length)} on the drawing ${near.length === 1 ? "stands" : "stand"}`;
      const rule = `Ogden UT asks for ${THORNS_FROM_WALK_FT} ft from public walks; the local code decides`;
      return [
        rowFinding(
          r,
          "consider",
          `is thorny, and ${stand} within ${THORNS_FROM_WALK_FT} ft of the walk, ${near.length === 1 ? "at" : "the nearest at"} ${lengthText(Math.min(...near))}. ${rule}. Set it back or take a plant without thorns.`,
        ),
      ];
    });
  },
};

/** Plants left outside the bed when its outline was drawn anew: they are counted and pulled, but cover nothing of it. */
export const outside: Check = {
  id: "outside",
  look: ({ drawn, rows }) =>
    rows.flatMap((r) => {
      const out = drawn?.plants.filter(({ key, at }) => key === r.row.id && !pointInOutline(at, drawn.plan.outline)).length ?? 0;
      if (out === 0 || r.row.existing) return [];
      const them = out === 1 ? "it" : "them";
      return [rowFinding(r, "fix", `has ${plantsText(out)} outside the bed on the drawing. Move ${them} in, or take ${them} out.`)];
    }),
};
