import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { BotanicalText } from "@/app/parts/botanical-text";
import { PrintButton } from "@/app/parts/print-button";
import { TitleBlock } from "@/app/parts/title-block";
import { placeLabel } from "@/lib/place/place";
import { jobPull } from "@/lib/server/pull";
import { today } from "@/lib/server/today";
import "./pull.css";

type Props = { params: Promise<{ jobId: string }>; searchParams: Promise<{ bed?: string }> };
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: "Pull list" };

export default async function PullPage({ params, searchParams }: Props) {
  const { jobId } = await params;
  const { bed = null } = await searchParams;
  const pull = await jobPull(jobId, bed);
  if (!pull) notFound();
  const { job, list, bedName, unknown } = pull;
  const several = list.beds.length > 1;
  const query = bed ? `?bed=${bed}` : "";
  return (
    <main id="main" className="sheet pull-sheet">
      <div className="sheet-head spread">
        <div>
          <h1>Pull list</h1>
          <span className="soft">
            <Link href={`/jobs/${jobId}`}>{job.job.name}</Link>
            {bedName ? (
              <>
                {" · "}
                <Link href={`/jobs/${jobId}/beds/${bed}`}>{bedName}</Link> · <Link href={`/jobs/${jobId}/pull`}>whole job</Link>
              </>
            ) : (
              " · all beds"
            )}
          </span>
        </div>
        <div className="row screen-only">
          <PrintButton />
          <a className="button" href={`/jobs/${jobId}/pull/csv${query}`}>
            CSV
          </a>
        </div>
      </div>
      {list.quantity === 0 ? (
        <p>Nothing to pull yet: plants added to {bedName ? "the bed" : "the beds"} appear here, except those that stand there already.</p>
      ) : (
        <table className="pull-table">
          <caption className="visually-hidden">Plants by kind, taxon and size</caption>
          <thead>
            <tr>
              <th scope="col" className="tick">
                <span className="visually-hidden">Pulled</span>
              </th>
              <th scope="col" className="number">
                Qty
              </th>
              <th scope="col">Plant</th>
              <th scope="col">Size</th>
              {several
                ? list.beds.map((b) => (
                    <th key={b.bedId} scope="col" className="number split-cell">
                      {b.bedName}
                    </th>
                  ))
                : null}
              <th scope="col">Remarks</th>
            </tr>
          </thead>
          {list.groups.map((group) => (
            <tbody key={group.kind}>
              <tr className="group-row">
                <th scope="rowgroup" colSpan={several ? 5 + list.beds.length : 5}>
                  {group.heading} <span className="soft">{group.quantity.toLocaleString("en-US")}</span>
                </th>
              </tr>
              {group.lines.map((line) => (
                <tr key={line.key} className="pull-line">
                  <td className="tick">
                    <span className="tick-box" aria-hidden="true" />
                  </td>
                  <td className="number qty">{line.quantity.toLocaleString("en-US")}</td>
                  <td className="plant">
                    <BotanicalText taxon={line.taxon} /> <span className="common">{line.taxon.commonNames[0]}</span>
                  </td>
                  <td className="size">{line.sizeText || "size not said"}</td>
                  {several
                    ? list.beds.map((b) => {
                        const part = line.split.find((s) => s.bedId === b.bedId);
                        return (
                          <td key={b.bedId} className="number split-cell" data-label={b.bedName}>
                            {part ? part.quantity.toLocaleString("en-US") : ""}
                          </td>
                        );
                      })
                    : null}
                  <td className="small remark">{line.remarks.join("; ")}</td>
                </tr>
              ))}
            </tbody>
          ))}
          <tfoot>
            <tr>
              <td className="tick" />
              <td className="number qty">
                <b>{list.quantity.toLocaleString("en-US")}</b>
              </td>
              <td colSpan={2}>plants in all</td>
              {several
                ? list.beds.map((b) => (
                    <td key={b.bedId} className="number split-cell" data-label={b.bedName}>
                      {b.quantity.toLocaleString("en-US")}
                    </td>
                  ))
                : null}
              <td />
            </tr>
          </tfoot>
        </table>
      )}
      {unknown.length ? <p className="notice alert">No longer in the dataset, to be pulled by hand: {unknown.join("; ")}.</p> : null}
      <p className="small soft">
        Lift with two above 50 lb and with a machine above 100 lb. Call 811 before digging on the site. Keep balls and containers moist and out of wind on the truck.
      </p>
      <TitleBlock
        cells={[
          ["Job", job.job.name],
          ["Beds", bedName ?? String(list.beds.length)],
          ["Place", placeLabel(job.place)],
          ["Plants", list.quantity.toLocaleString("en-US")],
          ["Pulled by", ""],
          ["Loaded by", ""],
          ["Date", today().text],
        ]}
      />
    </main>
  );
}
