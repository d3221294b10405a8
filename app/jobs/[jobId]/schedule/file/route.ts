import { schedulePaper } from "@/lib/server/papers/job-papers";
import { paperResponse } from "@/lib/server/papers/paper-response";

/** GET: the planting schedule as a file. ?bed= one bed; ?as= csv, xlsx or pdf; ?size= letter or a4. */
export async function GET(request: Request, { params }: { params: Promise<{ jobId: string }> }): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const found = await schedulePaper((await params).jobId, query.get("bed"));
  return found ? paperResponse(found.paper, query) : new Response("This job or bed is no longer there.", { status: 404 });
}
