import type { ChangeGroups } from "@/lib/server/list-import-view";

const number = (count: number): string => count.toLocaleString("en-US");
const KINDS = [
  ["gone", "Gone"],
  ["fewer", "Fewer"],
  ["more", "More"],
  ["dearer", "Dearer"],
  ["cheaper", "Cheaper"],
  ["added", "New"],
] as const;

/** What the list changes against the supplier's last one; promised plants that are gone or too few stand first. */
export function ChangeSection({ change }: { change: ChangeGroups }) {
  const { counts, tooFew, examples } = change;
  if (change.first)
    return (
      <section aria-labelledby="change">
        <h2 id="change">What it brings</h2>
        <p>
          The first list of this supplier: {number(counts.added)} {counts.added === 1 ? "lot" : "lots"}.
        </p>
      </section>
    );
  return (
    <section aria-labelledby="change">
      <h2 id="change">What changed since the last list</h2>
      {tooFew.length ? (
        <div className="notice alert">
          <p>{tooFew.length === 1 ? "One lot that is promised is gone or too few:" : `${number(tooFew.length)} lots that are promised are gone or too few:`}</p>
          <ul>
            {tooFew.map(({ lotId, name, size, words }) => (
              <li key={lotId}>
                {name} {size}: {words}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
      {counts.gone > counts.kept ? (
        <p className="notice alert">
          {counts.kept ? `Only ${number(counts.kept)} of the ${number(counts.gone + counts.kept)} lots of the last list are` : "None of the lots of the last list is"} on this one:
          accepting it takes {number(counts.gone)} off offer. Accept it only if it is the supplier’s whole list and the columns below are right.
        </p>
      ) : null}
      <p>
        {KINDS.map(([kind, label]) => `${label.toLowerCase()} ${number(counts[kind])}`).join(", ")}, unchanged {number(counts.same)}.
      </p>
      {KINDS.map(([kind, label]) =>
        counts[kind] ? (
          <details key={kind}>
            <summary>
              {label}: {number(counts[kind])}
            </summary>
            <ul className="changes">
              {examples[kind].map(({ lotId, name, size, words }) => (
                <li key={lotId}>
                  <span>
                    {name} {size}
                  </span>
                  <span className="soft">{words}</span>
                </li>
              ))}
            </ul>
            {counts[kind] > examples[kind].length ? <p className="small soft">The first {examples[kind].length} are shown.</p> : null}
          </details>
        ) : null,
      )}
    </section>
  );
}
