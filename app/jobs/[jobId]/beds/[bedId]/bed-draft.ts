// The bed being worked on: a pure reducer with history. Commands are data; the screen only sends them.
import type { Bed, BedRow, BedSite, BedSize } from "@/lib/ground/bed";
import { drawingKept } from "@/lib/ground/bed-drawing";
import { type DrawingCommand, isDrawingCommand, placesChanged } from "./drawing-command";

export type BedCommand =
  | { readonly type: "rename"; readonly name: string }
  | { readonly type: "notes"; readonly notes: string }
  | { readonly type: "size"; readonly size: BedSize }
  | { readonly type: "site"; readonly site: Partial<BedSite> }
  | { readonly type: "add"; readonly rows: readonly BedRow[] }
  | { readonly type: "remove"; readonly rowId: string }
  | { readonly type: "change"; readonly rowId: string; readonly change: Partial<Omit<BedRow, "id">> }
  | { readonly type: "move"; readonly rowId: string; readonly to: number }
  | { readonly type: "replace"; readonly bed: Bed }
  | DrawingCommand;

export type BedDraft = { readonly past: readonly Bed[]; readonly present: Bed; readonly future: readonly Bed[] };

export type DraftEvent = BedCommand | { readonly type: "undo" } | { readonly type: "redo" };

const HISTORY = 200;

export const draftOf = (bed: Bed): BedDraft => ({ past: [], present: bed, future: [] });

function rowsMoved(rows: readonly BedRow[], rowId: string, to: number): readonly BedRow[] {
  const from = rows.findIndex((row) => row.id === rowId);
  const target = Math.max(0, Math.min(rows.length - 1, to));
  const row = rows[from];
  if (!row || from === target) return rows;
  const rest = rows.filter((r) => r.id !== rowId);
  return [...rest.slice(0, target), row, ...rest.slice(target)];
}

/** A bed with some of its rows, and of its drawing what belongs to them. */
function rowsKept(bed: Bed, keeps: (row: BedRow) => boolean): Bed {
  const rows = bed.rows.filter(keeps);
  return { ...bed, rows, drawing: drawingKept(bed.drawing ?? null, new Set(rows.map((row) => row.id))) };
}

/** A bed after a command; the same object when nothing changes. */
export function bedChanged(bed: Bed, command: BedCommand): Bed {
  if (isDrawingCommand(command)) return placesChanged(bed, command);
  switch (command.type) {
    case "rename":
      return command.name === bed.name ? bed : { ...bed, name: command.name };
    case "notes":
      return command.notes === bed.notes ? bed : { ...bed, notes: command.notes };
    case "size":
      return { ...bed, size: command.size };
    case "site":
      return { ...bed, site: { ...bed.site, ...command.site } };
    case "add":
      return command.rows.length ? { ...bed, rows: [...bed.rows, ...command.rows] } : bed;
    case "remove":
      return bed.rows.some((row) => row.id === command.rowId) ? rowsKept(bed, (row) => row.id !== command.rowId) : bed;
    case "change":
      return { ...bed, rows: bed.rows.map((row) => (row.id === command.rowId ? { ...row, ...command.change } : row)) };
    case "move": {
      const rows = rowsMoved(bed.rows, command.rowId, command.to);
      return rows === bed.rows ? bed : { ...bed, rows };
    }
    case "replace":
      return command.bed;
  }
}

/** The draft after an event. Undo and redo walk the history; a new command ends the redo line. */
export function draftNext(draft: BedDraft, event: DraftEvent): BedDraft {
  switch (event.type) {
    case "undo": {
      const before = draft.past.at(-1);
      return before ? { past: draft.past.slice(0, -1), present: before, future: [draft.present, ...draft.future] } : draft;
    }
    case "redo": {
      const [after, ...future] = draft.future;
      return after ? { past: [...draft.past, draft.present], present: after, future } : draft;
    }
    default: {
      const present = bedChanged(draft.present, event);
      return present === draft.present ? draft : { past: [...draft.past, draft.present].slice(-HISTORY), present, future: [] };
    }
  }
}
