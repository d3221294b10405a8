import { z } from "zod";
import { UNDERLAY_MAX_BYTES, underlayAdd } from "@/lib/server/underlays";

type Params = { params: Promise<{ jobId: string; bedId: string }> };

const sent = z.object({
  picture: z.instanceof(File),
  widthPx: z.coerce.number().int().positive().max(100_000),
  heightPx: z.coerce.number().int().positive().max(100_000),
});
/** Room for the form round the picture. */
const FORM_BYTES = 100_000;

const said = (status: number, message: string) => Response.json({ message }, { status });

/** POST: a picture to lay under the drawing, as a form with picture, widthPx and heightPx. Answers with its id and size, or with `message`. */
export async function POST(request: Request, { params }: Params): Promise<Response> {
  const { jobId, bedId } = await params;
  const site = request.headers.get("sec-fetch-site");
  if (site !== null && site !== "same-origin" && site !== "none") return said(403, "Pictures are taken from this program's own screen only.");
  if (Number(request.headers.get("content-length")) > UNDERLAY_MAX_BYTES + FORM_BYTES)
    return said(413, "The picture is larger than 15 MB. Make it smaller or cut it to the bed, then choose it again.");
  const form = await request.formData().catch(() => null);
  const parsed = sent.safeParse(form ? Object.fromEntries(form) : null);
  if (!parsed.success) return said(400, "The picture did not arrive whole. Choose it again.");
  const { picture, widthPx, heightPx } = parsed.data;
  const answer = await underlayAdd(jobId, bedId, { name: picture.name, bytes: new Uint8Array(await picture.arrayBuffer()), widthPx, heightPx });
  return answer.kind === "kept" ? Response.json(answer, { status: 201 }) : said(answer.status, answer.message);
}
