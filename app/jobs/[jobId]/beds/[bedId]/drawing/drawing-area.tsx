"use client";

import { type KeyboardEvent, type PointerEvent, type ReactNode, useCallback, useEffect, useMemo, useRef } from "react";
import type { Bed } from "@/lib/ground/bed";
import { EMPTY_DRAWING, type PlacedPlant } from "@/lib/ground/bed-drawing";
import type { Crowding } from "@/lib/ground/crowding";
import type { GroundPlan } from "@/lib/ground/ground-plan";
import type { Point } from "@/lib/ground/outline";
import { type PlanOutline, pointSnapped } from "@/lib/ground/plan-outline";
import type { GrownPlant } from "@/lib/ground/plan-plant";
import { crowdingHeld } from "./crowding-held";
import type { LayerProps } from "./drawing-props";
import { GroundSvg } from "./ground-svg";
import { UnderlayImage } from "./outline/underlay-image";
import { type Placing, placingAngle, placingHasLine, placingHasWidth, placingKeyed, placingShape, placingWidthHandle } from "./placing";
import { groupOf, plantsWithin, standAt } from "./plan-choice";
import type { PlanStand } from "./plan-figure";
import { type PlanKey, planKey } from "./plan-keys";
import { type PlanPainter, planPainter } from "./plan-painter";
import { moveText, plantsText } from "./plan-words";
import { ftOfPx, pxOfFt, type SheetView } from "./sheet-view";
import type { Choice, PlanActions } from "./use-plan-actions";
import { usePlanColors } from "./use-plan-colors";
import { useSheetView } from "./use-sheet-view";
import { ZoomButtons } from "./zoom-buttons";

/** Pixels before a press is a drag. */
const DRAG_PX = 4;
const HANDLE_PX = 16;
/** A small plant is taken to reach so far. */
const HIT_PX = { mouse: 8, touch: 18 } as const;
type Px = readonly [number, number];
type Hold =
  | {
      readonly kind: "plants";
      readonly from: Px;
      readonly grabbed: PlacedPlant;
      readonly ids: ReadonlySet<string>;
      by: Point;
      moved: boolean;
      readonly clicked: "group" | "single" | null;
    }
  | { readonly kind: "band"; readonly from: Px; to: Px; moved: boolean; readonly add: boolean }
  | { readonly kind: "handle"; readonly which: "from" | "to" | "width" }
  | { readonly kind: "line"; readonly from: Px; moved: boolean }
  | { readonly kind: "press"; readonly from: Px };

export type DrawingAreaProps = {
  readonly bed: Bed;
  readonly edges: PlanOutline;
  readonly plan: GroundPlan;
  readonly plants: readonly PlacedPlant[];
  readonly stands: readonly PlanStand[];
  readonly grown: readonly GrownPlant[];
  readonly crowding: readonly Crowding[];
  readonly year: number;
  /** Null in Plants mode: what lies over the drawing. */
  readonly layer: ((props: LayerProps) => ReactNode) | null;
  readonly choice: Choice;
  readonly setChoice: (choice: Choice) => void;
  readonly actions: PlanActions;
  /** Presses add to what is chosen, as with Shift. */
  readonly several: boolean;
  readonly placing: Placing | null;
  readonly setPlacing: (placing: Placing | null) => void;
  readonly preview: readonly PlanStand[];
  readonly setNow: (placing: Placing) => void;
  readonly snapFt: number;
  readonly send: LayerProps["send"];
  readonly say: LayerProps["say"];
  /** Tells the middle of what is shown, for tools taken up by keyboard. */
  readonly middle: { current: Point };
  /** Of the bed: /jobs/…/beds/… */
  readonly path: string;
  readonly onView: (view: SheetView, widthPx: number, heightPx: number) => void;
  readonly options: ReactNode;
};

const NONE: ReadonlySet<string> = new Set();
const NO_CROWDING: readonly Crowding[] = [];

