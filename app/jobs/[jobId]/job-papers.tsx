import Link from "next/link";

const PAPERS = [
  ["schedule", "Planting schedule"],
  ["stock", "Plants for this job"],
  ["stock/purchase", "Purchase list"],
  ["pull", "Pull list"],
  ["pull/field", "On the phone"],
  ["shorts", "Short on the pull"],
  ["loads", "Loads"],
  ["tags", "Tags"],
] as const;

/** The job's lists, from design to truck. */
export function JobPapers({ jobId }: { jobId: string }) {
  return (
    <nav aria-label="Lists of this job" className="job-papers row small">
      {PAPERS.map(([path, words]) => (
        <Link key={path} href={`/jobs/${jobId}/${path}`}>
          {words}
        </Link>
      ))}
    </nav>
  );
}
