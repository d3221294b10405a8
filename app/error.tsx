"use client";

export default function ErrorPage({ reset }: { error: Error; reset: () => void }) {
  return (
    <main id="main" className="sheet">
      <h1>Something went wrong</h1>
      <p>The page could not be shown. What was saved is safe; edits not yet saved are kept in this browser.</p>
      <button type="button" onClick={reset}>
        Try again
      </button>
    </main>
  );
}
