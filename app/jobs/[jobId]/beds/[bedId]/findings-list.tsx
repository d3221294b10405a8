import { type Finding, type Remedy, SEVERITIES, type Severity } from "@/lib/findings/finding";
import type { BedViewRow } from "@/lib/papers/bed-view";
import { RemedyButton, SeverityDot } from "./finding-mark";

const WORDS: Record<Severity, string> = { fix: "to fix", consider: "to consider", note: "notes" };

/** "1 to fix · 2 to consider · 3 notes", or that all is well. */
export function findingCounts(counts: Readonly<Record<Severity, number>>): string {
  const parts = SEVERITIES.flatMap((s) => (counts[s] ? [`${counts[s]} ${s === "note" && counts[s] === 1 ? "note" : WORDS[s]}`] : []));
  return parts.length ? parts.join(" · ") : "nothing found";
}

/** All findings of the bed, the worst first, each with what one press can do. */
export function FindingsList({ findings, rows, apply }: { findings: readonly Finding[]; rows: readonly BedViewRow[]; apply: (remedy: Remedy) => void }) {
  const letterOf = new Map(rows.map((r) => [r.row.id, r.letter]));
  if (!findings.length)
    return <p className="soft">{rows.length ? "Nothing to fix: hardiness, light, soil, room and the year all hold." : "Findings appear here as plants are added."}</p>;
  return (
    <ul className="findings">
      {findings.map((f) => (
        <li key={`${f.check}${f.rowId}${f.message}`}>
          <SeverityDot severity={f.severity} />
          <span>
            <span className="visually-hidden">{WORDS[f.severity]}: </span>
            {f.rowId ? <b>{letterOf.get(f.rowId)} </b> : null}
            {f.plant ? `${f.plant} ` : ""}
            {f.message} <RemedyButton remedy={f.remedy} apply={apply} />
          </span>
        </li>
      ))}
    </ul>
  );
}
