import Link from "next/link";
import type { PlantUse } from "@/lib/server/plant-use";

/** The beds that hold it. */
export function UsedIn({ uses }: { uses: readonly PlantUse[] }) {
  return (
    <section aria-labelledby="used-title">
      <h2 id="used-title">Used in</h2>
      {uses.length ? (
        <ul className="plain-list">
          {uses.map((use) => (
            <li key={use.bedId}>
              <Link href={`/jobs/${use.jobId}/beds/${use.bedId}`}>{use.bed}</Link>
              <span className="soft">
                {" "}
                · <Link href={`/jobs/${use.jobId}`}>{use.job}</Link>
                {use.existing ? " · stands there already" : ""}
                {use.archived ? " · archived" : ""}
              </span>
            </li>
          ))}
        </ul>
      ) : (
        <p className="soft">In no bed yet. Open a bed and type its name to add it.</p>
      )}
    </section>
  );
}
