"use client";

import dynamic from "next/dynamic";
import Link from "next/link";
import { type CSSProperties, useCallback, useEffect, useMemo, useReducer, useState } from "react";
import type { PlantHit } from "@/app/api/plants/route";
import { TitleBlock } from "@/app/parts/title-block";
import type { Remedy } from "@/lib/findings/finding";
import type { BedRow } from "@/lib/ground/bed";
import { areaText } from "@/lib/ground/length";
import { bedView, type PlacedTaxon, type ViewPlace, YEAR_SHOWN } from "@/lib/papers/bed-view";
import { MONTHS } from "@/lib/plants/thirds";
import { halfMonthRuns } from "@/lib/season/half-months";
import type { Targets } from "@/lib/season/interest";
import { dayText } from "@/lib/season/sentence";
import type { StoredBed } from "@/lib/server/beds";
import { type BedCommand, draftNext, draftOf } from "./bed-draft";
import { CopyPanel, type OtherBed } from "./copy-panel";
import { nameRead, textRead } from "./field-readers";
import { FillPanel } from "./fill-panel";
import { FindingsList, findingCounts } from "./findings-list";
import { InterestChart, InterestTable } from "./interest-chart";
import { PlantAdd } from "./plant-add";
import { PlantRow } from "./plant-row";
import { SaveLine } from "./save-line";
import { SiteForm } from "./site-form";
import { SizeForm } from "./size-form";
import { TextField } from "./text-field";
import { keptDraft, useBedSave } from "./use-bed-save";
import { YearHead } from "./year-head";

const CoverChart = dynamic(() => import("./cover-chart").then((m) => m.CoverChart), { ssr: false, loading: () => <p className="soft small">Drawing …</p> });

