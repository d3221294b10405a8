// Sheets of paper that the firm's printer may hold.
import { z } from "zod";

export const PAPER_SIZES = ["letter", "a4"] as const;
export type PaperSize = (typeof PAPER_SIZES)[number];

/** Width and height upright, in points (72 an inch): 8½ × 11 in, and 210 × 297 mm (ISO 216). */
export const SHEET_PT = { letter: [612, 792], a4: [595.28, 841.89] } as const satisfies Record<PaperSize, readonly [number, number]>;

/** Reads a size from an address; anything else is Letter. */
export function paperSizeRead(text: string | null): PaperSize {
  return z.enum(PAPER_SIZES).catch("letter").parse(text);
}
