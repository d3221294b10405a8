// What the open plant dataset holds, where its values come from, and every published figure it departs from.
//   npm run plants:report             in words; ends with 1 when a departure or a missing genus has no reason written to it
//   npm run plants:report -- --json   the same as JSON
import { type DatasetReport, datasetReport } from "../lib/plants/dataset-report";
import { datasetRead, datasetSources } from "../lib/server/dataset-files";
import { crossCheckTables, leftOutRead, nativeTable, reasonsRead, usdaGenera } from "../lib/server/dataset-tables";
import { PUBLICATIONS } from "../tests/outside/publications";
import { PUBLISHED_LISTS } from "../tests/outside/published-lists";

const sources = datasetSources();
const titleOf = (source: string): string => sources[source]?.title ?? Object.entries(PUBLICATIONS).find(([key]) => key === source)?.[1] ?? source;
const percent = (part: number, whole: number): string => (whole === 0 ? "–" : `${((100 * part) / whole).toFixed(part === whole ? 0 : 1)} %`);

/** Rows as columns, the first flush left, the others flush right. */
function columns(rows: readonly (readonly (string | number)[])[]): string[] {
  const widths = (rows[0] ?? []).map((_, c) => Math.max(...rows.map((r) => String(r[c] ?? "").length)));
  return rows.map((r) => `  ${r.map((cell, c) => (c === 0 ? String(cell).padEnd(widths[c] ?? 0) : String(cell).padStart(widths[c] ?? 0))).join("  ")}`);
}

/** Short pieces set in lines of at most 150 characters. */
function flowed(pieces: readonly string[]): string[] {
  const lines: string[] = [];
  for (const piece of pieces) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + piece.length < 148) lines[lines.length - 1] = `${last} · ${piece}`;
    else lines.push(`  ${piece}`);
  }
  return lines;
}

function holdingLines(report: DatasetReport): string[] {
  const total = report.sources.reduce((sum, s) => sum + s.values, 0);
  return [
    `${report.all.taxa} taxa, ${report.all.cultivars} of them cultivars, in ${report.all.genera} genera`,
    "",
    "By kind",
    ...columns([["", "taxa", "cultivars"], ...report.kinds.map((k) => [k.kind, k.taxa, k.cultivars])]),
    "",
    "By genus: taxa (of them cultivars)",
    ...flowed(report.genera.map((g) => `${g.genus} ${g.taxa}${g.cultivars ? ` (${g.cultivars})` : ""}`)),
    "",
    "Completeness by field",
    ...columns([["", "known", "of", ""], ...report.fields.map((f) => [f.field, f.known, f.of, percent(f.known, f.of)])]),
    "",
    "Seasonal features",
    ...columns([["", "taxa", "", "features"], ...report.features.map((f) => [f.kind, f.taxa, percent(f.taxa, report.all.taxa), f.features])]),
    "",
    `Share of values by source (${total} values)`,
    ...columns(report.sources.map((s) => [`${s.source}: ${titleOf(s.source)}`, s.values, percent(s.values, total)])),
  ];
}

function coverageLines({ coverage }: DatasetReport): string[] {
  const reasons = new Map<string, string[]>();
  for (const c of coverage) if (c.state === "left out") reasons.set(c.reason, [...(reasons.get(c.reason) ?? []), c.genus]);
  const missing = coverage.flatMap((c) => (c.state === "missing" ? [`  UNEXPLAINED ${c.genus}: ${c.species.join(", ")}`] : []));
  const count = (state: string) => coverage.filter((c) => c.state === state).length;
  return [
    `Genera that the USDA table calls routinely available, native to where winters go to 5 °F or colder: ${coverage.length}`,
    `  in ${count("in")}, in under another name ${count("renamed")}, left out with a reason ${count("left out")}, neither ${missing.length}`,
    ...flowed(coverage.flatMap((c) => (c.state === "renamed" ? [`${c.genus} as ${c.as}`] : []))),
    ...[...reasons].flatMap(([reason, genera]) => [`  ${reason}:`, ...flowed(genera).map((line) => `  ${line}`)]),
    ...missing,
  ];
}

function disagreementLines(report: DatasetReport): string[] {
  const label = (source: string) => (source === "published" ? `published in ${new Set(PUBLISHED_LISTS.sizes.map((row) => row.source)).size} places` : source);
  const rows = report.agreements.map((a) => [`${label(a.source)}: ${a.field}`, a.compared, percent(a.compared - a.disagree, a.compared), a.disagree, a.unexplained]);
  const compared = report.agreements.reduce((sum, a) => sum + a.compared, 0);
  const apart = report.disagreements.length;
  const bySource = [...new Set(report.disagreements.map((d) => d.source))];
  return [
    `Comparisons with tables and published lists: ${compared}, agreeing within tolerance ${percent(compared - apart, compared)}`,
    ...columns([["", "compared", "agree", "apart", "unexplained"], ...rows]),
    "",
    "Disagreements",
    ...bySource.flatMap((source) => [
      `  ${source}: ${titleOf(source)}`,
      ...report.disagreements
        .filter((d) => d.source === source)
        .map(
          (d) => `    ${d.explained === null ? "UNEXPLAINED " : ""}${d.taxon}: ${d.field}: ours ${d.ours}; theirs ${d.theirs}${d.explained === null ? "" : ` — ${d.explained}`}`,
        ),
    ]),
  ];
}

const { taxa, faults } = datasetRead();
const report = datasetReport({
  taxa: taxa.map((t) => t.taxon),
  tables: crossCheckTables(),
  native: nativeTable(),
  listedGenera: usdaGenera(),
  leftOut: leftOutRead(),
  reasons: reasonsRead(),
  lists: PUBLISHED_LISTS,
});
if (process.argv.includes("--json")) console.log(JSON.stringify({ faults, ...report }, null, 2));
else {
  const stale = report.stale.length ? ["", "Can go, they answer nothing any more", ...report.stale.map((s) => `  ${s}`)] : [];
  const sum = `${faults.length} faults, ${report.disagreements.length} disagreements, ${report.unexplained} lines unexplained`;
  console.log([...holdingLines(report), "", ...coverageLines(report), "", ...disagreementLines(report), ...stale, "", sum].join("\n"));
}
// Not process.exit: what is still on its way into a pipe would be lost.
if (report.unexplained > 0 || faults.length > 0) process.exitCode = 1;
