// How far a job is: the stages that the trade knows, in order, and what may follow what. Every step is a row with its day and who said so; going back is a row too.
import { plantsText } from "../nursery/count-words";
import { isIsoDate, isoDateText } from "./iso-date";

export const JOB_STAGES = ["design", "sold", "reserved", "pulled", "planted", "handed over"] as const;
export type JobStage = (typeof JOB_STAGES)[number];

export const STAGE_WORDS = {
  design: { name: "Design", step: "Back to design" },
  sold: { name: "Sold", step: "Sold" },
  reserved: { name: "Reserved", step: "Plants reserved" },
  pulled: { name: "Pulled", step: "Plants pulled" },
  planted: { name: "Planted", step: "Planted" },
  "handed over": { name: "Handed over", step: "Handed over" },
} as const satisfies Record<JobStage, { readonly name: string; readonly step: string }>;

/** A row of the job's history. `on`: ISO date. Rows come in the order in which they were said. */
export type StageRow = { readonly id: string; readonly stage: JobStage; readonly on: string; readonly who: string; readonly note: string };

/** What of a job's plants is done: whole plants that the design wants, of these promised (pulled ones included), and pulled. */
export type StagePlants = { readonly wanted: number; readonly promised: number; readonly pulled: number };

export const stageIndex = (stage: JobStage): number => JOB_STAGES.indexOf(stage);

/** Where the job stands: the latest row's stage; a job without rows is in design. */
export function stageNow(rows: readonly StageRow[]): JobStage {
  return rows.at(-1)?.stage ?? "design";
}

/** The row by which each stage up to the present one was reached last; stages that were skipped, gone back from, or are still to come have none. */
export function stagesReached(rows: readonly StageRow[]): ReadonlyMap<JobStage, StageRow> {
  const reached = new Map<JobStage, StageRow>();
  for (const row of rows) {
    for (const stage of JOB_STAGES.slice(stageIndex(row.stage) + 1)) reached.delete(stage);
    // Gone back to: the day on which the stage was first reached stays.
    if (!reached.has(row.stage)) reached.set(row.stage, row);
  }
  return reached;
}

/** Why a job cannot be said to have reached a stage, in plain words; null when it can. Plants that are missing are no reason but a warning (`stageWarning`). */
export function stageMoveFault(rows: readonly StageRow[], to: JobStage, on: string, note: string, plants: StagePlants, today: string): string | null {
  const now = stageNow(rows);
  if (to === now) return `This job is ${STAGE_WORDS[to].name.toLowerCase()} already.`;
  if (stageIndex(to) < stageIndex(now)) return note.trim() === "" ? "Say why it goes back, such as “client put it off to spring”." : null;
  if (to === "reserved" && plants.promised === 0) return "No plants are reserved for this job yet. Reserve them first, on the sheet Plants for this job.";
  return stageDateFault(rows, to, on, today);
}

/** Why a day cannot be that of a stage: it is not to come, not before the stage before it, nor after the one that follows. */
export function stageDateFault(rows: readonly StageRow[], stage: JobStage, on: string, today: string): string | null {
  if (!isIsoDate(on)) return "A date, such as 2027-04-15.";
  if (on > today) return `${isoDateText(on)} is still to come. Enter the day on which it was done.`;
  for (const [other, row] of stagesReached(rows)) {
    const name = STAGE_WORDS[other].name.toLowerCase();
    if (stageIndex(other) < stageIndex(stage) && row.on > on && other !== "design") return `The job was ${name} on ${isoDateText(row.on)}; this cannot be before it.`;
    if (stageIndex(other) > stageIndex(stage) && row.on < on) return `The job was ${name} on ${isoDateText(row.on)}; this cannot be after it.`;
  }
  return null;
}

/** What is not done yet although the stage says so; null where all is. */
export function stageWarning(to: JobStage, { wanted, promised, pulled }: StagePlants): string | null {
  const short = wanted - promised;
  const unpulled = wanted - pulled;
  if (to === "reserved" && short > 0) return `${plantsText(short)} of ${wanted.toLocaleString("en-US")} not reserved yet.`;
  if ((to === "pulled" || to === "planted" || to === "handed over") && unpulled > 0) return `${plantsText(unpulled)} of ${wanted.toLocaleString("en-US")} not pulled yet.`;
  return null;
}

/** `ready`: the plants say that it is time; it can be said all the same where they do not. */
export type StageOffer = { readonly stage: JobStage; readonly ready: boolean; readonly warning: string | null };

/** The next stages that may be said: the one that follows, and where that cannot be said yet (nothing is reserved) the one after. The last stage has none. */
export function stageOffers(now: JobStage, plants: StagePlants): readonly StageOffer[] {
  const offer = (stage: JobStage): StageOffer => {
    const warning = stageWarning(stage, plants);
    return { stage, ready: warning === null && !(stage === "reserved" && plants.promised === 0), warning };
  };
  const next = JOB_STAGES[stageIndex(now) + 1];
  if (!next) return [];
  if (next === "reserved" && plants.promised === 0) return [offer("pulled")];
  return [offer(next)];
}
