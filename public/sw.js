// Keeps the pull list of the field and the count of the nursery working without a signal: the page and the program's own files, as last seen. Changes are kept by
// the pages themselves.
const PAGES = "twelvemonth-pages-1";
const FILES = "twelvemonth-files-1";
const KEPT_PAGE = /^(\/jobs\/[^/]+\/pull\/field|\/nursery\/count)$/;

self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => {
  const kept = new Set([PAGES, FILES]);
  event.waitUntil(caches.keys().then((names) => Promise.all(names.filter((name) => name.startsWith("twelvemonth-") && !kept.has(name)).map((name) => caches.delete(name)))).then(() => self.clients.claim()));
});

/** The newest from the server, kept; without a signal the last one seen. */
async function newestOrKept(request) {
  const cache = await caches.open(PAGES);
  const { pathname, search } = new URL(request.url);
  try {
    const response = await fetch(request);
    if (response.ok) await cache.put(pathname + search, response.clone());
    return response;
  } catch {
    // Another choice of lots than was kept: rather those than none.
    const kept = (await cache.match(pathname + search)) ?? (await cache.match(pathname, { ignoreSearch: true }));
    return kept ?? new Response("This page was never opened on this phone while there was a signal.", { status: 503, headers: { "content-type": "text/plain" } });
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
  if (typeof page !== "string" || !KEPT_PAGE.test(page.split("?")[0]) || !Array.isArray(files)) return;
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
  if (request.mode === "navigate" && KEPT_PAGE.test(url.pathname)) event.respondWith(newestOrKept(request));
  else if (url.pathname.startsWith("/_next/static/")) event.respondWith(keptOrFetched(request));
});
