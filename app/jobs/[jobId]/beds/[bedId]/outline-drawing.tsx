"use client";

import { type KeyboardEvent, type PointerEvent, useMemo, useRef, useState } from "react";
import { areaText, lengthText } from "@/lib/ground/length";
import { type Outline, outlineArea, outlineFault } from "@/lib/ground/outline";

const SNAP_FT = 0.5;
const ROOM_FT = 3;
const snap = (feet: number) => Math.round(feet / SNAP_FT) * SNAP_FT;
const STEPS: Readonly<Record<string, readonly [number, number]>> = { ArrowLeft: [-SNAP_FT, 0], ArrowRight: [SNAP_FT, 0], ArrowUp: [0, -SNAP_FT], ArrowDown: [0, SNAP_FT] };

type Frame = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** Whether the corners run clockwise as drawn (y grows downward). */
const outlineTurnsRight = (points: Outline): boolean =>
  points.reduce((sum, [x, y], i) => sum + x * (points[(i + 1) % points.length]?.[1] ?? 0) - y * (points[(i + 1) % points.length]?.[0] ?? 0), 0) > 0;

/** The window of the drawing in feet: the outline with room to pull a corner outward. */
function frameOf(points: Outline): Frame {
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const x = Math.min(...xs) - ROOM_FT;
  const y = Math.min(...ys) - ROOM_FT;
  return { x, y, width: Math.max(...xs) + ROOM_FT - x, height: Math.max(...ys) + ROOM_FT - y };
}

const upended = ([x, y]: readonly [number, number]): readonly [number, number] => [x, y === 0 ? 0 : -y];

/** Draws and edits the corners: drag them, or choose one and use the arrow keys (half a foot a step); a + adds a corner, Delete takes one out. */
export function OutlineDrawing({ points: given, change: give }: { points: Outline; change: (points: Outline) => void }) {
  // A bed's y points up the drawing, the screen's down it.
  const points = useMemo(() => given.map(upended), [given]);
  const change = (next: Outline) => give(next.map(upended));
  const box = useRef<HTMLDivElement>(null);
  // Keys repeat faster than the screen redraws: the next step starts from here, not from what is drawn.
  const latest = useRef(points);
  latest.current = points;
  const [held, setHeld] = useState<number | null>(null);
  const [frame, setFrame] = useState(() => frameOf(points));
  const fault = outlineFault(points);
  const unit = frame.width / 100;
  const stand = ([x, y]: readonly [number, number]) => ({ left: `${(100 * (x - frame.x)) / frame.width}%`, top: `${(100 * (y - frame.y)) / frame.height}%` });
  const move = (index: number, point: readonly [number, number]) => {
    latest.current = latest.current.map((p, i) => (i === index ? point : p));
    change(latest.current);
  };
  const drag = (event: PointerEvent) => {
    const area = box.current?.getBoundingClientRect();
    if (held === null || !area) return;
    move(held, [snap(frame.x + ((event.clientX - area.left) / area.width) * frame.width), snap(frame.y + ((event.clientY - area.top) / area.height) * frame.height)]);
  };
  const drop = () => {
    setHeld(null);
    setFrame(frameOf(points));
  };
  const onKey = (index: number) => (event: KeyboardEvent) => {
    const step = STEPS[event.key];
    const p = latest.current[index];
    if (step && p) {
      event.preventDefault();
      const next: readonly [number, number] = [p[0] + step[0], p[1] + step[1]];
      move(index, next);
      setFrame(frameOf(latest.current));
    } else if ((event.key === "Delete" || event.key === "Backspace") && points.length > 3) {
      event.preventDefault();
      change(points.filter((_, i) => i !== index));
    }
  };
  const corners = points.map((point, index) => {
    const next = points[(index + 1) % points.length] ?? point;
    const middle: readonly [number, number] = [(point[0] + next[0]) / 2, (point[1] + next[1]) / 2];
    const length = Math.hypot(next[0] - point[0], next[1] - point[1]);
    // The label stands off its side, outward where the corners run clockwise on the screen.
    const off = length > 0 ? (3.4 * unit * (outlineTurnsRight(points) ? 1 : -1)) / length : 0;
    const label: readonly [number, number] = [middle[0] + (next[1] - point[1]) * off, middle[1] - (next[0] - point[0]) * off];
    return { id: `corner-${index}`, index, point, middle, label, length };
  });
  return (
    <fieldset className="outline-frame">
      <legend className="visually-hidden">
        Outline with {points.length} corners, {areaText(Math.abs(outlineArea(points)))}
      </legend>
      <div ref={box} className="outline-drawing" style={{ aspectRatio: `${frame.width} / ${frame.height}`, maxWidth: `calc(22rem * ${frame.width / frame.height})` }}>
        <svg viewBox={`${frame.x} ${frame.y} ${frame.width} ${frame.height}`} role="img" aria-label="The bed's outline on a grid of feet">
          <defs>
            <pattern id="feet" width="1" height="1" patternUnits="userSpaceOnUse">
              <path d="M1 0H0V1" fill="none" stroke="var(--rule)" strokeWidth={unit * 0.12} />
            </pattern>
          </defs>
          <rect x={frame.x} y={frame.y} width={frame.width} height={frame.height} fill="url(#feet)" />
          <polygon
            points={points.map((p) => p.join(",")).join(" ")}
            fill="var(--field)"
            fillOpacity="0.85"
            stroke={fault ? "var(--alert)" : "var(--ink)"}
            strokeWidth={unit * 0.35}
          />
          {corners.map(({ id, label, length }) => (
            <text key={id} x={label[0]} y={label[1]} dominantBaseline="middle" fontSize={unit * 2.2} textAnchor="middle" fill="var(--soft)">
              {lengthText(length)}
            </text>
          ))}
          {fault?.place ? <circle cx={fault.place[0]} cy={fault.place[1]} r={unit * 2.2} fill="none" stroke="var(--alert)" strokeWidth={unit * 0.5} /> : null}
        </svg>
        {corners.map(({ id, index, middle }) => (
          <button
            key={`add-${id}`}
            type="button"
            className="corner-add"
            style={stand(middle)}
            aria-label={`Add a corner between ${index + 1} and ${((index + 1) % points.length) + 1}`}
            onClick={() => change([...points.slice(0, index + 1), [snap(middle[0]), snap(middle[1])], ...points.slice(index + 1)])}
          >
            +
          </button>
        ))}
        {corners.map(({ id, index, point }) => (
          <button
            key={id}
            type="button"
            className="corner"
            style={stand(point)}
            aria-label={`Corner ${index + 1} at ${point[0]} ft, ${upended(point)[1]} ft: arrows move it, Delete takes it out`}
            onKeyDown={onKey(index)}
            onPointerDown={(event) => {
              event.currentTarget.setPointerCapture(event.pointerId);
              setHeld(index);
            }}
            onPointerMove={drag}
            onPointerUp={drop}
            onPointerCancel={drop}
          />
        ))}
      </div>
    </fieldset>
  );
}
