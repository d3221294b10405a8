"use client";

import Link from "next/link";
import { useEffect, useId, useState, useTransition } from "react";
import type { LotPromise } from "@/lib/server/lot-promises";
import type { StoredLot } from "@/lib/server/lots";
import { lotMoveAction } from "../../actions";
import { onHandRead, priceRead, priceText } from "../../lot-readers";
import { answerWords } from "../../use-lot-save";

const UNREACHED = "Nothing was moved: the program does not answer. Try again when it does.";

/** Moves the lot or a part of it; what was dug and heeled in has another size and price. */
export function LotMoveForm({ lot, promises }: { lot: StoredLot; promises: readonly LotPromise[] }) {
  const id = useId();
  const [busy, start] = useTransition();
  const [quantity, setQuantity] = useState(String(lot.quantity));
  const [place, setPlace] = useState("");
  const [size, setSize] = useState(lot.size);
  const [price, setPrice] = useState(priceText(lot.priceCents));
  const [why, setWhy] = useState("");
  const [jobs, setJobs] = useState<readonly string[]>([]);
  const [words, setWords] = useState<string | null>(null);
  const [made, setMade] = useState<{ id: string; text: string } | null>(null);
  // What stands in the fields is of the lot as it is; a change of it, or one made elsewhere, starts them anew.
  const { version, quantity: held, size: sized, priceCents } = lot;
  useEffect(() => {
    if (version < 1) return;
    setQuantity(String(held));
    setSize(sized);
    setPrice(priceText(priceCents));
    setJobs([]);
  }, [version, held, sized, priceCents]);
  const count = onHandRead(quantity.trim());
  const part = count.ok && count.value < lot.quantity;
  const move = () => {
    const cents = priceRead(price.trim());
    const fault = !count.ok ? count.fault : !cents.ok ? `Price: ${cents.fault}` : null;
    setWords(fault);
    if (fault !== null || !count.ok || !cents.ok) return;
    const changed = { ...(size.trim() === lot.size ? {} : { size }), ...(cents.value === lot.priceCents ? {} : { priceCents: cents.value }) };
    start(async () => {
      try {
        const answer = await lotMoveAction(lot.id, lot.version, { quantity: count.value, place, why, jobs, ...changed });
        setWords(answerWords(answer));
        if (answer.kind !== "saved") return;
        setPlace("");
        setWhy("");
        setMade(answer.lot.id === lot.id ? null : { id: answer.lot.id, text: `${answer.lot.quantity.toLocaleString("en-US")} in ${answer.lot.place}` });
      } catch {
        setWords(UNREACHED);
      }
    });
  };
  return (
    <section aria-labelledby={`${id}-head`}>
      <h2 id={`${id}-head`} className="act-head">
        Move
      </h2>
      <form
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          move();
        }}
      >
        <div className="fields">
          <div className="field">
            <label htmlFor={`${id}-n`}>Plants to move</label>
            <input id={`${id}-n`} value={quantity} inputMode="numeric" size={6} onChange={(event) => setQuantity(event.target.value)} />
          </div>
          <div className="field">
            <label htmlFor={`${id}-to`}>To</label>
            <input id={`${id}-to`} value={place} maxLength={80} list="lot-places" placeholder="Yard, bay 3" onChange={(event) => setPlace(event.target.value)} />
          </div>
          <div className="field">
            <label htmlFor={`${id}-size`}>Size there</label>
            <input id={`${id}-size`} value={size} maxLength={60} size={12} placeholder="2 in cal B&B" onChange={(event) => setSize(event.target.value)} />
          </div>
          <div className="field">
            <label htmlFor={`${id}-price`}>Price there</label>
            <input id={`${id}-price`} value={price} inputMode="decimal" size={8} placeholder="$" onChange={(event) => setPrice(event.target.value)} />
          </div>
          <div className="field">
            <label htmlFor={`${id}-why`}>Why</label>
            <input id={`${id}-why`} value={why} maxLength={300} list={`${id}-whys`} placeholder="dug and heeled in" onChange={(event) => setWhy(event.target.value)} />
            <datalist id={`${id}-whys`}>
              {["dug and heeled in", "potted up", "lined out", "spaced", "wintered under cover", "staged for loading"].map((reason) => (
                <option key={reason} value={reason} />
              ))}
            </datalist>
          </div>
        </div>
        {part && promises.length ? (
          <fieldset>
            <legend>These are moved for</legend>
            {promises.map((promise) => (
              <label key={promise.jobId} className="check">
                <input
                  type="checkbox"
                  checked={jobs.includes(promise.jobId)}
                  onChange={(event) => setJobs(event.target.checked ? [...jobs, promise.jobId] : jobs.filter((job) => job !== promise.jobId))}
                />
                {promise.jobName} ({promise.open.toLocaleString("en-US")} promised)
              </label>
            ))}
          </fieldset>
        ) : null}
        {part && count.ok && count.value > 0 ? (
          <p className="small soft">
            A part becomes a lot of its own: {count.value.toLocaleString("en-US")} there, {(lot.quantity - count.value).toLocaleString("en-US")} stay.
          </p>
        ) : null}
        <p className="row">
          <button type="submit" disabled={busy || lot.quantity === 0}>
            {part ? "Move this part" : "Move the lot"}
          </button>
          <span className="small soft">Before digging in the field call 811 to have lines marked; local rules come first.</span>
        </p>
        {words ? (
          <p role="alert" className="alert small">
            {words}
          </p>
        ) : null}
        {made ? (
          <p role="status" className="small">
            <Link href={`/nursery/lots/${made.id}`}>{made.text}</Link> is a lot of its own now.
          </p>
        ) : null}
      </form>
    </section>
  );
}