const YEARS = [0, 1, 2, 3, 5, 10, 15, 20];
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
  readonly place: ViewPlace & {
    readonly label: string;
    readonly zoneWords: string;
    readonly dated: boolean;
    readonly fault: string | null;
    readonly settingWords: readonly string[];
  };
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

  // An edit this browser kept because it never reached the server comes back once, as a change that can be undone.
  useEffect(() => {
    const kept = keptDraft(stored.id);
    if (!kept) return;
    send({ type: "replace", bed: kept.bed });
    if (kept.base !== stored.version) markStale(stored);
  }, [stored, markStale]);

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

  const bareWords = halfMonthRuns(view.season.gaps.map((g) => g.index));
  const total = view.rows.reduce((sum, r) => sum + (r.row.existing ? 0 : r.quantity), 0);
  const nextYear = (text: string) => setYear(Number(text));
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
      <ul className="facts">
        <li>
          <Link href={`/jobs/${job.id}/place`}>
            <b>{place.label}</b>
          </Link>
        </li>
        <li>
          {place.zoneWords.startsWith("zone") ? "zone " : ""}
          <b>{place.zoneWords.replace(/^zone /, "")}</b>
        </li>
        {place.settingWords.map((words) => (
          <li key={words}>
            <Link href={`/jobs/${job.id}/place`}>{words}</Link>
          </li>
        ))}
        {place.lastFreezeDay !== null && place.firstFreezeDay !== null && place.dated ? (
          <li>
            freeze <b>{dayText(place.lastFreezeDay)}</b> · <b>{dayText(place.firstFreezeDay)}</b>
          </li>
        ) : null}
        <li>
          <b>{areaText(view.areaSqFt)}</b>
          {bed.site.faces ? `, faces ${bed.site.faces}` : ""}
        </li>
        <li title={`${view.ground.densityRaw.toFixed(1)}; 5 is set at mature spread`}>
          density <b>{view.rows.length ? view.ground.density : "–"}</b> of 10
        </li>
        <li>
          year score <b>{view.rows.length ? Math.round(view.season.score * 100) : "–"}</b>
        </li>
      </ul>
      {place.dated ? null : (
        <p className="notice alert">
          {place.fault ?? "This place has no climate."} Until then the year shown is that of the reference climate, Wooster, Ohio.{" "}
          <Link href={`/jobs/${job.id}/place`}>Set the place</Link>
        </p>
      )}

      <details className="site screen-only" open={bed.rows.length === 0}>
        <summary>Size and site</summary>
        <SizeForm size={bed.size} change={(size) => send({ type: "size", size })} />
        <SiteForm site={bed.site} change={(site) => send({ type: "site", site })} />
        <div className="field notes-field">
          <span className="soft small">Notes on the bed</span>
          <TextField
            label="Notes on the bed"
            text={bed.notes}
            read={textRead(5000)}
            keep={(notes) => send({ type: "notes", notes })}
            placeholder="what it borders, where it is seen from, what stays"
          />
        </div>
      </details>
      <p className="site-words">
        {{ sun: "Full sun", part: "Part shade", shade: "Shade" }[bed.site.light]}, {bed.site.moisture} soil{bed.site.ph === null ? ", pH not tested" : `, pH ${bed.site.ph}`}; road
        salt: {bed.site.salt}; deer: {bed.site.deer}.{bed.notes ? ` ${bed.notes}` : ""}
      </p>

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
        <tfoot>
          <tr className="foot-row">
            <td colSpan={6}>
              <PlantAdd jobId={job.id} freezeDays={freezeDays} add={addHit} />
              <div className="foot-words">
                <p>
                  <label className="inline-label">
                    Interest of the bed,{" "}
                    <select className="screen-only" value={year} onChange={(event) => nextYear(event.target.value)} aria-label="Years after planting">
                      {YEARS.map((y) => (
                        <option key={y} value={y}>
                          {y === 0 ? "at hand-over" : `year ${y}`}
                        </option>
                      ))}
                    </select>
                  </label>
                  <span className="print-only">{year === 0 ? "at hand-over" : `year ${year}`}</span>, against its target.
                </p>
                {view.rows.length ? (
                  <p>
                    {bareWords.length ? (
                      <>
                        <b className="alert">Bare: {bareWords.join("; ")}.</b>{" "}
                        <button type="button" className="plain" onClick={() => setFill(view.season.gaps.map((g) => g.index))}>
                          See what would fill it here
                        </button>
                      </>
                    ) : (
                      <b>No half-month is bare.</b>
                    )}
                  </p>
                ) : null}
                <p className="row screen-only">
                  {others.length ? (
                    <button type="button" onClick={() => setCopying(true)}>
                      Copy from another bed
                    </button>
                  ) : null}
                  <Link className="button" href={`/jobs/${job.id}/pull?bed=${stored.id}`}>
                    Pull list ({total.toLocaleString("en-US")} plants)
                  </Link>
                  <a className="button" href={`${path}/file`}>
                    Save as a bed file
                  </a>
                  <Link className="button" href={`${path}/compare`}>
                    Compare with another place
                  </Link>
                </p>
              </div>
            </td>
            <td className="year-cell">
              <InterestChart halfMonths={view.season.halfMonths} freezeDays={freezeDays} targets={job.targets} />
              <div className="month-foot" aria-hidden="true">
                {MONTHS.map((month) => (
                  <span key={month}>{month.charAt(0)}</span>
                ))}
              </div>
            </td>
          </tr>
        </tfoot>
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
              <p>
                Planting density <b>{view.ground.density} of 10</b>: {view.ground.densityWords}
              </p>
              <CoverChart cover={view.ground.coverByYear} />
            </>
          ) : (
            <p className="soft">The cover by year appears here as plants are added.</p>
          )}
        </section>
      </div>
      <details className="figures-detail">
        <summary>The year in figures</summary>
        <InterestTable halfMonths={view.season.halfMonths} />
        <p className="soft small">
          Growing-season target {Math.round(job.targets.growing * 100)} % in flower or colored foliage (the flower cover above which preference was highest in Hoyle, Hitchmough and
          Jorgensen 2017, Landscape and Urban Planning 164); winter {Math.round(job.targets.winter * 100)} % (common practice, no source). Green and evergreen backgrounds show pale
          in the growing season: they do not count toward it.
        </p>
      </details>
      <p className="cautions small">
        Before anyone digs: call 811 and have buried lines marked. Keep trees clear of overhead lines and sight triangles as the local code says. Poisonous and thorny plants are
        noted above; tell the client. Lift with two above 50 lb and with a machine above 100 lb. Check the state's list of regulated plants.
      </p>
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
