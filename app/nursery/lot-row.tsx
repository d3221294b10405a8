"use client";

import { useEffect, useRef } from "react";
import { textRead } from "@/app/jobs/[jobId]/beds/[bedId]/field-readers";
import { TextField } from "@/app/jobs/[jobId]/beds/[bedId]/text-field";
import { BotanicalText } from "@/app/parts/botanical-text";
import type { Taxon } from "@/lib/plants/taxon";
import type { LotChange, StoredLot } from "@/lib/server/lots";
import { onHandRead, priceRead, priceText } from "./lot-readers";
import { useLotSave } from "./use-lot-save";

/** A lot with its plant as the dataset has it now; null when the plant has left it. */
export type LotLine = { readonly lot: StoredLot; readonly taxon: Pick<Taxon, "botanical" | "cultivar" | "group" | "tradeDesignation" | "commonNames"> | null };

const sizeRead = textRead(60);
const placeRead = textRead(80);
const remarksRead = textRead(300);

/** The day of a count, by the clock of the person who reads it. */
function countText(countedAt: string | null): string {
  return countedAt === null ? "not yet" : new Date(countedAt).toLocaleDateString("en-US", { month: "short", day: "numeric", year: "numeric" });
}

/** One lot, edited where it stands. `fresh`: just added, its size is asked for first. */
export function LotRow({ line, fresh, remove }: { line: LotLine; fresh: boolean; remove: () => void }) {
  const { lot, words, turn, change } = useLotSave(line.lot);
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
        {line.taxon ? <BotanicalText taxon={line.taxon} /> : lot.taxonName}
        <span className="common second-line">{line.taxon ? line.taxon.commonNames[0] : "no longer in the dataset"}</span>
      </th>
      <td data-label="Size">
        <TextField label={`Size of ${named(lot.place)}`} text={lot.size} placeholder="#3" read={sizeRead} keep={keep("size")} />
      </td>
      <td data-label="Place">
        <TextField label={`Place of ${named(lot.size)}`} text={lot.place} placeholder="yard bay 3" read={placeRead} keep={keep("place")} />
      </td>
      <td data-label="On hand" className="lot-count">
        <TextField label={`On hand of ${name}`} text={String(lot.quantity)} inputMode="numeric" read={onHandRead} keep={keep("quantity")} />
      </td>
      <td data-label="Price">
        <TextField label={`Price of ${name}`} text={priceText(lot.priceCents)} placeholder="$" inputMode="decimal" read={priceRead} keep={keep("priceCents")} />
      </td>
      <td data-label="Remarks">
        <TextField label={`Remarks on ${name}`} text={lot.remarks} read={remarksRead} keep={keep("remarks")} />
      </td>
      <td data-label="Counted" className="small">
        <span suppressHydrationWarning>{countText(lot.countedAt)}</span>{" "}
        <button
          type="button"
          className="plain screen-only"
          title="Counted now, and the number is right"
          aria-label={`The count of ${name} is right`}
          onClick={() => change({ quantity: lot.quantity })}
        >
          Count is right
        </button>
        {words ? (
          <p role="alert" className="alert small">
            {words}
          </p>
        ) : null}
      </td>
      <td className="small">
        <button type="button" className="plain screen-only" aria-label={`Delete ${name}`} onClick={remove}>
          Delete
        </button>
      </td>
    </tr>
  );
}
