import type { Metadata } from "next";
import Link from "next/link";
import { BotanicalText } from "@/app/parts/botanical-text";
import { PrintButton } from "@/app/parts/print-button";
import { TitleBlock } from "@/app/parts/title-block";
import { isoDateText } from "@/lib/pulls/iso-date";
import { lotLine, lotsFound } from "@/lib/server/nursery-lots";
import { taxaHeld } from "@/lib/server/taxa";
import { today } from "@/lib/server/today";
import { DayText } from "../lot-dates";
import { nurseryAddress, nurseryQueryRead } from "../lot-query";
import { priceText } from "../lot-readers";
import "../nursery.css";
import "./sheet.css";

export const metadata: Metadata = { title: "Stock sheet" };
export const dynamic = "force-dynamic";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

const number = (count: number): string => count.toLocaleString("en-US");

/** All lots that the nursery page was asked for, on paper, with a column to write a count in. */
export default async function StockSheetPage({ searchParams }: Props) {
  const query = nurseryQueryRead(await searchParams);
  const [{ lots }, { byId }] = await Promise.all([lotsFound(query), taxaHeld()]);
  const now = today();
  const sum = (of: (lot: (typeof lots)[number]) => number): string => number(lots.reduce((total, lot) => total + of(lot), 0));
  const asked = [
    query.q.trim() ? `“${query.q.trim()}”` : "",
    query.block === null ? "" : query.block || "no block",
    query.free ? "free plants only" : "",
    query.since ? `not counted since ${isoDateText(query.since)}` : "",
  ].filter(Boolean);
  return (
    <main id="main" className="sheet nursery stock-paper">
      <div className="sheet-head spread">
        <div>
          <h1>Stock sheet</h1>
          <span className="soft">
            <Link href={nurseryAddress({ ...query, page: 1 })}>Nursery</Link> · {asked.join(", ") || "all lots"}, by {query.sort === "counted" ? "last count" : query.sort}
          </span>
        </div>
        <PrintButton />
      </div>
      {lots.length ? (
        <table className="lots stock-lines">
          <thead>
            <tr>
              <th scope="col">Plant</th>
              <th scope="col">Size</th>
              <th scope="col">Place</th>
              <th scope="col" className="number">
                On hand
              </th>
              <th scope="col" className="number">
                Free
              </th>
              <th scope="col" className="number">
                Price each
              </th>
              <th scope="col">Ready</th>
              <th scope="col">Counted</th>
              <th scope="col">Count</th>
            </tr>
          </thead>
          <tbody>
            {lots
              .map((lot) => lotLine(lot, byId))
              .map(({ lot, taxon }) => (
                <tr key={lot.id} className="lot">
                  <th scope="row">
                    {taxon ? <BotanicalText taxon={taxon} /> : lot.taxonName}
                    <span className="common second-line">{[taxon?.commonNames[0], lot.grade, lot.remarks].filter(Boolean).join(" · ")}</span>
                  </th>
                  <td data-label="Size">{lot.size}</td>
                  <td data-label="Place">{lot.place}</td>
                  <td data-label="On hand" className="number">
                    {number(lot.quantity)}
                  </td>
                  <td data-label="Free" className="number">
                    {number(lot.quantity - lot.reserved)}
                  </td>
                  <td data-label="Price each" className="number">
                    {priceText(lot.priceCents)}
                  </td>
                  <td data-label="Ready" className="small">
                    {lot.readyFrom && lot.readyFrom > now.iso ? isoDateText(lot.readyFrom) : "now"}
                  </td>
                  <td data-label="Counted" className="small">
                    <DayText at={lot.countedAt} />
                  </td>
                  <td className="stock-blank" />
                </tr>
              ))}
          </tbody>
        </table>
      ) : (
        <p>No lot is as asked. Go back to the nursery and take a filter away.</p>
      )}
      <TitleBlock
        cells={[
          ["Lots", number(lots.length)],
          ["Plants on hand", sum((lot) => lot.quantity)],
          ["Promised", sum((lot) => lot.reserved)],
          ["Counted by", "—"],
          ["Date", now.text],
        ]}
      />
    </main>
  );
}
