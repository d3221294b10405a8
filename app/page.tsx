import type { Metadata } from "next";
import { placeLabel } from "@/lib/place/place";
import { zipState } from "@/lib/place/zip-state";
import { jobList } from "@/lib/server/jobs";
import { JobForm } from "./parts/job-form";
import { JobList } from "./parts/job-list";

export const metadata: Metadata = { title: "Jobs" };
export const dynamic = "force-dynamic";

export default async function JobsPage() {
  const jobs = await jobList();
  const cards = jobs.map((job) => ({
    id: job.id,
    name: job.name,
    client: job.client,
    place: placeLabel({
      zip: job.placeKey.zip ?? null,
      town: job.placeKey.town ?? "",
      state: job.placeKey.state ?? (job.placeKey.zip ? zipState(job.placeKey.zip) : null),
      lat: job.placeKey.lat ?? null,
      lon: job.placeKey.lon ?? null,
    }),
    beds: job.bedCount,
    changed: new Date(job.updatedAt).toLocaleDateString("en-US", { month: "short", day: "numeric", year: "numeric" }),
    archived: job.archived,
    demo: job.demo,
  }));
  return (
    <main id="main" className="sheet">
      <div className="sheet-head">
        <h1>Jobs</h1>
      </div>
      <div className="split jobs-split">
        <section aria-label="Jobs">
          <JobList jobs={cards} />
        </section>
        <section aria-labelledby="new-job">
          <h2 id="new-job">New job</h2>
          <p className="soft">A job is one client's site. Its ZIP code gives the hardiness zone, the freeze dates and the warmth that every bed's year is reckoned from.</p>
          <JobForm />
        </section>
      </div>
    </main>
  );
}
