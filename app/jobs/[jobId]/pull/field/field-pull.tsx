"use client";

import Link from "next/link";
import { useEffect, useMemo, useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import { pageKept } from "@/app/parts/page-kept";
import { WhoField } from "@/app/parts/who-field";
import { fieldList, type ShownLine } from "@/lib/papers/field-list";
import { FieldDialog } from "./field-dialog";
import { type SignalState, useFieldList } from "./use-field-list";

function signalWords(signal: SignalState, waiting: number): string {
  const changes = `${waiting} change${waiting === 1 ? "" : "s"}`;
  switch (signal) {
    case "looking":
      return "Looking for the list …";
    case "sending":
      return `Sending ${waiting ? changes : ""} …`;
    case "sent":
      return waiting ? `${changes} to send` : "All is with the office";
    case "no signal":
      return waiting ? `No signal: ${changes} kept on this phone` : "No signal: working from this phone";
    case "refused":
      return `${changes} not taken by the office`;
  }
}

function lineWords({ line, progress, open }: ShownLine): string {
  const parts = [
    progress.pulled ? `${progress.pulled} pulled` : "",
    progress.short ? `${progress.short} short` : "",
    progress.damaged ? `${progress.damaged} damaged` : "",
    progress.swapped ? `${progress.swapped} swapped` : "",
    open && open < line.wanted ? `${open} to go` : "",
  ];
  return parts.filter(Boolean).join(", ");
}

function LineButton({ shown, open }: { shown: ShownLine; open: () => void }) {
  const { line, progress } = shown;
  const done = shown.open === 0;
  const words = lineWords(shown);
  return (
    <li className={`field-line${done ? " done" : ""}${progress.conflict ? " conflict" : ""}`}>
      <button
        type="button"
        onClick={open}
        aria-label={`${line.wanted} ${line.taxon.botanical} ${line.taxon.cultivar ?? ""} ${line.sizeText}, ${done ? "done" : `${shown.open} to go`}`}
      >
        <span className="field-count">
          <b>{shown.open || "✓"}</b>
          <span className="small">of {line.wanted}</span>
        </span>
        <span className="field-plant">
          <BotanicalText taxon={line.taxon} />
          <span className="field-second">
            {line.sizeText || "size not said"} · {line.letter} {line.bedName}
          </span>
          {line.handling ? <span className="field-second">{line.handling}</span> : null}
          {words ? <span className="field-second field-done">{words}</span> : null}
          {progress.conflict ? <span className="field-second alert">Two people worked on this line: look again, the office sees it too.</span> : null}
        </span>
      </button>
    </li>
  );
}

/** The pull list on a phone: by place in walking order, one tap a line, working without a signal. */
export function FieldPull({ jobId }: { jobId: string }) {
  const { snapshot, queue, signal, fault, record, sync } = useFieldList(jobId);
  const [openId, setOpenId] = useState<string | null>(null);
  const list = useMemo(() => (snapshot ? fieldList(snapshot, queue) : null), [snapshot, queue]);
  const shown = list?.stops.flatMap(({ lines }) => lines).find(({ line }) => line.lineId === openId) ?? null;
  useEffect(() => void pageKept(), []);
  // The code on a tag names its line.
  const isThere = snapshot !== null;
  useEffect(() => {
    if (!isThere) return;
    const named = () => setOpenId(location.hash ? decodeURIComponent(location.hash.slice(1)) : null);
    named();
    window.addEventListener("hashchange", named);
    return () => window.removeEventListener("hashchange", named);
  }, [isThere]);
  const closeLine = () => {
    setOpenId(null);
    if (location.hash) history.replaceState(null, "", location.pathname);
  };
  return (
    <main id="main" className="field-sheet">
      <header className="field-head">
        <div className="spread">
          <h1>{snapshot?.jobName ?? "Pull list"}</h1>
          {list ? (
            <span className="field-total">
              <b>{list.pulled}</b> of {list.wanted}
            </span>
          ) : null}
        </div>
        <div className="spread small">
          <span role="status" className={signal === "no signal" || signal === "refused" ? "field-signal off" : "field-signal"}>
            {signalWords(signal, queue.length)}
          </span>
          <button type="button" className="plain" onClick={() => void sync()}>
            Send now
          </button>
        </div>
        {fault ? (
          <p role="alert" className="alert small">
            {fault}
          </p>
        ) : null}
      </header>
      {list === null ? (
        <p className="field-empty">
          {signal === "no signal"
            ? "This list was never opened on this phone, and there is no signal now. Open it once where there is one; from then on it works without."
            : "The list is coming …"}
        </p>
      ) : null}
      {list && list.stops.length === 0 ? <p className="field-empty">Nothing to pull yet: the beds of this job have no plants to bring.</p> : null}
      {list?.stops.map((stop) => (
        <section key={stop.place} aria-label={stop.place}>
          <h2 className="spread">
            <span>{stop.place}</span>
            <span className="small">{stop.open ? `${stop.open} to go` : "done"}</span>
          </h2>
          <ul>
            {stop.lines.map((line) => (
              <LineButton key={line.line.lineId} shown={line} open={() => setOpenId(line.line.lineId)} />
            ))}
          </ul>
        </section>
      ))}
      {list ? (
        <footer className="small field-foot">
          <WhoField who="" />
          <p>Two people lift from 50 lb on, a machine from 100 lb. Look up for lines before a boom or a spade goes up. Call 811 before digging on a site.</p>
          <p>
            <Link href={`/jobs/${jobId}/pull`}>The whole pull list</Link> · <Link href={`/jobs/${jobId}/shorts`}>What is short</Link>
          </p>
        </footer>
      ) : null}
      {shown && snapshot ? <FieldDialog shown={shown} pickable={snapshot.pickable} record={record} close={closeLine} /> : null}
    </main>
  );
}
