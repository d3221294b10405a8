import { SeverityDot } from "@/app/jobs/[jobId]/beds/[bedId]/finding-mark";
import type { Caution } from "@/lib/papers/plant-cautions";
import { SourceMark } from "./source-mark";

/** What to be told before planting it. */
export function Cautions({ cautions, sources }: { cautions: readonly Caution[]; sources: Readonly<Record<string, string>> }) {
  return (
    <section aria-labelledby="cautions-title">
      <h2 id="cautions-title">Cautions</h2>
      {cautions.length ? (
        <ul className="findings">
          {cautions.map((caution) => (
            <li key={caution.title + caution.words}>
              <SeverityDot severity={caution.weight === "grave" ? "consider" : "note"} />
              <span>
                <SourceMark source={sources[caution.source] ?? ""}>
                  <b>{caution.title}</b>
                </SourceMark>
                . {caution.words}
              </span>
            </li>
          ))}
        </ul>
      ) : (
        <p className="soft">None on record. That is no proof of there being none: ask the state's lists before you sell or plant it.</p>
      )}
    </section>
  );
}
