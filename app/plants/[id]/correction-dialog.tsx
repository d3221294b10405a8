"use client";

import { type FormEvent, useEffect, useId, useRef, useState, useTransition } from "react";
import { lengthFromText } from "@/lib/ground/length";
import type { CorrectionAsk } from "@/lib/papers/correction-form";
import type { SeenAt } from "@/lib/plants/own-taxon";
import { correctionSaveAction } from "../actions";
import { WindowFields } from "../window-fields";

type Props = {
  readonly taxonId: string;
  readonly name: string;
  readonly field: string;
  readonly label: string;
  readonly ask: CorrectionAsk;
  readonly seenAt: SeenAt;
  readonly placeLabel: string;
  readonly close: () => void;
};

/** The value that the dialog's fields hold; a string says what is wrong. */
function askedValue(ask: CorrectionAsk, seenAt: SeenAt): unknown {
  switch (ask.type) {
    case "lengths": {
      const [low, high] = [lengthFromText(ask.low, "ft"), lengthFromText(ask.high, "ft")];
      return low.ok && high.ok ? [low.feet, high.feet] : low.ok ? (high.ok ? "" : high.fault) : low.fault;
    }
    case "numbers":
      return [ask.low, ask.high].map((text) => (text.trim() === "" ? Number.NaN : Number(text)));
    case "one":
      return ask.value;
    case "several":
      return ask.values;
    case "window":
      return { from: ask.from, to: ask.to, seenAt };
  }
}

const QUESTION: Record<CorrectionAsk["type"], (place: string) => string> = {
  lengths: () => "What does it grow to in your region? Lengths such as 18 in or 4 ft.",
  numbers: () => "What holds in your region?",
  one: () => "What holds in your region?",
  several: () => "What holds in your region?",
  window: (place) => `When is it seen at ${place}? The dates are carried from there to every other place.`,
};

/** Asks for one value and a note. */
export function CorrectionDialog({ taxonId, name, field, label, ask, seenAt, placeLabel, close }: Props) {
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const [value, setValue] = useState(ask);
  const [note, setNote] = useState("");
  const [fault, setFault] = useState("");
  const [busy, start] = useTransition();
  useEffect(() => dialog.current?.showModal(), []);
  const submit = (event: FormEvent) => {
    event.preventDefault();
    const wanted = askedValue(value, seenAt);
    if (value.type === "lengths" && typeof wanted === "string") {
      setFault(wanted);
      return;
    }
    start(async () => {
      const answer = await correctionSaveAction(taxonId, field, wanted, note);
      if (answer.kind === "saved") close();
      else setFault(answer.message);
    });
  };
  const pair = (part: "low" | "high", words: string) =>
    value.type === "lengths" || value.type === "numbers" ? (
      <div className="field">
        <label htmlFor={`${id}-${part}`}>{words}</label>
        <input
          id={`${id}-${part}`}
          className="short"
          inputMode={value.type === "numbers" ? "decimal" : "text"}
          value={value[part]}
          aria-invalid={fault !== ""}
          aria-describedby={`${id}-fault`}
          onChange={(event) => setValue({ ...value, [part]: event.target.value })}
        />
      </div>
    ) : null;
  return (
    <dialog ref={dialog} aria-labelledby={`${id}-title`} onClose={close} className="correction-dialog">
      <form onSubmit={submit} className="correction-form">
        <h2 id={`${id}-title`}>
          {label} of {name}
        </h2>
        <p className="soft">{QUESTION[ask.type](placeLabel)}</p>
        <div className="fields">
          {pair("low", "From")}
          {pair("high", "To")}
          {value.type === "one" ? (
            <div className="field">
              <label htmlFor={`${id}-one`}>{label}</label>
              <select id={`${id}-one`} value={value.value} onChange={(event) => setValue({ ...value, value: event.target.value })}>
                {value.options.map((option) => (
                  <option key={option}>{option}</option>
                ))}
              </select>
            </div>
          ) : null}
          {value.type === "several" ? (
            <fieldset className="rail-field">
              <legend>{label}</legend>
              <div className="row">
                {value.options.map((option) => (
                  <label key={option} className="check">
                    <input
                      type="checkbox"
                      checked={value.values.includes(option)}
                      onChange={(event) => setValue({ ...value, values: value.options.filter((o) => (o === option ? event.target.checked : value.values.includes(o))) })}
                    />{" "}
                    {option}
                  </label>
                ))}
              </div>
            </fieldset>
          ) : null}
          {value.type === "window" ? <WindowFields id={id} from={value.from} to={value.to} change={(from, to) => setValue({ ...value, from, to })} /> : null}
        </div>
        <div className="field">
          <label htmlFor={`${id}-note`}>Note: why, where, since when</label>
          <input id={`${id}-note`} value={note} maxLength={500} placeholder="three winters by the lake, no dieback" onChange={(event) => setNote(event.target.value)} />
        </div>
        <p id={`${id}-fault`} role="alert" className="alert small">
          {fault}
        </p>
        <div className="row">
          <button type="submit" className="primary" disabled={busy}>
            {busy ? "Saving …" : "Keep the correction"}
          </button>
          <button type="button" onClick={close}>
            Cancel
          </button>
        </div>
        <p className="soft small">The dataset itself stays as it is: its value is shown beside yours, and an update of the dataset does not touch your correction.</p>
      </form>
    </dialog>
  );
}
