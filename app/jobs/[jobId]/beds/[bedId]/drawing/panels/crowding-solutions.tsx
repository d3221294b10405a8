"use client";

import { useEffect, useMemo, useState } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import type { CrowdingGroup } from "@/lib/ground/crowding-group";
import { type CrowdingSolution, crowdingSolutions } from "@/lib/ground/crowding-solution";
import { lengthText } from "@/lib/ground/length";
import type { GrownPlant } from "@/lib/ground/plan-plant";
import { plantLeftOut, plantsExchanged, rowExchanged } from "@/lib/papers/row-swap";
import type { SmallerAnswer, SmallerOffer } from "../../smaller/route";
import type { PanelProps } from "../drawing-props";
import { moveText } from "../plan-words";

let rowsMade = 0;
const rowIdNew = () => `r${Date.now().toString(36)}w${(rowsMade++).toString(36)}`;
/** To an inch: what a crew can set. */
const inch = (feet: number) => Math.round(feet * 12) / 12 + 0;

type Smaller = Extract<CrowdingSolution, { kind: "smaller" }>;
type Found = { kind: "looking" } | { kind: "failed" } | { kind: "found"; offers: readonly SmallerOffer[] };

function useSmaller(path: string, taxonId: string, { maxSpreadFt, maxHeightFt }: Smaller): Found {
  const [found, setFound] = useState<Found>({ kind: "looking" });
  useEffect(() => {
    const stop = new AbortController();
    const query = new URLSearchParams({ taxon: taxonId });
    if (maxSpreadFt !== null) query.set("spread", maxSpreadFt.toFixed(2));
    if (maxHeightFt !== null) query.set("height", maxHeightFt.toFixed(2));
    setFound({ kind: "looking" });
    fetch(`${path}/smaller?${query}`, { signal: stop.signal })
      .then(async (response) => setFound(response.ok ? { kind: "found", offers: ((await response.json()) as SmallerAnswer).offers } : { kind: "failed" }))
      .catch(() => !stop.signal.aborted && setFound({ kind: "failed" }));
    return () => stop.abort();
  }, [path, taxonId, maxSpreadFt, maxHeightFt]);
  return found;
}

/** Plants of the same look that stay small enough, for the whole row or for those that crowd. */
function SmallerPlants({ solution, plant, group, ...props }: PanelProps & { solution: Smaller; plant: GrownPlant; group: CrowdingGroup }) {
  const { bed, bedView, path, send, say, setPlaced } = props;
  const row = bedView.rows.find(({ row: own }) => own.id === plant.key);
  const found = useSmaller(path, row?.row.taxonId ?? "", solution);
  if (!row) return null;
  const limits = [
    solution.maxSpreadFt === null ? "" : `up to ${lengthText(solution.maxSpreadFt)} wide`,
    solution.maxHeightFt === null ? "" : `up to ${lengthText(solution.maxHeightFt)} high`,
  ];
  const ids = new Set(group.plantIds.filter((id) => bed.drawing?.plants.some((one) => one.id === id && one.rowId === row.row.id)));
  const some = ids.size > 0 && ids.size < row.quantity;
  const exchange = ({ placed }: SmallerOffer, all: boolean) => {
    setPlaced({ [placed.taxon.id]: placed });
    send({ type: "replace", bed: all ? rowExchanged(bed, row.row.id, placed.taxon) : plantsExchanged(bed, row.row.id, ids, row.quantity, placed.taxon, rowIdNew()) });
    say(`${all ? `All ${row.letter}` : `${ids.size} of ${row.letter}`} are now ${placed.taxon.name}. Undo brings the plants back.`);
  };
  return (
    <div className="smaller">
      <p className="small">
        In place of <b>{row.letter}</b> a plant {limits.filter(Boolean).join(" and ")}, most alike first:
      </p>
      {found.kind === "looking" ? (
        <p className="small soft" role="status">
          Looking through the dataset …
        </p>
      ) : null}
      {found.kind === "failed" ? <p role="alert">The search did not answer. Close this line and press it again.</p> : null}
      {found.kind === "found" && found.offers.length === 0 ? <p className="small soft">No smaller plant of its kind suits this bed's site and place.</p> : null}
      {found.kind === "found" ? (
        <ul className="smaller-list">
          {found.offers.map((offer) => (
            <li key={offer.placed.taxon.id}>
              <span>
                <BotanicalText taxon={offer.placed.taxon} /> <span className="common">{offer.sizeWords}</span>
              </span>
              <span className="row">
                <button type="button" onClick={() => exchange(offer, true)} aria-label={`Take ${offer.placed.taxon.name} for all ${row.letter}`}>
                  all {row.quantity}
                </button>
                {some ? (
                  <button type="button" onClick={() => exchange(offer, false)} aria-label={`Take ${offer.placed.taxon.name} for ${ids.size} of ${row.letter}`}>
                    these {ids.size}
                  </button>
                ) : null}
              </span>
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

/** What helps against the soonest of a group's crowding, each as one press that can be undone. */
export function CrowdingSolutions({ group, ...props }: PanelProps & { group: CrowdingGroup }) {
  const { bed, bedView, send, say, choose } = props;
  const [exchanging, setExchanging] = useState(false);
  const { drawn } = bedView;
  const first = group.members[0];
  const solutions = useMemo(() => (drawn && first ? crowdingSolutions(first, drawn.plants, drawn.plan) : []), [drawn, first]);
  if (!drawn || !first) return null;
  const plantOf = (id: string) => drawn.plants.find((plant) => plant.id === id);
  const rowOf = (id: string) => bedView.rows.find(({ row }) => row.id === plantOf(id)?.key);
  return (
    <div className="solutions">
      {group.members.length > 1 ? <p className="small soft">The soonest of {group.members.length}; when it has its room, the next is shown.</p> : null}
      {solutions.map((solution) => {
        const plant = plantOf(solution.id);
        const row = rowOf(solution.id);
        if (!plant || !row) return null;
        if (solution.kind === "move") {
          const by = [inch(solution.to[0] - plant.at[0]), inch(solution.to[1] - plant.at[1])] as const;
          return (
            <button
              key="move"
              type="button"
              onClick={() => {
                send({ type: "put", places: new Map([[solution.id, solution.to]]) });
                choose(new Set([solution.id]));
                say(`${row.letter} moved ${moveText(by)}. Undo brings it back.`);
              }}
            >
              Move {row.letter} {moveText(by)}
            </button>
          );
        }
        if (solution.kind === "drop")
          return (
            <button
              key="drop"
              type="button"
              onClick={() => {
                send({ type: "replace", bed: plantLeftOut(bed, solution.id, row.quantity) });
                choose(new Set());
                say(`One ${row.letter} left out; ${row.quantity - 1} remain. Undo brings it back.`);
              }}
            >
              Leave out one {row.letter}
            </button>
          );
        return (
          <button key="smaller" type="button" aria-expanded={exchanging} onClick={() => setExchanging(!exchanging)}>
            A smaller plant for {row.letter} …
          </button>
        );
      })}
      {exchanging
        ? solutions.map((solution) => {
            const plant = plantOf(solution.id);
            return solution.kind === "smaller" && plant ? <SmallerPlants key={solution.id} {...props} group={group} solution={solution} plant={plant} /> : null;
          })
        : null}
      {solutions.length === 0 ? <p className="small soft">Both stand there already; nothing is suggested.</p> : null}
    </div>
  );
}
