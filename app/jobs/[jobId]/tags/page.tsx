import type { Metadata } from "next";
import { headers } from "next/headers";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TAG_EACH, type Tag } from "@/lib/papers/tag-sheet";
import { jobTags, originOf } from "@/lib/server/papers/job-tags";
import { QUIET_MODULES, qrPath } from "@/lib/server/papers/qr-path";
import { BotanicalSegments } from "../pull/botanical-segments";
import { PaperDownloads } from "../pull/paper-downloads";
import "../pull/pull.css";
import "./tags.css";

type Props = { params: Promise<{ jobId: string }>; searchParams: Promise<{ bed?: string; each?: string }> };
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Tags" };

/** So many are shown; files hold all. */
const SHOWN = 24;
const EACH_WORDS = { group: "One a group", plant: "One a plant" } as const;

function TagCode({ text }: { text: string }) {
  const { size, d } = qrPath(text);
  const box = size + QUIET_MODULES * 2;
  return (
    <svg className="tag-code" viewBox={`${-QUIET_MODULES} ${-QUIET_MODULES} ${box} ${box}`} aria-hidden="true">
      <rect x={-QUIET_MODULES} y={-QUIET_MODULES} width={box} height={box} fill="#fff" />
      <path d={d} fill="#000" />
    </svg>
  );
}

function TagCard({ tag }: { tag: Tag }) {
  return (
    <li className="tag">
      <div className="tag-words">
        <p className="tag-plant">
          <BotanicalSegments segments={tag.plant.segments} /> <span className="common">{tag.plant.common}</span>
        </p>
        <p>
          <b>{[tag.size, tag.count].filter(Boolean).join(" · ")}</b>
        </p>
        <p>{tag.bed}</p>
        <p className="small soft">
          {tag.job} · {tag.place}
        </p>
      </div>
      <div>
        <TagCode text={tag.code} />
        <p className="tag-letter">{tag.letter}</p>
      </div>
    </li>
  );
}

export default async function TagsPage({ params, searchParams }: Props) {
  const { jobId } = await params;
  const { bed = null, each: wanted = null } = await searchParams;
  const found = await jobTags(jobId, bed, wanted, originOf(await headers()));
  if (!found) notFound();
  const { set, each, beds, paperJob } = found;
  const { tags, left } = set;
  const address = (change: Readonly<Record<string, string | null>>): string => {
    const query = Object.entries({ bed, each, ...change }).flatMap(([key, value]): [string, string][] => (value === null ? [] : [[key, value]]));
    return `/jobs/${jobId}/tags?${new URLSearchParams(query)}`;
  };
  return (
    <main id="main" className="sheet tags-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>Tags</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{paperJob.jobName}</Link> · {paperJob.bedName ?? "all beds"}
          </span>
        </div>
        {tags.length > 0 ? <PaperDownloads address={`/jobs/${jobId}/tags/file`} query={{ bed, each }} /> : null}
      </div>
      <nav aria-label="Which tags" className="row small screen-only paper-views">
        {TAG_EACH.map((one) => (
          <Link key={one} href={address({ each: one })} aria-current={one === each ? "page" : undefined}>
            {EACH_WORDS[one]}
          </Link>
        ))}
      </nav>
      {beds.length > 1 ? (
        <nav aria-label="Beds" className="row small screen-only paper-views">
          <Link href={address({ bed: null })} aria-current={bed === null ? "page" : undefined}>
            Whole job
          </Link>
          {beds.map(({ id, name }) => (
            <Link key={id} href={address({ bed: id })} aria-current={bed === id ? "page" : undefined}>
              {name}
            </Link>
          ))}
        </nav>
      ) : null}
      {tags.length === 0 ? (
        <p>No tags yet: plants added to the beds get theirs here, except those that stand there already.</p>
      ) : (
        <p className="screen-only">
          {tags.length.toLocaleString("en-US")} {tags.length === 1 ? "tag" : "tags"}, twelve a sheet, to be cut along the lines.{" "}
          {tags.length > SHOWN ? `The first ${SHOWN} are shown; the PDF holds all. ` : ""}
          {left > 0 ? `${left.toLocaleString("en-US")} more do not fit one file: print bed by bed. ` : ""}
          The code opens the plant's line of the pull list on a phone that reaches this program.
        </p>
      )}
      <ul className="tags">
        {tags.slice(0, SHOWN).map((tag) => (
          <TagCard key={tag.key} tag={tag} />
        ))}
      </ul>
    </main>
  );
}
