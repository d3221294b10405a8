"use client";

import { type KeyboardEvent, type PointerEvent, useRef, useState } from "react";
import type { BedSize } from "@/lib/ground/bed";
import { areaText, lengthText } from "@/lib/ground/length";
import { bedSizeArea, bedSizeOutline } from "@/lib/ground/bed-size";
import { type Outline, outlineFault, outlinePerimeter } from "@/lib/ground/outline";
import { sideRead } from "./field-readers";
import { TextField } from "./text-field";

const SNAP_FT = 0.5;
const snap = (feet: number) => Math.round(feet / SNAP_FT) * SNAP_FT;

type Frame = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** The window of the drawing: the outline with room to pull a corner outward. */
function frameOf(points: Outline): Frame {
  const xs = points.map((p) => p[0]);
  const ys = points.map((p) => p[1]);
  const x = Math.min(0, ...xs) - 3;
  const y = Math.min(0, ...ys) - 3;
  return { x, y, width: Math.max(10, ...xs) + 3 - x, height: Math.max(6, ...ys) + 3 - y };
}

/** Draws and edits the corners: drag them, or choose one and use the arrow keys (half a foot a step); a click on a + adds a corner there. */
function OutlineDrawing({ points, change }: { points: Outline; change: (points: Outline) => void }) {
  const svg = useRef<SVGSVGElement>(null);
  const [held, setHeld] = useState<number | null>(null);
  const [frame, setFrame] = useState(() => frameOf(points));
  const fault = outlineFault(points);
  const at = (event: PointerEvent): readonly [number, number] => {
    const box = svg.current?.getBoundingClientRect();
    if (!box) return [0, 0];
    const scale = Math.max(frame.width / box.width, frame.height / box.height);
    const left = box.left + (box.width - frame.width / scale) / 2;
    const top = box.top + (box.height - frame.height / scale) / 2;
    return [snap(frame.x + (event.clientX - left) * scale), snap(frame.y + (event.clientY - top) * scale)];
  };
  const move = (index: number, point: readonly [number, number]) => change(points.map((p, i) => (i === index ? point : p)));
  const onKey = (index: number) => (event: KeyboardEvent) => {
    const step = { ArrowLeft: [-SNAP_FT, 0], ArrowRight: [SNAP_FT, 0], ArrowUp: [0, -SNAP_FT], ArrowDown: [0, SNAP_FT] }[event.key];
    const p = points[index];
    if (step && p) {
      event.preventDefault();
      move(index, [p[0] + (step[0] ?? 0), p[1] + (step[1] ?? 0)]);
      setFrame(frameOf(points));
    } else if ((event.key === "Delete" || event.key === "Backspace") && points.length > 3) {
      event.preventDefault();
      change(points.filter((_, i) => i !== index));
    }
  };
  const unit = frame.width / 100;
  return (
    <svg
      ref={svg}
      className="outline-drawing"
      role="group"
      aria-label={`Outline with ${points.length} corners, ${areaText(bedSizeArea({ by: "outline", points }))}`}
      viewBox={`${frame.x} ${frame.y} ${frame.width} ${frame.height}`}
      onPointerMove={(event) => held !== null && move(held, at(event))}
      onPointerUp={() => {
        setHeld(null);
        setFrame(frameOf(points));
      }}
    >
      <defs>
        <pattern id="feet" width="1" height="1" patternUnits="userSpaceOnUse">
          <path d="M1 0H0V1" fill="none" stroke="var(--rule)" strokeWidth={unit * 0.12} />
        </pattern>
      </defs>
      <rect x={frame.x} y={frame.y} width={frame.width} height={frame.height} fill="url(#feet)" />
      <polygon points={points.map((p) => p.join(",")).join(" ")} fill="var(--field)" stroke={fault ? "var(--alert)" : "var(--ink)"} strokeWidth={unit * 0.35} fillOpacity="0.85" />
      {points
        .map((point, index) => ({ id: `corner-${index}`, point, index }))
        .map(({ id, point: p, index: i }) => {
        const next = points[(i + 1) % points.length] ?? p;
        const mid: readonly [number, number] = [(p[0] + next[0]) / 2, (p[1] + next[1]) / 2];
        const length = Math.hypot(next[0] - p[0], next[1] - p[1]);
        const add = () => change([...points.slice(0, i + 1), [snap(mid[0]), snap(mid[1])], ...points.slice(i + 1)]);
        return (
          <g key={id}>
            <text x={mid[0]} y={mid[1] - unit * 1.4} fontSize={unit * 2.2} textAnchor="middle" fill="var(--soft)">
              {lengthText(length)}
            </text>
            <g
              role="button"
              tabIndex={0}
              aria-label={`Add a corner between ${i + 1} and ${((i + 1) % points.length) + 1}`}
              className="corner-add"
              onClick={add}
              onKeyDown={(event) => {
                if (event.key === "Enter" || event.key === " ") {
                  event.preventDefault();
                  add();
                }
              }}
            >
              <circle cx={mid[0]} cy={mid[1]} r={unit * 1.1} fill="var(--paper)" stroke="var(--faint)" strokeWidth={unit * 0.15} />
              <path d={`M${mid[0] - unit * 0.6} ${mid[1]}h${unit * 1.2}M${mid[0]} ${mid[1] - unit * 0.6}v${unit * 1.2}`} stroke="var(--soft)" strokeWidth={unit * 0.2} />
            </g>
            <circle
              role="button"
              tabIndex={0}
              aria-label={`Corner ${i + 1} at ${p[0]} ft, ${p[1]} ft: arrows move it, Delete takes it out`}
              className="corner"
              cx={p[0]}
              cy={p[1]}
              r={unit * 1.5}
              fill="var(--accent)"
              onKeyDown={onKey(i)}
              onPointerDown={(event) => {
                event.currentTarget.setPointerCapture(event.pointerId);
                setHeld(i);
              }}
            />
          </g>
        );
      })}
      {fault?.place ? <circle cx={fault.place[0]} cy={fault.place[1]} r={unit * 2.2} fill="none" stroke="var(--alert)" strokeWidth={unit * 0.5} /> : null}
    </svg>
  );
}

