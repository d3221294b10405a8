"use client";

import dynamic from "next/dynamic";
import Link from "next/link";
import { type CSSProperties, useCallback, useEffect, useMemo, useReducer, useState } from "react";
import type { PlantHit } from "@/app/api/plants/route";
import { TitleBlock } from "@/app/parts/title-block";
import type { Remedy } from "@/lib/findings/finding";
import type { BedRow } from "@/lib/ground/bed";
import { bedView, type PlacedTaxon, YEAR_SHOWN } from "@/lib/papers/bed-view";
import type { Targets } from "@/lib/season/interest";
import type { StoredBed } from "@/lib/server/beds";
import { type BedCommand, draftNext, draftOf } from "./bed-draft";
import { BedFacts, type SheetPlace } from "./bed-facts";
import { CopyPanel, type OtherBed } from "./copy-panel";
import { nameRead } from "./field-readers";
import { FillPanel } from "./fill-panel";
import { FindingsList, findingCounts } from "./findings-list";
import { GroundWords } from "./ground-words";
import { PlantRow } from "./plant-row";
import { SaveLine } from "./save-line";
import { SitePanel } from "./site-panel";
import { TextField } from "./text-field";
import { useBedSave, useKeptDraft } from "./use-bed-save";
import { YearFigures } from "./year-figures";
import { YearFoot } from "./year-foot";
import { YearHead } from "./year-head";

const CoverChart = dynamic(() => import("./cover-chart").then((m) => m.CoverChart), { ssr: false, loading: () => <p className="soft small">Drawing …</p> });

const SIZES = [
  "plug",
  "qt",
  "#1",
  "#2",
  "#3",
  "#5",
  "#7",
  "18-24 in",
  "2-3 ft",
  "3-4 ft",
  "4-5 ft B&B",
  "5-6 ft B&B",
  "1½ in cal B&B",
  "2 in cal B&B",
  "2½ in cal B&B",
  "8-10 ft clump B&B",
  "bulb",
];

export type BedSheetProps = {
  readonly stored: StoredBed;
  readonly placed: Readonly<Record<string, PlacedTaxon>>;
  readonly job: { readonly id: string; readonly name: string; readonly targets: Targets };
  readonly place: SheetPlace;
  readonly bedNumber: number;
  readonly bedTotal: number;
  readonly others: readonly OtherBed[];
  readonly today: { readonly day: number; readonly text: string };
  readonly period: string;
};

let rowsMade = 0;
/** An id for a row made here; the time keeps two windows apart. */
const rowId = () => `r${Date.now().toString(36)}${(rowsMade++).toString(36)}`;

/** Where the freeze dates and today stand in the year column; the style sheet draws the lines through all rows. */
const ruleStyle = ([last, first]: readonly (number | null | undefined)[], day: number) => {
  const at = (d: number | null | undefined) => (d == null ? "-10%" : `${((100 * d) / 365).toFixed(2)}%`);
  return { "--last-freeze": at(last), "--first-freeze": at(first), "--today": at(day) } as CSSProperties;
};

