"use client";

import Link from "next/link";
import { useEffect, useId, useRef, useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import type { LotLine } from "@/lib/server/nursery-lots";
import { DayText } from "../lot-dates";
import { onHandRead } from "../lot-readers";
import { countsRead } from "./count-queue";
import { useCountQueue } from "./use-count-queue";

const number = (count: number): string => count.toLocaleString("en-US");

/** One lot after another in walking order, for a phone in one hand: how many there are, then the next. @param skipped lots left out because they were counted */
export function CountWalk({ lines: given, skipped }: { lines: readonly LotLine[]; skipped: number }) {
  const id = useId();
  // The walk stays as it was begun, also when a count would take a lot out of it.
  const [lines] = useState(given);
  const [at, setAt] = useState(0);
  const [counted, setCounted] = useState<ReadonlyMap<string, number>>(new Map());
  const [typed, setTyped] = useState<string | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const head = useRef<HTMLHeadingElement>(null);
  const { waiting, unreached, troubles, told, latest, add, settle } = useCountQueue();
  const line = lines[at];
  const lot = line && (latest.get(line.lot.id) ?? line.lot);
  const known = lot ? (counted.get(lot.id) ?? lot.quantity) : 0;
  const text = typed ?? String(known);
  const read = onHandRead(text.trim());
  // A page kept on the phone knows the lots as they were: what was counted since and waits here is done.
  useEffect(() => {
    const done = countsRead().filter(({ lotId }) => given.some(({ lot: one }) => one.id === lotId));
    if (!done.length) return;
    const known = new Map(done.map(({ lotId, quantity }) => [lotId, quantity]));
    setCounted((now) => new Map([...known, ...now]));
    setAt((now) => {
      const first = given.findIndex(({ lot: one }) => !known.has(one.id));
      return now === 0 ? (first < 0 ? given.length : first) : now;
    });
  }, [given]);
  const walked = useRef(false);
  useEffect(() => {
    // The new lot is told to who listens; the first needs no telling.
    if (walked.current && at >= 0) head.current?.focus();
    walked.current = true;
  }, [at]);

  const go = (to: number) => {
    setAt(Math.max(0, Math.min(lines.length, to)));
    setTyped(null);
    setFault(null);
  };
  const step = (by: number) => {
    const now = read.ok ? read.value : known;
    setTyped(String(Math.max(0, now + by)));
    setFault(null);
  };
  const count = () => {
    if (!lot) return;
    if (!read.ok) {
      setFault(read.fault);
      return;
    }
    setCounted(new Map(counted).set(lot.id, read.value));
    add({ lotId: lot.id, version: lot.version, quantity: read.value, name: [lot.taxonName, lot.size, lot.place].filter(Boolean).join(", "), anyway: false });
    go(at + 1);
  };
  const back = (lotId: string) => {
    const to = lines.findIndex((one) => one.lot.id === lotId);
    settle(lotId);
    if (to < 0) return;
    const rest = new Map(counted);
    rest.delete(lotId);
    setCounted(rest);
    go(to);
  };
  const place = lot?.place || "No place said";
  const next = lines[at + 1]?.lot;
  const unchanged = read.ok && lot !== undefined && read.value === lot.quantity;
  return (
    <div className="count">
      <p className="row small count-state">
        <span>
          {Math.min(at + 1, lines.length)} of {number(lines.length)}
          {skipped ? `, ${number(skipped)} counted already` : ""}
        </span>
        <span role="status">
          {waiting
            ? `${number(waiting)} ${waiting === 1 ? "count waits" : "counts wait"} here${unreached ? " for a signal; nothing is lost" : ""}`
            : counted.size
              ? "All counts are written"
              : ""}
        </span>
      </p>
      {troubles.map((trouble) => (
        <div key={trouble.count.lotId} role="alert" className="notice alert small">
          <p>
            {trouble.count.name}, counted {number(trouble.count.quantity)}: {trouble.words}
          </p>
          <div className="row">
            {trouble.mayStand ? (
              <button type="button" onClick={() => add({ ...trouble.count, anyway: true })}>
                Count {number(trouble.count.quantity)} anyway
              </button>
            ) : null}
            <button type="button" onClick={() => back(trouble.count.lotId)}>
              {lines.some((one) => one.lot.id === trouble.count.lotId) ? "Count it again" : "Let it be"}
            </button>
          </div>
        </div>
      ))}
      {told ? <p className="notice small">{told}</p> : null}
      {line && lot ? (
        <form
          noValidate
          className="count-form"
          onSubmit={(event) => {
            event.preventDefault();
            count();
          }}
        >
          <div className="count-lot">
            <p className="count-place">{place}</p>
            <h2 ref={head} tabIndex={-1}>
              {line.taxon ? <BotanicalText taxon={line.taxon} /> : lot.taxonName}
              {lot.size ? <span className="count-size"> {lot.size}</span> : null}
            </h2>
            <p className="soft">{[line.taxon?.commonNames[0], lot.grade, lot.remarks].filter(Boolean).join(" · ")}</p>
            <p className="small">
              {number(lot.quantity)} on hand
              {lot.reserved ? `, ${number(lot.reserved)} of them promised` : ""}; counted <DayText at={lot.countedAt} never="never" />
            </p>
          </div>
          <div className="count-hand">
            <label htmlFor={`${id}-n`} className="visually-hidden">
              Plants counted
            </label>
            <div className="count-number">
              <button type="button" aria-label="One fewer" onClick={() => step(-1)}>
                −
              </button>
              <input
                id={`${id}-n`}
                value={text}
                inputMode="numeric"
                autoComplete="off"
                aria-invalid={fault !== null}
                aria-describedby={fault ? `${id}-fault` : undefined}
                onFocus={(event) => event.target.select()}
                onChange={(event) => {
                  setTyped(event.target.value);
                  setFault(null);
                }}
              />
              <button type="button" aria-label="One more" onClick={() => step(1)}>
                +
              </button>
            </div>
            {fault ? (
              <p id={`${id}-fault`} role="alert" className="alert">
                {fault}
              </p>
            ) : null}
            <button type="submit" className="primary count-right">
              {unchanged ? `${number(known)} is right` : `Count ${read.ok ? number(read.value) : "…"}`}
            </button>
            <div className="count-walk">
              <button type="button" disabled={at === 0} onClick={() => go(at - 1)}>
                Back
              </button>
              <span className="small soft count-next">
                {next ? `Next: ${next.place === lot.place ? "" : `${next.place || "no place"}: `}${next.taxonName} ${next.size}` : "The last one"}
              </span>
              <button type="button" onClick={() => go(at + 1)}>
                Skip
              </button>
            </div>
          </div>
        </form>
      ) : (
        <div className="count-lot">
          <h2 ref={head} tabIndex={-1}>
            {lines.length ? "The walk is done" : "Nothing to count here"}
          </h2>
          <p>
            {lines.length
              ? `${number(counted.size)} of ${number(lines.length)} lots counted${counted.size < lines.length ? `; ${number(lines.length - counted.size)} skipped` : ""}.`
              : skipped
                ? "Every lot here was counted since that day. Choose another block or an earlier day below."
                : "No lot stands here yet."}
          </p>
          <p className="row">
            {lines.length ? (
              <button type="button" onClick={() => go(lines.length - 1)}>
                Back
              </button>
            ) : null}
            <Link className="button primary" href="/nursery">
              To the nursery
            </Link>
          </p>
        </div>
      )}
    </div>
  );
}
