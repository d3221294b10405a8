import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { TitleBlock } from "@/app/parts/title-block";
import { LOAD_CAUTIONS, loadName } from "@/lib/papers/paper-loads";
import type { TruckLoad } from "@/lib/pulls/loads";
import { jobLoads } from "@/lib/server/papers/job-loads";
import { PaperDownloads } from "../pull/paper-downloads";
import { PaperTable } from "../pull/paper-table";
import { BedOrder } from "./bed-order";
import { DeckPlan } from "./deck-plan";
import "./loads.css";

type Props = { params: Promise<{ jobId: string }>; searchParams: Promise<{ beds?: string; bought?: string }> };
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Loads" };

const pounds = (lb: number): string => Math.round(lb).toLocaleString("en-US");

function ShareBar({ words, share }: { words: string; share: number }) {
  return (
    <div className="share">
      <span>{words}</span>
      <span className="share-track" aria-hidden="true">
        <span className={share > 0.9 ? "share-fill full" : "share-fill"} style={{ width: `${Math.min(100, share * 100)}%` }} />
      </span>
    </div>
  );
}

function LoadView({ load, marks }: { load: TruckLoad; marks: ReadonlyMap<string, string> }) {
  const share = load.weightLb / load.by.payloadLb;
  return (
    <section className="load" aria-label={loadName(load)}>
      <h2>{loadName(load)}</h2>
      <div className="shares small">
        <ShareBar words={`${pounds(load.weightLb)} of ${pounds(load.by.payloadLb)} lb payload, ${Math.round(share * 100)} %`} share={share} />
        <ShareBar words={`deck ${Math.round(load.deckShare * 100)} % full`} share={load.deckShare} />
      </div>
      <DeckPlan load={load} marks={marks} />
      {load.cautions.length > 0 ? (
        <ul className="small load-cautions">
          {load.cautions.map((caution) => (
            <li key={caution}>{caution}</li>
          ))}
        </ul>
      ) : null}
    </section>
  );
}

export default async function LoadsPage({ params, searchParams }: Props) {
  const { jobId } = await params;
  const { beds: order = null, bought = null } = await searchParams;
  const loads = await jobLoads(jobId, { beds: order, bought });
  if (!loads) notFound();
  const { paper, plan, trucks, beds } = loads;
  const marks = new Map([...loads.lines.values()].map((line) => [line.lineId, `${beds.length > 1 ? beds.findIndex(({ id }) => id === line.bedId) + 1 : ""}${line.letter}`]));
  const address = `/jobs/${jobId}/loads`;
  return (
    <main id="main" className="sheet pull-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>Loads</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{loads.jobName}</Link> · <Link href="/nursery/trucks">trucks</Link>
          </span>
        </div>
        {trucks.length > 0 ? <PaperDownloads address={`${address}/file`} query={{ beds: order, bought }} /> : null}
      </div>
      {trucks.length === 0 ? (
        <p className="notice">
          No truck is named yet. <Link href="/nursery/trucks">Add the trucks of the firm</Link>, with payload and deck, and the loads are worked out here.
        </p>
      ) : (
        <>
          <BedOrder address={address} beds={beds} bought={bought} />
          {loads.hasBought ? (
            <p className="small screen-only">
              {loads.withBought ? "Plants from suppliers ride along. " : "Plants from suppliers are delivered to the site. "}
              <Link href={`${address}?${new URLSearchParams({ ...(order ? { beds: order } : {}), ...(loads.withBought ? { bought: "0" } : {}) })}`}>
                {loads.withBought ? "They are delivered to the site" : "They ride along"}
              </Link>
            </p>
          ) : null}
          {plan.loads.map((load, index) => (
            <LoadView key={`${load.truck}${index}`} load={load} marks={marks} />
          ))}
          {plan.loads.length > 0 ? (
            <p className="small soft deck-key">
              To scale, from above. {beds.length > 1 ? "The number is the bed's turn in planting, the letter its key. " : "The letter is the key of the bed's list. "}Filled: lifted
              by machine; double ring: by two people; the others by one.
            </p>
          ) : null}
          <PaperTable paper={paper} />
        </>
      )}
      <div className="paper-notes small soft">
        {LOAD_CAUTIONS.map((note) => (
          <p key={note}>{note}</p>
        ))}
      </div>
      <TitleBlock cells={paper.foot} />
    </main>
  );
}
