import type { PlantSheetView } from "@/lib/server/plant-sheet";

/** Every source with what it gives: for paper, and for those who do not hover. */
export function SourceList({ sheet }: { sheet: PlantSheetView }) {
  const given = new Map<string, string[]>();
  const add = (source: string, what: string) => {
    const list = given.get(source) ?? [];
    if (!list.includes(what)) list.push(what);
    given.set(source, list);
  };
  for (const line of sheet.windows) add(line.source, line.kind);
  for (const group of sheet.groups) for (const fact of group.facts) add(fact.source, fact.label.toLowerCase());
  for (const caution of sheet.cautions) add(caution.source, caution.title.toLowerCase());
  return (
    <section aria-labelledby="sources-title" className="small soft">
      <h3 id="sources-title">Sources</h3>
      <ul className="plain-list">
        {[...given].map(([source, fields]) => (
          <li key={source}>
            {sheet.sources[source]} <span>({fields.join(", ")})</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
