// Keeps the pull list of the field working without a signal: the page and the program's own files, as last seen. Lists and changes are kept by the page itself.
const PAGES = "twelvemonth-pages-1";
const FILES = "twelvemonth-files-1";
const FIELD_PAGE = /^\/jobs\/[^/]+\/pull\/field$/;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => {
  const kept = new Set([PAGES, FILES]);
  event.waitUntil(caches.keys().then((names) => Promise.all(names.filter((name) => name.startsWith("twelvemonth-") && !kept.has(name)).map((name) => caches.delete(name)))).then(() => self.clients.claim()));
});

/** The newest from the server, kept; without a signal the last one seen. */
async function newestOrKept(request) {
  const cache = await caches.open(PAGES);
  try {
    const response = await fetch(request);
    if (response.ok) await cache.put(new URL(request.url).pathname, response.clone());
    return response;
  } catch {
    return (await cache.match(new URL(request.url).pathname)) ?? new Response("This page was never opened on this phone while there was a signal.", { status: 503, headers: { "content-type": "text/plain" } });
  }
}

/** Files whose names change with their contents: kept once, asked for no more. */
async function keptOrFetched(request) {
  const cache = await caches.open(FILES);
  const kept = await cache.match(request);
  if (kept) return kept;
  const response = await fetch(request);
  if (response.ok) await cache.put(request, response.clone());
  return response;
}

// The page that installed this was loaded before it ran: it says what it was made of.
self.addEventListener("message", (event) => {
  const { page, files } = event.data ?? {};
  if (typeof page !== "string" || !FIELD_PAGE.test(page) || !Array.isArray(files)) return;
  const keep = async () => {
    await newestOrKept(new Request(page, { credentials: "same-origin" }));
    await Promise.all(files.map((file) => keptOrFetched(new Request(file))));
  };
  event.waitUntil(keep().catch(() => undefined));
});

self.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || url.origin !== self.location.origin) return;
  if (request.mode === "navigate" && FIELD_PAGE.test(url.pathname)) event.respondWith(newestOrKept(request));
  else if (url.pathname.startsWith("/_next/static/")) event.respondWith(keptOrFetched(request));
});
