"use client";

import { useId, useState } from "react";
import type { Finding, Remedy, Severity } from "@/lib/findings/finding";
import { SEVERITIES } from "@/lib/findings/finding";

const WORDS: Record<Severity, string> = { fix: "to fix", consider: "to consider", note: "note" };

/** Round mark of a severity: filled for what must be fixed, a ring with its sign else. */
export function SeverityDot({ severity }: { severity: Severity }) {
  const color = severity === "note" ? "var(--soft)" : "var(--alert)";
  return (
    <svg width="17" height="17" viewBox="0 0 17 17" aria-hidden="true" className="dot">
      <circle cx="8.5" cy="8.5" r="7.3" fill={severity === "fix" ? color : "none"} stroke={color} strokeWidth="1.5" />
      {severity === "note" ? (
        <path d="M8.5 7.5V12.5M8.5 4.3V6" stroke={color} strokeWidth="1.7" />
      ) : (
        <path d="M8.5 4V9.5M8.5 11.3V13" stroke={severity === "fix" ? "var(--paper)" : color} strokeWidth="1.8" />
      )}
    </svg>
  );
}

/** In the margin of a row: the worst severity; the sentences on hover and focus (by style), and on tap. */
export function FindingMark({ findings, apply }: { findings: readonly Finding[]; apply: (remedy: Remedy) => void }) {
  const id = useId();
  const [open, setOpen] = useState(false);
  const worst = SEVERITIES.find((s) => findings.some((f) => f.severity === s));
  if (!worst) return null;
  return (
    <span className={open ? "finding-mark open" : "finding-mark"}>
      <button
        type="button"
        className="mark-button"
        aria-expanded={open}
        aria-controls={id}
        aria-label={`${findings.length} ${findings.length === 1 ? "finding" : "findings"}, worst ${WORDS[worst]}`}
        onClick={() => setOpen(!open)}
        onBlur={() => setOpen(false)}
        onKeyDown={(event) => event.key === "Escape" && setOpen(false)}
      >
        <SeverityDot severity={worst} />
      </button>
      <span id={id} className="finding-card">
        {findings.map((f) => (
          <span key={f.check + f.message} className="finding-line">
            <SeverityDot severity={f.severity} />
            <span>
              <span className="visually-hidden">{WORDS[f.severity]}: </span>
              {f.message} <RemedyButton remedy={f.remedy} apply={apply} />
            </span>
          </span>
        ))}
      </span>
    </span>
  );
}

/** What one press does about a finding. */
export function RemedyButton({ remedy, apply }: { remedy: Remedy | null; apply: (remedy: Remedy) => void }) {
  if (!remedy) return null;
  return (
    <button type="button" className="plain" onClick={() => apply(remedy)}>
      {remedy.label}
    </button>
  );
}
