"use client";

import { useState, useTransition } from "react";
import { lotDeleteAction, lotRestoreAction } from "../../actions";

const UNREACHED = "Nothing was changed: the program does not answer. Try again when it does.";

function Act({ label, plain = false, work }: { label: string; plain?: boolean; work: () => Promise<string | null> }) {
  const [busy, start] = useTransition();
  const [words, setWords] = useState<string | null>(null);
  const run = () =>
    start(async () => {
      try {
        setWords(await work());
      } catch {
        setWords(UNREACHED);
      }
    });
  return (
    <div className="screen-only">
      <button type="button" className={plain ? "plain small" : undefined} disabled={busy} onClick={run}>
        {label}
      </button>
      {words ? (
        <p role="alert" className="alert small">
          {words}
        </p>
      ) : null}
    </div>
  );
}

/** Deletes the lot; its page then offers the way back. */
export function LotDelete({ id }: { id: string }) {
  return <Act label="Delete this lot" plain work={() => lotDeleteAction(id)} />;
}

export function LotRestore({ id }: { id: string }) {
  return (
    <Act
      label="Bring it back"
      work={async () => {
        await lotRestoreAction(id);
        return null;
      }}
    />
  );
}