/** Size of the bed: length × width, or an outline. An outline that crosses itself is shown with the place and not kept. */
export function SizeForm({ size, change }: { size: BedSize; change: (size: BedSize) => void }) {
  const [drawn, setDrawn] = useState<Outline | null>(null);
  const points = drawn ?? bedSizeOutline(size);
  const fault = drawn ? outlineFault(drawn) : null;
  const draw = (next: Outline) => {
    if (outlineFault(next)) setDrawn(next);
    else {
      setDrawn(null);
      change({ by: "outline", points: next.map(([x, y]) => [x, y] as const) });
    }
  };
  return (
    <div className="size-form">
      <div className="fields">
        <label className="field">
          Size by
          <select
            value={size.by}
            onChange={(event) => {
              if (event.target.value === "outline") change({ by: "outline", points: bedSizeOutline(size) });
              else {
                const outline = bedSizeOutline(size);
                const width = (axis: 0 | 1) => Math.max(...outline.map((p) => p[axis])) - Math.min(...outline.map((p) => p[axis]));
                change({ by: "rectangle", lengthFt: width(0), widthFt: width(1) });
              }
              setDrawn(null);
            }}
          >
            <option value="rectangle">length × width</option>
            <option value="outline">outline</option>
          </select>
        </label>
        {size.by === "rectangle" ? (
          <>
            <div className="field">
              <span className="soft small">Length</span>
              <TextField label="Bed length" className="short" text={lengthText(size.lengthFt)} read={sideRead} keep={(lengthFt) => change({ ...size, lengthFt })} />
            </div>
            <div className="field">
              <span className="soft small">Width</span>
              <TextField label="Bed width" className="short" text={lengthText(size.widthFt)} read={sideRead} keep={(widthFt) => change({ ...size, widthFt })} />
            </div>
          </>
        ) : null}
        <p className="soft">
          {areaText(bedSizeArea(size))}, edge {lengthText(outlinePerimeter(bedSizeOutline(size)))}
        </p>
      </div>
      {size.by === "outline" ? (
        <>
          <OutlineDrawing points={points} change={draw} />
          {fault ? (
            <p role="alert" className="alert small">
              {fault.words} The last sound outline is kept until this is put right.
            </p>
          ) : (
            <p className="soft small">Drag a corner, or choose it and use the arrow keys (half a foot a step). + adds a corner, Delete takes one out.</p>
          )}
        </>
      ) : null}
    </div>
  );
}
