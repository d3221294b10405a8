"use client";

import { type KeyboardEvent, useCallback, useEffect, useRef, useState } from "react";
import type { ImportShown, NameGroup, NamePage, NameShown, PlantShown } from "@/lib/server/list-import-view";
import { importChooseAction } from "../../actions";
import { NameRow } from "./name-row";

const number = (count: number): string => count.toLocaleString("en-US");
const GROUPS: readonly (readonly [NameGroup, string, string])[] = [
  ["confirm", "To confirm", "Press the plant that is meant. On a line: ↑ ↓ go on, 1 2 3 choose, 0 for none of these."],
  ["none", "No plant found", "Search for the plant by another name, or leave the line: it is kept and can become a plant of your own."],
  ["sure", "Sure", "Spot-check some. What is wrong can be set right here too."],
];

function Group({
  importId,
  group,
  label,
  help,
  total,
  changed,
  startOpen,
}: {
  importId: string;
  group: NameGroup;
  label: string;
  help: string;
  total: { names: number; lines: number; decided: number };
  changed: () => void;
  startOpen: boolean;
}) {
  const [open, setOpen] = useState(startOpen);
  const [page, setPage] = useState(1);
  const [find, setFind] = useState("");
  const [held, setHeld] = useState<NamePage | null>(null);
  const [words, setWords] = useState("");
  const list = useRef<HTMLUListElement>(null);
  const load = useCallback(async () => {
    const query = new URLSearchParams({ part: "names", group, page: String(page), find });
    const response = await fetch(`/api/list-import/${importId}?${query}`).catch(() => null);
    if (response?.ok) setHeld((await response.json()) as NamePage);
    else setWords("The list did not answer. If it stays so, choose the file again; nothing was written.");
  }, [importId, group, page, find]);
  useEffect(() => {
    if (open) void load();
  }, [open, load]);
  const choose = async (name: NameShown, plant: PlantShown | null | undefined) => {
    setHeld((now) => now && { ...now, names: now.names.map((one) => (one.written === name.written ? { ...one, chosen: plant } : one)) });
    const taken = await importChooseAction(importId, name.written, plant === undefined ? undefined : (plant?.id ?? null)).catch(() => false);
    setWords(taken ? "" : "This choice was not taken. If it stays so, choose the file again; nothing was written.");
    changed();
  };
  const onKey = (event: KeyboardEvent<HTMLUListElement>) => {
    if (event.target instanceof HTMLInputElement) return;
    const rows = [...(list.current?.querySelectorAll<HTMLElement>("[data-name-row]") ?? [])];
    const at = rows.findIndex((row) => row.contains(document.activeElement));
    const name = held?.names[at];
    const goTo = (i: number) => rows[Math.min(rows.length - 1, Math.max(0, i))]?.querySelector<HTMLElement>("button")?.focus();
    if (event.key === "ArrowDown" || event.key === "ArrowUp") {
      event.preventDefault();
      goTo(at + (event.key === "ArrowDown" ? 1 : -1));
    } else if (name && /^[0-3]$/.test(event.key) && !event.ctrlKey && !event.metaKey && !event.altKey) {
      const plant = event.key === "0" ? null : name.candidates[Number(event.key) - 1];
      if (plant === undefined) return;
      event.preventDefault();
      void choose(name, plant);
      goTo(at + 1);
    }
  };
  return (
    <details open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <h3>
          {label}: {number(total.names)} {total.names === 1 ? "name" : "names"}, {number(total.lines)} {total.lines === 1 ? "line" : "lines"}
          {total.decided ? `; ${number(total.decided)} settled` : ""}
        </h3>
      </summary>
      <div className="spread screen-only">
        <p className="small soft">{help}</p>
        <label className="row small">
          Find{" "}
          <input
            type="search"
            value={find}
            maxLength={100}
            aria-label={`Find a name: ${label}`}
            onChange={(event) => {
              setFind(event.target.value);
              setPage(1);
            }}
          />
        </label>
      </div>
      <p role="status" className="small">
        {words}
      </p>
      {/* The keys work on the line that has the focus. */}
      <ul ref={list} className="names" onKeyDown={onKey}>
        {held?.names.map((name) => (
          <NameRow key={name.written} name={name} group={group} choose={(plant) => choose(name, plant)} />
        ))}
      </ul>
      {held && held.pages > 1 ? (
        <nav aria-label={`Pages: ${label}`} className="row small screen-only">
          <button type="button" className="button" disabled={held.page <= 1} onClick={() => setPage(held.page - 1)}>
            Earlier
          </button>
          <span>
            Page {number(held.page)} of {number(held.pages)}
          </span>
          <button type="button" className="button" disabled={held.page >= held.pages} onClick={() => setPage(held.page + 1)}>
            More
          </button>
        </nav>
      ) : null}
    </details>
  );
}

/** The names of the list in three groups: to confirm, without a plant, and sure. */
export function NameSection({ shown, changed }: { shown: ImportShown; changed: () => void }) {
  return (
    <section aria-labelledby="names">
      <h2 id="names">Names</h2>
      {GROUPS.map(([group, label, help]) =>
        shown.groups[group].names ? (
          <Group key={group} importId={shown.id} group={group} label={label} help={help} total={shown.groups[group]} changed={changed} startOpen={group !== "sure"} />
        ) : null,
      )}
    </section>
  );
}
