import type { StockAnswer } from "@/lib/server/job-stock-write";

/** What came of a press; the region is always there, so that it is read out. */
export function StockAnswerLine({ answer }: { answer: StockAnswer | null }) {
  const bad = answer !== null && answer.kind !== "done";
  return (
    <div role={bad ? "alert" : "status"} className="stock-answer">
      {answer ? <p className={bad ? "notice alert" : "notice"}>{answer.message}</p> : null}
    </div>
  );
}
