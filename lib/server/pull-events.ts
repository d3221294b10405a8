// What was done about the lines of a pull list, as phones and the office send it. Events are only added, each once by its id, so that a phone may send again what it is not sure of.
import { z } from "zod";
import { PULL_EVENT_KINDS, type PullEvent } from "../pulls/pull-progress";
import { database, type Transaction } from "./database";
import type { PullEvent as EventRecord } from "./generated/client";
import { stockAfterEvent } from "./pull-stock";
import { stockTransaction } from "./stock-transaction";

/** An event with what the database adds to it. A photograph's data is the address where it can be had. */
export type StoredPullEvent = PullEvent & { readonly jobId: string; readonly receivedAt: string; readonly settled: boolean };

const PHOTO_MAX = 1_500_000;
const EVENTS_MAX = 500;

export const pullEventInput = z
  .object({
    id: z.string().regex(/^[\w-]{8,64}$/, "An id of letters, digits and dashes."),
    lineId: z.string().min(1).max(140),
    kind: z.enum(PULL_EVENT_KINDS),
    quantity: z.int("A whole number of plants.").min(-10_000).max(10_000).default(0),
    note: z.string().trim().max(500, "At most 500 characters.").default(""),
    data: z.string().max(PHOTO_MAX, "The picture is too large.").default(""),
    who: z.string().trim().max(60).default(""),
    doneAt: z.iso.datetime(),
    /** Events of the line that whoever did this knew of, with those waiting on the same phone before it. */
    knew: z.int().min(0).max(1_000_000),
  })
  .refine((e) => e.kind !== "photo" || /^data:image\/(?:jpeg|png|webp);base64,[A-Za-z0-9+/=]+$/.test(e.data), { path: ["data"], message: "A picture is a JPEG, PNG or WebP." });
export type PullEventInput = z.infer<typeof pullEventInput>;

export type ReceiveAnswer = { readonly kind: "received"; readonly added: number; readonly conflicts: number } | { readonly kind: "fault"; readonly message: string };

function storedEvent(record: EventRecord): StoredPullEvent {
  const kind = z.enum(PULL_EVENT_KINDS).parse(record.kind);
  return {
    id: record.id,
    jobId: record.jobId,
    lineId: record.lineId,
    kind,
    quantity: record.quantity,
    note: record.note,
    data: kind === "photo" ? `/jobs/${record.jobId}/pull/field/photo/${record.id}` : record.data,
    who: record.who,
    doneAt: record.doneAt.toISOString(),
    receivedAt: record.receivedAt.toISOString(),
    conflict: record.conflict && record.settledAt === null,
    settled: record.settledAt !== null,
  };
}

/** Everything done about a job's lines, in the order it came. Pictures come as addresses. */
export async function pullEventsOfJob(jobId: string, tx: Transaction = database()): Promise<StoredPullEvent[]> {
  const [told, pictures] = await Promise.all([
    tx.pullEvent.findMany({ where: { jobId, kind: { not: "photo" } } }),
    tx.pullEvent.findMany({ where: { jobId, kind: "photo" }, omit: { data: true } }),
  ]);
  return [...told, ...pictures.map((picture) => ({ ...picture, data: "" }))].map(storedEvent).sort((a, b) => a.receivedAt.localeCompare(b.receivedAt) || a.id.localeCompare(b.id));
}

async function eventAdded(tx: Transaction, jobId: string, event: PullEventInput): Promise<"added" | "known" | "conflict"> {
  if (await tx.pullEvent.findUnique({ where: { id: event.id }, select: { id: true } })) return "known";
  const before = await tx.pullEvent.count({ where: { jobId, lineId: event.lineId } });
  const fits = await stockAfterEvent(tx, jobId, event);
  const conflict = event.quantity !== 0 && (before > event.knew || !fits);
  await tx.pullEvent.create({ data: { ...event, jobId, doneAt: new Date(event.doneAt), conflict } });
  return conflict ? "conflict" : "added";
}

/**
 * Takes events from a phone: all of them or, where one cannot be read, none. What came before is passed over. An event that somebody else's crossed, or
 * for which the lot had too few plants, is kept and marked as a conflict: nothing a person has recorded is lost.
 * @param untrusted a list of PullEventInput
 */
export async function pullEventsReceive(jobId: string, untrusted: unknown): Promise<ReceiveAnswer> {
  const parsed = z.array(pullEventInput).max(EVENTS_MAX, `At most ${EVENTS_MAX} at once.`).safeParse(untrusted);
  if (!parsed.success) {
    const issue = parsed.error.issues[0];
    return { kind: "fault", message: `${issue?.path.join(" ") || "The list"}: ${issue?.message ?? "cannot be read."}` };
  }
  if (!(await database().job.findFirst({ where: { id: jobId, deletedAt: null }, select: { id: true } }))) return { kind: "fault", message: "This job is no longer there." };
  return stockTransaction(async (tx): Promise<ReceiveAnswer> => {
    const outcomes: string[] = [];
    for (const event of parsed.data) outcomes.push(await eventAdded(tx, jobId, event));
    return { kind: "received", added: outcomes.filter((o) => o !== "known").length, conflicts: outcomes.filter((o) => o === "conflict").length };
  });
}

/** Marks a conflict as looked at. */
export async function pullConflictSettle(jobId: string, lineId: string): Promise<void> {
  await database().pullEvent.updateMany({ where: { jobId, lineId, conflict: true, settledAt: null }, data: { settledAt: new Date() } });
}

/** A line's picture; null when there is none of that id. */
export async function pullPhoto(jobId: string, id: string): Promise<{ readonly mime: string; readonly bytes: Uint8Array } | null> {
  const record = await database().pullEvent.findFirst({ where: { jobId, id, kind: "photo" }, select: { data: true } });
  const match = /^data:(image\/(?:jpeg|png|webp));base64,(.+)$/.exec(record?.data ?? "");
  return match?.[1] && match[2] ? { mime: match[1], bytes: Uint8Array.from(Buffer.from(match[2], "base64")) } : null;
}
