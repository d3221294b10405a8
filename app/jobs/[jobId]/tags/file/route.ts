import { tagsPaper } from "@/lib/papers/tag-sheet";
import { fileResponse } from "@/lib/server/file-response";
import { jobTags, originOf } from "@/lib/server/papers/job-tags";
import { paperResponse } from "@/lib/server/papers/paper-response";
import { paperSizeRead } from "@/lib/server/papers/paper-size";
import { tagsPdf } from "@/lib/server/papers/tags-pdf";

/** GET: tags as a file. ?each= plant or group; ?bed= one bed; ?as= pdf (sheets of tags), csv or xlsx (their list); ?size= letter or a4. */
export async function GET(request: Request, { params }: { params: Promise<{ jobId: string }> }): Promise<Response> {
  const query = new URL(request.url).searchParams;
  const found = await jobTags((await params).jobId, query.get("bed"), query.get("each"), originOf(request.headers));
  if (!found) return new Response("This job or bed is no longer there.", { status: 404 });
  const paper = tagsPaper(found.set, found.paperJob);
  if (query.get("as") !== "pdf") return paperResponse(paper, query);
  return fileResponse(await tagsPdf(found.set.tags, `${paper.title} · ${paper.subtitle}`, paperSizeRead(query.get("size"))), `${paper.fileName}.pdf`, "application/pdf");
}
