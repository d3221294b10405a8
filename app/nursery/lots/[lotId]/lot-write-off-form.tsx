"use client";

import { useId, useState, useTransition } from "react";
import type { StoredLot } from "@/lib/server/lots";
import { lotWriteOffAction } from "../../actions";
import { onHandRead } from "../../lot-readers";
import { answerWords } from "../../use-lot-save";

const UNREACHED = "Nothing was written off: the program does not answer. Try again when it does.";
const REASONS = ["winter kill", "deer", "voles", "drought", "disease", "broken in handling", "outgrown", "sold over the counter", "given away"];

/** Takes plants out of the lot for a reason. */
export function LotWriteOffForm({ lot }: { lot: StoredLot }) {
  const id = useId();
  const [busy, start] = useTransition();
  const [quantity, setQuantity] = useState("");
  const [why, setWhy] = useState("");
  const [words, setWords] = useState<string | null>(null);
  const [offered, setOffered] = useState(false);
  const [done, setDone] = useState<string | null>(null);
  const write = (anyway: boolean) => {
    const count = onHandRead(quantity.trim());
    setWords(count.ok ? null : count.fault);
    setDone(null);
    if (!count.ok) return;
    start(async () => {
      try {
        const answer = await lotWriteOffAction(lot.id, lot.version, { quantity: count.value, why }, anyway);
        setOffered(answer.kind === "promised");
        setWords(answer.kind === "saved" ? null : answerWords(answer));
        if (answer.kind !== "saved") return;
        setDone(
          [
            `${count.value.toLocaleString("en-US")} written off, ${answer.lot.quantity.toLocaleString("en-US")} left.`,
            answer.released?.length ? `Now short: ${answer.released.join(", ")}.` : "",
          ].join(" "),
        );
        setQuantity("");
        setWhy("");
      } catch {
        setWords(UNREACHED);
      }
    });
  };
  return (
    <section aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`} className="act-head">
        Write off
      </h2>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          write(false);
        }}
      >
        <div className="fields">
          <div className="field">
            <label htmlFor={`${id}-n`}>Plants</label>
            <input
              id={`${id}-n`}
              value={quantity}
              inputMode="numeric"
              size={6}
              onChange={(event) => {
                setQuantity(event.target.value);
                setOffered(false);
              }}
            />
          </div>
          <div className="field">
            <label htmlFor={`${id}-why`}>Reason</label>
            <input id={`${id}-why`} value={why} maxLength={300} list={`${id}-whys`} placeholder="winter kill" onChange={(event) => setWhy(event.target.value)} />
            <datalist id={`${id}-whys`}>
              {REASONS.map((reason) => (
                <option key={reason} value={reason} />
              ))}
            </datalist>
          </div>
          <button type="submit" disabled={busy || lot.quantity === 0}>
            Write off
          </button>
        </div>
        {words ? (
          <p role="alert" className="alert small">
            {words}
          </p>
        ) : null}
        <p role="status" className="small">
          {done}
        </p>
        {offered ? (
          <p className="row">
            <button type="button" disabled={busy} onClick={() => write(true)}>
              Write off anyway
            </button>
            <span className="small soft">The newest promises are let go; those jobs then show what is short.</span>
          </p>
        ) : null}
      </form>
    </section>
  );
}
