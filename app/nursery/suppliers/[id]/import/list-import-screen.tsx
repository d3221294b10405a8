"use client";

import { useRouter } from "next/navigation";
import { useCallback, useEffect, useRef, useState, useTransition } from "react";
import type { AcceptAnswer } from "@/lib/server/list-import-accept";
import type { ChangeGroups, ImportShown } from "@/lib/server/list-import-view";
import { importAcceptAction } from "../../actions";
import { ChangeSection } from "./change-section";
import { ColumnSection, type Correction } from "./column-section";
import { FileDrop } from "./file-drop";
import { NameSection } from "./name-section";
import { progressRead } from "./progress-read";

type Step = { done: number; of: number } | null;
const number = (count: number): string => count.toLocaleString("en-US");
const LOST = "The program did not answer. Nothing was written; choose the file again.";

/** From the file to the accepted list: read, look through, accept. Until it is accepted nothing is written. */
export function ListImportScreen({ supplierId, last }: { supplierId: string; last: string | null }) {
  const router = useRouter();
  const [fault, setFault] = useState("");
  const [busy, setBusy] = useState(false);
  const [step, setStep] = useState<Step>(null);
  const [shown, setShown] = useState<ImportShown | null>(null);
  const [change, setChange] = useState<ChangeGroups | null>(null);
  const [reading, setReading] = useState(0);
  // Sheets with columns chosen anew that the list was not read with yet.
  const [unread, setUnread] = useState<ReadonlySet<string>>(new Set());
  const [result, setResult] = useState<AcceptAnswer | null>(null);
  const [accepting, startAccept] = useTransition();
  const stop = useRef<AbortController | null>(null);
  const id = shown?.id ?? null;
  useEffect(() => () => stop.current?.abort(), []);

  const part = useCallback(async <T,>(importId: string, query: string): Promise<T | null> => {
    const response = await fetch(`/api/list-import/${importId}?${query}`).catch(() => null);
    return response?.ok ? ((await response.json()) as T) : null;
  }, []);
  const refresh = useCallback(
    async (importId: string) => {
      const [list, changed] = await Promise.all([part<ImportShown>(importId, "part=list"), part<ChangeGroups>(importId, "part=change")]);
      if (!list) setFault("This list is no longer held: choose the file again. Nothing was written.");
      setShown(list);
      setChange(changed);
    },
    [part],
  );
  const read = async (address: string, init: RequestInit) => {
    stop.current?.abort();
    const own = new AbortController();
    stop.current = own;
    setFault("");
    setResult(null);
    setBusy(true);
    setStep({ done: 0, of: 0 });
    try {
      let importId = "";
      await progressRead(address, { ...init, signal: own.signal }, (progress) => {
        if (progress.kind === "fault") setFault(progress.message);
        else if (progress.kind === "ready") importId = progress.importId;
        else setStep(progress.kind === "read" ? { done: 0, of: progress.lines } : progress);
      });
      if (importId) await refresh(importId);
      setReading((count) => count + 1);
      setUnread(new Set());
    } catch {
      if (!own.signal.aborted) setFault(LOST);
    }
    if (stop.current === own) {
      setBusy(false);
      setStep(null);
    }
  };
  const take = (file: File) => {
    setShown(null);
    void read(`/api/list-import?${new URLSearchParams({ supplier: supplierId, name: file.name })}`, {
      method: "POST",
      body: file,
      headers: { "content-type": "application/octet-stream" },
    });
  };
  const correct = (corrections: readonly Correction[]) => {
    if (id) void read(`/api/list-import/${id}`, { method: "POST", body: JSON.stringify(corrections), headers: { "content-type": "application/json" } });
  };
  const unreadMark = (sheet: string, is: boolean) => {
    const next = new Set(unread);
    if (is) next.add(sheet);
    else next.delete(sheet);
    setUnread(next);
  };
  const cancel = () => {
    stop.current?.abort();
    if (id) void fetch(`/api/list-import/${id}`, { method: "DELETE" }).catch(() => null);
    setBusy(false);
    setStep(null);
    setShown(null);
    setChange(null);
    setFault("");
  };
  const accept = () =>
    startAccept(async () => {
      if (!id) return;
      const answer = await importAcceptAction(id).catch(() => ({ kind: "fault" as const, message: LOST }));
      if (answer.kind === "fault") return setFault(answer.message);
      setResult(answer);
      setShown(null);
      setChange(null);
      router.refresh();
    });

  if (result?.kind === "accepted")
    return (
      <section aria-labelledby="accepted" className="import-done">
        <h2 id="accepted">The list is taken over</h2>
        <p role="status">
          {number(result.added)} {result.added === 1 ? "lot" : "lots"} added, {number(result.updated)} changed, {number(result.gone)} gone.{" "}
          {result.unmatched ? `${number(result.unmatched)} ${result.unmatched === 1 ? "line without a plant is" : "lines without a plant are"} kept on the supplier’s page. ` : ""}
          {result.learned ? `${number(result.learned)} ${result.learned === 1 ? "name" : "names"} learned for next time.` : ""}
        </p>
        {result.tooFew.length ? (
          <div className="notice alert">
            <p>Promised plants the list no longer has. Find others, or ask the supplier:</p>
            <ul>
              {result.tooFew.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </div>
        ) : null}
        <div className="row">
          <button type="button" className="button primary" onClick={() => router.push(`/nursery/suppliers/${supplierId}`)}>
            See the lots
          </button>
          <button type="button" className="button" onClick={() => setResult(null)}>
            Read another list
          </button>
        </div>
      </section>
    );
  const open = shown ? shown.groups.confirm.names - shown.groups.confirm.decided : 0;
  return (
    <>
      {shown ? null : <FileDrop take={take} busy={busy} last={last} />}
      <p role="alert" className="alert">
        {fault}
      </p>
      {step ? (
        <div className="import-progress">
          <label htmlFor="import-progress">{step.of ? `Names matched: ${number(step.done)} of ${number(step.of)}` : "Reading the file …"}</label>
          <progress id="import-progress" max={step.of || 1} value={step.of ? step.done : undefined} />
          <button type="button" className="button" onClick={cancel}>
            Cancel
          </button>
        </div>
      ) : null}
      {shown ? (
        <div aria-busy={busy}>
          <p className="import-words">
            <b>{shown.fileName}</b>: {number(shown.lines)} {shown.lines === 1 ? "line" : "lines"}, of these {number(shown.groups.sure.lines)} with a sure name,{" "}
            {number(shown.groups.confirm.lines)} to confirm, {number(shown.groups.none.lines)} without a plant. {shown.notes.join(" ")} Nothing is written yet.
          </p>
          <div className="row import-acts screen-only">
            <button type="button" className="button primary" onClick={accept} disabled={accepting || busy || unread.size > 0}>
              {accepting ? "Writing …" : "Accept the list"}
            </button>
            <button type="button" className="button" onClick={cancel} disabled={accepting}>
              Cancel
            </button>
            <span className="small soft" role="status">
              {unread.size ? "Columns were changed: read the list again with them before it is accepted. " : ""}
              {open ? `${number(open)} ${open === 1 ? "name is" : "names are"} not confirmed; what stands under ${open === 1 ? "it" : "them"} would be kept without a plant.` : ""}
            </span>
          </div>
          {change ? <ChangeSection change={change} /> : null}
          <ColumnSection key={`columns ${reading}`} shown={shown} correct={correct} unread={unreadMark} busy={busy} />
          <NameSection key={`names ${reading}`} shown={shown} changed={() => refresh(shown.id)} />
          <section aria-labelledby="skipped">
            <details>
              <summary>
                <h2 id="skipped">Rows left out: {number(shown.skippedCount)}</h2>
              </summary>
              <table className="skipped">
                <thead>
                  <tr>
                    <th scope="col">Row</th>
                    <th scope="col">Taken for</th>
                    <th scope="col">As written</th>
                  </tr>
                </thead>
                <tbody>
                  {shown.skipped.map(({ sheet, row, why, text }) => (
                    <tr key={`${sheet} ${row}`}>
                      <td>
                        {shown.sheets.length > 1 ? `${sheet} ` : ""}
                        {row}
                      </td>
                      <td>{why}</td>
                      <td className="small">{text}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </details>
          </section>
        </div>
      ) : null}
    </>
  );
}
