"use client";

import { useEffect, useRef, useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import type { FieldSnapshot, ShownLine } from "@/lib/papers/field-list";
import { photoShrunk } from "./photo-shrink";
import { PickInstead } from "./pick-instead";
import type { FieldDoing } from "./use-field-list";

/** One line, opened at thumb height: how many, and what became of them. */
export function FieldDialog({
  shown,
  pickable,
  record,
  close,
}: {
  shown: ShownLine;
  pickable: FieldSnapshot["pickable"];
  record: (doing: FieldDoing) => Promise<void>;
  close: () => void;
}) {
  const { line, progress, open } = shown;
  const dialog = useRef<HTMLDialogElement>(null);
  const [count, setCount] = useState(Math.max(1, open));
  const [swapping, setSwapping] = useState(false);
  const [note, setNote] = useState("");
  const [words, setWords] = useState("");
  useEffect(() => dialog.current?.showModal(), []);
  const most = Math.max(1, open);
  const quantity = Math.min(count, most);
  const done = (doing: Omit<FieldDoing, "lineId">) => {
    void record({ lineId: line.lineId, ...doing });
    if (doing.quantity >= open && open > 0 && doing.quantity > 0) dialog.current?.close();
    else setCount(Math.max(1, open - Math.max(0, doing.quantity)));
  };
  const back = (kind: "pulled" | "short" | "damaged" | "swapped", had: number) =>
    had > 0 ? (
      <button type="button" key={kind} onClick={() => done({ kind, quantity: -1 })}>
        Take back 1 {kind} <span className="soft">({had})</span>
      </button>
    ) : null;
  return (
    <dialog ref={dialog} className="field-dialog" onClose={close} aria-label={`${line.taxon.botanical} ${line.sizeText}`}>
      <div className="spread">
        <h2>
          <BotanicalText taxon={line.taxon} />
        </h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <p>
        {line.taxon.commonNames[0]} · {line.sizeText || "size not said"} · {line.letter} {line.bedName}
        {line.handling ? ` · ${line.handling}` : ""}
        {line.remarks ? ` · ${line.remarks}` : ""}
      </p>
      {line.cautions.map((caution) => (
        <p key={caution} className="alert">
          {caution}
        </p>
      ))}
      {open > 0 ? (
        <>
          <div className="field-stepper">
            <button type="button" aria-label="One fewer" onClick={() => setCount(Math.max(1, quantity - 1))}>
              −
            </button>
            <output aria-live="polite">
              {quantity} <span className="small">of {open} to go</span>
            </output>
            <button type="button" aria-label="One more" onClick={() => setCount(Math.min(most, quantity + 1))}>
              +
            </button>
          </div>
          <button type="button" className="field-main" onClick={() => done({ kind: "pulled", quantity })}>
            Pulled {quantity}
          </button>
          <div className="field-buttons">
            <button type="button" onClick={() => done({ kind: "short", quantity })}>
              Short {quantity}
            </button>
            <button type="button" onClick={() => done({ kind: "damaged", quantity })}>
              Damaged {quantity}
            </button>
            <button type="button" aria-expanded={swapping} onClick={() => setSwapping(!swapping)}>
              Swapped {quantity}
            </button>
          </div>
        </>
      ) : (
        <p className="field-done">Nothing left to do on this line.</p>
      )}
      {swapping && open > 0 ? (
        <PickInstead
          pickable={pickable.filter((pick) => pick.taxonId !== line.taxonId)}
          take={(pick) => {
            setSwapping(false);
            done({ kind: "swapped", quantity, data: pick.taxonId, note: `${pick.name} instead` });
          }}
        />
      ) : null}
      <div className="field-buttons">
        {back("pulled", progress.pulled)}
        {back("short", progress.short)}
        {back("damaged", progress.damaged)}
        {back("swapped", progress.swapped)}
      </div>
      <form
        className="field-note"
        onSubmit={(event) => {
          event.preventDefault();
          if (!note.trim()) return;
          void record({ lineId: line.lineId, kind: "note", quantity: 0, note: note.trim() });
          setNote("");
        }}
      >
        <label>
          Note
          <input value={note} maxLength={500} onChange={(event) => setNote(event.target.value)} placeholder="forked, take the one by the post" />
        </label>
        <button type="submit">Keep</button>
        <label className="button">
          Photo
          <input
            type="file"
            accept="image/*"
            capture="environment"
            className="visually-hidden"
            onChange={async (event) => {
              const file = event.target.files?.[0];
              if (!file) return;
              try {
                await record({ lineId: line.lineId, kind: "photo", quantity: 0, data: await photoShrunk(file) });
                setWords("Picture kept.");
              } catch {
                setWords("This file is no picture the phone can read.");
              }
            }}
          />
        </label>
      </form>
      <p role="status" className="small">
        {words}
      </p>
      {progress.notes.length ? (
        <ul className="field-notes">
          {progress.notes.map((text) => (
            <li key={text}>{text}</li>
          ))}
        </ul>
      ) : null}
      {progress.photos.length ? (
        <div className="field-photos">
          {progress.photos.map((address) => (
            <img key={address} src={address} alt={`Taken of ${line.taxon.botanical}`} loading="lazy" />
          ))}
        </div>
      ) : null}
    </dialog>
  );
}
