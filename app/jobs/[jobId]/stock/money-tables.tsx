"use client";

import { useState } from "react";
import { centsText, plantsText } from "@/lib/nursery/count-words";
import type { PlanMoney } from "@/lib/pulls/stock-money";

const count = (n: number) => n.toLocaleString("en-US");

/** What the plants cost: by who they come from (inside only), and by bed, which may be printed for the client. */
export function MoneyTables({ money }: { money: PlanMoney }) {
  const [inside, setInside] = useState(false);
  return (
    <div className="split money">
      <section aria-labelledby="sources-title" className="screen-only">
        <h2 id="sources-title">Where they come from</h2>
        <table>
          <thead>
            <tr>
              <th scope="col">From</th>
              <th scope="col" className="number">
                Plants
              </th>
              <th scope="col" className="number">
                Sum
              </th>
            </tr>
          </thead>
          <tbody>
            {money.sources.map((source) => (
              <tr key={source.key}>
                <th scope="row">{source.name}</th>
                <td className="number">{count(source.plants)}</td>
                <td className="number">{centsText(source.cents)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">In all</th>
              <td className="number">{count(money.sources.reduce((sum, { plants }) => sum + plants, 0))}</td>
              <td className="number">
                <b>{centsText(money.cents)}</b>
              </td>
            </tr>
          </tfoot>
        </table>
        {money.unpriced.length ? (
          <p className="small">Without a price, not in the sum: {money.unpriced.map(({ text, plants }) => `${count(plants)} ${text}`).join("; ")}.</p>
        ) : null}
        {money.short ? <p className="small">Short, not in the sum: {money.shortText.join("; ")}.</p> : null}
      </section>
      <section aria-labelledby="price-title" className={inside ? "screen-only" : undefined}>
        <h2 id="price-title">Price of the plants by bed</h2>
        <p className="small soft">Plants only, at list price. No labor, soil, delivery or tax.</p>
        <table>
          <thead>
            <tr>
              <th scope="col">Bed</th>
              <th scope="col" className="number">
                Plants
              </th>
              <th scope="col" className="number">
                Price
              </th>
            </tr>
          </thead>
          <tbody>
            {money.beds.map((bed) => (
              <tr key={bed.bedId}>
                <th scope="row">
                  {bed.bedName}
                  {bed.unpriced || bed.short ? (
                    <span className="common">
                      {" "}
                      {[bed.unpriced && `${plantsText(bed.unpriced)} without a price`, bed.short && `${count(bed.short)} short`].filter(Boolean).join(", ")} not in it
                    </span>
                  ) : null}
                </th>
                <td className="number">{count(bed.plants)}</td>
                <td className="number">{centsText(bed.cents)}</td>
              </tr>
            ))}
          </tbody>
          <tfoot>
            <tr>
              <th scope="row">In all</th>
              <td className="number">{count(money.beds.reduce((sum, { plants }) => sum + plants, 0))}</td>
              <td className="number">
                <b>{centsText(money.beds.reduce((sum, { cents }) => sum + cents, 0))}</b>
              </td>
            </tr>
          </tfoot>
        </table>
        <label className="check screen-only small">
          <input type="checkbox" className="inside-only" checked={inside} onChange={(event) => setInside(event.target.checked)} /> Inside only: leave the prices off the printed
          sheet
        </label>
      </section>
    </div>
  );
}