/** A bed's page: a drawing sheet whose list is its chart. */
export function BedSheet({ stored, placed: placedAtStart, job, place, bedNumber, bedTotal, others, today, period }: BedSheetProps) {
  const [draft, send] = useReducer(draftNext, stored.bed, draftOf);
  const [placed, setPlaced] = useState(placedAtStart);
  const [year, setYear] = useState(YEAR_SHOWN);
  const [fill, setFill] = useState<readonly number[] | null>(null);
  const [copying, setCopying] = useState(false);
  const [said, setSaid] = useState("");
  const bed = draft.present;
  const save = useBedSave(stored.id, stored.version, stored.savedAt, bed);
  const view = useMemo(() => bedView(bed, placed, place, job.targets, year), [bed, placed, place, job.targets, year]);
  const freezeDays = useMemo(() => [place.lastFreezeDay, place.firstFreezeDay], [place]);
  const path = `/jobs/${job.id}/beds/${stored.id}`;
  const { markStale } = save;

  useKeptDraft(stored, send, markStale);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      if (event.target instanceof HTMLElement && event.target.matches("input, textarea") && !event.target.closest(".settled")) return;
      event.preventDefault();
      send({ type: event.shiftKey ? "redo" : "undo" });
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);

  const addRow = useCallback((hit: { taxon: PlacedTaxon["taxon"]; season: PlacedTaxon["season"] }, row: Omit<BedRow, "id" | "taxonId" | "taxonName">) => {
    setPlaced((before) => ({ ...before, [hit.taxon.id]: { taxon: hit.taxon, season: hit.season } }));
    send({ type: "add", rows: [{ ...row, id: rowId(), taxonId: hit.taxon.id, taxonName: hit.taxon.name }] });
    setSaid(`${hit.taxon.name} added.`);
  }, []);
  const addHit = useCallback(
    (hit: PlantHit) =>
      addRow(hit, {
        quantity: { by: "count", count: hit.taxon.kind === "tree" || hit.taxon.kind === "conifer" ? 1 : 3 },
        spacingFt: null,
        size: hit.usualSize,
        remarks: "",
        existing: false,
      }),
    [addRow],
  );
  const apply = useCallback((remedy: Remedy) => {
    switch (remedy.type) {
      case "spacing":
        return send({ type: "change", rowId: remedy.rowId, change: { spacingFt: remedy.spacingFt } });
      case "count":
        return send({ type: "change", rowId: remedy.rowId, change: { quantity: { by: "count", count: remedy.count } } });
      case "remove":
        return send({ type: "remove", rowId: remedy.rowId });
      case "fill":
        return setFill(remedy.halfMonths);
    }
  }, []);
  const sendSaid = useCallback(
    (command: BedCommand) => {
      send(command);
      if (command.type === "remove") setSaid("Plant taken out. Undo brings it back.");
      if (command.type === "move") setSaid(`Moved to place ${Math.max(1, Math.min(bed.rows.length, command.to + 1))}.`);
    },
    [bed.rows.length],
  );

  return (
    <main id="main" className="sheet bed-sheet">
      <div className="sheet-head spread">
        <div className="row bed-name">
          <h1 className="visually-hidden">{bed.name}</h1>
          <TextField label="Bed name" className="title-field" text={bed.name} read={nameRead} keep={(name) => send({ type: "rename", name })} />
          <span className="soft">
            <Link href={`/jobs/${job.id}`}>{job.name}</Link> · bed {bedNumber} of {bedTotal}
          </span>
        </div>
        <SaveLine save={save} draft={draft} send={send} bed={bed} setPlaced={setPlaced} />
      </div>
      <BedFacts jobId={job.id} bed={bed} view={view} place={place} />
      <SitePanel bed={bed} send={send} path={path} />
      <table className="plant-list" style={ruleStyle(freezeDays, today.day)}>
        <caption className="visually-hidden">Plant list with each plant's year</caption>
        <YearHead counts={view.counts} freezeDays={freezeDays} today={today.day} />
        <tbody>
          {view.rows.map((viewRow, index) => (
            <PlantRow key={viewRow.row.id} viewRow={viewRow} index={index} send={sendSaid} apply={apply} />
          ))}
          {view.rows.length === 0 ? (
            <tr className="empty-row">
              <td colSpan={7}>No plants yet. Type a name below: botanical, common or trade name, misspelt or abbreviated. Each plant shows its year here, at this place.</td>
            </tr>
          ) : null}
        </tbody>
        <YearFoot
          jobId={job.id}
          path={path}
          view={view}
          targets={job.targets}
          freezeDays={freezeDays}
          year={year}
          setYear={setYear}
          hasOthers={others.length > 0}
          showFill={setFill}
          showCopy={() => setCopying(true)}
          addHit={addHit}
        />
      </table>
      <datalist id="sizes">
        {SIZES.map((size) => (
          <option key={size} value={size} />
        ))}
      </datalist>
      <p className="visually-hidden" role="status">
        {said}
      </p>

      <div className="split">
        <section aria-labelledby="findings-title">
          <div className="section-head">
            <h2 id="findings-title">Findings</h2>
            <span className="soft small">{findingCounts(view.counts)}</span>
          </div>
          <FindingsList findings={view.findings} rows={view.rows} apply={apply} />
        </section>
        <section aria-labelledby="ground-title">
          <div className="section-head">
            <h2 id="ground-title">Ground</h2>
            <span className="soft small">share of the bed under leaves, by year after planting</span>
          </div>
          {view.rows.length ? (
            <>
              <GroundWords view={view} path={path} />
              <CoverChart cover={view.ground.coverByYear} />
            </>
          ) : (
            <p className="soft">The cover by year appears here as plants are added.</p>
          )}
        </section>
      </div>
      <YearFigures halfMonths={view.season.halfMonths} targets={job.targets} />
      <TitleBlock
        cells={[
          ["Job", job.name],
          ["Bed", `${bedNumber} ${bed.name}`],
          ["Place", place.label],
          ["Zone", place.zoneWords.replace(/^zone /, "")],
          ["Normals", period],
          ["Year shown", year === 0 ? "hand-over" : String(year)],
          ["Date", today.text],
        ]}
      />
      {fill ? (
        <FillPanel
          path={path}
          halfMonths={fill}
          year={year}
          freezeDays={freezeDays}
          close={() => setFill(null)}
          add={(offer) => addRow(offer.placed, { quantity: { by: "count", count: offer.quantity }, spacingFt: null, size: offer.size, remarks: "", existing: false })}
        />
      ) : null}
      {copying ? (
        <CopyPanel
          others={others}
          close={() => setCopying(false)}
          copy={(rows, taxa) => {
            setPlaced((before) => ({ ...before, ...taxa }));
            send({ type: "add", rows: rows.map((row) => ({ ...row, id: rowId() })) });
          }}
        />
      ) : null}
    </main>
  );
}
