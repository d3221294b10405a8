// Reads PDFs as written by this program's renderer, for tests: pages, their size, text by way of each font's map to Unicode, and filled shapes. Needs no program on the machine.
import { inflateSync } from "node:zlib";

export type PdfPage = {
  /** Points. */
  readonly width: number;
  readonly height: number;
  /** Text in the order it was drawn, a line a drawn piece. */
  readonly text: string;
  /** Operators of the page, as drawn. */
  readonly drawing: string;
};

type PdfObjects = ReadonlyMap<string, { readonly head: string; readonly stream: string | null }>;

function objectsRead(bytes: Uint8Array): PdfObjects {
  const file = Buffer.from(bytes);
  const latin = file.toString("latin1");
  const found = new Map<string, { head: string; stream: string | null }>();
  for (const match of latin.matchAll(/(\d+) 0 obj\n/g)) {
    const begin = match.index + match[0].length;
    const head = latin.slice(begin, latin.indexOf("endobj", begin));
    const at = head.search(/stream\r?\n/);
    if (at < 0) {
      found.set(match[1] ?? "", { head, stream: null });
      continue;
    }
    const dict = head.slice(0, at);
    const from = begin + at + (head.slice(at).startsWith("stream\r") ? 8 : 7);
    const length = Number(/\/Length (\d+)/.exec(dict)?.[1] ?? 0);
    const raw = file.subarray(from, from + length);
    found.set(match[1] ?? "", { head: dict, stream: (dict.includes("FlateDecode") ? inflateSync(raw) : raw).toString("latin1") });
  }
  return found;
}

const hexUnits = (hex: string): string => Buffer.from(hex, "hex").swap16().toString("utf16le");

/** Glyph to text, from a ToUnicode map's lists. */
function unicodeMap(cmap: string): ReadonlyMap<number, string> {
  const map = new Map<number, string>();
  for (const [, first, , list] of cmap.matchAll(/<([\da-f]+)>\s*<([\da-f]+)>\s*\[([^\]]*)\]/gi))
    for (const [i, unit] of [...(list ?? "").matchAll(/<([\da-f ]*)>/gi)].entries()) map.set(Number.parseInt(first ?? "0", 16) + i, hexUnits((unit[1] ?? "").replaceAll(" ", "")));
  return map;
}

function fontsOf(resources: string, objects: PdfObjects): Map<string, ReadonlyMap<number, string>> {
  const fonts = new Map<string, ReadonlyMap<number, string>>();
  for (const [, name, id] of resources.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const toUnicode = /\/ToUnicode (\d+) 0 R/.exec(objects.get(id ?? "")?.head ?? "")?.[1];
    fonts.set(name ?? "", unicodeMap(objects.get(toUnicode ?? "")?.stream ?? ""));
  }
  return fonts;
}

function textOf(drawing: string, fonts: ReadonlyMap<string, ReadonlyMap<number, string>>): string {
  let font: ReadonlyMap<number, string> = new Map();
  let text = "";
  for (const [, name, shown] of drawing.matchAll(/\/(F\d+) [\d.]+ Tf|(\[[^\]]*\]|<[\da-f]*>) ?TJ?/gi)) {
    if (name) font = fonts.get(name) ?? new Map();
    else {
      for (const [, hex] of (shown ?? "").matchAll(/<([\da-f]*)>/gi)) for (const [glyph] of (hex ?? "").matchAll(/.{4}/g)) text += font.get(Number.parseInt(glyph, 16)) ?? "\ufffd";
      text += "\n";
    }
  }
  return text;
}

/** The pages of a PDF. Throws when the file cannot be read. */
export function pdfPages(bytes: Uint8Array): PdfPage[] {
  const objects = objectsRead(bytes);
  return [...objects.values()]
    .filter(({ head }) => /\/Type \/Page\b(?!s)/.test(head))
    .map(({ head }) => {
      const [width = 0, height = 0] = (/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(head) ?? []).slice(1).map(Number);
      const drawing = objects.get(/\/Contents (\d+) 0 R/.exec(head)?.[1] ?? "")?.stream ?? "";
      const resources = objects.get(/\/Resources (\d+) 0 R/.exec(head)?.[1] ?? "")?.head ?? head;
      return { width, height, drawing, text: textOf(drawing, fontsOf(resources, objects)) };
    });
}

/** Text as one line, spaces single: pieces of a line are drawn apart. */
export const plainText = (text: string): string => text.replace(/\s+/g, " ");
