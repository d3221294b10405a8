// Reads prisma/plants/*.yaml. The only reader of those files: seed, validator, report and headless all come here.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { parse } from "yaml";
import type { Taxon } from "../plants/taxon";
import { type Sources, sourcesFile } from "../plants/taxon-file";
import { datasetFaults, type Fault, genusTaxa } from "../plants/taxon-load";
import { projectPath } from "./environment";

const plantsDir = () => projectPath("prisma", "plants");
const genusFiles = () =>
  readdirSync(plantsDir())
    .filter((file) => file.endsWith(".yaml") && file !== "sources.yaml")
    .sort();

/** Where values come from, by key. */
export function datasetSources(): Sources {
  return sourcesFile.parse(parse(readFileSync(path.join(plantsDir(), "sources.yaml"), "utf8")));
}

/** Changes when any dataset file, or the code that reads it, changes. */
export function datasetFingerprint(): string {
  const hash = createHash("sha256");
  const code = ["taxon-load.ts", "taxon-file.ts", "colors.ts", "thirds.ts"].map((file) => projectPath("lib", "plants", file));
  for (const file of [...genusFiles().map((name) => path.join(plantsDir(), name)), ...code]) hash.update(path.basename(file)).update(readFileSync(file));
  return hash.digest("hex");
}

/** All taxa with the file each stands in, and every fault of the files. */
export function datasetRead(): { taxa: { file: string; taxon: Taxon }[]; faults: Fault[] } {
  const taxa: { file: string; taxon: Taxon }[] = [];
  const faults: Fault[] = [];
  for (const file of genusFiles()) {
    let data: unknown;
    try {
      data = parse(readFileSync(path.join(plantsDir(), file), "utf8"));
    } catch (error) {
      faults.push({ file, taxon: "(file)", field: "(yaml)", message: error instanceof Error ? error.message : String(error) });
      continue;
    }
    const genus = genusTaxa(file, data);
    faults.push(...genus.faults);
    taxa.push(...genus.taxa.map((taxon) => ({ file, taxon })));
  }
  faults.push(...datasetFaults(taxa, datasetSources()));
  return { taxa, faults };
}
