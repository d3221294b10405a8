/** The title block at the foot of a sheet. */
export function TitleBlock({ cells }: { cells: readonly (readonly [label: string, value: string])[] }) {
  return (
    <dl className="title-block">
      {cells.map(([label, value]) => (
        <div key={label}>
          <dt>{label}</dt>
          <dd>{value || "—"}</dd>
        </div>
      ))}
    </dl>
  );
}
