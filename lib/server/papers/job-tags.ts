// The tags of a job.
import { z } from "zod";
import type { PaperJob } from "../../papers/paper-pull";
import { lineAddress, TAG_EACH, type TagEach, type TagSet, tagSet } from "../../papers/tag-sheet";
import { jobPullSheet } from "../job-pull-sheet";
import { sheetPaperJob } from "./job-papers";

export type JobTags = {
  readonly paperJob: PaperJob;
  readonly each: TagEach;
  readonly beds: readonly { readonly id: string; readonly name: string }[];
  readonly set: TagSet;
};

/** Where a phone finds the program: the address by which this page was asked for. */
export function originOf(headers: Pick<Headers, "get">): string {
  const host = headers.get("x-forwarded-host") ?? headers.get("host") ?? "localhost";
  return `${headers.get("x-forwarded-proto")?.split(",")[0] ?? "http"}://${host}`;
}

/** Tags of a job or one of its beds; null when either is gone. @param each "plant" or "group" @param origin of the addresses in the codes */
export async function jobTags(jobId: string, bedId: string | null, each: string | null, origin: string): Promise<JobTags | null> {
  const found = await jobPullSheet(jobId, bedId);
  if (!found || (bedId !== null && !found.beds.some(({ id }) => id === bedId))) return null;
  const by = z.enum(TAG_EACH).catch("group").parse(each);
  return { paperJob: sheetPaperJob(found, bedId), each: by, beds: found.beds, set: tagSet(found.sheet, found.job.name, by, (lineId) => lineAddress(origin, jobId, lineId)) };
}
