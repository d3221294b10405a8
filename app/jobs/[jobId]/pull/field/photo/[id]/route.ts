import { pullPhoto } from "@/lib/server/pull-events";

/** A picture taken of a line. */
export async function GET(_request: Request, { params }: { params: Promise<{ jobId: string; id: string }> }): Promise<Response> {
  const { jobId, id } = await params;
  const photo = await pullPhoto(jobId, id);
  if (!photo) return new Response("There is no such picture.", { status: 404 });
  return new Response(Buffer.from(photo.bytes), {
    headers: { "content-type": photo.mime, "x-content-type-options": "nosniff", "cache-control": "private, max-age=31536000, immutable" },
  });
}
