import { z } from "zod";
import { importAgain, importDrop } from "@/lib/server/list-import";
import { importChange, importNames, importShown, NAME_GROUPS } from "@/lib/server/list-import-view";
import { progressStream } from "../progress-stream";

type Context = { params: Promise<{ id: string }> };
const asked = z.object({
  part: z.enum(["list", "names", "change"]).catch("list"),
  group: z.enum(NAME_GROUPS).catch("confirm"),
  page: z.coerce.number().int().min(1).max(100_000).catch(1),
  find: z.string().max(100).catch(""),
});

/** GET ?part=list | names&group=&page=&find= | change: the held list in parts; 404 when it is no longer held. */
export async function GET(request: Request, { params }: Context): Promise<Response> {
  const { id } = await params;
  const { part, group, page, find } = asked.parse(Object.fromEntries(new URL(request.url).searchParams));
  const value = part === "names" ? await importNames(id, group, page, find) : part === "change" ? await importChange(id) : importShown(id);
  return Response.json(value, { status: value ? 200 : 404, headers: { "cache-control": "no-store" } });
}

/** POST [{sheet, headerRow?, roles?}]: reads the list anew with columns as corrected, telling how far it is. */
export async function POST(request: Request, { params }: Context): Promise<Response> {
  const { id } = await params;
  const untrusted: unknown = await request.json().catch(() => null);
  return progressStream(request, (tell, signal) => importAgain(id, untrusted, tell, signal));
}

/** DELETE: lets the held list go. */
export async function DELETE(_request: Request, { params }: Context): Promise<Response> {
  importDrop((await params).id);
  return new Response(null, { status: 204 });
}
