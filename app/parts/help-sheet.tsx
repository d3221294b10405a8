"use client";

import { useEffect, useRef } from "react";

const KEYS: readonly (readonly [keys: string, does: string])[] = [
  ["?", "This sheet"],
  ["/", "Jump to the plant search"],
  ["Ctrl + Z", "Undo (⌘ Z on a Mac)"],
  ["Ctrl + Shift + Z", "Redo"],
  ["Enter", "Keep what you typed in a field"],
  ["Esc", "Leave a field as it was; close a panel"],
  ["Alt + ↑ or ↓", "On a plant's letter: move the plant up or down"],
  ["Delete", "On a plant's letter: take the plant out (undo brings it back)"],
];

const isTyping = (target: EventTarget | null) => target instanceof HTMLElement && target.matches("input, textarea, select, [contenteditable]");

/** The keys, on ? and from the masthead. */
export function HelpSheet() {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key === "?" && !isTyping(event.target)) {
        event.preventDefault();
        dialog.current?.showModal();
      }
    };
    window.addEventListener("keydown", onKey);
    return () => window.removeEventListener("keydown", onKey);
  }, []);
  return (
    <>
      <button type="button" className="plain screen-only" onClick={() => dialog.current?.showModal()}>
        Keys
      </button>
      <dialog ref={dialog} aria-labelledby="help-title">
        <div className="spread">
          <h2 id="help-title">Keys</h2>
          <button type="button" onClick={() => dialog.current?.close()}>
            Close
          </button>
        </div>
        <table>
          <tbody>
            {KEYS.map(([keys, does]) => (
              <tr key={keys}>
                <th scope="row">
                  <kbd>{keys}</kbd>
                </th>
                <td>{does}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p className="soft small">
          Lengths are read as the trade writes them: 18 in, 2 ft 6 in, 2'6", 4½ ft, 45 cm. Sizes at planting likewise: #3, 2 in cal B&amp;B, 5-6 ft, plug.
        </p>
      </dialog>
    </>
  );
}
