// A supplier's list while it is looked at: held in memory only, so that a list that is cancelled, or lost with the program, leaves no trace.
import { z } from "zod";
import { type LearnedNames, type LineMatcher, lineMatcher, type MatchedLine, nameKey, namesAuthored } from "../nursery/line-match";
import { COLUMN_ROLES, type ColumnMap, columnsAt } from "../nursery/list-columns";
import { columnsRecalled, type KeptColumns } from "../nursery/list-columns-kept";
import { type ListRead, type ListSheet, listRead } from "../nursery/list-read";
import { database } from "./database";
import { newId } from "./identity";
import { type TaxaHeld, taxaHeld } from "./taxa";
import { LINES_MAX, listFileRead } from "./workbook";

export type ListImport = {
  readonly id: string;
  readonly supplierId: string;
  readonly fileName: string;
  readonly sheets: readonly ListSheet[];
  readonly notes: readonly string[];
  readonly list: ListRead;
  readonly matched: readonly MatchedLine[];
  /** What a person has said a written name means: a taxon, or null for none of the plants. By `nameKey`. */
  readonly choices: Map<string, string | null>;
  /** Columns came from the supplier's last list. */
  readonly recalled: boolean;
  touchedAt: number;
};

/** What is told while a list is read. */
export type ImportProgress =
  | { readonly kind: "read"; readonly lines: number; readonly skipped: number }
  | { readonly kind: "matched"; readonly done: number; readonly of: number }
  | { readonly kind: "ready"; readonly importId: string }
  | { readonly kind: "fault"; readonly message: string };

const LIFE_MS = 2 * 60 * 60 * 1000;
/** Lists held at once; the one longest untouched goes first. */
const HELD_MAX = 6;
/** Matching pauses after so long, so that other requests are answered meanwhile. */
const SLICE_MS = 20;

const memory = globalThis as { twelvemonthImports?: Map<string, ListImport> };
function imports(): Map<string, ListImport> {
  memory.twelvemonthImports ??= new Map();
  const held = memory.twelvemonthImports;
  for (const [id, one] of held) if (Date.now() - one.touchedAt > LIFE_MS) held.delete(id);
  return held;
}

/** An import that is still held; null when it was cancelled, accepted, or has expired. */
export function importFind(id: string): ListImport | null {
  const found = imports().get(id) ?? null;
  if (found) found.touchedAt = Date.now();
  return found;
}

export function importDrop(id: string): void {
  imports().delete(id);
}

function importKeep(one: ListImport): void {
  const held = imports();
  const oldest = [...held.values()].sort((a, b) => a.touchedAt - b.touchedAt);
  for (const { id } of oldest.slice(0, Math.max(0, held.size + 1 - HELD_MAX))) if (id !== one.id) held.delete(id);
  held.set(one.id, one);
}

const keptColumns = z.record(
  z.string(),
  z.object({ hasHeader: z.boolean(), columns: z.array(z.object({ heading: z.string(), role: z.enum(COLUMN_ROLES), from: z.number().nullable() })).max(200) }),
);
/** Columns remembered of a supplier, by sheet; what can no longer be read is not remembered. */
export async function supplierColumns(supplierId: string): Promise<Record<string, KeptColumns>> {
  const record = await database().supplier.findUnique({ where: { id: supplierId }, select: { columnMaps: true } });
  const read = keptColumns.safeParse(record?.columnMaps ?? {});
  return read.success ? read.data : {};
}

/** Names learned from all lists, those of this supplier before the others. */
async function learnedNames(supplierId: string): Promise<LearnedNames> {
  const rows = await database().learnedName.findMany({ where: { supplierId: { in: ["", supplierId] } }, orderBy: { supplierId: "asc" } });
  return new Map(rows.map(({ key, taxonId }) => [key, taxonId]));
}

const pause = (): Promise<void> => new Promise((resolve) => setImmediate(resolve));

/** Lines matched in slices. @returns null when it was stopped */
async function slicesMatched(matcher: LineMatcher, list: ListRead, tell: (progress: ImportProgress) => void, signal: AbortSignal): Promise<MatchedLine[] | null> {
  const matched: MatchedLine[] = [];
  let began = performance.now();
  let told = 0;
  for (const line of list.lines) {
    matched.push(matcher.lineMatch(line));
    if (performance.now() - began < SLICE_MS) continue;
    if (performance.now() - told > 150) {
      told = performance.now();
      tell({ kind: "matched", done: matched.length, of: list.lines.length });
    }
    await pause();
    if (signal.aborted) return null;
    began = performance.now();
  }
  tell({ kind: "matched", done: matched.length, of: list.lines.length });
  return matched;
}

type Matching = {
  readonly supplierId: string;
  readonly fileName: string;
  readonly sheets: readonly ListSheet[];
  readonly notes: readonly string[];
  /** Columns a person has set, by sheet. */
  readonly maps: ReadonlyMap<string, ColumnMap>;
  readonly choices: Map<string, string | null>;
  /** The import that this reading takes the place of; null: a new one. */
  readonly id: string | null;
};

