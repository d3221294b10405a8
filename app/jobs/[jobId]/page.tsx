import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TitleBlock } from "@/app/parts/title-block";
import { areaText } from "@/lib/ground/length";
import { placeLabel } from "@/lib/place/place";
import { NORMALS_PERIOD } from "@/lib/place/station";
import { zoneText } from "@/lib/place/zone";
import { halfMonthRuns } from "@/lib/season/half-months";
import { dayText } from "@/lib/season/sentence";
import { bedContexts } from "@/lib/server/bed-context";
import { jobContext } from "@/lib/server/job-context";
import { today } from "@/lib/server/today";
import { BedImport } from "./bed-import";
import { BedList } from "./bed-list";
import { JobHead } from "./job-head";
import { JobPapers } from "./job-papers";
import { StageLine } from "./stage-line";

type Params = { params: Promise<{ jobId: string }> };
export const dynamic = "force-dynamic";

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: (await jobContext((await params).jobId))?.job.name ?? "Job not found" };
}

export default async function JobPage({ params }: Params) {
  const { jobId } = await params;
  const context = await jobContext(jobId);
  if (!context) notFound();
  const { job, place, viewPlace } = context;
  const contexts = await bedContexts(context);
  const beds = contexts.map(({ stored, view }) => ({
    id: stored.id,
    name: stored.bed.name,
    area: areaText(view.areaSqFt),
    plants: view.rows.reduce((sum, r) => sum + (r.row.existing ? 0 : r.quantity), 0),
    kinds: view.rows.length,
    score: view.rows.length ? Math.round(view.season.score * 100) : null,
    bare: view.rows.length ? halfMonthRuns(view.season.gaps.map((g) => g.index)).join("; ") : "",
    fix: view.counts.fix,
    consider: view.counts.consider,
    halfMonths: view.season.halfMonths,
  }));
  const total = beds.reduce((sum, b) => sum + b.plants, 0);
  const label = placeLabel(place);
  const zone = place.zone === null ? "not set" : zoneText(place.zone);
  return (
    <main id="main" className="sheet">
      <JobHead id={job.id} name={job.name} client={job.client} address={job.address} />
      <ul className="facts">
        <li>
          <Link href={`/jobs/${job.id}/place`}>
            <b>{label}</b>
          </Link>
        </li>
        <li>
          zone <b>{zone}</b>
        </li>
        {context.dated && viewPlace.lastFreezeDay !== null && viewPlace.firstFreezeDay !== null ? (
          <li>
            last freeze <b>{dayText(viewPlace.lastFreezeDay)}</b>, first freeze <b>{dayText(viewPlace.firstFreezeDay)}</b>
          </li>
        ) : null}
        <li>
          <b>{total.toLocaleString("en-US")}</b> plants to pull
        </li>
      </ul>
      {place.fault ? (
        <p className="notice alert">
          {place.fault} <Link href={`/jobs/${job.id}/place`}>Set the place</Link>
        </p>
      ) : null}
      {place.warnings.map((warning) => (
        <p key={warning} className="notice">
          {warning} <Link href={`/jobs/${job.id}/place`}>To the place page</Link>
        </p>
      ))}
      <StageLine jobId={job.id} />
      {beds.length ? <JobPapers jobId={job.id} /> : null}
      <section aria-labelledby="beds-title">
        <div className="section-head">
          <h2 id="beds-title">Beds</h2>
          {total ? (
            <Link className="button" href={`/jobs/${job.id}/pull`}>
              Pull list of the whole job
            </Link>
          ) : null}
        </div>
        <BedList jobId={job.id} beds={beds} freezeDays={[viewPlace.lastFreezeDay, viewPlace.firstFreezeDay]} />
      </section>
      <BedImport jobId={job.id} />
      <TitleBlock
        cells={[
          ["Job", job.name],
          ["Client", job.client],
          ["Place", label],
          ["Zone", zone],
          ["Normals", NORMALS_PERIOD],
          ["Beds", String(beds.length)],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
