"use client";

import { type DragEvent, useEffect, useId, useMemo, useRef, useState } from "react";
import { areaText, lengthText } from "@/lib/ground/length";
import { type ImportedOutline, type ImportUnit, OUTLINE_FORMATS, type OutlineFormat, outlinesImported } from "@/lib/ground/outline-import";
import { planBounds } from "@/lib/ground/plan-edit";
import { planSampled } from "@/lib/ground/plan-outline";
import { planPath } from "../plan-path";
import { viewOfAll } from "../sheet-view";
import { formatGuess, UNIT_WORDS, unitsOf } from "./format-guess";
import { planLaidOver } from "./start-over";
import { type OutlineEdit, planHindrance } from "./use-outline-edit";

const SMALL_PX = { width: 130, height: 80 } as const;
/** Outlines listed: the largest ones. */
const LISTED = 40;
const FILE_MAX_BYTES = 4_000_000;

function SmallDrawing({ outline: { plan, name } }: { outline: ImportedOutline }) {
  const { outline } = planSampled(plan);
  const view = viewOfAll(outline, SMALL_PX.width, SMALL_PX.height, 6);
  return (
    <svg width={SMALL_PX.width} height={SMALL_PX.height} viewBox={`0 0 ${SMALL_PX.width} ${SMALL_PX.height}`} role="img" aria-label={`Drawing of ${name}`}>
      <path d={planPath(view, plan)} fill="var(--field)" stroke="var(--ink)" strokeWidth="1.4" />
    </svg>
  );
}

function sizeWords({ plan, areaSqFt }: ImportedOutline): string {
  const bounds = planBounds(plan);
  const over = (axis: 0 | 1) => (bounds ? bounds.high[axis] - bounds.low[axis] : 0);
  return `${areaText(areaSqFt)}, ${lengthText(over(0))} × ${lengthText(over(1))}, ${plan.length} edges`;
}

type Text = { readonly name: string; readonly text: string };

/** Where the text comes from: a file dropped or chosen, or pasted. */
function TextSource({ source, take, refuse }: { source: Text; take: (source: Text) => void; refuse: (words: string) => void }) {
  const [over, setOver] = useState(false);
  const read = async (file: File | undefined) => {
    if (!file) return;
    if (file.size > FILE_MAX_BYTES) return refuse(`“${file.name}” is larger than 4 MB. Send only the bed’s outline.`);
    take({ name: file.name, text: await file.text() });
  };
  const drop = {
    onDragOver: (event: DragEvent) => {
      event.preventDefault();
      setOver(true);
    },
    onDragLeave: () => setOver(false),
    onDrop: (event: DragEvent) => {
      event.preventDefault();
      setOver(false);
      void read(event.dataTransfer.files[0]);
    },
  };
  return (
    <>
      <label className={over ? "file-drop over" : "file-drop"} {...drop}>
        <span>Drop a file here or choose one: SVG, DXF (as text) or GeoJSON{source.name ? <b> · {source.name}</b> : null}</span>
        <input type="file" accept=".svg,.dxf,.geojson,.json,image/svg+xml,application/geo+json" onChange={(event) => void read(event.target.files?.[0])} />
      </label>
      <label className="field">
        or paste its text
        <textarea
          rows={4}
          spellCheck={false}
          value={source.text.length > 20_000 ? "" : source.text}
          placeholder="M 0 0 H 20 V 8 H 0 Z"
          onChange={(event) => take({ name: "", text: event.target.value })}
        />
      </label>
    </>
  );
}