async function listMatched(held: TaxaHeld, matching: Matching, tell: (progress: ImportProgress) => void, signal: AbortSignal): Promise<void> {
  const { supplierId, fileName, sheets, notes, choices, id } = matching;
  const [kept, learned] = await Promise.all([supplierColumns(supplierId), learnedNames(supplierId)]);
  const { isName } = lineMatcher(held.index);
  const maps = new Map(matching.maps);
  let recalled = false;
  for (const sheet of sheets) {
    const remembered = maps.has(sheet.name) ? undefined : kept[sheet.name];
    const map = remembered && columnsRecalled(remembered, sheet.rows, isName);
    if (map) {
      maps.set(sheet.name, map);
      recalled = true;
    }
  }
  const list = listRead(sheets, isName, maps);
  tell({ kind: "read", lines: list.lines.length, skipped: list.skipped.length });
  await pause();
  if (signal.aborted) return;
  if (list.lines.length > LINES_MAX) {
    tell({ kind: "fault", message: `${fileName} has ${list.lines.length.toLocaleString("en-US")} lines; at most 20,000 are matched at once. Split the list.` });
    return;
  }
  const matcher = lineMatcher(held.index, { learned, authored: namesAuthored(list.lines.map(({ name }) => name)) });
  const matched = await slicesMatched(matcher, list, tell, signal);
  if (!matched || signal.aborted) return;
  const own: ListImport = { id: id ?? newId(), supplierId, fileName, sheets, notes, list, matched, choices, recalled, touchedAt: Date.now() };
  importKeep(own);
  tell({ kind: "ready", importId: own.id });
}

/** Reads and matches a file; nothing is written. `tell` hears how far it is; a fault is told too, in words. Stops when the signal says so. */
export async function importStart(supplierId: string, fileName: string, bytes: Uint8Array, tell: (progress: ImportProgress) => void, signal: AbortSignal): Promise<void> {
  const supplier = await database().supplier.findFirst({ where: { id: supplierId, deletedAt: null } });
  if (!supplier) return tell({ kind: "fault", message: "This supplier was deleted. Go back to the suppliers." });
  const file = await listFileRead(bytes, fileName);
  if (file.kind === "fault") return tell(file);
  if (signal.aborted) return;
  const held = await taxaHeld();
  await listMatched(held, { supplierId, fileName, sheets: file.sheets, notes: file.notes, maps: new Map(), choices: new Map(), id: null }, tell, signal);
}

const correction = z.array(
  z.object({
    sheet: z.string().max(200),
    /** Row of the headings, from 0; null: the sheet has none; left out: as it is. */
    headerRow: z.int().min(0).max(10_000).nullable().optional(),
    roles: z.array(z.enum(COLUMN_ROLES)).max(200).optional(),
  }),
);

/** Reads a held list anew with columns or header rows as a person has set them. What was chosen for names stays. */
export async function importAgain(id: string, untrusted: unknown, tell: (progress: ImportProgress) => void, signal: AbortSignal): Promise<void> {
  const one = importFind(id);
  if (!one) return tell({ kind: "fault", message: "This list is no longer held. Choose the file again; nothing was written." });
  const read = correction.safeParse(untrusted);
  if (!read.success) return tell({ kind: "fault", message: "These columns cannot be read. Reload the page." });
  const held = await taxaHeld();
  const { isName } = lineMatcher(held.index);
  const maps = new Map(one.list.maps.map(({ sheet, map }) => [sheet, map]));
  for (const { sheet, headerRow, roles } of read.data) {
    const rows = one.sheets.find(({ name }) => name === sheet)?.rows;
    const map = maps.get(sheet);
    if (!rows || !map) continue;
    const own = headerRow === undefined ? map : columnsAt(rows, headerRow, isName);
    maps.set(sheet, roles ? { ...own, columns: own.columns.map((column, c) => ({ ...column, role: roles[c] ?? column.role })) } : own);
  }
  await listMatched(held, { ...one, maps }, tell, signal);
}

/** What the lines with a written name mean. @param taxonId null: none of the plants @returns false when the list or the plant is no longer there */
export async function importChoose(id: string, written: string, taxonId: string | null): Promise<boolean> {
  const one = importFind(id);
  if (!one || (taxonId !== null && !(await taxaHeld()).byId.has(taxonId))) return false;
  one.choices.set(nameKey(written), taxonId);
  return true;
}

/** Takes a choice back. */
export function importUnchoose(id: string, written: string): boolean {
  return importFind(id)?.choices.delete(nameKey(written)) ?? false;
}

/** The plant a line stands for as things are: chosen by a person, else read as sure; null where nothing is settled. */
export function lineTaxon(one: ListImport, line: MatchedLine): string | null {
  const chosen = one.choices.get(nameKey(line.written));
  return chosen !== undefined ? chosen : line.reading.sure ? line.reading.taxonId : null;
}
