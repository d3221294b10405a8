import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { isoDateText } from "@/lib/pulls/iso-date";
import { supplierFind, supplierList } from "@/lib/server/suppliers";
import { today } from "@/lib/server/today";
import { ListImportScreen } from "./list-import-screen";
import "../../../nursery.css";
import "../../suppliers.css";

export const metadata: Metadata = { title: "Read a list" };
export const dynamic = "force-dynamic";

export default async function ImportPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const supplier = await supplierFind(id);
  if (!supplier) notFound();
  const last = (await supplierList()).find((one) => one.id === id)?.list;
  return (
    <main id="main" className="sheet nursery suppliers">
      <div className="sheet-head spread">
        <h1>A list of {supplier.name}</h1>
        <Link className="button" href={`/nursery/suppliers/${id}`}>
          Back to {supplier.name}
        </Link>
      </div>
      <ListImportScreen supplierId={id} last={last ? `${last.fileName}, ${isoDateText(today(new Date(last.at)).iso)}` : null} />
    </main>
  );
}
