import { pullListCsv } from "@/lib/papers/pull-list-csv";
import { fileResponse } from "@/lib/server/file-response";
import { jobPull } from "@/lib/server/pull";

/** GET: the pull list as CSV. ?bed= takes one bed. */
export async function GET(request: Request, { params }: { params: Promise<{ jobId: string }> }): Promise<Response> {
  const bed = new URL(request.url).searchParams.get("bed");
  const pull = await jobPull((await params).jobId, bed);
  if (!pull) return new Response("This job or bed is no longer there.", { status: 404 });
  return fileResponse(pullListCsv(pull.list), `${pull.job.job.name} ${pull.bedName ?? ""} pull list.csv`, "text/csv");
}
