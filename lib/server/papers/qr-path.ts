// A QR code (ISO/IEC 18004) as one path, one unit a module, without the quiet zone.
import QRCode from "qrcode";

export type QrPath = { readonly size: number; readonly d: string };

/** Modules of white that a reader wants around the code. */
export const QUIET_MODULES = 4;

/** The code of a text; a seventh of it may be soiled (level M). Dark runs of a row are one rectangle each. */
export function qrPath(text: string): QrPath {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: "M" });
  const { size } = modules;
  const parts: string[] = [];
  for (let y = 0; y < size; y++) {
    let begin = -1;
    for (let x = 0; x <= size; x++) {
      const dark = x < size && Boolean(modules.get(y, x));
      if (dark && begin < 0) begin = x;
      if (!dark && begin >= 0) {
        parts.push(`M${begin} ${y}h${x - begin}v1h${begin - x}z`);
        begin = -1;
      }
    }
  }
  return { size, d: parts.join("") };
}
