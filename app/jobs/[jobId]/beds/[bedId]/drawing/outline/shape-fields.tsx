"use client";

import { curveArc, STRAIGHT } from "@/lib/ground/curve";
import { lengthText } from "@/lib/ground/length";
import type { Point } from "@/lib/ground/outline";
import { ordinateOfRadius, outwardSign, planCornerMoved, planEdgeShaped } from "@/lib/ground/plan-edit";
import { planCurves } from "@/lib/ground/plan-outline";
import { TextField } from "../../text-field";
import { feetRead, type Read, signedFeetRead } from "./outline-readers";
import type { OutlineEdit } from "./use-outline-edit";

const figure = (feet: number) => `${Math.round(feet * 100) / 100 + 0} ft`;

/** Two fields for a place on the drawing. */
export function PlaceFields({ label, at, keep }: { label: string; at: Point; keep: (at: Point) => void }) {
  return (
    <div className="place-fields">
      <div className="field">
        <span className="soft small">{label}, x</span>
        <TextField label={`${label}, x: feet to the right`} className="short" text={figure(at[0])} read={signedFeetRead(5000)} keep={(x) => keep([x, at[1]])} />
      </div>
      <div className="field">
        <span className="soft small">y</span>
        <TextField label={`${label}, y: feet up the drawing`} className="short" text={figure(at[1])} read={signedFeetRead(5000)} keep={(y) => keep([at[0], y])} />
      </div>
    </div>
  );
}

type ShapeFieldsProps = { readonly edit: OutlineEdit; readonly edge: number; readonly name: string };

/** An arc by its middle ordinate or its radius, as it is set out with a tape and a string. */
function ArcFields({ edit, edge, name }: ShapeFieldsProps) {
  const { plan } = edit;
  const curve = planCurves(plan)[edge];
  if (curve?.shape.kind !== "arc") return null;
  const arc = curveArc(curve);
  const outward = outwardSign(plan);
  const out = curve.shape.ordinateFt * outward;
  const chord = Math.hypot(curve.to[0] - curve.from[0], curve.to[1] - curve.from[1]);
  const bend = (outFt: number) =>
    edit.keepPlan(
      planEdgeShaped(plan, edge, outFt === 0 ? STRAIGHT : { kind: "arc", ordinateFt: outFt * outward }),
      `Edge ${name} stands ${lengthText(Math.abs(outFt))} off its chord.`,
    );
  const radiusRead = (typed: string): Read<number> => {
    const read = feetRead(10_000)(typed);
    if (!read.ok) return read;
    const ordinate = ordinateOfRadius(chord, read.value);
    return ordinate === null
      ? { ok: false, fault: `Its corners are ${lengthText(chord)} apart, so the radius is at least ${lengthText(chord / 2)}.` }
      : { ok: true, value: ordinate };
  };
  return (
    <>
      <label className="field">
        Bends
        <select
          value={out < 0 ? "inward" : "outward"}
          onChange={(event) => bend(event.target.value === "inward" ? -Math.abs(out) : Math.abs(out))}
          aria-label={`Edge ${name} bends`}
        >
          <option>outward</option>
          <option>inward</option>
        </select>
      </label>
      <div className="field">
        <span className="soft small">Middle ordinate</span>
        <TextField
          label={`Middle ordinate of edge ${name}`}
          className="short"
          text={lengthText(Math.abs(out))}
          read={feetRead(2000)}
          keep={(feet) => bend(out < 0 ? -feet : feet)}
        />
      </div>
      <div className="field">
        <span className="soft small">Radius</span>
        <TextField label={`Radius of edge ${name}`} className="short" text={arc ? lengthText(arc.radiusFt) : "–"} read={radiusRead} keep={(feet) => bend(out < 0 ? -feet : feet)} />
      </div>
    </>
  );
}

/** Where an edge begins, and the figures of its curve. */
export function ShapeFields({ edit, edge, name }: ShapeFieldsProps) {
  const { plan } = edit;
  const held = plan[edge];
  if (!held) return null;
  const { shape } = held;
  return (
    <>
      <div className="fields">
        <PlaceFields label={`Corner ${edge + 1}`} at={held.from} keep={(at) => edit.keepPlan(planCornerMoved(plan, edge, at), `Corner ${edge + 1} moved.`)} />
        {shape.kind === "arc" ? <ArcFields edit={edit} edge={edge} name={name} /> : null}
      </div>
      {shape.kind === "cubic" ? (
        <div className="fields">
          {(["control1", "control2"] as const).map((which, i) => (
            <PlaceFields
              key={which}
              label={`Handle ${i + 1}`}
              at={shape[which]}
              keep={(at) => edit.keepPlan(planEdgeShaped(plan, edge, { ...shape, [which]: at }), `Edge ${name} shaped.`)}
            />
          ))}
        </div>
      ) : null}
    </>
  );
}
