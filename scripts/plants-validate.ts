// tsx scripts/plants-validate.ts [FILE…]: names file, taxon and field of every fault in the dataset (or in the files named).
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { parse } from "yaml";
import { sourcesFile } from "../lib/plants/taxon-file";
import { datasetFaults, type Fault, faultText, genusTaxa } from "../lib/plants/taxon-load";

const dir = "prisma/plants";
const wanted = process.argv.slice(2).map((f) => path.basename(f));
const sources = sourcesFile.parse(parse(readFileSync(path.join(dir, "sources.yaml"), "utf8")));
const all: { file: string; taxon: ReturnType<typeof genusTaxa>["taxa"][number] }[] = [];
const faults: Fault[] = [];
for (const file of readdirSync(dir).filter((f) => f.endsWith(".yaml") && f !== "sources.yaml")) {
  let data: unknown;
  try {
    data = parse(readFileSync(path.join(dir, file), "utf8"));
  } catch (error) {
    faults.push({ file, taxon: "(file)", field: "(yaml)", message: error instanceof Error ? error.message : String(error) });
    continue;
  }
  const result = genusTaxa(file, data);
  faults.push(...result.faults);
  all.push(...result.taxa.map((taxon) => ({ file, taxon })));
}
faults.push(...datasetFaults(all, sources));
const shown = wanted.length ? faults.filter((f) => wanted.includes(f.file)) : faults;
for (const f of shown) console.error(faultText(f));
const mine = all.filter((t) => !wanted.length || wanted.includes(t.file));
console.log(`${mine.length} taxa (${mine.filter((t) => t.taxon.cultivar || t.taxon.tradeDesignation).length} cultivars) in ${new Set(mine.map((t) => t.taxon.genus)).size} genera, ${shown.length} faults`);
process.exit(shown.length ? 1 : 0);
