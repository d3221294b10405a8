"use client";

import Link from "next/link";
import { useState } from "react";
import type { UnmatchedName } from "@/lib/server/unmatched-lines";
import { unmatchedDropAction, unmatchedResolveAction } from "../actions";
import { PlantSearch } from "../plant-search";

const number = (count: number): string => count.toLocaleString("en-US");
const SHOWN = 50;

/** Lines of the last list that matched no plant: each can become a plant of one's own, be said to be one there is, or be let go. */
export function Unmatched({ supplierId, names }: { supplierId: string; names: readonly UnmatchedName[] }) {
  const [asked, setAsked] = useState<string | null>(null);
  const [words, setWords] = useState("");
  const [shown, setShown] = useState(SHOWN);
  if (!names.length && !words) return null;
  const resolve = async ({ key, written }: UnmatchedName, taxonId: string, name: string) => {
    const made = await unmatchedResolveAction(supplierId, key, taxonId).catch(() => undefined);
    setAsked(null);
    setWords(
      made === undefined
        ? "The program did not answer. Try again."
        : made === null
          ? "That plant was deleted meanwhile. Choose another."
          : `“${written}” is ${name}: ${made} ${made === 1 ? "lot" : "lots"} added, and the name is known from now on.`,
    );
  };
  return (
    <section aria-labelledby="unmatched">
      <h2 id="unmatched">Lines without a plant</h2>
      <p className="small soft">
        {names.length ? "Of the last list, these names matched no plant. Nothing can be promised from them until they are one." : "All names of the last list are plants now."}
      </p>
      <p role="status" className="small">
        {words}
      </p>
      <ul className="unmatched">
        {names.slice(0, shown).map((name) => (
          <li key={name.key}>
            <div className="spread">
              <span>
                <b>{name.written}</b>{" "}
                <span className="small soft">
                  {name.lines} {name.lines === 1 ? "line" : "lines"}, {number(name.plants)} plants{name.sizes.length ? `, ${name.sizes.join(", ")}` : ""}
                </span>
              </span>
              <span className="row">
                <button
                  type="button"
                  className="plain"
                  aria-expanded={asked === name.key}
                  onClick={() => setAsked(asked === name.key ? null : name.key)}
                  aria-label={`${name.written} is …`}
                >
                  This is …
                </button>
                <Link
                  href={`/plants/new?${new URLSearchParams({ like: "none", written: name.written, supplier: supplierId, line: name.key })}`}
                  aria-label={`Make ${name.written} a plant of your own`}
                >
                  Plant of your own
                </Link>
                <button type="button" className="plain" onClick={() => unmatchedDropAction(supplierId, name.key)} aria-label={`Let ${name.written} go`}>
                  Let go
                </button>
              </span>
            </div>
            {asked === name.key ? <PlantSearch label={`What is “${name.written}”? Type any name`} take={(hit, text) => resolve(name, hit, text)} /> : null}
          </li>
        ))}
      </ul>
      {names.length > shown ? (
        <button type="button" onClick={() => setShown(shown + SHOWN)}>
          More of {number(names.length)} names
        </button>
      ) : null}
    </section>
  );
}
