"use client";

import Link from "next/link";
import { useCallback, useDeferredValue, useEffect, useMemo, useReducer, useRef, useState } from "react";
import type { PlantHit } from "@/app/api/plants/route";
import { PrintButton } from "@/app/parts/print-button";
import { TitleBlock } from "@/app/parts/title-block";
import type { BedRow } from "@/lib/ground/bed";
import { EMPTY_DRAWING, type PlacedPlant } from "@/lib/ground/bed-drawing";
import { bedSizeEdges } from "@/lib/ground/bed-size";
import { groundPlan } from "@/lib/ground/ground-plan";
import type { Point } from "@/lib/ground/outline";
import { pointSnapped } from "@/lib/ground/plan-outline";
import { spacingAimUsual, spacingForSpread } from "@/lib/ground/spacing";
import { matureGroundSpread } from "@/lib/ground/stratum";
import { bedView, type PlacedTaxon, type ViewPlace, YEAR_SHOWN } from "@/lib/papers/bed-view";
import type { Targets } from "@/lib/season/interest";
import { dayText } from "@/lib/season/sentence";
import type { StoredBed } from "@/lib/server/beds";
import { type BedCommand, draftNext, draftOf } from "../bed-draft";
import { SaveLine } from "../save-line";
import { useBedSave, useKeptDraft } from "../use-bed-save";
import { ChosenPanel } from "./chosen-panel";
import { DrawingArea } from "./drawing-area";
import { DrawingFacts } from "./drawing-facts";
import type { LayerProps } from "./drawing-props";
import { KeysHelp } from "./keys-help";
import { ListPanel } from "./list-panel";
import { OutlineLayer } from "./outline/outline-layer";
import { OutlinePanel } from "./outline/outline-panel";
import { OutlineTools } from "./outline/outline-tools";
import { DrawingPanels } from "./panels/drawing-panels";
import { type Placing, type PlacingKind, placingGroups, placingStart } from "./placing";
import { PlacingPanel } from "./placing-panel";
import { plantsOutside } from "./plan-choice";
import { dayShown } from "./plan-day";
import { planFigures, planStands, standsGrown } from "./plan-figure";
import { PlanKey } from "./plan-key";
import { PlanOptions } from "./plan-options";
import { PlanPrint, printScaleFt } from "./plan-print";
import { outlineCorner, plantsText } from "./plan-words";
import { ReadingHelp } from "./reading-help";
import type { SheetView } from "./sheet-view";
import { TimeSliders, yearText } from "./time-sliders";
import { type Choice, NO_CHOICE, usePlanActions } from "./use-plan-actions";
import { usePrinting } from "./use-printing";

export type DrawingSheetProps = {
  readonly stored: StoredBed;
  readonly placed: Readonly<Record<string, PlacedTaxon>>;
  readonly job: { readonly id: string; readonly name: string; readonly targets: Targets };
  readonly place: ViewPlace & { readonly label: string; readonly zoneText: string };
  readonly bedNumber: number;
  readonly todayText: string;
};

const SNAPS = [
  [0, "off"],
  [0.5, "½ ft"],
  [1, "1 ft"],
] as const;

let rowsMade = 0;
const rowIdNew = () => `r${Date.now().toString(36)}d${(rowsMade++).toString(36)}`;

