"use client";

import Link from "next/link";
import { type DragEvent, type KeyboardEvent, useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import { WindowList } from "@/app/parts/window-list";
import { YearStripSvg } from "@/app/parts/year-strip-svg";
import type { Remedy } from "@/lib/findings/finding";
import { lengthText, plantSizeRangeText } from "@/lib/ground/length";
import type { BedViewRow } from "@/lib/papers/bed-view";
import { nameText } from "@/lib/plants/botanical-name";
import type { BedCommand } from "./bed-draft";
import { areaRead, countRead, spacingRead, textRead } from "./field-readers";
import { FindingMark } from "./finding-mark";
import { TextField } from "./text-field";

export type RowProps = {
  readonly viewRow: BedViewRow;
  readonly index: number;
  readonly send: (command: BedCommand) => void;
  readonly apply: (remedy: Remedy) => void;
};

const zones = (low: number, high: number) => `zones ${low}–${high}`;

/** Quantity as a count, or as the area to fill; the count that follows from an area is said beside it. */
function QuantityField({ viewRow, send, name }: Pick<RowProps, "viewRow" | "send"> & { name: string }) {
  const { row, quantity } = viewRow;
  const change = (value: { by: "count"; count: number } | { by: "area"; areaSqFt: number }) => send({ type: "change", rowId: row.id, change: { quantity: value } });
  if (row.quantity.by === "count")
    return (
      <TextField
        label={`Quantity of ${name}`}
        className="cell number-cell"
        text={String(row.quantity.count)}
        inputMode="numeric"
        read={countRead}
        keep={(count) => change({ by: "count", count })}
      />
    );
  return (
    <output className="computed" title={row.quantity.by === "area" ? `for ${row.quantity.areaSqFt} sq ft` : "as many as stand on the drawing"}>
      {quantity}
    </output>
  );
}

/** Opened under a row: how the quantity is found, remarks, whether it stands there already, and what the plant is. */
function RowDetail({ viewRow, send, index }: Pick<RowProps, "viewRow" | "send" | "index">) {
  const { row, placed, quantity } = viewRow;
  const name = placed ? nameText(placed.taxon) : row.taxonName;
  const change = (what: Parameters<typeof send>[0] extends infer C ? (C extends { type: "change"; change: infer X } ? X : never) : never) =>
    send({ type: "change", rowId: row.id, change: what });
  const byArea = row.quantity.by === "area";
  return (
    <div className="row-detail">
      <div className="fields">
        <div className="field">
          <label htmlFor={`by-${row.id}`}>Quantity</label>
          <select
            id={`by-${row.id}`}
            value={row.quantity.by}
            onChange={(event) =>
              change({
                quantity:
                  event.target.value === "drawing"
                    ? { by: "drawing" }
                    : event.target.value === "area"
                      ? { by: "area", areaSqFt: Math.max(1, Math.round(quantity * (viewRow.spacingFt ?? 1) ** 2 * 0.866)) }
                      : { by: "count", count: quantity },
              })
            }
          >
            <option value="count">counted by hand</option>
            <option value="area">from the area it fills</option>
            <option value="drawing">as many as stand on the drawing</option>
          </select>
        </div>
        {row.quantity.by === "area" ? (
          <div className="field">
            <span className="soft small">Area to fill, sq ft</span>
            <TextField
              label={`Area for ${name}, square feet`}
              text={String(row.quantity.areaSqFt)}
              inputMode="decimal"
              read={areaRead}
              keep={(areaSqFt) => change({ quantity: { by: "area", areaSqFt } })}
            />
          </div>
        ) : null}
        <div className="field wide">
          <span className="soft small">Remarks</span>
          <TextField
            label={`Remarks for ${name}`}
            text={row.remarks}
            read={textRead(500)}
            keep={(remarks) => change({ remarks })}
            placeholder="multi-stem, matched, by the door …"
          />
        </div>
        <label className="check">
          <input type="checkbox" checked={row.existing} onChange={(event) => change({ existing: event.target.checked })} /> stands there already and stays
        </label>
        <div className="row">
          <button type="button" onClick={() => send({ type: "move", rowId: row.id, to: index - 1 })} disabled={index === 0}>
            Up
          </button>
          <button type="button" onClick={() => send({ type: "move", rowId: row.id, to: index + 1 })}>
            Down
          </button>
          <button type="button" onClick={() => send({ type: "remove", rowId: row.id })}>
            Take out
          </button>
        </div>
      </div>
      {placed ? (
        <>
          <p className="small soft">
            {byArea ? `${quantity} plants on a triangular grid. ` : ""}
            Grows {plantSizeRangeText(placed.taxon.heightFt)} high, {plantSizeRangeText(placed.taxon.spreadFt)} wide in about {placed.taxon.matureYears} years;{" "}
            {zones(placed.taxon.zoneLow, placed.taxon.zoneHigh)}; {placed.taxon.light.join(", ")}; {placed.taxon.moisture.join(", ")} soil.{" "}
            <Link href={`/plants/${placed.taxon.id}`}>All about it</Link>
          </p>
          <WindowList season={placed.season} />
        </>
      ) : null}
    </div>
  );
}

/** One plant of the list with its year. The letter is the handle: drag it, or Alt with the arrows; Delete takes the plant out. */
export function PlantRow({ viewRow, index, send, apply }: RowProps) {
  const [open, setOpen] = useState(false);
  const [dropping, setDropping] = useState(false);
  const { row, placed, letter } = viewRow;
  const name = placed ? nameText(placed.taxon) : row.taxonName;
  const onKey = (event: KeyboardEvent) => {
    if (event.altKey && (event.key === "ArrowUp" || event.key === "ArrowDown")) {
      event.preventDefault();
      send({ type: "move", rowId: row.id, to: index + (event.key === "ArrowUp" ? -1 : 1) });
    } else if (event.key === "Delete" || event.key === "Backspace") {
      event.preventDefault();
      send({ type: "remove", rowId: row.id });
    }
  };
  const onDrop = (event: DragEvent) => {
    event.preventDefault();
    setDropping(false);
    const dragged = event.dataTransfer.getData("text/twelvemonth-row");
    if (dragged) send({ type: "move", rowId: dragged, to: index });
  };
  return (
    <>
      <tr
        className={`plant-row${dropping ? " dropping" : ""}${row.existing ? " existing" : ""}`}
        onDragOver={(event) => {
          event.preventDefault();
          setDropping(true);
        }}
        onDragLeave={() => setDropping(false)}
        onDrop={onDrop}
      >
        <td className="margin-cell">
          <FindingMark findings={viewRow.findings} apply={apply} />
        </td>
        <td className="letter-cell">
          <button
            type="button"
            className="letter"
            draggable
            aria-label={`${letter}, ${name}: Alt and arrows move it, Delete takes it out`}
            onKeyDown={onKey}
            onDragStart={(event) => event.dataTransfer.setData("text/twelvemonth-row", row.id)}
          >
            {letter}
          </button>
        </td>
        <th scope="row" className="name-cell">
          <button type="button" className="name-button" aria-expanded={open} onClick={() => setOpen(!open)}>
            {placed ? <BotanicalText taxon={placed.taxon} /> : <span className="botanical">{row.taxonName}</span>}
          </button>
          <span className="common second-line">
            {[placed?.taxon.commonNames[0] ?? "no longer in the dataset", row.existing ? "existing, stays" : "", row.remarks].filter(Boolean).join(" · ")}
          </span>
        </th>
        <td className="qty-cell" data-label="Qty">
          <QuantityField viewRow={viewRow} send={send} name={name} />
        </td>
        <td className="size-cell" data-label="Size">
          <TextField
            label={`Size at planting of ${name}`}
            className="cell"
            text={row.size}
            list="sizes"
            read={textRead(80)}
            keep={(size) => send({ type: "change", rowId: row.id, change: { size } })}
            placeholder={row.existing ? "8 ft" : "#3"}
          />
        </td>
        <td className="spacing-cell" data-label="On center">
          <TextField
            label={`Spacing on center of ${name}`}
            className="cell number-cell"
            text={row.spacingFt === null ? "" : lengthText(row.spacingFt)}
            placeholder={viewRow.spacingFt === null ? "" : lengthText(viewRow.spacingFt)}
            read={spacingRead}
            keep={(spacingFt) => send({ type: "change", rowId: row.id, change: { spacingFt } })}
          />
        </td>
        <td className="year-cell">
          <YearStripSvg marks={viewRow.marks} sentence={viewRow.sentence} idPrefix={`y-${row.id}`} freezeDays={null} />
        </td>
      </tr>
      {open ? (
        <tr className="detail-row">
          <td colSpan={7}>
            <RowDetail viewRow={viewRow} send={send} index={index} />
          </td>
        </tr>
      ) : null}
    </>
  );
}
