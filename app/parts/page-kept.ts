// Makes the phone keep this page and the files it runs on, so that it opens without a signal.

/** Registers the service worker and tells it what this page was made of. Does nothing where the browser has none (plain http to another machine). */
export async function pageKept(): Promise<void> {
  if (!("serviceWorker" in navigator)) return;
  try {
    await navigator.serviceWorker.register("/sw.js");
    const { active } = await navigator.serviceWorker.ready;
    const files = performance
      .getEntriesByType("resource")
      .map(({ name }) => new URL(name))
      .filter(({ origin, pathname }) => origin === location.origin && pathname.startsWith("/_next/static/"))
      .map(({ pathname, search }) => pathname + search);
    active?.postMessage({ page: location.pathname + location.search, files });
  } catch {
    // Without it the page still works while it is open; only opening it anew needs a signal.
  }
}
