"use client";

import Link from "next/link";
import { BotanicalText } from "@/app/parts/botanical-text";
import { centsText, plantsText, stepsText } from "@/lib/nursery/count-words";
import type { PurchaseSupplier } from "@/lib/pulls/purchase-list";
import { OWN_FIRST } from "@/lib/pulls/stock-plan";
import { stockReleaseAction, stockReserveAction } from "./actions";
import { ShortBuy } from "./short-buy";
import type { ViewGroup, ViewHeld, ViewLine, ViewOther } from "./stock-view";
import type { StockAct } from "./use-stock-act";

type Props = {
  readonly jobId: string;
  readonly bedName: string;
  readonly group: ViewGroup;
  readonly chosen: readonly string[];
  readonly suppliers: readonly Pick<PurchaseSupplier, "id" | "name">[];
  readonly busy: boolean;
  readonly act: StockAct;
};

const count = (n: number) => n.toLocaleString("en-US");

/** Place, size and what is to know of a lot. */
function LotCell({ line }: { line: ViewLine }) {
  return (
    <td className="lot-where">
      {line.where}
      <span className="common">
        {" "}
        {line.sizeText || "size not said"}
        {line.steps ? `, ${stepsText(line.steps)}` : ""}
        {line.remarks ? ` · ${line.remarks}` : ""}
      </span>
    </td>
  );
}

function EachText({ line }: { line: ViewLine }) {
  if (line.off) return null;
  return line.centsEach === null ? <span className="soft">no price</span> : centsText(line.centsEach);
}

function MoneyCells({ line }: { line: ViewLine }) {
  return (
    <>
      <td className="number lot-count" data-label="Plants">
        {count(line.plants)}
      </td>
      <td className="number lot-each" data-label="Each">
        <EachText line={line} />
      </td>
      <td className="number lot-sum" data-label="Sum">
        {line.cents === null || line.off ? "" : centsText(line.cents)}
      </td>
    </>
  );
}

function HeldState({ held }: { held: ViewHeld }) {
  if (held.why) return <span className="alert">No longer fits: {held.why}.</span>;
  if (held.open === 0) return <span>pulled</span>;
  return <span>{held.pulled ? `${count(held.open)} reserved, ${count(held.pulled)} pulled` : "reserved"}</span>;
}

function choiceAddress(jobId: string, chosen: readonly string[], key: string, lotId: string | null): string {
  const rest = chosen.filter((text) => !text.startsWith(`${key}~`));
  const all = lotId === null ? rest : [...rest, `${key}~${lotId}`];
  const query = all.map((text) => `take=${encodeURIComponent(text)}`).join("&");
  return `/jobs/${jobId}/stock${query ? `?${query}` : ""}`;
}

function differenceText({ moreCents, centsEach }: ViewOther): string {
  if (centsEach === null) return "no price";
  if (moreCents === null) return "";
  if (moreCents === 0) return "the same money";
  return moreCents > 0 ? `${centsText(moreCents)} more` : `${centsText(-moreCents)} less`;
}

/** What other ways there are for a group, in a few words. */
function otherWaysText({ others, ownFirst }: ViewGroup): string {
  const lots = others.length ? `${count(others.length)} other ${others.length === 1 ? "lot" : "lots"}` : "";
  return [lots, ownFirst ? "own plants first" : ""].filter(Boolean).join(", or ") || "Chosen by hand";
}

