import type { Metadata } from "next";
import Link from "next/link";
import { WhoField } from "@/app/parts/who-field";
import { whoNow } from "@/app/who";
import { LOT_EVENT_KINDS } from "@/lib/nursery/lot-event";
import { lotEventsLatest } from "@/lib/server/lot-events";
import { LotHistory } from "../lot-history";
import "../nursery.css";

export const metadata: Metadata = { title: "Changes in the nursery" };
export const dynamic = "force-dynamic";

const SHOWN = 200;

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export default async function ChangesPage({ searchParams }: Props) {
  const { kind: asked } = await searchParams;
  const kind = LOT_EVENT_KINDS.find((known) => known === asked);
  const [events, who] = await Promise.all([lotEventsLatest(SHOWN, kind), whoNow()]);
  return (
    <main id="main" className="sheet nursery">
      <p className="small screen-only">
        <Link href="/nursery">Nursery</Link>
      </p>
      <div className="sheet-head spread">
        <h1>Changes in the nursery</h1>
        <WhoField who={who} />
      </div>
      <nav aria-label="Kinds of change" className="row small screen-only">
        <Link href="/nursery/changes" aria-current={kind ? undefined : "page"}>
          all
        </Link>
        {LOT_EVENT_KINDS.map((known) => (
          <Link key={known} href={`/nursery/changes?kind=${encodeURIComponent(known)}`} aria-current={known === kind ? "page" : undefined}>
            {known}
          </Link>
        ))}
      </nav>
      <section aria-label="What was changed">
        {events.length ? (
          <LotHistory
            events={events}
            about={(event) => (
              <Link href={`/nursery/lots/${event.lotId}`}>
                {event.taxonName}
                {event.size ? `, ${event.size}` : ""}:
              </Link>
            )}
          />
        ) : (
          <p>Nothing yet. Each count, move, write-off and promise is written here with who did it and when.</p>
        )}
        {events.length === SHOWN ? <p className="small soft">The latest {SHOWN} are shown; a lot’s own page has more of its history.</p> : null}
      </section>
    </main>
  );
}
