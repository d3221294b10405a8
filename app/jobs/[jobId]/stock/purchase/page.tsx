import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PaperDownloads } from "@/app/jobs/[jobId]/pull/paper-downloads";
import { TitleBlock } from "@/app/parts/title-block";
import { WhoField } from "@/app/parts/who-field";
import { whoNow } from "@/app/who";
import { centsText } from "@/lib/nursery/count-words";
import { isoDateText } from "@/lib/pulls/iso-date";
import { jobPurchaseList, purchaseSuppliers } from "@/lib/server/job-stock";
import { today } from "@/lib/server/today";
import { PurchaseSheet } from "./purchase-sheet";
import "../stock.css";
import "./purchase.css";

export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Purchase list" };

export default async function PurchasePage({ params }: { params: Promise<{ jobId: string }> }) {
  const { jobId } = await params;
  const [list, suppliers, who] = await Promise.all([jobPurchaseList(jobId), purchaseSuppliers(), whoNow()]);
  if (!list) notFound();
  const { job, suppliers: orders, short, plantingOn, taxa } = list;
  const ordered = orders.flatMap(({ lines }) => lines).reduce((sum, line) => sum + line.ordered, 0);
  return (
    <main id="main" className="sheet purchase-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>Purchase list</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{job.name}</Link> · <Link href={`/jobs/${jobId}/stock`}>plants for this job</Link> · one order a supplier
          </span>
        </div>
        <div className="row screen-only">
          <WhoField who={who} />
          <PaperDownloads address={`/jobs/${jobId}/pull/file`} query={{ view: "buy" }} />
        </div>
      </div>
      <PurchaseSheet
        jobId={jobId}
        orders={orders}
        taxa={Object.fromEntries(taxa)}
        short={short.map(({ key, taxonName, taxonId, sizeText, bedName, count, why }) => ({ key, taxonName, taxon: taxa.get(taxonId) ?? null, sizeText, bedName, count, why }))}
        suppliers={suppliers.map(({ id, name }) => ({ id, name }))}
        hasPlantingDate={plantingOn !== null}
      />
      <TitleBlock
        cells={[
          ["Job", job.name],
          ["Suppliers", String(orders.length)],
          ["Planting", plantingOn ? isoDateText(plantingOn) : "not set"],
          ["Plants to order", ordered.toLocaleString("en-US")],
          ["At list price", centsText(orders.reduce((sum, { cents }) => sum + cents, 0))],
          ["Ordered by", ""],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
