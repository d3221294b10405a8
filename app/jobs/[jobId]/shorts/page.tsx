import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TitleBlock } from "@/app/parts/title-block";
import { placeLabel } from "@/lib/place/place";
import { jobShorts } from "@/lib/server/job-shorts";
import { today } from "@/lib/server/today";
import { ConflictList } from "./conflict-list";
import { LookAgain } from "./look-again";
import { ShortCard } from "./short-card";
import "./shorts.css";

export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Short on the pull" };

export default async function ShortsPage({ params }: { params: Promise<{ jobId: string }> }) {
  const { jobId } = await params;
  const found = await jobShorts(jobId);
  if (!found) notFound();
  const { job, shorts, conflicts } = found;
  const missing = shorts.reduce((sum, short) => sum + short.missing, 0);
  return (
    <main id="main" className="sheet shorts-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>Short on the pull</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{job.job.name}</Link> · <Link href={`/jobs/${jobId}/pull`}>pull list</Link> · <Link href={`/jobs/${jobId}/pull/field`}>on the phone</Link>
          </span>
        </div>
        <LookAgain />
      </div>
      <ConflictList
        jobId={jobId}
        conflicts={conflicts.map(({ line, progress }) => ({ lineId: line.lineId, name: line.taxon.name, bedName: line.bedName, wanted: line.wanted, progress }))}
      />
      {shorts.length === 0 ? (
        <p>Nothing is short. What a crew records as short, damaged or swapped on the phone appears here at once, with plants that could stand there instead.</p>
      ) : (
        <p className="soft">
          Ranked by what the bed would lose: first the season that the missing plant carries, then its size, its look and where a substitute stands. Accepting one changes the bed's
          plant list, and with it its year and its findings.
        </p>
      )}
      {shorts.map((short) => (
        <ShortCard key={short.line.lineId} jobId={jobId} short={short} />
      ))}
      <TitleBlock
        cells={[
          ["Job", job.job.name],
          ["Place", placeLabel(job.place)],
          ["Lines short", String(shorts.length)],
          ["Plants short", String(missing)],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
