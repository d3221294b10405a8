import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { BotanicalText } from "@/app/parts/botanical-text";
import { TitleBlock } from "@/app/parts/title-block";
import { WhoField } from "@/app/parts/who-field";
import { whoNow } from "@/app/who";
import { centsText } from "@/lib/nursery/count-words";
import { isoDateText } from "@/lib/pulls/iso-date";
import { supplierFind, supplierList, supplierLots } from "@/lib/server/suppliers";
import { taxaHeld } from "@/lib/server/taxa";
import { today } from "@/lib/server/today";
import { unmatchedNames } from "@/lib/server/unmatched-lines";
import { SupplierForm } from "../supplier-form";
import { SupplierDelete } from "./supplier-delete";
import { Unmatched } from "./unmatched";
import "../../nursery.css";
import "../suppliers.css";

export const metadata: Metadata = { title: "Supplier" };
export const dynamic = "force-dynamic";

type Props = { params: Promise<{ id: string }>; searchParams: Promise<Record<string, string | string[] | undefined>> };
const number = (count: number): string => count.toLocaleString("en-US");

export default async function SupplierPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { q, page: asked } = await searchParams;
  const find = typeof q === "string" ? q : "";
  const supplier = await supplierFind(id);
  if (!supplier) notFound();
  const [held, all, who, unmatched, taxa] = await Promise.all([supplierLots(id, find, Number(asked) || 1), supplierList(), whoNow(), unmatchedNames(id), taxaHeld()]);
  const sums = all.find((one) => one.id === id);
  const now = today();
  const address = (page: number) => `/nursery/suppliers/${id}?${new URLSearchParams({ ...(find ? { q: find } : {}), page: String(page) })}`;
  return (
    <main id="main" className="sheet nursery suppliers">
      <div className="sheet-head spread">
        <h1>{supplier.name}</h1>
        <div className="row">
          <Link className="button primary" href={`/nursery/suppliers/${id}/import`}>
            Read a list
          </Link>
          <Link className="button" href="/nursery/suppliers">
            Suppliers
          </Link>
        </div>
      </div>
      <Unmatched supplierId={id} names={unmatched} />
      <section aria-labelledby="lots">
        <h2 id="lots">On offer</h2>
        {sums?.lots ? (
          <form className="row screen-only" action={`/nursery/suppliers/${id}`}>
            <label htmlFor="lot-find">Find</label>
            <input id="lot-find" name="q" type="search" defaultValue={find} placeholder="name, size or number" maxLength={100} />
            <button type="submit" className="button">
              Find
            </button>
            <span className="small soft">
              {number(held.count)} of {number(sums.lots)} lots
            </span>
          </form>
        ) : (
          <p>Nothing on offer yet. Read the supplier’s availability list, as it came: CSV or XLSX.</p>
        )}
        {held.lots.length ? (
          <table className="supplier-lots">
            <caption className="visually-hidden">Lots of {supplier.name}</caption>
            <thead>
              <tr>
                <th scope="col">Plant</th>
                <th scope="col">Size</th>
                <th scope="col" className="number">
                  Offered
                </th>
                <th scope="col" className="number">
                  Promised
                </th>
                <th scope="col" className="number">
                  Each
                </th>
                <th scope="col">Ready</th>
                <th scope="col">Remarks</th>
              </tr>
            </thead>
            <tbody>
              {held.lots.map((lot) => {
                const taxon = taxa.byId.get(lot.taxonId);
                return (
                  <tr key={lot.id}>
                    <th scope="row">{taxon ? <BotanicalText taxon={taxon} /> : lot.taxonName}</th>
                    <td data-label="Size">{lot.size || "—"}</td>
                    <td data-label="Offered" className="number">
                      {number(lot.quantity)}
                    </td>
                    <td data-label="Promised" className="number">
                      {number(lot.reserved)}
                    </td>
                    <td data-label="Each" className="number">
                      {lot.priceCents === null ? "—" : centsText(lot.priceCents)}
                      {lot.prices.slice(1).map(({ from, cents }) => (
                        <span key={from} className="second-line small soft">
                          {centsText(cents)} from {number(from)} on
                        </span>
                      ))}
                    </td>
                    <td data-label="Ready">{lot.readyFrom === null || lot.readyFrom <= now.iso ? "now" : isoDateText(lot.readyFrom)}</td>
                    <td data-label="Remarks" className="small">
                      {[lot.code, lot.remarks].filter(Boolean).join("; ") || "—"}
                    </td>
                  </tr>
                );
              })}
            </tbody>
          </table>
        ) : null}
        {held.pages > 1 ? (
          <nav aria-label="Pages of lots" className="row small screen-only">
            {held.page > 1 ? <Link href={address(held.page - 1)}>Earlier lots</Link> : null}
            <span>
              Page {held.page} of {held.pages}
            </span>
            {held.page < held.pages ? <Link href={address(held.page + 1)}>More lots</Link> : null}
          </nav>
        ) : null}
      </section>
      <section aria-labelledby="terms">
        <h2 id="terms">Name and terms</h2>
        <SupplierForm supplier={supplier} />
        <SupplierDelete id={id} name={supplier.name} />
      </section>
      <WhoField who={who} />
      <TitleBlock
        cells={[
          ["Supplier", supplier.name],
          ["Lots", number(sums?.lots ?? 0)],
          ["Plants offered", number(sums?.plants ?? 0)],
          ["Promised", number(sums?.promised ?? 0)],
          ["Last list", sums?.list ? isoDateText(today(new Date(sums.list.at)).iso) : "none yet"],
          ["Date", now.text],
        ]}
      />
    </main>
  );
}
