import { jobLoads } from "@/lib/server/papers/job-loads";
import { paperResponse } from "@/lib/server/papers/paper-response";

/** GET: the loads as a file. ?beds= order of planting; ?bought=0 without what suppliers deliver; ?as= csv, xlsx or pdf; ?size= letter or a4. */
export async function GET(request: Request, { params }: { params: Promise<{ jobId: string }> }): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const found = await jobLoads((await params).jobId, { beds: query.get("beds"), bought: query.get("bought") });
  return found ? paperResponse(found.paper, query) : new Response("This job is no longer there.", { status: 404 });
}