/** The drawing itself: ground, plants, and whatever is held over them. */
export function DrawingArea(props: DrawingAreaProps) {
  const {
    bed,
    edges,
    plan,
    plants,
    stands,
    grown,
    crowding,
    year,
    layer,
    choice,
    setChoice,
    actions,
    several,
    placing,
    setPlacing,
    preview,
    setNow,
    snapFt,
    send,
    say,
    middle,
    path,
    onView,
  } = props;
  const area = useRef<HTMLDivElement>(null);
  const canvas = useRef<HTMLCanvasElement>(null);
  const painter = useRef<PlanPainter | null>(null);
  const hold = useRef<Hold | null>(null);
  const lineOpen = useRef(false);
  const cancel = useRef(() => {});
  const lifted = useRef<ReadonlySet<string> | null>(null);
  const frame = useRef(0);
  const colors = usePlanColors(area);
  const { view, widthPx, heightPx, zoom, whole, panStart } = useSheetView(area, plan.outline, cancel);
  middle.current = ftOfPx(view, [widthPx / 2, heightPx / 2]);
  useEffect(() => onView(view, widthPx, heightPx), [onView, view, widthPx, heightPx]);
  const shape = useMemo(() => (placing ? placingShape(placing) : null), [placing]);

  const paint = useCallback(() => {
    frame.current = 0;
    if (!canvas.current || !colors) return;
    painter.current ??= planPainter();
    const held = hold.current;
    const plantsHeld = held?.kind === "plants" && held.moved ? held : null;
    painter.current.paint(
      canvas.current,
      { view, widthPx, heightPx, ratio: Math.min(3, window.devicePixelRatio || 1), stands, colors, lifted: lifted.current, crowding: plantsHeld ? NO_CROWDING : crowding, plan },
      {
        by: plantsHeld?.by ?? [0, 0],
        chosen: layer ? NONE : choice.ids,
        active: layer || document.activeElement !== area.current ? null : choice.active,
        preview,
        shape,
        line: placing && placingHasLine(placing) ? [placing.from, placing.to] : null,
        handles: placing && placingHasLine(placing) ? [placing.from, placing.to, ...(placingHasWidth(placing) ? [placingWidthHandle(placing)] : [])] : [],
        band: held?.kind === "band" && held.moved ? [ftOfPx(view, held.from), ftOfPx(view, held.to)] : null,
        crowding: plantsHeld ? crowdingHeld(grown, plan, year, plantsHeld.ids, plantsHeld.by) : NO_CROWDING,
      },
    );
  }, [view, widthPx, heightPx, stands, colors, layer, choice, preview, shape, placing, crowding, plan, grown, year]);
  const paintNow = useRef(paint);
  paintNow.current = paint;
  const paintSoon = useCallback(() => {
    if (!frame.current) frame.current = requestAnimationFrame(() => paintNow.current());
  }, []);
  useEffect(() => {
    // Called with the newest of everything that is painted.
    void paint;
    paintSoon();
  }, [paint, paintSoon]);
  useEffect(
    () => () => {
      cancelAnimationFrame(frame.current);
      frame.current = 0;
    },
    [],
  );

  const letGo = useCallback(() => {
    hold.current = null;
    lifted.current = null;
    paintSoon();
  }, [paintSoon]);
  cancel.current = letGo;

  const at = (event: PointerEvent): Px => {
    const box = event.currentTarget.getBoundingClientRect();
    return [event.clientX - box.left, event.clientY - box.top];
  };
  const snapped = (px: Px): Point => pointSnapped(ftOfPx(view, px), snapFt);

  const placingDown = (tool: Placing, px: Px) => {
    if (placingHasLine(tool)) {
      const grips = [["from", tool.from], ["to", tool.to], ...(placingHasWidth(tool) ? ([["width", placingWidthHandle(tool)]] as const) : [])] as const;
      const grip = lineOpen.current ? undefined : grips.find(([, point]) => Math.hypot(pxOfFt(view, point)[0] - px[0], pxOfFt(view, point)[1] - px[1]) <= HANDLE_PX);
      if (grip) hold.current = { kind: "handle", which: grip[0] };
      else if (lineOpen.current) {
        setPlacing({ ...tool, to: snapped(px) });
        lineOpen.current = false;
      } else {
        setPlacing({ ...tool, from: snapped(px), to: snapped(px) });
        hold.current = { kind: "line", from: px, moved: false };
      }
    } else if (tool.kind === "single" || tool.kind === "group") {
      const point = snapped(px);
      setPlacing({ ...tool, from: point, to: point });
      hold.current = { kind: "press", from: px };
    }
  };

  const onPointerDown = (event: PointerEvent<HTMLDivElement>) => {
    if (event.button !== 0) return;
    const px = at(event);
    event.currentTarget.setPointerCapture(event.pointerId);
    if (placing) return placingDown(placing, px);
    const touch = event.pointerType === "touch";
    const found = standAt(stands, ftOfPx(view, px), (touch ? HIT_PX.touch : HIT_PX.mouse) / view.pxPerFt);
    const adds = event.shiftKey || several;
    if (!found) {
      if (touch && !several) panStart();
      hold.current = { kind: "band", from: px, to: px, moved: false, add: adds };
      return;
    }
    const { plant } = found;
    const group = event.altKey ? new Set([plant.id]) : groupOf(plants, plant.id);
    let ids = choice.ids;
    let clicked: "group" | "single" | null = null;
    if (adds) {
      const has = ids.has(plant.id);
      ids = new Set(has ? [...ids].filter((id) => !group.has(id)) : [...ids, ...group]);
      setChoice({ ids, active: plant.id });
      if (has) return;
    } else if (!ids.has(plant.id) || event.altKey) {
      ids = group;
      setChoice({ ids, active: plant.id });
    } else clicked = ids.size === 1 ? "group" : "single";
    hold.current = { kind: "plants", from: px, grabbed: plant, ids, by: [0, 0], moved: false, clicked };
  };

  const onPointerMove = (event: PointerEvent<HTMLDivElement>) => {
    const px = at(event);
    const held = hold.current;
    if (placing) {
      if (held?.kind === "handle") {
        const point = snapped(px);
        if (held.which === "width") {
          const [mx, my] = [(placing.from[0] + placing.to[0]) / 2, (placing.from[1] + placing.to[1]) / 2];
          const turn = (placingAngle(placing) * Math.PI) / 180;
          const off = Math.abs(-(point[0] - mx) * Math.sin(turn) + (point[1] - my) * Math.cos(turn));
          setPlacing({ ...placing, widthFt: Math.max(0.5, Math.round(off * 40) / 20) });
        } else setPlacing({ ...placing, [held.which]: point });
      } else if (held?.kind === "line") {
        held.moved ||= Math.hypot(px[0] - held.from[0], px[1] - held.from[1]) > DRAG_PX;
        if (held.moved) setPlacing({ ...placing, to: snapped(px) });
      } else if (lineOpen.current) setPlacing({ ...placing, to: snapped(px) });
      else if ((placing.kind === "single" || placing.kind === "group") && (held || event.pointerType === "mouse")) {
        const point = snapped(px);
        if (point[0] !== placing.from[0] || point[1] !== placing.from[1]) setPlacing({ ...placing, from: point, to: point });
      }
      return;
    }
    if (!held) return;
    if (held.kind === "plants") {
      if (!held.moved) {
        if (Math.hypot(px[0] - held.from[0], px[1] - held.from[1]) <= DRAG_PX) return;
        held.moved = true;
        lifted.current = held.ids;
      }
      const [fx, fy] = ftOfPx(view, held.from);
      const [nx, ny] = ftOfPx(view, px);
      const [tx, ty] = pointSnapped([held.grabbed.at[0] + nx - fx, held.grabbed.at[1] + ny - fy], snapFt);
      held.by = [Math.round((tx - held.grabbed.at[0]) * 1000) / 1000, Math.round((ty - held.grabbed.at[1]) * 1000) / 1000];
      paintSoon();
    } else if (held.kind === "band") {
      held.to = px;
      held.moved ||= Math.hypot(px[0] - held.from[0], px[1] - held.from[1]) > DRAG_PX;
      paintSoon();
    }
  };

  const onPointerUp = () => {
    const held = hold.current;
    hold.current = null;
    lifted.current = null;
    if (placing) {
      if (held?.kind === "line" && !held.moved) lineOpen.current = true;
      if (held?.kind === "press") setNow(placing);
      return;
    }
    if (held?.kind === "plants") {
      if (held.moved && (held.by[0] !== 0 || held.by[1] !== 0)) {
        send({ type: "shift", ids: held.ids, by: held.by });
        say(`${plantsText(held.ids.size)} moved ${moveText(held.by)}.`);
      } else if (!held.moved && held.clicked) {
        setChoice({ ids: held.clicked === "single" ? new Set([held.grabbed.id]) : groupOf(plants, held.grabbed.id), active: held.grabbed.id });
      }
    } else if (held?.kind === "band") {
      const found = held.moved ? plantsWithin(plants, ftOfPx(view, held.from), ftOfPx(view, held.to)) : NONE;
      const ids = held.add ? new Set([...choice.ids, ...found]) : found;
      if (ids.size || choice.ids.size) setChoice({ ids, active: [...found][0] ?? choice.active });
      if (held.moved) say(`${plantsText(ids.size)} chosen.`);
    }
    paintSoon();
  };

  const placingKey = (tool: Placing, key: PlanKey): boolean => {
    if (key.type === "set") setNow(tool);
    else if (key.type === "cancel") {
      lineOpen.current = false;
      setPlacing(null);
      say("The tool is put away; nothing was set.");
    } else {
      const next = placingKeyed(tool, key);
      if (!next) return false;
      setPlacing(next);
    }
    return true;
  };

  const onKeyDown = (event: KeyboardEvent<HTMLDivElement>) => {
    if (event.target !== event.currentTarget) return;
    const key = planKey(event, placing !== null);
    if (!key) return;
    event.preventDefault();
    if (key.type === "zoom") return zoom(key.factor);
    if (key.type === "whole") return whole();
    if (placing && placingKey(placing, key)) return;
    switch (key.type) {
      case "arrow":
        return choice.ids.size ? actions.move(key.by) : actions.step(key.by[0] > 0 || key.by[1] < 0 ? 1 : -1);
      case "step":
        return actions.step(key.step);
      case "group":
        return actions.regroup(true);
      case "ungroup":
        return actions.regroup(false);
      case "single":
      case "all":
      case "none":
      case "remove":
      case "copy":
        return actions[key.type]();
    }
  };

  const drawing = bed.drawing ?? EMPTY_DRAWING;
  const ground = (
    <>
      <UnderlayImage bed={bed} view={view} path={path} />
      <GroundSvg
        edges={edges}
        outline={plan.outline}
        things={drawing.things}
        standpoint={drawing.standpoint}
        view={view}
        widthPx={widthPx}
        heightPx={heightPx}
        name="sheet"
        labeled={layer !== null}
      />
    </>
  );
  const zooms = <ZoomButtons zoom={zoom} whole={whole} />;
  if (layer)
    return (
      <div className="drawing-frame screen-only">
        <div ref={area} className="drawing-area">
          {ground}
          <canvas ref={canvas} className="faded" style={{ width: widthPx, height: heightPx }} />
          {layer({ bed, edges, view, widthPx, heightPx, snapFt, send, say })}
        </div>
        {zooms}
      </div>
    );
  return (
    <div className="drawing-frame screen-only">
      <div
        ref={area}
        className={placing ? "drawing-area placing" : "drawing-area"}
        role="listbox"
        tabIndex={0}
        aria-label="Plants on the drawing"
        aria-multiselectable="true"
        aria-describedby="drawing-keys"
        aria-activedescendant={choice.active ? `stand-${choice.active}` : undefined}
        onPointerDown={onPointerDown}
        onPointerMove={onPointerMove}
        onPointerUp={onPointerUp}
        onPointerCancel={letGo}
        onKeyDown={onKeyDown}
        onFocus={paintSoon}
        onBlur={paintSoon}
      >
        {ground}
        <canvas ref={canvas} style={{ width: widthPx, height: heightPx }} />
        {props.options}
      </div>
      {zooms}
    </div>
  );
}
