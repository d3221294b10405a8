import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TitleBlock } from "@/app/parts/title-block";
import { schedulePaper } from "@/lib/server/papers/job-papers";
import { PaperDownloads } from "../pull/paper-downloads";
import { PaperTable } from "../pull/paper-table";

type Props = { params: Promise<{ jobId: string }>; searchParams: Promise<{ bed?: string }> };
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Planting schedule" };

export default async function SchedulePage({ params, searchParams }: Props) {
  const { jobId } = await params;
  const { bed = null } = await searchParams;
  const shown = await schedulePaper(jobId, bed);
  if (!shown) notFound();
  const { paper, jobName, beds } = shown;
  const address = `/jobs/${jobId}/schedule`;
  return (
    <main id="main" className="sheet pull-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>{paper.title}</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{jobName}</Link> · {shown.bedName ?? "all beds"}
          </span>
        </div>
        <PaperDownloads address={`${address}/file`} query={{ bed }} />
      </div>
      {beds.length > 1 ? (
        <nav aria-label="Beds" className="row small screen-only paper-views">
          <Link href={address} aria-current={bed === null ? "page" : undefined}>
            Whole job
          </Link>
          {beds.map(({ id, name }) => (
            <Link key={id} href={`${address}?bed=${id}`} aria-current={bed === id ? "page" : undefined}>
              {name}
            </Link>
          ))}
        </nav>
      ) : null}
      <PaperTable paper={paper} />
      <div className="paper-notes small soft">
        {paper.notes.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
      <TitleBlock cells={paper.foot} />
    </main>
  );
}
