import { importStart } from "@/lib/server/list-import";
import { LIST_MAX_BYTES } from "@/lib/server/workbook";
import { progressStream } from "./progress-stream";

/** POST ?supplier=ID&name=FILE with the file as body: reads and matches it, telling how far it is. Nothing is written. */
export async function POST(request: Request): Promise<Response> {
  const asked = new URL(request.url).searchParams;
  const fileName = (asked.get("name") ?? "the list").slice(0, 200);
  return progressStream(request, async (tell, signal) => {
    if (Number(request.headers.get("content-length") ?? 0) > LIST_MAX_BYTES) return tell({ kind: "fault", message: `${fileName} is larger than 40 MB; split the list.` });
    const bytes = new Uint8Array(await request.arrayBuffer());
    await importStart((asked.get("supplier") ?? "").slice(0, 100), fileName, bytes, tell, signal);
  });
}
