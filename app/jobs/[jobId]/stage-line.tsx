import { JOB_STAGES, STAGE_WORDS, stageIndex, stageNow, stageOffers, stagesReached } from "@/lib/pulls/job-stage";
import { jobStageView } from "@/lib/server/job-stages";
import { StageDate } from "./stage-date";
import { StageSteps } from "./stage-steps";
import "./stage-line.css";

/** The stages of a job on one thin line, with their days and who said so, and (unless `steps` is false) the buttons for the next one. */
export async function StageLine({ jobId, steps = true }: { jobId: string; steps?: boolean }) {
  const view = await jobStageView(jobId);
  if (!view) return null;
  const { rows, plants, today } = view;
  const now = stageNow(rows);
  const reached = stagesReached(rows);
  const latest = rows.at(-1);
  return (
    <section className="stages" aria-label="Stages of the job">
      <ol className="stage-line">
        {JOB_STAGES.map((stage) => {
          const row = reached.get(stage);
          const isPast = stageIndex(stage) <= stageIndex(now);
          return (
            <li key={stage} className={isPast ? "reached" : undefined} aria-current={stage === now ? "step" : undefined}>
              <span className="stage-name">{STAGE_WORDS[stage].name}</span>
              {row ? <StageDate jobId={jobId} rowId={row.id} name={STAGE_WORDS[stage].name} on={row.on} who={row.who} today={today} /> : null}
              {!row && isPast && stage !== "design" ? <span className="soft small">not dated</span> : null}
            </li>
          );
        })}
      </ol>
      {steps ? (
        <StageSteps
          jobId={jobId}
          today={today}
          offers={stageOffers(now, plants)}
          back={JOB_STAGES.slice(0, stageIndex(now))}
          wanted={plants.wanted}
          promised={plants.promised}
          pulled={plants.pulled}
          lastNote={latest?.note ? `Went back${latest.who ? `, ${latest.who}` : ""}: ${latest.note}` : ""}
        />
      ) : null}
    </section>
  );
}
