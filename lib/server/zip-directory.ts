// What a zip archive says it holds, read from its own directory before anything is unpacked.

const END = 0x06054b50;
const ENTRY = 0x02014b50;
const END_BYTES = 22;
const COMMENT_MAX = 65_535;

export type ZipDirectory = { readonly names: readonly string[] /** Bytes when unpacked, as the archive declares. */; readonly unpackedBytes: number };

/** The directory of an archive (PKWARE APPNOTE 4.3.12 and 4.3.16, from memory); null when there is none: cut off or no archive. */
export function zipDirectory(bytes: Uint8Array): ZipDirectory | null {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const first = Math.max(0, bytes.length - END_BYTES - COMMENT_MAX);
  for (let end = bytes.length - END_BYTES; end >= first; end--) {
    if (view.getUint32(end, true) !== END) continue;
    const names: string[] = [];
    let unpackedBytes = 0;
    let at = view.getUint32(end + 16, true);
    for (let left = view.getUint16(end + 10, true); left > 0; left--) {
      if (at + 46 > bytes.length || view.getUint32(at, true) !== ENTRY) return null;
      const nameLength = view.getUint16(at + 28, true);
      names.push(new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)));
      unpackedBytes += view.getUint32(at + 24, true);
      at += 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    }
    return { names, unpackedBytes };
  }
  return null;
}
