// An outline as a file has it, before units and checks: edges in the file's own numbers, y upward.
import { OPEN } from "./border";
import { type CurveShape, STRAIGHT } from "./curve";
import type { Point } from "./outline";
import type { PlanEdge } from "./plan-outline";

/** What is wrong with a file: the line (from 1) and the field where that is known, and words for the person who sent it. */
export type ImportFault = { readonly line: number | null; readonly field: string; readonly words: string };

/** name: layer, id or place in the file; line: where it begins. */
export type OutlineDraft = { readonly name: string; readonly line: number | null; readonly edges: readonly PlanEdge[] };
export type DraftResult = { readonly ok: true; readonly drafts: readonly OutlineDraft[]; readonly unitSaid: string | null } | { readonly ok: false; readonly fault: ImportFault };

export function faultAt(line: number | null, field: string, words: string): { readonly ok: false; readonly fault: ImportFault } {
  return { ok: false, fault: { line, field, words } };
}

export function draftEdge(from: Point, shape: CurveShape = STRAIGHT): PlanEdge {
  return { from, shape, border: OPEN };
}

/** The line (from 1) of a place in a text. */
export function lineAt(text: string, index: number): number {
  let line = 1;
  for (let i = text.indexOf("\n"); i >= 0 && i < index; i = text.indexOf("\n", i + 1)) line++;
  return line;
}
