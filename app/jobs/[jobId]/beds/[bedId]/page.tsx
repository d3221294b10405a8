import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { placeLabel } from "@/lib/place/place";
import { settingWords } from "@/lib/place/setting";
import { NORMALS_PERIOD } from "@/lib/place/station";
import { zoneText } from "@/lib/place/zone";
import { bedContext } from "@/lib/server/bed-context";
import { bedsOfJob } from "@/lib/server/beds";
import { today } from "@/lib/server/today";
import { BedSheet } from "./bed-sheet";

type Params = { params: Promise<{ jobId: string; bedId: string }> };
export const dynamic = "force-dynamic";

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  const context = await bedContext((await params).bedId);
  return { title: context ? `${context.stored.bed.name}, ${context.job.job.name}` : "Bed not found" };
}

export default async function BedPage({ params }: Params) {
  const { jobId, bedId } = await params;
  const context = await bedContext(bedId);
  if (!context || context.stored.jobId !== jobId) notFound();
  const { stored, job, placed } = context;
  const beds = await bedsOfJob(jobId);
  const number = beds.findIndex((b) => b.id === bedId) + 1;
  const { place, viewPlace } = job;
  return (
    <BedSheet
      key={stored.id}
      stored={stored}
      placed={placed}
      job={{ id: jobId, name: job.job.name, targets: job.job.targets }}
      place={{
        ...viewPlace,
        label: placeLabel(place),
        zoneWords: place.zone === null ? "zone not set" : `zone ${zoneText(place.zone)}${place.zoneSource === "normals" ? ", estimated" : ""}`,
        dated: job.dated,
        fault: place.fault,
        settingWords: settingWords(place.setting),
      }}
      bedNumber={number}
      bedTotal={beds.length}
      others={beds.flatMap((b, i) => (b.id === bedId ? [] : [{ id: b.id, label: `${i + 1} ${b.bed.name}`, rows: b.bed.rows }]))}
      today={today()}
      period={NORMALS_PERIOD}
    />
  );
}
