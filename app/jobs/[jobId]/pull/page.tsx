import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TitleBlock } from "@/app/parts/title-block";
import { PULL_VIEWS, type PullView, pullViewPaper } from "@/lib/server/papers/job-papers";
import { PaperDownloads } from "./paper-downloads";
import { PaperTable } from "./paper-table";
import "./pull.css";

type Props = { params: Promise<{ jobId: string }>; searchParams: Promise<{ bed?: string; view?: string }> };
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Pull list" };

const VIEW_WORDS = { place: "By place", dig: "To dig", buy: "To buy", kind: "Totals by kind" } as const satisfies Record<PullView, string>;

/** An address of this page with what is said in it. */
function pullAddress(jobId: string, bed: string | null, view: PullView | null): string {
  const query = new URLSearchParams([...(bed ? [["bed", bed]] : []), ...(view ? [["view", view]] : [])]);
  return `/jobs/${jobId}/pull${query.size > 0 ? `?${query}` : ""}`;
}

export default async function PullPage({ params, searchParams }: Props) {
  const { jobId } = await params;
  const { bed = null, view: wanted = null } = await searchParams;
  const shown = await pullViewPaper(jobId, bed, wanted);
  if (!shown) notFound();
  const { paper, view, jobName, bedName } = shown;
  return (
    <main id="main" className="sheet pull-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>{paper.title}</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{jobName}</Link>
            {bedName && bed ? (
              <>
                {" · "}
                <Link href={`/jobs/${jobId}/beds/${bed}`}>{bedName}</Link> · <Link href={pullAddress(jobId, null, view)}>whole job</Link>
              </>
            ) : (
              " · all beds"
            )}
          </span>
        </div>
        <PaperDownloads address={`/jobs/${jobId}/pull/file`} query={{ view, bed }} />
      </div>
      <nav aria-label="Lists" className="row small screen-only paper-views">
        {PULL_VIEWS.map((one) => (
          <Link key={one} href={pullAddress(jobId, bed, one)} aria-current={one === view ? "page" : undefined}>
            {VIEW_WORDS[one]}
          </Link>
        ))}
        <Link href={`/jobs/${jobId}/pull/field`}>On the phone</Link>
        <Link href={`/jobs/${jobId}/tags`}>Tags</Link>
        <Link href={`/jobs/${jobId}/loads`}>Loads</Link>
      </nav>
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
