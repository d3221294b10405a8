"use client";

import { useMemo, useState } from "react";
import type { CrowdingGroup } from "@/lib/ground/crowding-group";
import { lengthText } from "@/lib/ground/length";
import type { BedViewRow } from "@/lib/papers/bed-view";
import { viewCrowding } from "@/lib/papers/ground-view";
import type { PanelProps } from "../drawing-props";
import { CrowdingSolutions } from "./crowding-solutions";

const yearWords = (year: number) => (year === 0 ? "planting day" : `year ${year}`);

/** 'Palibin', or the whole name where a plant has no cultivar's. */
function shortName({ placed, row }: BedViewRow): string {
  const { cultivar = null, tradeDesignation = null } = placed?.taxon ?? {};
  return cultivar ? `‘${cultivar}’` : (tradeDesignation ?? row.taxonName);
}

function GroupWords({ group, rows }: { group: CrowdingGroup; rows: readonly BedViewRow[] }) {
  const [first, second] = rows;
  const own = first ? (
    <>
      <b>{first.letter}</b> {shortName(first)}
    </>
  ) : null;
  const count = group.members.length;
  if (group.against !== null)
    return (
      <>
        {own} against {group.against}
        {count > 1 ? ` (${count})` : ""}
      </>
    );
  if (!second)
    return (
      <>
        {own} among each other{count > 1 ? ` (${count} pairs)` : ""}
      </>
    );
  return (
    <>
      {own} and <b>{second.letter}</b> {shortName(second)}
      {count > 1 ? ` (${count} pairs)` : ""}
    </>
  );
}

/** Nobody sets a plant more exactly than this: what lacks less is listed apart. */
const SLIGHT_FT = 0.25;

/** What will crowd what, by the year in which it begins; pressed, it chooses the plants and says what helps. */
export function CrowdingPanel({ asItIs, ...props }: PanelProps & { /** Takes an offered arrangement off the drawing. */ asItIs: () => void }) {
  const { bedView, year, choose, say } = props;
  const groups = useMemo(() => viewCrowding(bedView), [bedView]);
  const [open, setOpen] = useState<string | null>(null);
  const rowOf = useMemo(() => new Map(bedView.rows.map((r) => [r.row.id, r])), [bedView]);
  const [told, slight] = useMemo(() => {
    const isSlight = (group: CrowdingGroup) => group.overFt < SLIGHT_FT && !group.safety;
    return [groups.filter((group) => !isSlight(group)), groups.filter(isSlight)];
  }, [groups]);
  const press = (group: CrowdingGroup) => {
    const next = open === group.id ? null : group.id;
    setOpen(next);
    asItIs();
    choose(new Set(next === null ? [] : group.plantIds));
    if (next !== null) say(`${group.plantIds.length} plants chosen.`);
  };
  const list = (some: readonly CrowdingGroup[]) => (
    <ol className="crowding-list">
      {some.map((group) => (
        <li key={group.id}>
          <button type="button" className="crowding-row" aria-expanded={open === group.id} onClick={() => press(group)}>
            <span className={group.year <= year ? "crowding-year now" : "crowding-year"}>{yearWords(group.year)}</span>
            <span>
              <GroupWords group={group} rows={group.rows.flatMap((id) => rowOf.get(id) ?? [])} />
              <span className="soft">
                {" "}
                {group.against === null ? "overlap" : "too near"} by {lengthText(group.overFt)}
              </span>
            </span>
          </button>
          {open === group.id ? <CrowdingSolutions {...props} group={group} /> : null}
        </li>
      ))}
    </ol>
  );
  return (
    <section className="ground-panel" aria-labelledby="crowding-title">
      <h2 id="crowding-title">Crowding</h2>
      {!bedView.drawn ? (
        <p className="soft">When plants stand on the drawing, it is said here which will be in each other's way, and when.</p>
      ) : groups.length === 0 ? (
        <p className="soft">Nothing crowds in twenty years: plants, walls, windows, walks and lines all have their room.</p>
      ) : (
        <>
          {told.length ? list(told) : <p className="soft">Nothing crowds that is worth a move.</p>}
          {slight.length ? (
            <details className="slight">
              <summary>{slight.length} more by less than 3 in</summary>
              {list(slight)}
            </details>
          ) : null}
          <p className="soft small">Overlap beyond what is tolerated, when grown: half the narrower plant's radius between plants, 6 in over an edge.</p>
        </>
      )}
    </section>
  );
}
