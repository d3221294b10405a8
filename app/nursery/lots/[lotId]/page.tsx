import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { BotanicalText } from "@/app/parts/botanical-text";
import { TitleBlock } from "@/app/parts/title-block";
import { WhoField } from "@/app/parts/who-field";
import { whoNow } from "@/app/who";
import { sizeFromText, sizeIsKnown, sizeOtherText } from "@/lib/nursery/size-read";
import { lotEventsOf } from "@/lib/server/lot-events";
import { lotPromisesOf } from "@/lib/server/lot-promises";
import { lotDeleted, lotFind } from "@/lib/server/lots";
import { placeList } from "@/lib/server/stock-places";
import { taxaHeld } from "@/lib/server/taxa";
import { today } from "@/lib/server/today";
import { LotHistory } from "../../lot-history";
import { LotDelete, LotRestore } from "./lot-delete";
import { LotMoveForm } from "./lot-move-form";
import { LotSheet } from "./lot-sheet";
import { LotWriteOffForm } from "./lot-write-off-form";
import "../../nursery.css";

export const metadata: Metadata = { title: "Lot" };
export const dynamic = "force-dynamic";

type Props = { params: Promise<{ lotId: string }> };

const inches = ([low, high]: readonly [number, number]): string => (low === high ? `${low} in` : `${low}–${high} in`);

/** What the program reads in a size, so that a wrong reading is seen before it is pulled by. */
function sizeWords(text: string, kind: Parameters<typeof sizeFromText>[1]): string {
  if (text === "") return "";
  const size = sizeFromText(text, kind);
  if (!sizeIsKnown(size)) return "Read as: nothing known; write #3, 2 in cal B&B, 18-24 in.";
  const root = { container: "container", ball: "balled and burlapped", "bare root": "bare root", plug: "plug", bulb: "bulb", unknown: "root not said" }[size.root];
  const parts = [root, size.containerClass, size.caliperIn && `caliper ${inches(size.caliperIn)}`, size.heightIn && `height ${inches(size.heightIn)}`, sizeOtherText(size)];
  return `Read as: ${parts.filter(Boolean).join(", ")}.`;
}

async function DeletedLot({ id }: { id: string }) {
  const [name, events] = await Promise.all([lotDeleted(id), lotEventsOf(id)]);
  if (name === null) notFound();
  return (
    <main id="main" className="sheet nursery">
      <p className="small screen-only">
        <Link href="/nursery">Nursery</Link>
      </p>
      <div className="sheet-head">
        <h1>{name}</h1>
      </div>
      <p className="notice">This lot was deleted. Its history is kept.</p>
      <LotRestore id={id} />
      <section aria-label="History">
        <h2>History</h2>
        <LotHistory events={events} />
      </section>
    </main>
  );
}

export default async function LotPage({ params }: Props) {
  const { lotId } = await params;
  const lot = await lotFind(lotId);
  if (!lot) return <DeletedLot id={lotId} />;
  const [held, events, promises, places, who] = await Promise.all([taxaHeld(), lotEventsOf(lotId), lotPromisesOf(lotId), placeList(), whoNow()]);
  const taxon = held.byId.get(lot.taxonId);
  const names = places.map((place) => place.text);
  return (
    <main id="main" className="sheet nursery">
      <p className="small screen-only">
        <Link href="/nursery">Nursery</Link>
      </p>
      <div className="sheet-head spread">
        <div>
          <h1>{taxon ? <BotanicalText taxon={taxon} /> : lot.taxonName}</h1>
          <span className="common">{taxon ? taxon.commonNames[0] : "no longer in the dataset"}</span>
        </div>
        <WhoField who={who} />
      </div>
      <LotSheet lot={lot} places={names} sizeWords={sizeWords(lot.size, taxon?.kind)} />
      {promises.length ? (
        <section aria-label="Promised">
          <h2>Promised</h2>
          <ul>
            {promises.map((promise) => (
              <li key={promise.jobId}>
                {promise.open.toLocaleString("en-US")} to <Link href={`/jobs/${promise.jobId}`}>{promise.jobName}</Link>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
      <div className="lot-acts">
        <LotMoveForm lot={lot} promises={promises} />
        <LotWriteOffForm lot={lot} />
      </div>
      <section aria-label="History">
        <h2>History</h2>
        {events.length ? <LotHistory events={events} /> : <p className="soft">Nothing is written yet: the lot is from before there was a history.</p>}
      </section>
      <LotDelete id={lot.id} />
      <TitleBlock
        cells={[
          ["Lot", lot.taxonName],
          ["Size", lot.size],
          ["Place", lot.place],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
