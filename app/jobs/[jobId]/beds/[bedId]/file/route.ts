import { bedFileOf } from "@/lib/papers/bed-file";
import { bedContext } from "@/lib/server/bed-context";
import { fileResponse } from "@/lib/server/file-response";

/** GET: the bed as a bed file (JSON), the same that import and the headless command read. */
export async function GET(_request: Request, { params }: { params: Promise<{ jobId: string; bedId: string }> }): Promise<Response> {
  const context = await bedContext((await params).bedId);
  if (!context) return new Response("This bed is no longer there.", { status: 404 });
  const { stored, job, placed } = context;
  const nameOf = (taxonId: string) => placed[taxonId]?.taxon.name ?? null;
  return fileResponse(`${JSON.stringify(bedFileOf(stored.bed, job.job.placeKey, job.job.targets, nameOf), null, 2)}\n`, `${stored.bed.name}.bed.json`, "application/json");
}
