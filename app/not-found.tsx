import Link from "next/link";

export default function NotFound() {
  return (
    <main id="main" className="sheet">
      <h1>Not here</h1>
      <p>This job, bed or plant is not there: it may have been deleted in another window. A deleted job or bed can be brought back with Undo right after.</p>
      <p>
        <Link href="/">To the jobs</Link>
      </p>
    </main>
  );
}
