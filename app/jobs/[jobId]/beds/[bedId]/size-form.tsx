"use client";

import Link from "next/link";
import { useState } from "react";
import type { BedSize } from "@/lib/ground/bed";
import { bedSizeArea, bedSizeOutline, bedSizePerimeter } from "@/lib/ground/bed-size";
import { areaText, lengthText } from "@/lib/ground/length";
import { type Outline, outlineFault } from "@/lib/ground/outline";
import { sideRead } from "./field-readers";
import { OutlineDrawing } from "./outline-drawing";
import { TextField } from "./text-field";

/** Size of the bed: length × width, or an outline. An outline that crosses itself is shown with the place and not kept. */
export function SizeForm({ size, change, drawingPath }: { size: BedSize; change: (size: BedSize) => void; drawingPath: string }) {
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
              else if (event.target.value === "rectangle") {
                const outline = bedSizeOutline(size);
                const width = (axis: 0 | 1) => Math.max(...outline.map((p) => p[axis])) - Math.min(...outline.map((p) => p[axis]));
                change({ by: "rectangle", lengthFt: width(0), widthFt: width(1) });
              }
              setDrawn(null);
            }}
          >
            <option value="rectangle">length × width</option>
            <option value="outline">outline</option>
            {size.by === "drawing" ? <option value="drawing">drawing to scale</option> : null}
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
          {areaText(bedSizeArea(size))}, edge {lengthText(bedSizePerimeter(size))}
        </p>
      </div>
      <p className="small">
        <Link href={drawingPath}>Draw the bed to scale</Link> <span className="soft">with curves, what its edges border, and where each plant stands.</span>
      </p>
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
