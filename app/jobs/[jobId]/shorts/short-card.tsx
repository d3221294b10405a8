"use client";

import Link from "next/link";
import { useState, useTransition } from "react";
import { BotanicalText } from "@/app/parts/botanical-text";
import type { ShortLine, ShortOffer } from "@/lib/server/job-shorts";
import { substituteAcceptAction } from "./actions";

const percent = (share: number) => `${Math.round(share * 100)} %`;
const points = (score: number) => Math.round(score * 100);

function stockWords({ ownFree, supplierFree }: ShortOffer): string {
  if (ownFree) return `${ownFree} free in the nursery${supplierFree ? `, ${supplierFree} on suppliers' lists` : ""}`;
  return supplierFree ? `${supplierFree} on suppliers' lists` : "not in stock: to be found";
}

/** One line that is short: what the bed loses, and what could stand there instead. */
export function ShortCard({ jobId, short }: { jobId: string; short: ShortLine }) {
  const { line, missing, progress, scoreNow, scoreWithout, bareWithout, offers } = short;
  const [busy, start] = useTransition();
  const [words, setWords] = useState<{ readonly text: string; readonly alert: boolean } | null>(null);
  const accept = (offer: ShortOffer) =>
    start(async () => {
      try {
        const answer = await substituteAcceptAction({ jobId, lineId: line.lineId, taxonId: offer.taxon.id, quantity: missing });
        setWords(
          answer.kind === "done"
            ? { text: `Done. The bed's year score is ${points(answer.score)}.${answer.newlyBare.length ? ` Now bare: ${answer.newlyBare.join(", ")}.` : ""}`, alert: false }
            : { text: answer.message, alert: true },
        );
      } catch {
        setWords({ text: "Nothing was changed: the program does not answer. Try again when it does.", alert: true });
      }
    });
  const parts = [
    progress.short ? `${progress.short} not to be found` : "",
    progress.damaged ? `${progress.damaged} damaged` : "",
    progress.swapped ? `${progress.swapped} swapped by the crew` : "",
  ];
  return (
    <section className="short-card" aria-label={`${missing} ${line.taxon.name}`}>
      <h2>
        {missing} <BotanicalText taxon={line.taxon} /> <span className="soft">{line.sizeText}</span>
      </h2>
      <p>
        <Link href={`/jobs/${jobId}/beds/${line.bedId}`}>
          {line.letter} in {line.bedName}
        </Link>
        : {parts.filter(Boolean).join(", ")}. Without {missing === 1 ? "it" : "them"} the bed's year score falls from {points(scoreNow)} to {points(scoreWithout)}
        {bareWithout.length ? `, and ${bareWithout.join(", ")} would be bare` : ""}.
      </p>
      {progress.notes.length ? <p className="small">From the field: {progress.notes.join("; ")}.</p> : null}
      {progress.photos.length ? (
        <p className="short-photos">
          {progress.photos.map((address, i) => (
            <a key={address} href={address}>
              <img src={address} alt={`Taken in the field, ${i + 1} of ${progress.photos.length}`} loading="lazy" />
            </a>
          ))}
        </p>
      ) : null}
      {words ? (
        <p role={words.alert ? "alert" : "status"} className={words.alert ? "alert" : ""}>
          {words.text}
        </p>
      ) : null}
      {offers.length === 0 ? <p>No plant of the dataset suits this place and bed as a substitute. Take the line out of the bed, or wait for the plant.</p> : null}
      <ol className="short-offers">
        {offers.map((offer) => (
          <li key={offer.taxon.id}>
            <span>
              <BotanicalText taxon={offer.taxon} /> <span className="common">{offer.taxon.commonNames[0]}</span>
              {progress.swappedTo === offer.taxon.id ? <b> the crew pulled this</b> : null}
              <span className="common second-line">
                keeps {percent(offer.substitute.seasonShare)} of its season
                {offer.substitute.missing.length ? ` (misses ${offer.substitute.missing.slice(0, 4).join(", ")}${offer.substitute.missing.length > 4 ? " …" : ""})` : ""}, size{" "}
                {percent(offer.substitute.sizeLikeness)} alike, look {percent(offer.substitute.lookLikeness)}; {stockWords(offer)}
              </span>
            </span>
            <span className="short-score">
              year score <b>{points(offer.score)}</b>
              {offer.newlyBare.length ? <span className="alert small"> bare: {offer.newlyBare.join(", ")}</span> : null}
            </span>
            <button type="button" disabled={busy} onClick={() => accept(offer)}>
              Put {missing} in
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
