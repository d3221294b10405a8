import type { Metadata } from "next";
import Link from "next/link";
import { WhoField } from "@/app/parts/who-field";
import { whoNow } from "@/app/who";
import { blocksOf, lotLine, lotsFound } from "@/lib/server/nursery-lots";
import { taxaHeld } from "@/lib/server/taxa";
import { today } from "@/lib/server/today";
import { ALL_BLOCKS, nurseryQueryRead } from "../lot-query";
import { CountWalk } from "./count-walk";
import "../nursery.css";
import "./count.css";

export const metadata: Metadata = { title: "Count" };
export const dynamic = "force-dynamic";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export default async function CountPage({ searchParams }: Props) {
  const asked = await searchParams;
  const query = nurseryQueryRead(asked);
  // Who comes back to a walk begun goes on where it was left: what was counted today is done.
  const since = query.since ?? today().iso;
  const walk = { q: "", block: query.block, free: false, sort: "place" } as const;
  const [{ lots, all }, held, who] = await Promise.all([lotsFound({ ...walk, since }), taxaHeld(), whoNow()]);
  const here = all.filter((lot) => query.block === null || lot.block === query.block);
  return (
    <main id="main" className="sheet nursery count-page">
      <div className="spread count-head">
        <h1>Count</h1>
        <Link href="/nursery">Nursery</Link>
      </div>
      <CountWalk key={`${query.block ?? "*"}${since}`} lines={lots.map((lot) => lotLine(lot, held.byId))} skipped={here.length - lots.length} />
      <section aria-label="Which lots">
        <form method="get" className="fields">
          <div className="field">
            <label htmlFor="count-block">Block</label>
            <select id="count-block" name="block" defaultValue={query.block ?? ALL_BLOCKS}>
              <option value={ALL_BLOCKS}>all</option>
              {blocksOf(all).map((block) => (
                <option key={block} value={block}>
                  {block || "no block"}
                </option>
              ))}
            </select>
          </div>
          <div className="field">
            <label htmlFor="count-since">Not counted since</label>
            <input id="count-since" type="date" name="since" defaultValue={since} />
          </div>
          <button type="submit">Walk these</button>
          {query.block === null && query.since === null ? null : <Link href="/nursery/count">All not counted today</Link>}
        </form>
      </section>
      <WhoField who={who} />
    </main>
  );
}
