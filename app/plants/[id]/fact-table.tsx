import type { FactGroup } from "@/lib/papers/plant-facts";
import { CorrectButton } from "./correct-button";
import { CorrectionLine } from "./correction-line";
import { SourceMark } from "./source-mark";

/** A group of values. */
export function FactTable({ group, sources }: { group: FactGroup; sources: Readonly<Record<string, string>> }) {
  return (
    <div className="fact-group">
      <h2>{group.title}</h2>
      <table>
        <tbody>
          {group.facts.map((fact) => (
            <tr key={fact.field}>
              <th scope="row">{fact.label}</th>
              <td>
                <SourceMark source={sources[fact.source] ?? ""} why={fact.why}>
                  {fact.words}
                </SourceMark>
                {fact.correction ? <CorrectionLine correction={fact.correction} label={fact.label} /> : null}
              </td>
              <td className="correct-cell screen-only">{fact.correctable ? <CorrectButton field={fact.correctable} label={fact.label} /> : null}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
