import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PrintButton } from "@/app/parts/print-button";
import { TitleBlock } from "@/app/parts/title-block";
import { WhoField } from "@/app/parts/who-field";
import { whoNow } from "@/app/who";
import { centsText } from "@/lib/nursery/count-words";
import { placeLabel } from "@/lib/place/place";
import { isoDateText } from "@/lib/pulls/iso-date";
import { stageIndex, stageNow } from "@/lib/pulls/job-stage";
import { planMoney } from "@/lib/pulls/stock-money";
import { jobStageRows } from "@/lib/server/job-stages";
import { choicesRead, jobStock, purchaseSuppliers } from "@/lib/server/job-stock";
import { today } from "@/lib/server/today";
import { StageLine } from "../stage-line";
import { MoneyTables } from "./money-tables";
import { RulesForm } from "./rules-form";
import { StockSheet } from "./stock-sheet";
import { stockView } from "./stock-view";
import "./stock.css";

type Props = { params: Promise<{ jobId: string }>; searchParams: Promise<{ take?: string | string[] }> };
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Plants for this job" };

export default async function StockPage({ params, searchParams }: Props) {
  const { jobId } = await params;
  const { take = [] } = await searchParams;
  const chosen = Array.isArray(take) ? take : [take];
  const [stock, rows, suppliers, who] = await Promise.all([jobStock(jobId, choicesRead(chosen)), jobStageRows(jobId), purchaseSuppliers(), whoNow()]);
  if (!stock) notFound();
  const { context, rules, plan, taxa, unknown } = stock;
  const { job } = context;
  const view = stockView(jobId, plan, taxa);
  const money = planMoney(plan);
  const unsold = stageIndex(stageNow(rows)) < stageIndex("sold");
  const wanted = plan.groups.reduce((sum, { group }) => sum + group.wanted, 0);
  const held = plan.groups.reduce((sum, own) => sum + own.group.wanted - own.remaining, 0);
  return (
    <main id="main" className="sheet stock-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>Plants for this job</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{job.name}</Link> · all beds · <Link href={`/jobs/${jobId}/stock/purchase`}>purchase list</Link> ·{" "}
            <Link href={`/jobs/${jobId}/pull`}>pull list</Link>
          </span>
        </div>
        <div className="row screen-only">
          <WhoField who={who} />
          <PrintButton />
        </div>
      </div>
      <StageLine jobId={jobId} steps={!unsold} />
      <RulesForm jobId={jobId} rules={rules} />
      {unknown.length ? <p className="notice alert">No longer in the dataset, to be found by hand: {unknown.join("; ")}.</p> : null}
      {wanted === 0 && !view.astray.length ? (
        <p>
          No plants yet. Add some to a bed of <Link href={`/jobs/${jobId}`}>{job.name}</Link>; the lots that could serve them appear here.
        </p>
      ) : (
        <>
          <StockSheet view={view} chosen={chosen} suppliers={suppliers.map(({ id, name }) => ({ id, name }))} unsold={unsold} today={today().iso} />
          {view.proposed ? (
            <p className="small soft">
              {plan.proven
                ? "Proven best: every way of sharing the lots out was looked at. "
                : "A good way, but not proven the best: there are too many ways to look at each of them. "}
              What counts, in this order: fewest plants short, fewest plants parted over two lots, own stock first, the size that was asked for, least cost
              {chosen.length ? "; lots chosen by hand are kept" : ""}.
            </p>
          ) : null}
          <MoneyTables money={money} />
        </>
      )}
      <TitleBlock
        cells={[
          ["Job", job.name],
          ["Client", job.client],
          ["Place", placeLabel(context.place)],
          ["Planting", rules.plantingOn ? isoDateText(rules.plantingOn) : "not set"],
          ["Plants", `${held.toLocaleString("en-US")} of ${wanted.toLocaleString("en-US")} reserved`],
          ["Plants at list", centsText(money.cents)],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
