// tsx scripts/plants-validate.ts [FILE…]: names file, taxon and field of every fault in the dataset (or in the files named).
import path from "node:path";
import { faultText } from "../lib/plants/taxon-load";
import { datasetRead } from "../lib/server/dataset-files";

const wanted = process.argv.slice(2).map((file) => path.basename(file));
const { taxa, faults } = datasetRead();
const shown = wanted.length ? faults.filter((f) => wanted.includes(f.file)) : faults;
for (const fault of shown) console.error(faultText(fault));
const mine = taxa.filter((t) => !wanted.length || wanted.includes(t.file));
const cultivars = mine.filter(({ taxon }) => taxon.cultivar || taxon.tradeDesignation);
console.log(`${mine.length} taxa (${cultivars.length} cultivars) in ${new Set(mine.map((t) => t.taxon.genus)).size} genera, ${shown.length} faults`);
process.exit(shown.length ? 1 : 0);
