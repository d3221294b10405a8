/** A download. The name is cut to what every file system takes. */
export function fileResponse(body: string, name: string, type: string): Response {
  const plain =
    name
      .normalize("NFKD")
      .replace(/[^\w. -]+/g, "")
      .trim()
      .replace(/\s+/g, "-") || "file";
  return new Response(body, { headers: { "content-type": `${type}; charset=utf-8`, "content-disposition": `attachment; filename="${plain}"`, "cache-control": "no-store" } });
}
