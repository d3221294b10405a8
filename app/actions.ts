"use server";

import { revalidatePath } from "next/cache";
import { redirect } from "next/navigation";
import { z } from "zod";
import { EMPTY_BED } from "@/lib/ground/bed";
import { BED_FILE_MAX } from "@/lib/papers/bed-file";
import { bedImport } from "@/lib/server/bed-import";
import { bedCreate, bedDelete, bedMove, bedRestore } from "@/lib/server/beds";
import { jobArchive, jobChange, jobCreate, jobDelete, jobDuplicate, jobFind, jobRestore, settingInput } from "@/lib/server/jobs";
import { placeFind } from "@/lib/server/places";

/** What a form is told: nothing, or which field is wrong and why. */
export type FormAnswer = { readonly field: string; readonly message: string } | null;

const name = z.string().trim().min(1, "A name is wanted, such as Clinic entrance garden.").max(120, "At most 120 characters.");
const zip = z.string().trim();

function firstFault(error: z.ZodError): FormAnswer {
  const issue = error.issues[0];
  return { field: String(issue?.path[0] ?? ""), message: issue?.message ?? "Cannot be read." };
}

export async function jobCreateAction(_before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const parsed = z.object({ name, zip, client: z.string().trim().max(120) }).safeParse(Object.fromEntries(form));
  if (!parsed.success) return firstFault(parsed.error);
  const wanted = parsed.data.zip || null;
  if (wanted) {
    const answer = await placeFind({ zip: wanted });
    if (answer.kind === "fault") return { field: "zip", message: answer.message };
  }
  const id = await jobCreate(parsed.data.name, { zip: wanted }, { client: parsed.data.client });
  redirect(`/jobs/${id}`);
}

export async function jobChangeAction(id: string, change: unknown): Promise<FormAnswer> {
  const parsed = z.object({ name: name.optional(), client: z.string().max(120).optional(), address: z.string().max(300).optional() }).safeParse(change);
  if (!parsed.success) return firstFault(parsed.error);
  await jobChange(id, parsed.data);
  revalidatePath("/", "layout");
  return null;
}

export async function jobDuplicateAction(id: string): Promise<void> {
  const copy = await jobDuplicate(id);
  redirect(copy ? `/jobs/${copy}` : "/");
}

export async function jobArchiveAction(id: string, archived: boolean): Promise<void> {
  await jobArchive(id, archived);
  revalidatePath("/");
}

/** @returns why the job was not deleted; null when it was */
export async function jobDeleteAction(id: string): Promise<string | null> {
  const why = await jobDelete(id);
  revalidatePath("/");
  return why;
}

export async function jobRestoreAction(id: string): Promise<void> {
  await jobRestore(id);
  revalidatePath("/");
}

export async function bedCreateAction(jobId: string): Promise<void> {
  if (!(await jobFind(jobId))) redirect("/");
  const id = await bedCreate(jobId, EMPTY_BED);
  redirect(`/jobs/${jobId}/beds/${id}`);
}

export async function bedDeleteAction(id: string): Promise<void> {
  await bedDelete(id);
  revalidatePath("/jobs/[jobId]", "page");
}

export async function bedRestoreAction(id: string): Promise<void> {
  await bedRestore(id);
  revalidatePath("/jobs/[jobId]", "page");
}

export async function bedMoveAction(id: string, step: -1 | 1): Promise<void> {
  await bedMove(id, step);
  revalidatePath("/jobs/[jobId]", "page");
}

/** Imports a bed file into a job: whole or not at all. */
export async function bedImportAction(jobId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const file = form.get("file");
  if (!(file instanceof File) || file.size === 0) return { field: "file", message: "Choose a bed file first: one saved from a bed's page, ending in .bed.json." };
  if (file.size > BED_FILE_MAX) return { field: "file", message: `${(file.size / 1e6).toFixed(1)} MB is no bed file: at most 2 MB are read.` };
  const answer = await bedImport(jobId, await file.text());
  if (answer.kind === "fault") return { field: answer.field, message: `${answer.field}: ${answer.message}` };
  redirect(`/jobs/${jobId}/beds/${answer.bedId}`);
}

const optionalNumber = (words: string, min: number, max: number) =>
  z
    .string()
    .trim()
    .transform((text) => (text === "" ? null : Number(text.replace(/,/g, ""))))
    .refine((n) => n === null || (n >= min && n <= max), words);

const placeForm = z.object({
  zip: z.string().trim(),
  town: z.string().trim().max(80),
  lat: optionalNumber("Latitude in degrees north, such as 44.48.", -90, 90),
  lon: optionalNumber("Longitude in degrees, west negative, such as -73.22.", -180, 180),
  elevationFt: optionalNumber("Elevation in feet, between −282 and 20,310.", -282, 20310),
  zone: z.string().trim(),
  microclimate: settingInput.shape.microclimate,
  warmingF: z.coerce.number().pipe(settingInput.shape.warmingF),
  spring: settingInput.shape.spring,
  growing: optionalNumber("A share from 0 to 100 %.", 0, 100),
  winter: optionalNumber("A share from 0 to 100 %.", 0, 100),
});

/** Sets a job's place and targets; everything of the job is dated anew. */
export async function placeChangeAction(jobId: string, _before: FormAnswer, form: FormData): Promise<FormAnswer> {
  const parsed = placeForm.safeParse(Object.fromEntries(form));
  if (!parsed.success) return firstFault(parsed.error);
  const { growing, winter, zip: typedZip, zone, ...rest } = parsed.data;
  const place = { ...rest, zip: typedZip || null, zone: zone || null };
  const answer = await placeFind(place);
  if (answer.kind === "fault") return { field: answer.field, message: answer.message };
  await jobChange(jobId, { place, targets: { growing: (growing ?? 27) / 100, winter: (winter ?? 20) / 100 } });
  revalidatePath("/jobs/[jobId]", "layout");
  const { fault } = answer.place;
  return {
    field: "",
    message: fault ? `Saved, but: ${fault} Until then the beds show the year of the reference climate, Wooster, Ohio.` : "Saved. Every bed of this job is dated anew.",
  };
}
