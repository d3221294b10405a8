// Progress of a list as NDJSON: a line of JSON for each step, sent as it happens.
import type { ImportProgress } from "@/lib/server/list-import";

type Work = (tell: (progress: ImportProgress) => void, signal: AbortSignal) => Promise<void>;

/** Answers at once and goes on telling until the work is done. When the other side goes away, the work is told to stop. */
export function progressStream(request: Request, work: Work): Response {
  const stop = new AbortController();
  request.signal.addEventListener("abort", () => stop.abort());
  const encoder = new TextEncoder();
  const body = new ReadableStream<Uint8Array>({
    async start(controller) {
      const tell = (progress: ImportProgress): void => {
        if (!stop.signal.aborted) controller.enqueue(encoder.encode(`${JSON.stringify(progress)}\n`));
      };
      try {
        await work(tell, stop.signal);
      } catch (error) {
        console.error(error);
        tell({ kind: "fault", message: "The list could not be read: something in it was not expected. Save it as CSV and try that; nothing was written." });
      }
      if (!stop.signal.aborted) controller.close();
    },
    cancel() {
      stop.abort();
    },
  });
  return new Response(body, { headers: { "content-type": "application/x-ndjson; charset=utf-8", "cache-control": "no-store", "x-accel-buffering": "no" } });
}
