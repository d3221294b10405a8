"use client";

/** Says what was just deleted, with the way back; stays until it is closed or used. */
export function UndoToast({ words, undo, close }: { words: string; undo: () => void; close: () => void }) {
  return (
    <div className="toast" role="status">
      <span>{words}</span>
      <button type="button" onClick={undo}>
        Undo
      </button>
      <button type="button" onClick={close} aria-label="Close">
        ×
      </button>
    </div>
  );
}
