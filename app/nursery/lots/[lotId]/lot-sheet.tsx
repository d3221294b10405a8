"use client";

import { type ReactNode, useId } from "react";
import { textRead } from "@/app/jobs/[jobId]/beds/[bedId]/field-readers";
import { TextField } from "@/app/jobs/[jobId]/beds/[bedId]/text-field";
import type { LotChange, StoredLot } from "@/lib/server/lots";
import { DayText } from "../../lot-dates";
import { onHandRead, priceRead, priceText } from "../../lot-readers";
import { LotWords } from "../../lot-words";
import { useLotSave } from "../../use-lot-save";

const PLACES = "lot-places";

function Labelled({ label, more = "", children }: { label: string; more?: string; children: ReactNode }) {
  // The field names itself; the word above it is for the eye.
  return (
    <div className={`field ${more}`}>
      <span className="small soft" aria-hidden="true">
        {label}
      </span>
      {children}
    </div>
  );
}

/** All of a lot that may be changed where it stands. Leaving a field or Enter keeps it. */
export function LotSheet({ lot: given, places, sizeWords }: { lot: StoredLot; places: readonly string[]; sizeWords: string }) {
  const id = useId();
  const save = useLotSave(given);
  const { lot, turn, change } = save;
  const keep =
    <K extends keyof LotChange>(field: K) =>
    (value: LotChange[K]) =>
      change({ [field]: value });
  return (
    <div className="lot-sheet">
      <dl className="lot-figures">
        <div>
          <dt>On hand</dt>
          <dd>{lot.quantity.toLocaleString("en-US")}</dd>
        </div>
        <div>
          <dt>Promised</dt>
          <dd>{lot.reserved.toLocaleString("en-US")}</dd>
        </div>
        <div>
          <dt>Free</dt>
          <dd>{(lot.quantity - lot.reserved).toLocaleString("en-US")}</dd>
        </div>
      </dl>
      <section aria-label="The lot" key={turn}>
        <div className="fields">
          <Labelled label="Counted on hand">
            <TextField label="On hand" text={String(lot.quantity)} inputMode="numeric" read={onHandRead} keep={keep("quantity")} />
          </Labelled>
          <Labelled label="Size and root">
            <TextField label="Size" text={lot.size} placeholder="#3, 2 in cal B&B" read={textRead(60)} keep={keep("size")} />
          </Labelled>
          <Labelled label="Place">
            <TextField label="Place" text={lot.place} placeholder="North field, row 4" list={PLACES} read={textRead(80)} keep={keep("place")} />
          </Labelled>
          <div className="field">
            <label htmlFor={`${id}-ready`}>Ready from</label>
            <input
              id={`${id}-ready`}
              type="date"
              defaultValue={lot.readyFrom ?? ""}
              onBlur={(event) => event.target.value !== (lot.readyFrom ?? "") && change({ readyFrom: event.target.value || null })}
            />
          </div>
          <Labelled label="Price each">
            <TextField label="Price each" text={priceText(lot.priceCents)} placeholder="$" inputMode="decimal" read={priceRead} keep={keep("priceCents")} />
          </Labelled>
          <Labelled label="Cost each">
            <TextField label="Cost each" text={priceText(lot.costCents)} placeholder="$" inputMode="decimal" read={priceRead} keep={keep("costCents")} />
          </Labelled>
          <Labelled label="Grade">
            <TextField label="Grade" text={lot.grade} placeholder="specimen" read={textRead(40)} keep={keep("grade")} />
          </Labelled>
          <Labelled label="Remarks" more="lot-remarks">
            <TextField label="Remarks" text={lot.remarks} read={textRead(300)} keep={keep("remarks")} />
          </Labelled>
        </div>
        <datalist id={PLACES}>
          {places.map((place) => (
            <option key={place} value={place} />
          ))}
        </datalist>
        {sizeWords ? <p className="small soft">{sizeWords}</p> : null}
        <p className="small">
          Counted: <DayText at={lot.countedAt} />{" "}
          <button type="button" className="plain screen-only" onClick={() => change({ quantity: lot.quantity })}>
            {lot.quantity.toLocaleString("en-US")} is right, counted now
          </button>
        </p>
        <LotWords {...save} />
      </section>
    </div>
  );
}
