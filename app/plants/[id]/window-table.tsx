import type { WindowLine } from "@/lib/papers/plant-windows";
import { CorrectButton } from "./correct-button";
import { CorrectionLine } from "./correction-line";
import { SourceMark } from "./source-mark";

type Props = {
  readonly windows: readonly WindowLine[];
  readonly leaves: { readonly words: string; readonly dates: string } | null;
  readonly leavesSource: string;
  readonly sources: Readonly<Record<string, string>>;
};

const sentenceCase = (words: string) => words.charAt(0).toUpperCase() + words.slice(1);

/** What shows when, in words and dates. */
export function WindowTable({ windows, leaves, leavesSource, sources }: Props) {
  return (
    <table className="window-table">
      <thead>
        <tr>
          <th scope="col">Feature</th>
          <th scope="col">Color</th>
          <th scope="col">When</th>
          <th scope="col">Dates</th>
          <th scope="col">Show</th>
          <th scope="col">Dated</th>
          <th scope="col" className="screen-only">
            <span className="visually-hidden">Correction</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {windows.map((line, i) => (
          // Two blooms of one color may differ in dates only; the order of a taxon's features is fixed.
          <tr key={`${line.kind}-${i}`}>
            <th scope="row" data-label="Feature">
              {sentenceCase(line.kind)}
            </th>
            <td data-label="Color">
              {line.swatches.map((swatch, k) => (
                <span key={swatch.name}>
                  {k ? ", then " : ""}
                  <span className="color-dot" style={{ background: swatch.hex }} />
                  {swatch.name}
                </span>
              ))}
              {line.note ? <span className="soft small"> {line.note}</span> : null}
            </td>
            <td data-label="When">
              <SourceMark source={sources[line.source] ?? ""}>{line.words}</SourceMark>
              {line.correction ? <CorrectionLine correction={line.correction} label={line.kind} /> : null}
            </td>
            <td data-label="Dates">{line.dates || "—"}</td>
            <td data-label="Show">{line.show}</td>
            <td data-label="Dated" className="soft">
              {line.drive}
            </td>
            <td className="correct-cell screen-only">{line.field ? <CorrectButton field={line.field} label={`Time of ${line.kind}`} /> : null}</td>
          </tr>
        ))}
        {leaves ? (
          <tr>
            <th scope="row" data-label="Feature">
              In leaf
            </th>
            <td data-label="Color" className="soft">
              —
            </td>
            <td data-label="When">
              <SourceMark source={sources[leavesSource] ?? ""}>{leaves.words}</SourceMark>
            </td>
            <td data-label="Dates">{leaves.dates}</td>
            <td />
            <td />
            <td className="screen-only" />
          </tr>
        ) : null}
      </tbody>
    </table>
  );
}
