"use client";

import { useState, useTransition } from "react";
import { TextField } from "@/app/jobs/[jobId]/beds/[bedId]/text-field";
import { lengthText } from "@/lib/ground/length";
import type { StoredTruck, TruckAnswer } from "@/lib/server/trucks";
import { truckAddAction, truckChangeAction, truckMoveAction, truckRemoveAction, truckUsualAction } from "./actions";
import { clearRead, clearText, deckRead, poundsRead, poundsText } from "./truck-readers";

const UNREACHED = "Nothing was changed: the program does not answer. Try again when it does.";
const nameRead = (typed: string) =>
  typed && typed.length <= 60 ? ({ ok: true, value: typed } as const) : ({ ok: false, fault: typed ? "At most 60 characters." : "A name, such as Stake body." } as const);

/** The trucks in the order in which they are loaded; every field is kept as it is left. */
export function TruckList({ trucks, usual }: { trucks: readonly StoredTruck[]; usual: readonly string[] }) {
  const [words, setWords] = useState("");
  const [removed, setRemoved] = useState<StoredTruck | null>(null);
  const [busy, start] = useTransition();
  const run = (what: () => Promise<TruckAnswer | undefined>, then: string) =>
    start(async () => {
      try {
        const answer = await what();
        setWords(answer?.kind === "fault" ? answer.message : then);
      } catch {
        setWords(UNREACHED);
      }
    });
  const change = (id: string, field: object) => run(() => truckChangeAction(id, field), "Saved.");
  const remove = (truck: StoredTruck) =>
    run(async () => {
      setRemoved(await truckRemoveAction(truck.id));
      return undefined;
    }, `${truck.name} removed.`);
  return (
    <>
      {trucks.length > 0 ? (
        <table className="truck-table">
          <caption className="visually-hidden">Trucks in the order in which they are loaded</caption>
          <thead>
            <tr>
              <th scope="col">Truck</th>
              <th scope="col">Payload, lb</th>
              <th scope="col">Deck length</th>
              <th scope="col">Deck width</th>
              <th scope="col">Clear height</th>
              <th scope="col">
                <span className="visually-hidden">Order and removal</span>
              </th>
            </tr>
          </thead>
          <tbody>
            {trucks.map((truck, index) => (
              <tr key={truck.id} className="truck">
                <td data-label="Truck">
                  <TextField label={`Name of ${truck.name}`} text={truck.name} read={nameRead} keep={(name) => change(truck.id, { name })} />
                </td>
                <td data-label="Payload, lb">
                  <TextField
                    label={`Payload of ${truck.name} in pounds`}
                    text={poundsText(truck.payloadLb)}
                    read={poundsRead}
                    keep={(payloadLb) => change(truck.id, { payloadLb })}
                    inputMode="decimal"
                  />
                </td>
                <td data-label="Deck length">
                  <TextField
                    label={`Deck length of ${truck.name}`}
                    text={lengthText(truck.deckLengthFt)}
                    read={deckRead(60)}
                    keep={(deckLengthFt) => change(truck.id, { deckLengthFt })}
                  />
                </td>
                <td data-label="Deck width">
                  <TextField
                    label={`Deck width of ${truck.name}`}
                    text={lengthText(truck.deckWidthFt)}
                    read={deckRead(12)}
                    keep={(deckWidthFt) => change(truck.id, { deckWidthFt })}
                  />
                </td>
                <td data-label="Clear height">
                  <TextField label={`Clear height of ${truck.name}`} text={clearText(truck.clearFt)} read={clearRead} keep={(clearFt) => change(truck.id, { clearFt })} />
                </td>
                <td className="truck-buttons small">
                  <button
                    type="button"
                    className="plain"
                    disabled={busy || index === 0}
                    aria-label={`Load ${truck.name} earlier`}
                    onClick={() => run(async () => void (await truckMoveAction(truck.id, -1)), "Moved.")}
                  >
                    earlier
                  </button>
                  <button
                    type="button"
                    className="plain"
                    disabled={busy || index === trucks.length - 1}
                    aria-label={`Load ${truck.name} later`}
                    onClick={() => run(async () => void (await truckMoveAction(truck.id, 1)), "Moved.")}
                  >
                    later
                  </button>
                  <button type="button" className="plain" disabled={busy} aria-label={`Remove ${truck.name}`} onClick={() => remove(truck)}>
                    remove
                  </button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      ) : (
        <p>No trucks yet. Add one that is near to yours, and correct its figures.</p>
      )}
      <div className="row screen-only">
        {usual.map((name, which) => (
          <button key={name} type="button" disabled={busy} onClick={() => run(() => truckUsualAction(which), `${name} added: correct its figures by the door plate.`)}>
            Add a usual truck: {name.toLowerCase()}
          </button>
        ))}
      </div>
      <p role="status" className="small">
        {words}{" "}
        {removed ? (
          <button
            type="button"
            className="plain"
            onClick={() => {
              const { id: _, ...truck } = removed;
              setRemoved(null);
              run(() => truckAddAction(truck), `${truck.name} is back.`);
            }}
          >
            Bring {removed.name} back
          </button>
        ) : null}
      </p>
    </>
  );
}
