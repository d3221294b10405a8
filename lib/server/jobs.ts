// Jobs in the database.
import { z } from "zod";
import { MICROCLIMATES, WARMINGS_F } from "../place/microclimate";
import type { Place } from "../place/place";
import { NORMAL_SETTING } from "../place/setting";
import { SPRINGS } from "../place/spring";
import type { Targets } from "../season/interest";
import { bedCreate, bedsOfJob } from "./beds";
import { database } from "./database";
import type { Job as JobRecord } from "./generated/client";
import { newId } from "./identity";
import { type PlaceKey, placeFind } from "./places";

export type StoredJob = {
  readonly id: string;
  readonly name: string;
  readonly client: string;
  readonly address: string;
  readonly placeKey: PlaceKey;
  readonly targets: Targets;
  readonly demo: boolean;
  readonly version: number;
  readonly updatedAt: string;
  readonly archived: boolean;
};

/** What a job's setting may hold. Reading throws when a stored value is not what this program writes. */
export const settingInput = z.object({ microclimate: z.enum(MICROCLIMATES), warmingF: z.literal(WARMINGS_F), spring: z.enum(SPRINGS) });

function storedJob(r: JobRecord): StoredJob {
  return {
    id: r.id,
    name: r.name,
    client: r.client,
    address: r.address,
    placeKey: { zip: r.zip, town: r.town, state: r.state, lat: r.lat, lon: r.lon, elevationFt: r.elevationFt, zone: r.zoneByHand ? r.zone : null, ...settingInput.parse(r) },
    targets: { growing: r.growingTarget, winter: r.winterTarget },
    demo: r.demo,
    version: r.version,
    updatedAt: r.updatedAt.toISOString(),
    archived: r.archivedAt !== null,
  };
}

/** Jobs on the list, newest work first, with the number of their beds. */
export async function jobList(): Promise<(StoredJob & { readonly bedCount: number })[]> {
  const records = await database().job.findMany({
    where: { deletedAt: null },
    include: { _count: { select: { beds: { where: { deletedAt: null } } } } },
    orderBy: { updatedAt: "desc" },
  });
  return records.map((r) => ({ ...storedJob(r), bedCount: r._count.beds }));
}

export async function jobFind(id: string): Promise<StoredJob | null> {
  const record = await database().job.findFirst({ where: { id, deletedAt: null } });
  return record ? storedJob(record) : null;
}

const NOWHERE: Place = {
  zip: null,
  town: "",
  state: null,
  lat: null,
  lon: null,
  zone: null,
  zoneSource: null,
  zoneMap: null,
  climate: null,
  openClimate: null,
  setting: NORMAL_SETTING,
  warnings: [],
  fault: "Enter a ZIP code, or latitude and longitude.",
};

/** The job's place. A stored place that can no longer be found says so in its fault. */
export async function jobPlace(job: StoredJob): Promise<Place> {
  const answer = await placeFind(job.placeKey);
  return answer.kind === "place" ? answer.place : { ...NOWHERE, zip: job.placeKey.zip ?? null, town: job.placeKey.town ?? "", fault: answer.message };
}

export async function jobCreate(name: string, place: PlaceKey = {}, more: { client?: string; demo?: boolean } = {}): Promise<string> {
  const id = newId();
  await database().job.create({ data: { id, name, ...more, ...placeFields(place) } });
  return id;
}

function placeFields(place: PlaceKey) {
  return {
    zip: place.zip ?? null,
    town: place.town ?? "",
    state: place.state ?? null,
    lat: place.lat ?? null,
    lon: place.lon ?? null,
    elevationFt: place.elevationFt ?? null,
    zone: place.zone ?? null,
    zoneByHand: Boolean(place.zone),
    microclimate: place.microclimate ?? NORMAL_SETTING.microclimate,
    warmingF: place.warmingF ?? NORMAL_SETTING.warmingF,
    spring: place.spring ?? NORMAL_SETTING.spring,
  };
}

export type JobChange = { name?: string; client?: string; address?: string; place?: PlaceKey; targets?: Targets };

/** Changes a job's own fields. */
export async function jobChange(id: string, change: JobChange): Promise<void> {
  const { place, targets, ...fields } = change;
  await database().job.updateMany({
    where: { id },
    data: {
      ...fields,
      ...(place ? placeFields(place) : {}),
      ...(targets ? { growingTarget: targets.growing, winterTarget: targets.winter } : {}),
      version: { increment: 1 },
    },
  });
}

/** A copy with all its beds. @returns the copy's id, null when the job is gone */
export async function jobDuplicate(id: string): Promise<string | null> {
  const record = await database().job.findFirst({ where: { id, deletedAt: null } });
  if (!record) return null;
  const beds = await bedsOfJob(id);
  return database().$transaction(async (tx) => {
    const copy = newId();
    const {
      id: _id,
      name,
      demo: _demo,
      version: _version,
      createdAt: _created,
      updatedAt: _updated,
      archivedAt: _archived,
      deletedAt: _deleted,
      plantingOn: _planting,
      ...fields
    } = record;
    await tx.job.create({ data: { ...fields, id: copy, name: `${name} (copy)` } });
    for (const { bed } of beds) await bedCreate(copy, bed, tx);
    return copy;
  });
}

export async function jobArchive(id: string, archived: boolean): Promise<void> {
  await database().job.updateMany({ where: { id }, data: { archivedAt: archived ? new Date() : null } });
}

/** Deletes a job so that it can be restored. */
/** Deletes a job so that it can be restored. @returns why not, while plants are promised to it: they would stand promised to nobody; null when it is deleted */
export async function jobDelete(id: string): Promise<string | null> {
  return database().$transaction(async (tx) => {
    const { _sum } = await tx.reservation.aggregate({ where: { jobId: id }, _sum: { open: true } });
    const open = _sum.open ?? 0;
    if (open > 0) return `${open} plants are reserved for this job. Release them on its page “Plants for this job” first; then it can be deleted.`;
    await tx.job.updateMany({ where: { id }, data: { deletedAt: new Date() } });
    return null;
  });
}

export async function jobRestore(id: string): Promise<void> {
  await database().job.updateMany({ where: { id }, data: { deletedAt: null } });
}
