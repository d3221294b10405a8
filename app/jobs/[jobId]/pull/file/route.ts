import { pullViewPaper } from "@/lib/server/papers/job-papers";
import { paperResponse } from "@/lib/server/papers/paper-response";

/** GET: a list of the pull page as a file. ?view= place, dig, buy or kind; ?bed= one bed; ?as= csv, xlsx or pdf; ?size= letter or a4. */
export async function GET(request: Request, { params }: { params: Promise<{ jobId: string }> }): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const found = await pullViewPaper((await params).jobId, query.get("bed"), query.get("view"));
  return found ? paperResponse(found.paper, query) : new Response("This job or bed is no longer there.", { status: 404 });
}
