// What an outline file most likely is, from its name and its first signs; the person can say otherwise.
import type { ImportUnit, OutlineFormat } from "@/lib/ground/outline-import";

/** The format of a file; null where nothing tells. Contents go before the name: a renamed file is common. */
export function formatGuess(name: string, text: string): OutlineFormat | null {
  const start = text
    .slice(0, 2000)
    .replace(/^\ufeff/, "")
    .trimStart();
  if (/^(<\?xml|<!--|<svg|<!DOCTYPE svg|<path)/i.test(start) || /^[Mm]\s*[-+.\d]/.test(start)) return "SVG path";
  if (start.startsWith("{") || start.startsWith("[")) return "GeoJSON";
  if (/^(999\r?\n.*\r?\n\s*)*0\s*\r?\n\s*SECTION/.test(start)) return "DXF";
  const end = /\.(\w+)$/.exec(name.toLowerCase())?.[1];
  if (end === "svg") return "SVG path";
  if (end === "dxf") return "DXF";
  return end === "geojson" || end === "json" ? "GeoJSON" : null;
}

/** Units that make sense for a format, the likeliest first. */
export function unitsOf(format: OutlineFormat): readonly ImportUnit[] {
  switch (format) {
    case "DXF":
      return ["as the file says", "ft", "in", "m", "cm", "mm"];
    case "GeoJSON":
      return ["degrees", "ft", "m", "in", "cm", "mm"];
    case "SVG path":
      return ["ft", "in", "m", "cm", "mm"];
  }
}

export const UNIT_WORDS: Readonly<Record<ImportUnit, string>> = {
  "as the file says": "as the file says",
  degrees: "degrees (longitude, latitude)",
  ft: "feet",
  in: "inches",
  m: "meters",
  cm: "centimeters",
  mm: "millimeters",
};