/** Brings in an outline from a file: read, shown to choose from, laid where the old one lies. */
export function ImportDialog({ edit, close }: { edit: OutlineEdit; close: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  const [source, setSource] = useState<Text>({ name: "", text: "" });
  const [refused, setRefused] = useState<string | null>(null);
  const [formatSaid, setFormatSaid] = useState<OutlineFormat | null>(null);
  const [unitSaid, setUnitSaid] = useState<ImportUnit | null>(null);
  const [picked, setPicked] = useState(0);
  useEffect(() => dialog.current?.showModal(), []);
  const format = formatSaid ?? formatGuess(source.name, source.text);
  const units = format ? unitsOf(format) : [];
  const unit = units.find((u) => u === unitSaid) ?? units[0];
  const empty = source.text.trim() === "";
  const result = useMemo(() => (empty || !format || !unit ? null : outlinesImported(source.text, format, unit)), [source, empty, format, unit]);
  const outlines = result?.ok ? result.outlines : [];
  const chosen = outlines[picked];
  const hindrance = chosen ? planHindrance(chosen.plan) : null;
  const fault = result && !result.ok ? result.fault : null;
  return (
    <dialog ref={dialog} aria-labelledby={titleId} className="import-dialog" onClose={close}>
      <div className="spread">
        <h2 id={titleId}>Bring in an outline</h2>
        <button type="button" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <TextSource
        source={source}
        refuse={setRefused}
        take={(next) => {
          setSource(next);
          setRefused(null);
          setPicked(0);
          // A chosen format is kept while typing on; a new file is looked at anew.
          if (next.name) {
            setFormatSaid(null);
            setUnitSaid(null);
          }
        }}
      />
      <div className="fields">
        <label className="field">
          Format
          <select
            value={format ?? ""}
            onChange={(event) => {
              setFormatSaid(OUTLINE_FORMATS.find((f) => f === event.target.value) ?? null);
              setPicked(0);
            }}
          >
            <option value="">{empty ? "guessed from the file" : "not known"}</option>
            {OUTLINE_FORMATS.map((f) => (
              <option key={f}>{f}</option>
            ))}
          </select>
        </label>
        <label className="field">
          One unit of the file is
          <select value={unit ?? ""} disabled={!format} onChange={(event) => setUnitSaid(units.find((u) => u === event.target.value) ?? null)}>
            {units.length === 0 ? <option value="">–</option> : null}
            {units.map((u) => (
              <option key={u} value={u}>
                {UNIT_WORDS[u]}
              </option>
            ))}
          </select>
        </label>
      </div>
      {refused ? (
        <p role="alert" className="alert">
          {refused}
        </p>
      ) : null}
      {!empty && !format ? (
        <p role="alert" className="alert">
          This does not look like SVG, DXF or GeoJSON. Say which it is, above; a binary drawing has to be saved as text DXF first.
        </p>
      ) : null}
      {fault ? (
        <p role="alert" className="alert">
          {fault.line === null ? "" : `Line ${fault.line}, `}
          {fault.field}: {fault.words}
        </p>
      ) : null}
      {outlines.length ? (
        <fieldset className="outline-choice">
          <legend className="soft small">{outlines.length === 1 ? "One outline" : `${outlines.length} outlines, largest first`}. If the size is wrong, choose another unit.</legend>
          <div>
            {outlines.slice(0, LISTED).map((outline, i) => (
              <label key={`${outline.name} ${String(i)}`} className={i === picked ? "picked" : ""}>
                <SmallDrawing outline={outline} />
                <span>
                  <input type="radio" name="imported-outline" checked={i === picked} onChange={() => setPicked(i)} /> <b>{outline.name}</b>
                  <br />
                  <span className="small">{sizeWords(outline)}</span>
                </span>
              </label>
            ))}
          </div>
          {outlines.length > LISTED ? <p className="small soft">The {LISTED} largest are shown.</p> : null}
        </fieldset>
      ) : null}
      {hindrance ? (
        <p role="alert" className="alert">
          {chosen?.name}: {hindrance.words}
        </p>
      ) : null}
      <div className="row">
        <button
          type="button"
          className="primary"
          disabled={!chosen || hindrance !== null}
          onClick={() => {
            if (!chosen) return;
            edit.keepPlan(planLaidOver(chosen.plan, edit.plan), `${chosen.name} is the bed’s outline now. Undo brings the old one back.`);
            dialog.current?.close();
          }}
        >
          Take this outline
        </button>
        <span className="small soft">It takes the old outline’s place, lower left corner on lower left corner; what edges border is set anew. Undo brings the old one back.</span>
      </div>
    </dialog>
  );
}
