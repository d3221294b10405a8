import type { ImportProgress } from "@/lib/server/list-import";

/** Reads progress as it comes, a line of JSON each. Ends with "ready" or "fault"; throws when the signal says so or the connection breaks. */
export async function progressRead(address: string, init: RequestInit, hear: (progress: ImportProgress) => void): Promise<void> {
  const response = await fetch(address, init);
  const reader = response.body?.getReader();
  if (!reader || !response.ok) throw new Error("no answer");
  const decoder = new TextDecoder();
  let rest = "";
  let ended = false;
  for (;;) {
    const { done, value } = await reader.read();
    rest += decoder.decode(value, { stream: !done });
    const lines = rest.split("\n");
    rest = lines.pop() ?? "";
    for (const line of lines) {
      if (line === "") continue;
      const progress = JSON.parse(line) as ImportProgress;
      ended = progress.kind === "ready" || progress.kind === "fault";
      hear(progress);
    }
    if (done) break;
  }
  if (!ended) throw new Error("cut off");
}
