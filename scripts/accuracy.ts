// How close computed dates come to published ones: one row a source.
//   npm run accuracy            the table
//   npm run accuracy -- --worst the table, and the farthest off of each source
import { datasetTaxa } from "../tests/outside/dataset";
import { accuracyRows, degreeDayRows } from "../tests/outside/phenology-accuracy";

const taxa = datasetTaxa();
const rows = [...accuracyRows(taxa), ...degreeDayRows()];
const cells = (row: (typeof rows)[number]): string[] => [
  row.source,
  row.n.toString(),
  row.meanError.toFixed(1),
  row.meanAbsoluteError.toFixed(1),
  `${Math.round(row.shareWithin * 100)} % ±${row.tolerance} ${row.unit}`,
  row.rank === null ? "" : row.rank.toFixed(2),
];
const table = [["source", "n", "mean error", "mean abs. error", "within", "rank corr."], ...rows.map(cells)];
const widths = (table[0] ?? []).map((_, c) => Math.max(...table.map((r) => (r[c] ?? "").length)));
console.log(`${taxa.length} taxa; positive = computed later, or more, than published`);
for (const line of table) console.log(line.map((cell, c) => (c === 0 ? cell.padEnd(widths[c] ?? 0) : cell.padStart(widths[c] ?? 0))).join("  "));
if (process.argv.includes("--worst"))
  for (const row of rows) console.log(`\n${row.source}\n${row.worst.map((w) => `  ${w.name}: published ${w.observed.toFixed(0)}, computed ${w.computed.toFixed(0)}`).join("\n")}`);
