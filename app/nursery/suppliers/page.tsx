import type { Metadata } from "next";
import Link from "next/link";
import { TitleBlock } from "@/app/parts/title-block";
import { supplierDeleted, supplierList } from "@/lib/server/suppliers";
import { today } from "@/lib/server/today";
import { DayText } from "../lot-dates";
import { DeletedSupplier } from "./deleted-supplier";
import { SupplierForm } from "./supplier-form";
import "../nursery.css";
import "./suppliers.css";

export const metadata: Metadata = { title: "Suppliers" };
export const dynamic = "force-dynamic";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };
const number = (count: number): string => count.toLocaleString("en-US");

export default async function SuppliersPage({ searchParams }: Props) {
  const { deleted } = await searchParams;
  const suppliers = await supplierList();
  const gone = typeof deleted === "string" ? await supplierDeleted(deleted) : null;
  return (
    <main id="main" className="sheet nursery suppliers">
      <div className="sheet-head spread">
        <h1>Suppliers</h1>
        <Link className="button" href="/nursery">
          Nursery
        </Link>
      </div>
      {suppliers.length ? (
        <table className="supplier-list">
          <caption className="visually-hidden">Suppliers and what they have on offer</caption>
          <thead>
            <tr>
              <th scope="col">Supplier</th>
              <th scope="col" className="number">
                Lots
              </th>
              <th scope="col" className="number">
                Plants
              </th>
              <th scope="col" className="number">
                Promised
              </th>
              <th scope="col">Last list</th>
              <th scope="col">Terms</th>
              <th scope="col">
                <span className="visually-hidden">List</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {suppliers.map(({ id, name, contact, lots, plants, promised, list, minimumCents, multiple, leadDays }) => (
              <tr key={id}>
                <th scope="row">
                  <Link href={`/nursery/suppliers/${id}`}>{name}</Link>
                  {contact ? <span className="second-line small soft">{contact}</span> : null}
                </th>
                <td className="number" data-label="Lots">
                  {number(lots)}
                </td>
                <td className="number" data-label="Plants">
                  {number(plants)}
                </td>
                <td className="number" data-label="Promised">
                  {number(promised)}
                </td>
                <td data-label="Last list">
                  {list ? (
                    <>
                      <DayText at={list.at} />, {number(list.lines)} {list.lines === 1 ? "line" : "lines"}
                    </>
                  ) : (
                    "none yet"
                  )}
                </td>
                <td data-label="Terms" className="small">
                  {[
                    minimumCents ? `from $${number(minimumCents / 100)}` : "",
                    multiple > 1 ? `in ${multiple}s` : "",
                    leadDays === null ? "" : `${leadDays} ${leadDays === 1 ? "day" : "days"}`,
                  ]
                    .filter(Boolean)
                    .join(", ") || "—"}
                </td>
                <td>
                  <Link href={`/nursery/suppliers/${id}/import`} aria-label={`Read a list of ${name}`}>
                    Read a list
                  </Link>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        <p>No suppliers yet. Add the first one here; then drop its availability list, as it came, on its page.</p>
      )}
      <section aria-labelledby="supplier-add">
        <h2 id="supplier-add">Add a supplier</h2>
        <SupplierForm supplier={null} />
      </section>
      {gone && typeof deleted === "string" ? <DeletedSupplier id={deleted} name={gone} /> : null}
      <TitleBlock
        cells={[
          ["Suppliers", number(suppliers.length)],
          ["Lots on offer", number(suppliers.reduce((sum, { lots }) => sum + lots, 0))],
          ["Plants on offer", number(suppliers.reduce((sum, { plants }) => sum + plants, 0))],
          ["Promised", number(suppliers.reduce((sum, { promised }) => sum + promised, 0))],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
