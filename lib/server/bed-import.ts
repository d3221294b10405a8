import { bedFileRead, bedOfFile } from "../papers/bed-file";
import { matchName } from "../plants/name-match";
import { bedCreate } from "./beds";
import { jobFind } from "./jobs";
import { taxaHeld } from "./taxa";

export type ImportAnswer = { readonly kind: "imported"; readonly bedId: string } | { readonly kind: "fault"; readonly field: string; readonly message: string };

/** Taxon of a written name in the dataset; null when none fits well. */
export async function nameFinder(): Promise<(name: string) => { id: string; name: string } | null> {
  const { index, byId } = await taxaHeld();
  return (name) => {
    const match = matchName(index, name);
    const taxon = match && !match.fallback ? byId.get(match.taxonId) : undefined;
    return taxon ? { id: taxon.id, name: taxon.name } : null;
  };
}

/** Adds the bed of a bed file to a job; nothing is written unless all of it can be. The file's place is not taken over: the job has one. */
export async function bedImport(jobId: string, text: string): Promise<ImportAnswer> {
  const read = bedFileRead(text);
  if (read.kind === "fault") return read;
  if (!(await jobFind(jobId))) return { kind: "fault", field: "job", message: "This job is no longer there." };
  const made = bedOfFile(read.file, await nameFinder());
  return made.kind === "fault" ? made : { kind: "imported", bedId: await bedCreate(jobId, made.bed) };
}
