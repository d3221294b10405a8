import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { placeLabel } from "@/lib/place/place";
import { zoneText } from "@/lib/place/zone";
import { bedContext } from "@/lib/server/bed-context";
import { bedsOfJob } from "@/lib/server/beds";
import { today } from "@/lib/server/today";
import "./drawing.css";
import { DrawingSheet } from "./drawing-sheet";

type Params = { params: Promise<{ jobId: string; bedId: string }> };
export const dynamic = "force-dynamic";

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  const context = await bedContext((await params).bedId);
  return { title: context ? `Drawing of ${context.stored.bed.name}, ${context.job.job.name}` : "Bed not found" };
}

export default async function DrawingPage({ params }: Params) {
  const { jobId, bedId } = await params;
  const context = await bedContext(bedId);
  if (!context || context.stored.jobId !== jobId) notFound();
  const { stored, job, placed } = context;
  const beds = await bedsOfJob(jobId);
  const { place, viewPlace } = job;
  return (
    <DrawingSheet
      key={stored.id}
      stored={stored}
      placed={placed}
      job={{ id: jobId, name: job.job.name, targets: job.job.targets }}
      place={{ ...viewPlace, label: placeLabel(place), zoneText: place.zone === null ? "not set" : zoneText(place.zone) }}
      bedNumber={beds.findIndex((b) => b.id === bedId) + 1}
      todayText={today().text}
    />
  );
}
