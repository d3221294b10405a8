"use client";

import { COLOR_NAMES, COLORS, type ColorName } from "@/lib/plants/colors";
import type { FieldFault, OwnFeature } from "@/lib/plants/own-taxon";
import { FEATURE_KINDS, type FeatureKind } from "@/lib/plants/vocabulary";
import { WindowFields } from "../window-fields";
import type { DraftFeature } from "./own-draft";

const SHOWS = ["slight", "good", "outstanding"] as const;

/** A new feature of a kind: a usual color and time, to be changed. */
const START: Record<FeatureKind, Pick<OwnFeature, "color" | "window">> = {
  bloom: { color: "white", window: { from: 152, to: 181 } },
  "spring foliage": { color: "bronze", window: { from: 111, to: 140 } },
  "summer foliage": { color: "burgundy", window: null },
  "fall color": { color: "red", window: { from: 274, to: 304 } },
  fruit: { color: "red", window: { from: 244, to: 334 } },
  bark: { color: "cinnamon", window: null },
  evergreen: { color: "dark green", window: null },
  seedhead: { color: "tan", window: { from: 274, to: 59 } },
  structure: { color: "tan", window: null },
};
/** Kinds that may do without a window: they go with the leaves, or show all year. */
const WITHOUT: Partial<Record<FeatureKind, string>> = { "summer foliage": "while in leaf", bark: "while leaves are off", structure: "while leaves are off", evergreen: "all year" };

function ColorSelect({ id, label, value, none, change }: { id: string; label: string; value: ColorName | null; none: string | null; change: (color: ColorName | null) => void }) {
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      <span className="color-select">
        <span className="color-dot" style={value ? { background: COLORS[value] } : { borderStyle: "dashed" }} />
        <select id={id} value={value ?? ""} onChange={(event) => change(COLOR_NAMES.find((c) => c === event.target.value) ?? null)}>
          {none === null ? null : <option value="">{none}</option>}
          {COLOR_NAMES.map((color) => (
            <option key={color} value={color}>
              {color}
            </option>
          ))}
        </select>
      </span>
    </div>
  );
}

type Props = { readonly features: readonly DraftFeature[]; readonly faults: readonly FieldFault[]; readonly change: (features: readonly DraftFeature[]) => void };

/** What the plant is grown for: kind, color, window, show; a row each. */
export function FeatureRows({ features, faults, change }: Props) {
  const set = (key: string, part: Partial<OwnFeature>) => change(features.map((f) => (f.key === key ? { ...f, ...part } : f)));
  const add = () =>
    change([...features, { kind: "bloom", ...START.bloom, fade: null, winter: null, show: 2, drive: null, key: `n${features.length}-${features.at(-1)?.key ?? ""}` }]);
  const whole = faults.find((f) => f.field === "features")?.message ?? "";
  return (
    <div className="feature-rows">
      {features.map((feature, i) => {
        const id = `own-features.${i}`;
        const without = WITHOUT[feature.kind];
        const fault = faults.find((f) => f.field === `features.${i}` || f.field.startsWith(`features.${i}.`))?.message ?? "";
        return (
          <fieldset key={feature.key} className="feature-row">
            <legend className="visually-hidden">Feature {i + 1}</legend>
            <div className="fields">
              <div className="field">
                <label htmlFor={id}>Feature</label>
                <select
                  id={id}
                  value={feature.kind}
                  aria-invalid={fault !== ""}
                  aria-describedby={`${id}-fault`}
                  onChange={(event) => {
                    const kind = FEATURE_KINDS.find((k) => k === event.target.value);
                    if (kind) set(feature.key, { kind, ...START[kind], winter: null, drive: null });
                  }}
                >
                  {FEATURE_KINDS.map((kind) => (
                    <option key={kind}>{kind}</option>
                  ))}
                </select>
              </div>
              <ColorSelect id={`${id}-color`} label="Color" value={feature.color} none={null} change={(color) => color && set(feature.key, { color })} />
              {feature.kind === "evergreen" ? (
                <ColorSelect id={`${id}-winter`} label="In winter" value={feature.winter} none="the same" change={(winter) => set(feature.key, { winter })} />
              ) : (
                <ColorSelect id={`${id}-fade`} label="Turning" value={feature.fade} none="does not turn" change={(fade) => set(feature.key, { fade })} />
              )}
              {without ? (
                <div className="field">
                  <label htmlFor={`${id}-when`}>When</label>
                  <select
                    id={`${id}-when`}
                    value={feature.window ? "dates" : "without"}
                    onChange={(event) => set(feature.key, { window: event.target.value === "dates" ? { from: 121, to: 288 } : null })}
                  >
                    <option value="without">{without}</option>
                    <option value="dates">from … to</option>
                  </select>
                </div>
              ) : null}
              {feature.window ? <WindowFields id={id} from={feature.window.from} to={feature.window.to} change={(from, to) => set(feature.key, { window: { from, to } })} /> : null}
              <div className="field">
                <label htmlFor={`${id}-show`}>Show</label>
                <select
                  id={`${id}-show`}
                  value={feature.show}
                  onChange={(event) => set(feature.key, { show: event.target.value === "3" ? 3 : event.target.value === "1" ? 1 : 2 })}
                >
                  {SHOWS.map((words, k) => (
                    <option key={words} value={k + 1}>
                      {words}
                    </option>
                  ))}
                </select>
              </div>
              <button type="button" aria-label={`Take out feature ${i + 1}, ${feature.kind}`} onClick={() => change(features.filter((f) => f.key !== feature.key))}>
                Take out
              </button>
            </div>
            <span id={`${id}-fault`} className="alert small">
              {fault}
            </span>
          </fieldset>
        );
      })}
      <p className="row">
        <button type="button" id="own-features" onClick={add}>
          Add a feature
        </button>
        <span className="alert small">{whole}</span>
      </p>
    </div>
  );
}
