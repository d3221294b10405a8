"use client";

import { useState } from "react";
import type { UnderlayPlace } from "@/lib/ground/bed-drawing";
import { lengthText } from "@/lib/ground/length";
import type { Point } from "@/lib/ground/outline";
import { planSampled } from "@/lib/ground/plan-outline";
import { underlayLaid, underlayMoved, underlayScaled } from "@/lib/ground/underlay-scale";
import { TextField } from "../../text-field";
import { arrowStepFt } from "./drag-handle";
import { lengthRead } from "./outline-readers";
import { useOutlineTools } from "./outline-tools";
import { pictureUpload } from "./picture-upload";
import { PlaceFields } from "./shape-fields";
import type { OutlineEdit } from "./use-outline-edit";

type SectionProps = { readonly edit: OutlineEdit; readonly path: string; readonly snapFt: number };

/** The scale of the picture by two places on it and the length between them. */
function ScaleFields({ edit, underlay }: { edit: OutlineEdit; underlay: UnderlayPlace }) {
  const { tool, setTool } = useOutlineTools();
  if (tool?.kind !== "scale")
    return (
      <button type="button" onClick={() => setTool({ kind: "scale", points: [] })}>
        Scale it by a known length
      </button>
    );
  const [first, second] = tool.points;
  const across = (share: number): Point => [underlay.at[0] + share * underlay.widthPx * underlay.ftPerPx, underlay.at[1] + (underlay.heightPx * underlay.ftPerPx) / 2];
  const put = (index: number, at: Point) => setTool({ kind: "scale", points: tool.points.map((point, i) => (i === index ? at : point)) });
  return (
    <div className="notice small">
      {first && second ? (
        <>
          <div className="fields">
            <div className="field">
              <span className="soft small">These two are apart</span>
              <TextField
                label="Length between the two places"
                className="short"
                text={lengthText(Math.hypot(second[0] - first[0], second[1] - first[1]))}
                read={lengthRead(2000)}
                keep={(feet) => {
                  const scaled = underlayScaled(underlay, first, second, feet);
                  if (scaled) edit.keepUnderlay(scaled, `The picture is to scale: the two places are ${lengthText(feet)} apart.`);
                  setTool(null);
                }}
              />
            </div>
          </div>
          <div className="fields">
            <PlaceFields label="First place" at={first} keep={(at) => put(0, at)} />
            <PlaceFields label="Second place" at={second} keep={(at) => put(1, at)} />
          </div>
        </>
      ) : (
        <p>Click two places on the picture whose distance you know: the ends of a wall, a walk’s width, a tape laid down for the photo. The farther apart, the better.</p>
      )}
      <div className="row">
        {first ? null : (
          <button type="button" onClick={() => setTool({ kind: "scale", points: [across(0.25), across(0.75)] })}>
            By numbers
          </button>
        )}
        <button type="button" onClick={() => setTool(null)}>
          Cancel
        </button>
      </div>
    </div>
  );
}

const ARROWS = [
  ["←", "left", -1, 0],
  ["→", "right", 1, 0],
  ["↑", "up", 0, 1],
  ["↓", "down", 0, -1],
] as const;

function LaidPicture({ edit, underlay, snapFt }: { edit: OutlineEdit; underlay: UnderlayPlace; snapFt: number }) {
  const { tool, setTool } = useOutlineTools();
  const step = arrowStepFt(snapFt);
  const settle = () => edit.keepUnderlay(underlay, `The picture shows at ${Math.round(underlay.strength * 100)} percent.`);
  return (
    <>
      <label className="field">
        How strongly it shows
        <input
          type="range"
          min={0.05}
          max={1}
          step={0.05}
          value={underlay.strength}
          onChange={(event) => edit.showUnderlay({ ...underlay, strength: Number(event.target.value) })}
          onPointerUp={settle}
          onKeyUp={settle}
        />
      </label>
      <ScaleFields edit={edit} underlay={underlay} />
      <p className="small soft">
        It covers {lengthText(underlay.widthPx * underlay.ftPerPx)} × {lengthText(underlay.heightPx * underlay.ftPerPx)} of ground. A photo not taken from straight above is true
        only near the two places.
      </p>
      <div className="row">
        <button type="button" aria-pressed={tool?.kind === "move picture"} onClick={() => setTool(tool?.kind === "move picture" ? null : { kind: "move picture" })}>
          {tool?.kind === "move picture" ? "It lies right" : "Drag it"}
        </button>
        {ARROWS.map(([sign, word, x, y]) => (
          <button
            key={word}
            type="button"
            aria-label={`Move the picture ${word} by ${lengthText(step)}`}
            onClick={() => edit.keepUnderlay(underlayMoved(underlay, [x * step, y * step]), `The picture moved ${word}.`)}
          >
            {sign}
          </button>
        ))}
        <button
          type="button"
          onClick={() => {
            setTool(null);
            edit.keepUnderlay(null, "The picture is taken away. Undo brings it back.");
          }}
        >
          Take it away
        </button>
      </div>
    </>
  );
}

/** A photo or scan beneath the drawing, to draw after. */
export function UnderlaySection({ edit, path, snapFt }: SectionProps) {
  const [state, setState] = useState<{ busy: boolean; fault: string | null }>({ busy: false, fault: null });
  const { underlay } = edit;
  const choose = async (file: File | undefined) => {
    if (!file) return;
    setState({ busy: true, fault: null });
    const answer = await pictureUpload(path, file);
    setState({ busy: false, fault: answer.ok ? null : answer.words });
    if (!answer.ok) return;
    const { imageId, widthPx, heightPx } = answer;
    edit.keepUnderlay(underlayLaid({ imageId, widthPx, heightPx }, planSampled(edit.plan).outline), "The picture lies under the drawing. Scale it by a known length.");
  };
  return (
    <section aria-labelledby="underlay-title" className="outline-section">
      <h2 id="underlay-title">Picture beneath</h2>
      {underlay ? (
        <LaidPicture edit={edit} underlay={underlay} snapFt={snapFt} />
      ) : (
        <p className="small soft">A photo from above, a survey or a sketch to draw after. It is not printed.</p>
      )}
      <label className="field">
        {underlay ? "Another picture" : "Choose a picture (PNG, JPEG or WebP, up to 15 MB)"}
        <input
          type="file"
          accept="image/png,image/jpeg,image/webp"
          disabled={state.busy}
          onChange={(event) => {
            void choose(event.target.files?.[0]);
            event.target.value = "";
          }}
        />
      </label>
      {state.busy ? (
        <p className="small" role="status">
          Storing the picture …
        </p>
      ) : null}
      {state.fault ? (
        <p className="alert small" role="alert">
          {state.fault}
        </p>
      ) : null}
    </section>
  );
}
