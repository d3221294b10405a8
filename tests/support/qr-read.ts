// Reads a QR code with a library that is not the one that wrote it, from rectangles or from pixels.
import jsQR from "jsqr";

/** Pixels a module, and white modules around. */
const SCALE = 4;
const QUIET = 4;

type Box = { readonly x: number; readonly y: number; readonly width: number; readonly height: number };

/** The text of a code drawn with unit squares; null where none can be read. */
export function qrRead(boxes: readonly Box[]): string | null {
  const side = (Math.max(...boxes.map(({ x, width }) => x + width)) + QUIET * 2) * SCALE;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const { x, y, width, height } of boxes)
    for (let row = (y + QUIET) * SCALE; row < (y + height + QUIET) * SCALE; row++)
      for (let column = (x + QUIET) * SCALE; column < (x + width + QUIET) * SCALE; column++) pixels.fill(0, (row * side + column) * 4, (row * side + column) * 4 + 3);
  return jsQR(pixels, side, side)?.data ?? null;
}

/** The codes on a page of a PDF: black paths of rectangles, each by itself. */
export function pdfCodes(drawing: string): (string | null)[] {
  return [...drawing.matchAll(/\n0 0 0 scn\n((?:[\d.-]+ [\d.-]+ [ml]\n|h\n)+)f/g)].map(([, path]) =>
    qrRead(
      [...(path ?? "").matchAll(/([\d.]+) ([\d.]+) m\n([\d.]+) [\d.]+ l\n[\d.]+ ([\d.]+) l\n/g)].map(([, x, y, right, bottom]) => ({
        x: Number(x),
        y: Number(y),
        width: Number(right) - Number(x),
        height: Number(bottom) - Number(y),
      })),
    ),
  );
}
