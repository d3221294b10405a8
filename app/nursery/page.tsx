import type { Metadata } from "next";
import Link from "next/link";
import { TitleBlock } from "@/app/parts/title-block";
import { WhoField } from "@/app/parts/who-field";
import { whoNow } from "@/app/who";
import { type LotPage, lotPage } from "@/lib/server/nursery-lots";
import { placeList } from "@/lib/server/stock-places";
import { today } from "@/lib/server/today";
import { LotFilters } from "./lot-filters";
import { type NurseryQuery, nurseryAddress, nurseryQueryRead } from "./lot-query";
import { LotTable } from "./lot-table";
import "./nursery.css";

export const metadata: Metadata = { title: "Nursery" };
export const dynamic = "force-dynamic";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

const number = (count: number): string => count.toLocaleString("en-US");

function foundWords({ found, foundPlants, nearly, totals }: LotPage, { q }: NurseryQuery): string {
  const words = `${number(found)} of ${number(totals.lots)} ${totals.lots === 1 ? "lot" : "lots"}, ${number(foundPlants)} ${foundPlants === 1 ? "plant" : "plants"}.`;
  return nearly ? `No lot has “${q.trim()}”. Names that come near: ${words}` : words;
}

function Pages({ label, query, page, pages }: { label: string; query: NurseryQuery; page: number; pages: number }) {
  if (pages < 2) return null;
  return (
    <nav aria-label={label} className="row small screen-only lot-pages">
      {page > 1 ? <Link href={nurseryAddress({ ...query, page: page - 1 })}>Earlier lots</Link> : null}
      <span>
        Page {page} of {pages}
      </span>
      {page < pages ? <Link href={nurseryAddress({ ...query, page: page + 1 })}>More lots</Link> : null}
    </nav>
  );
}

export default async function NurseryPage({ searchParams }: Props) {
  const query = nurseryQueryRead(await searchParams);
  const [held, places, who] = await Promise.all([lotPage(query, query.page), placeList(), whoNow()]);
  const { lines, page, pages, totals, blocks } = held;
  return (
    <main id="main" className="sheet nursery">
      <div className="sheet-head spread">
        <h1>Nursery</h1>
        <div className="row">
          {totals.lots ? (
            <Link className="button primary" href="/nursery/count">
              Count
            </Link>
          ) : null}
          <Link className="button" href="/nursery/places">
            Places
          </Link>
          <Link className="button" href="/nursery/changes">
            Changes
          </Link>
          <Link className="button" href="/nursery/suppliers">
            Suppliers
          </Link>
          <Link className="button" href="/nursery/trucks">
            Trucks
          </Link>
          {totals.lots ? (
            <Link className="button" href={nurseryAddress({ ...query, page: 1 }, "/nursery/sheet")}>
              Stock sheet
            </Link>
          ) : null}
        </div>
      </div>
      <LotTable
        lines={lines}
        places={places.map((place) => place.text)}
        empty={
          totals.lots ? (
            <p>No lot is as asked. Take a filter away, or add the plant above.</p>
          ) : (
            <p>No lots yet. Type the name of a plant that stands in your field or yard, press Enter, then give its size, its place and how many there are.</p>
          )
        }
      >
        {totals.lots ? <LotFilters query={query} blocks={blocks} words={foundWords(held, query)} /> : null}
        <Pages label="Pages of lots" query={query} page={page} pages={pages} />
      </LotTable>
      {pages > 1 ? (
        <p className="small lots-print-note">
          Page {page} of {pages} of the lots. The stock sheet prints all of them.
        </p>
      ) : null}
      <Pages label="Pages of lots, below them" query={query} page={page} pages={pages} />
      <WhoField who={who} />
      <TitleBlock
        cells={[
          ["Lots", number(totals.lots)],
          ["Plants on hand", number(totals.onHand)],
          ["Promised", number(totals.reserved)],
          ["Free", number(totals.onHand - totals.reserved)],
          ["Lots not counted yet", number(totals.uncounted)],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