/** The drawing of a bed: its outline and what it borders in one mode, its plants in the other. */
export function DrawingSheet({ stored, placed: placedAtStart, job, place, bedNumber, todayText }: DrawingSheetProps) {
  const [draft, send] = useReducer(draftNext, stored.bed, draftOf);
  const [placed, setPlaced] = useState(placedAtStart);
  const [mode, setMode] = useState<"plants" | "outline">("plants");
  const [year, setYear] = useState(YEAR_SHOWN);
  const [day, setDay] = useState(() => dayShown(Object.values(placedAtStart), place));
  const [snapFt, setSnapFt] = useState(0.5);
  const [several, setSeveral] = useState(false);
  const [showCrowding, setShowCrowding] = useState(true);
  const [choice, setChoice] = useState<Choice>(NO_CHOICE);
  const [rowId, setRowId] = useState<string | null>(stored.bed.rows[0]?.id ?? null);
  const [placing, setPlacing] = useState<Placing | null>(null);
  const [shown, setShown] = useState<readonly PlacedPlant[] | null>(null);
  const [said, setSaid] = useState("");
  const middle = useRef<Point>([0, 0]);
  const viewNow = useRef<Pick<LayerProps, "view" | "widthPx" | "heightPx">>({ view: { pxPerFt: 20, originPx: [0, 0] }, widthPx: 0, heightPx: 0 });
  const bed = draft.present;
  const save = useBedSave(stored.id, stored.version, stored.savedAt, bed);
  const { markStale } = save;
  const path = `/jobs/${job.id}/beds/${stored.id}`;
  const printing = usePrinting();

  useKeptDraft(stored, send, markStale);

  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (!(event.ctrlKey || event.metaKey) || event.key.toLowerCase() !== "z") return;
      if (event.target instanceof HTMLElement && event.target.matches("input:not([type=range]), textarea")) return;
      event.preventDefault();
      send({ type: event.shiftKey ? "redo" : "undo" });
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);

  // The figures of the whole bed follow a moment after the plants: a drop must not wait for them.
  const settled = useDeferredValue(bed);
  const settledYear = useDeferredValue(year);
  const view = useMemo(() => bedView(settled, placed, place, job.targets, settledYear), [settled, placed, place, job.targets, settledYear]);
  const edges = useMemo(() => bedSizeEdges(bed.size), [bed.size]);
  const drawing = bed.drawing ?? EMPTY_DRAWING;
  const { things } = drawing;
  const plan = useMemo(() => groundPlan(edges, things), [edges, things]);
  const plants = shown ?? drawing.plants;
  const figures = useMemo(() => planFigures(bed.rows, placed, year, day), [bed.rows, placed, year, day]);
  const stands = useMemo(() => planStands(plants, figures), [plants, figures]);
  const grown = useMemo(() => standsGrown(stands), [stands]);
  const crowding = useMemo(() => (showCrowding && !shown ? (view.drawn?.crowding ?? []).filter((one) => one.year <= year) : []), [view.drawn, year, showCrowding, shown]);
  const corner = useMemo(() => outlineCorner(plan.outline), [plan]);
  const outside = useMemo(() => plantsOutside(plants, plan.outline), [plants, plan]);
  const chosen = useMemo(() => plants.filter(({ id }) => choice.ids.has(id)), [plants, choice]);

  const say = useCallback((words: string) => setSaid(words), []);
  const actions = usePlanActions(bed, drawing.plants, figures, plan, choice, setChoice, snapFt, send, say);
  const addPlaced = useCallback((add: Readonly<Record<string, PlacedTaxon>>) => setPlaced((before) => ({ ...before, ...add })), []);
  const choose = useCallback((ids: ReadonlySet<string>) => setChoice({ ids, active: [...ids][0] ?? null }), []);
  const chooseOutside = useCallback((ids: ReadonlySet<string>) => {
    setMode("plants");
    setPlacing(null);
    setChoice({ ids, active: [...ids][0] ?? null });
    setSaid(`${plantsText(ids.size)} outside the bed chosen. Delete takes them off the drawing.`);
  }, []);
  const sendPanel = useCallback((command: BedCommand) => {
    setShown(null);
    send(command);
  }, []);

  const toolFor = useCallback(
    (kind: PlacingKind, row: Pick<BedRow, "id" | "spacingFt">, taxon: PlacedTaxon["taxon"] | null) => {
      const spacingFt = row.spacingFt ?? (taxon ? spacingForSpread(matureGroundSpread(taxon), spacingAimUsual(taxon.kind)) : 2);
      setMode("plants");
      setRowId(row.id);
      setPlacing(placingStart(kind, row.id, spacingFt, pointSnapped(middle.current, snapFt || 0.5)));
      setChoice(NO_CHOICE);
    },
    [snapFt],
  );
  const take = useCallback(
    (kind: PlacingKind) => {
      const row = bed.rows.find(({ id }) => id === rowId);
      if (!row) return;
      toolFor(kind, row, placed[row.taxonId]?.taxon ?? null);
      const area = document.querySelector<HTMLElement>(".drawing-area");
      area?.focus({ preventScroll: true });
      area?.scrollIntoView({ block: "nearest" });
    },
    [bed.rows, rowId, placed, toolFor],
  );
  /** Another row of the list; a tool in hand goes on with it. */
  const takeRow = useCallback(
    (id: string) => {
      const row = bed.rows.find((one) => one.id === id);
      if (placing && row) toolFor(placing.kind, row, placed[row.taxonId]?.taxon ?? null);
      else setRowId(id);
    },
    [bed.rows, placing, placed, toolFor],
  );
  const addHit = useCallback(
    (hit: PlantHit) => {
      const id = rowIdNew();
      addPlaced({ [hit.taxon.id]: { taxon: hit.taxon, season: hit.season } });
      send({
        type: "add",
        rows: [{ id, taxonId: hit.taxon.id, taxonName: hit.taxon.name, quantity: { by: "drawing" }, spacingFt: null, size: hit.usualSize, remarks: "", existing: false }],
      });
      toolFor("single", { id, spacingFt: null }, hit.taxon);
      say(`${hit.taxon.name} added to the list and in hand: press on the drawing where it is to stand.`);
    },
    [addPlaced, toolFor, say],
  );

  const ground = useMemo(() => ({ outline: plan.outline, edges, stands }), [plan.outline, edges, stands]);
  const groups = useMemo(() => (placing ? placingGroups(placing, ground) : []), [placing, ground]);
  const count = groups.reduce((sum, group) => sum + group.length, 0);
  const preview = useMemo(
    () =>
      placing
        ? planStands(
            groups.flatMap((group, g) => group.map((at, i): PlacedPlant => ({ id: `preview ${g} ${i}`, rowId: placing.rowId, at, group: 0 }))),
            figures,
          )
        : [],
    [placing, groups, figures],
  );
  const setNow = useCallback(
    (tool: Placing) => {
      if (!actions.set(tool.rowId, placingGroups(tool, ground))) return;
      // Single plants and groups stay in hand for the next press; a line or a fill is done.
      if (tool.kind !== "single" && tool.kind !== "group") setPlacing(null);
    },
    [actions, ground],
  );
  const onView = useCallback((view: SheetView, widthPx: number, heightPx: number) => {
    viewNow.current = { view, widthPx, heightPx };
  }, []);

  const layerProps = { bed, edges, snapFt, send, say };
  const panelProps = {
    bed,
    bedView: view,
    placed,
    setPlaced: addPlaced,
    year,
    path,
    saved: save.state.kind === "saved",
    send: sendPanel,
    say,
    chosen: choice.ids,
    choose,
    preview: setShown,
  };
  const scale = `1 in = ${printScaleFt(plan.outline)} ft`;
  const placingName = placing ? (figures.get(placing.rowId)?.name ?? "") : "";

  return (
    <OutlineTools>
      <main id="main" className="sheet drawing-sheet">
        <div className="sheet-head spread">
          <div className="row bed-name">
            <h1>{bed.name}</h1>
            <span className="soft">
              <Link href={path}>Plant list</Link> · drawing · <Link href={`/jobs/${job.id}`}>{job.name}</Link>
            </span>
          </div>
          <SaveLine save={save} draft={draft} send={send} bed={bed} setPlaced={setPlaced} />
        </div>
        <div className="drawing-bar row screen-only">
          <fieldset className="modes">
            <legend className="visually-hidden">What is drawn</legend>
            {(["outline", "plants"] as const).map((one) => (
              <button
                key={one}
                type="button"
                aria-pressed={mode === one}
                onClick={() => {
                  setMode(one);
                  setPlacing(null);
                  setShown(null);
                }}
              >
                {one === "outline" ? "Outline" : "Plants"}
              </button>
            ))}
          </fieldset>
          <label className="inline">
            Snap{" "}
            <select value={snapFt} onChange={(event) => setSnapFt(Number(event.target.value))}>
              {SNAPS.map(([feet, words]) => (
                <option key={feet} value={feet}>
                  {words}
                </option>
              ))}
            </select>
          </label>
          {mode === "plants" ? (
            <>
              <label className="check">
                <input type="checkbox" checked={several} onChange={(event) => setSeveral(event.target.checked)} /> Choose several
              </label>
              <label className="check">
                <input type="checkbox" checked={showCrowding} onChange={(event) => setShowCrowding(event.target.checked)} /> Mark crowding
              </label>
            </>
          ) : null}
          <PrintButton />
        </div>
        <div className="drawing-split">
          <div className="drawing-main">
            <DrawingArea
              bed={bed}
              edges={edges}
              plan={plan}
              plants={plants}
              stands={stands}
              grown={grown}
              crowding={crowding}
              year={year}
              layer={mode === "outline" ? (layer) => <OutlineLayer {...layer} /> : null}
              choice={choice}
              setChoice={setChoice}
              actions={actions}
              several={several}
              placing={mode === "plants" ? placing : null}
              setPlacing={setPlacing}
              preview={preview}
              setNow={setNow}
              snapFt={snapFt}
              send={send}
              say={say}
              middle={middle}
              path={path}
              onView={onView}
              options={<PlanOptions plants={plants} figures={figures} chosen={choice.ids} corner={corner} />}
            />
            {printing ? <PlanPrint ground={{ edges, outline: plan.outline, things, standpoint: drawing.standpoint }} stands={stands} label={`Plan of ${bed.name}`} /> : null}
            <TimeSliders year={year} setYear={setYear} day={day} setDay={setDay} />
            <DrawingFacts view={view} bed={bed} year={year} day={day} crowds={crowding.length} outside={outside} choose={chooseOutside} />
            {printing ? <PlanKey rows={view.rows} /> : null}
            <ReadingHelp />
            {mode === "plants" ? <KeysHelp /> : null}
          </div>
          <div className="drawing-side">
            {mode === "outline" ? (
              <OutlinePanel {...layerProps} {...viewNow.current} />
            ) : (
              <>
                {placing ? (
                  <PlacingPanel
                    placing={placing}
                    name={placingName}
                    count={count}
                    ground={ground}
                    edges={edges}
                    change={setPlacing}
                    set={() => setNow(placing)}
                    cancel={() => setPlacing(null)}
                  />
                ) : null}
                {!placing && chosen.length ? <ChosenPanel chosen={chosen} figures={figures} corner={corner} actions={actions} /> : null}
                <ListPanel jobId={job.id} rows={view.rows} rowId={rowId} setRowId={takeRow} tool={placing?.kind ?? null} take={take} add={addHit} />
                <DrawingPanels {...panelProps} />
              </>
            )}
          </div>
        </div>
        <p className="visually-hidden" role="status">
          {said}
        </p>
        <TitleBlock
          cells={[
            ["Job", job.name],
            ["Bed", `${bedNumber} ${bed.name}`],
            ["Place", `${place.label}, zone ${place.zoneText}`],
            ["Scale on paper", scale],
            ["Shown", yearText(year)],
            ["Day", dayText(day)],
            ["Date", todayText],
          ]}
        />
      </main>
    </OutlineTools>
  );
}
