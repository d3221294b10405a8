/** A download. The name is cut to what every file system takes. */
export function fileResponse(body: string | Uint8Array<ArrayBuffer>, name: string, type: string): Response {
  const plain =
    name
      .normalize("NFKD")
      .replace(/[^\w. -]+/g, "")
      .trim()
      .replace(/\s+/g, "-") || "file";
  const charset = typeof body === "string" ? "; charset=utf-8" : "";
  return new Response(body, { headers: { "content-type": `${type}${charset}`, "content-disposition": `attachment; filename="${plain}"`, "cache-control": "no-store" } });
}
