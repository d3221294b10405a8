import { underlayFile } from "@/lib/server/underlays";

/** GET: a picture laid under the bed's drawing. A picture never changes under its id, so the browser may keep it. */
export async function GET(_request: Request, { params }: { params: Promise<{ jobId: string; bedId: string; imageId: string }> }): Promise<Response> {
  const { jobId, bedId, imageId } = await params;
  const file = await underlayFile(jobId, bedId, imageId);
  if (!file) return new Response("This picture is no longer there.", { status: 404 });
  return new Response(file.bytes, {
    headers: {
      "content-type": file.mime,
      "content-length": String(file.bytes.length),
      "x-content-type-options": "nosniff",
      "content-security-policy": "default-src 'none'",
      "cache-control": "private, max-age=31536000, immutable",
    },
  });
}
