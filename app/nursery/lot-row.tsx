"use client";

import Link from "next/link";
import { useEffect, useRef } from "react";
import { textRead } from "@/app/jobs/[jobId]/beds/[bedId]/field-readers";
import { TextField } from "@/app/jobs/[jobId]/beds/[bedId]/text-field";
import { BotanicalText } from "@/app/parts/botanical-text";
import { isoDateText } from "@/lib/pulls/iso-date";
import type { LotChange } from "@/lib/server/lots";
import type { LotLine } from "@/lib/server/nursery-lots";
import { DayText } from "./lot-dates";
import { onHandRead, priceRead, priceText } from "./lot-readers";
import { LotWords } from "./lot-words";
import { useLotSave } from "./use-lot-save";

const sizeRead = textRead(60);
const placeRead = textRead(80);

/** The id of the list of places that place fields offer. */
export const PLACES_LIST = "nursery-places";

/** One lot, edited where it stands. `fresh`: just added, its size is asked for first. */
export function LotRow({ line, fresh, remove }: { line: LotLine; fresh: boolean; remove: () => void }) {
  const save = useLotSave(line.lot);
  const { lot, turn, change } = save;
  const row = useRef<HTMLTableRowElement>(null);
  useEffect(() => {
    if (fresh) row.current?.querySelector("input")?.focus();
  }, [fresh]);
  const named = (...more: string[]) => [lot.taxonName, ...more].filter(Boolean).join(", ");
  const name = named(lot.size, lot.place);
  const keep =
    <K extends keyof LotChange>(field: K) =>
    (value: LotChange[K]) =>
      change({ [field]: value });
  return (
    <tr ref={row} key={turn} className="lot">
      <th scope="row">
        <Link href={`/nursery/lots/${lot.id}`}>{line.taxon ? <BotanicalText taxon={line.taxon} /> : lot.taxonName}</Link>
        <span className="common second-line">{[line.taxon ? line.taxon.commonNames[0] : "no longer in the dataset", lot.grade, lot.remarks].filter(Boolean).join(" · ")}</span>
      </th>
      <td data-label="Size">
        <TextField label={`Size of ${named(lot.place)}`} text={lot.size} placeholder="#3" read={sizeRead} keep={keep("size")} />
      </td>
      <td data-label="Place">
        <TextField label={`Place of ${named(lot.size)}`} text={lot.place} placeholder="Yard, bay 3" list={PLACES_LIST} read={placeRead} keep={keep("place")} />
      </td>
      <td data-label="On hand" className="lot-count">
        <TextField label={`On hand of ${name}`} text={String(lot.quantity)} inputMode="numeric" read={onHandRead} keep={keep("quantity")} />
      </td>
      <td data-label="Free" className="number">
        {(lot.quantity - lot.reserved).toLocaleString("en-US")}
        {lot.reserved ? <span className="common second-line">{lot.reserved.toLocaleString("en-US")} promised</span> : null}
      </td>
      <td data-label="Price each" className="lot-price">
        <TextField label={`Price of ${name}`} text={priceText(lot.priceCents)} placeholder="$" inputMode="decimal" read={priceRead} keep={keep("priceCents")} />
      </td>
      <td data-label="Ready" className="small">
        {lot.readyFrom ? isoDateText(lot.readyFrom) : "now"}
      </td>
      <td data-label="Counted" className="small">
        <DayText at={lot.countedAt} />{" "}
        <button
          type="button"
          className="plain screen-only"
          title="Counted now, and the number is right"
          aria-label={`The count of ${name} is right`}
          onClick={() => change({ quantity: lot.quantity })}
        >
          Count is right
        </button>
        <LotWords {...save} />
      </td>
      <td className="small">
        <button type="button" className="plain screen-only" aria-label={`Delete ${name}`} onClick={remove}>
          Delete
        </button>
      </td>
    </tr>
  );
}
