import { BotanicalText } from "@/app/parts/botanical-text";
import type { BedViewRow } from "@/lib/papers/bed-view";

/** The key of the printed plan: letter, name, how many, what size. */
export function PlanKey({ rows }: { rows: readonly BedViewRow[] }) {
  return (
    <ul className="plan-key print-only">
      {rows.map(({ row, letter, placed, quantity }) => (
        <li key={row.id}>
          <b>{letter}</b>
          <span>
            {placed ? <BotanicalText taxon={placed.taxon} /> : row.taxonName} <span className="common">{placed?.taxon.commonNames[0]}</span>
          </span>
          <span>
            {quantity} · {row.existing ? "existing" : row.size}
          </span>
        </li>
      ))}
    </ul>
  );
}
