// What a picture file is, by its first bytes and not by what its sender calls it: PNG (W3C PNG 3rd ed., IHDR), JPEG (ITU T.81, frame headers), WebP (RFC 9649).

export const IMAGE_MIMES = ["image/png", "image/jpeg", "image/webp"] as const;
export type ImageMime = (typeof IMAGE_MIMES)[number];
/** Stored width and height, before any turning that a JPEG's camera notes ask for. */
export type ImageHead = { readonly mime: ImageMime; readonly widthPx: number; readonly heightPx: number };

const PNG = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a];

const ascii = (bytes: Uint8Array, from: number, length: number) => String.fromCharCode(...bytes.subarray(from, from + length));

function headChecked(mime: ImageMime, widthPx: number, heightPx: number): ImageHead | null {
  return widthPx > 0 && heightPx > 0 ? { mime, widthPx, heightPx } : null;
}

function pngHead(view: DataView, bytes: Uint8Array): ImageHead | null {
  return bytes.length >= 24 && ascii(bytes, 12, 4) === "IHDR" ? headChecked("image/png", view.getUint32(16), view.getUint32(20)) : null;
}

/** Frame headers are the markers C0–CF but for C4 (Huffman tables), C8 (reserved) and CC (arithmetic conditioning). */
function jpegHead(view: DataView, bytes: Uint8Array): ImageHead | null {
  let at = 2;
  while (at + 9 < bytes.length) {
    if (bytes[at] !== 0xff) return null;
    const marker = bytes[at + 1] ?? 0;
    if (marker === 0xff) {
      at += 1;
      continue;
    }
    if (marker === 0xd9 || marker === 0xda) return null;
    if (marker >= 0xc0 && marker <= 0xcf && marker !== 0xc4 && marker !== 0xc8 && marker !== 0xcc) return headChecked("image/jpeg", view.getUint16(at + 7), view.getUint16(at + 5));
    at += 2 + (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8) ? 0 : view.getUint16(at + 2));
  }
  return null;
}

/** Lossy, lossless and extended files each write their size in their own way; all little endian. */
function webpHead(view: DataView, bytes: Uint8Array): ImageHead | null {
  if (bytes.length < 30) return null;
  const uint24 = (at: number) => view.getUint16(at, true) + ((bytes[at + 2] ?? 0) << 16);
  switch (ascii(bytes, 12, 4)) {
    case "VP8 ":
      return headChecked("image/webp", view.getUint16(26, true) & 0x3fff, view.getUint16(28, true) & 0x3fff);
    case "VP8L": {
      const bits = view.getUint32(21, true);
      return headChecked("image/webp", (bits & 0x3fff) + 1, ((bits >>> 14) & 0x3fff) + 1);
    }
    case "VP8X":
      return headChecked("image/webp", uint24(24) + 1, uint24(27) + 1);
    default:
      return null;
  }
}

/** Kind and size of a PNG, JPEG or WebP file; null for anything else and for files that end before they say their size. */
export function imageHead(bytes: Uint8Array): ImageHead | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (PNG.every((byte, i) => bytes[i] === byte)) return pngHead(view, bytes);
  if (bytes[0] === 0xff && bytes[1] === 0xd8 && bytes[2] === 0xff) return jpegHead(view, bytes);
  if (ascii(bytes, 0, 4) === "RIFF" && ascii(bytes, 8, 4) === "WEBP") return webpHead(view, bytes);
  return null;
}