/** One row of a bed: what is promised, what is proposed, what else could serve it, what is short. */
export function StockGroupRows({ jobId, bedName, group, chosen, suppliers, busy, act }: Props) {
  const { key, held, proposed, others, ownFirst, short, taxonName, releases } = group;
  const name = `${taxonName}, ${bedName}`;
  const isDone = !proposed.length && !short && !releases;
  const otherWays = others.length > 0 || ownFirst !== null || group.chosenLotId !== null;
  const extra = (short > 0 ? 1 : 0) + (otherWays ? 1 : 0);
  const span = Math.max(1, held.length + proposed.length + extra);
  const head = (
    <>
      <td rowSpan={span} className="group-letter">
        {group.letter}
      </td>
      <th rowSpan={span} scope="rowgroup" className="plant">
        {group.taxon ? <BotanicalText taxon={group.taxon} /> : taxonName} <span className="common">{group.taxon?.commonNames[0]}</span>
      </th>
      <td rowSpan={span} className="wanted" data-label="Wanted">
        <b>{count(group.wanted)}</b> <span>{group.sizeText || "size not said"}</span>
        {group.received ? <span className="common"> {count(group.received)} pulled without a lot</span> : null}
      </td>
    </>
  );
  const reserve = () => act(() => stockReserveAction({ jobId, keys: [key], chosen, picks: group.picks }));
  const rows = [
    ...held.map((line) => (
      <>
        <LotCell line={line} />
        <MoneyCells line={line} />
        <td className="act small">
          <HeldState held={line} />{" "}
          {line.release > 0 && !proposed.length ? (
            <button type="button" className="plain screen-only" disabled={busy} aria-label={`Put right ${name}`} onClick={reserve}>
              Put right
            </button>
          ) : null}
          {line.open > 0 && line.release === 0 ? (
            <button
              type="button"
              className="plain screen-only"
              disabled={busy}
              aria-label={`Release ${name}`}
              onClick={() => act(() => stockReleaseAction(jobId, line.reservationId))}
            >
              Release
            </button>
          ) : null}
        </td>
      </>
    )),
    ...proposed.map((line, i) => (
      <>
        <LotCell line={line} />
        <MoneyCells line={line} />
        <td className="act small">
          <span className="soft">{group.chosenLotId !== null ? "chosen" : "proposed"}</span>{" "}
          {i === 0 ? (
            <button type="button" className="plain screen-only" disabled={busy} aria-label={`${releases ? "Put right" : "Reserve"} ${name}`} onClick={reserve}>
              {releases ? "Put right" : "Reserve"}
            </button>
          ) : null}
        </td>
      </>
    )),
    ...(short > 0
      ? [
          <td key="short" colSpan={5} className="short-cell">
            <b className="alert">{plantsText(short)} short.</b> {group.why} <ShortBuy jobId={jobId} groupKey={key} name={name} suppliers={suppliers} busy={busy} act={act} />
          </td>,
        ]
      : []),
    ...(otherWays
      ? [
          <td key="others" colSpan={5} className="others-cell screen-only">
            <details>
              <summary className="small">
                {otherWaysText(group)}
                <span className="visually-hidden"> for {name}</span>
              </summary>
              <ul className="others">
                {ownFirst ? (
                  <li>
                    <span>
                      Own plants first <span className="common">{count(ownFirst.own)} of ours</span>
                    </span>
                    <span className="number">{plantsText(ownFirst.rest)} from elsewhere</span>
                    <Link className="button" href={choiceAddress(jobId, chosen, key, OWN_FIRST)} replace scroll={false} aria-label={`Take own plants first for ${name}`}>
                      Take these
                    </Link>
                  </li>
                ) : null}
                {others.map((other) => (
                  <li key={other.lotId}>
                    <span>
                      {other.where}{" "}
                      <span className="common">
                        {other.sizeText || "size not said"}
                        {other.steps ? `, ${stepsText(other.steps)}` : ""}, {count(other.free)} free
                      </span>
                    </span>
                    <span className="number">
                      {other.centsEach === null ? "" : `${centsText(other.centsEach)} each, `}
                      {differenceText(other)}
                    </span>
                    <Link className="button" href={choiceAddress(jobId, chosen, key, other.lotId)} replace scroll={false} aria-label={`Take ${other.where} for ${name}`}>
                      Take this one
                    </Link>
                  </li>
                ))}
                {group.chosenLotId ? (
                  <li>
                    <span>{group.chosenLotId === OWN_FIRST ? "Own plants first: chosen by hand." : "The lot above was chosen by hand."}</span>
                    <span />
                    <Link className="button" href={choiceAddress(jobId, chosen, key, null)} replace scroll={false} aria-label={`Back to the proposal for ${name}`}>
                      Back to the proposal
                    </Link>
                  </li>
                ) : null}
              </ul>
            </details>
          </td>,
        ]
      : []),
  ];
  const cells = rows.length ? rows : [<td key="none" colSpan={5} />];
  return (
    <tbody className={isDone ? "stock-group done" : "stock-group"}>
      {cells.map((cell, i) => (
        // The lines of a group keep their order; they have no identity beyond it.
        <tr key={`${key} ${i}`} className="stock-row">
          {i === 0 ? head : null}
          {cell}
        </tr>
      ))}
    </tbody>
  );
}
