import type { ReactNode } from "react";
import { type LotEvent, lotEventText } from "@/lib/nursery/lot-event";
import { MomentText } from "./lot-dates";

/** What was done, the newest first: when, who, what and why. @param about what an event was done to, where a list is of several lots */
export function LotHistory<T extends LotEvent>({ events, about }: { events: readonly T[]; about?: (event: T) => ReactNode }) {
  return (
    <ol className="history small">
      {events.map((event) => (
        <li key={event.id}>
          <span>
            <MomentText at={event.at} />
            {event.who ? `, ${event.who}` : ""}
          </span>
          <span>
            {about ? <>{about(event)} </> : null}
            {lotEventText(event)}
            {event.why ? <span className="why"> ({event.why})</span> : null}
          </span>
        </li>
      ))}
    </ol>
  );
}
