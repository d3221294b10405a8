// The program's own typefaces in PDFs: read from the packages the screens use, never from the net.
import { Font } from "@react-pdf/renderer";
import { projectPath } from "../environment";

/** latin-ext holds the letters beyond western Europe; a text falls back to it letter by letter. */
export const SERIF: string[] = ["Source Serif 4", "Source Serif 4 ext"];
export const SANS: string[] = ["Source Sans 3", "Source Sans 3 ext"];

const FACES = [
  { family: SERIF, files: "source-serif-4" },
  { family: SANS, files: "source-sans-3" },
] as const;
const memory = globalThis as { twelvemonthFonts?: true };

/** Registers the typefaces once a process. */
export function pdfFontsReady(): void {
  if (memory.twelvemonthFonts) return;
  memory.twelvemonthFonts = true;
  for (const { family, files } of FACES)
    for (const [index, subset] of ["latin", "latin-ext"].entries())
      Font.register({
        family: family[index] ?? "",
        fonts: ([400, 600] as const).flatMap((fontWeight) =>
          (["normal", "italic"] as const).map((fontStyle) => ({
            src: projectPath("node_modules", "@fontsource", files, "files", `${files}-${subset}-${fontWeight}-${fontStyle}.woff`),
            fontWeight,
            fontStyle,
          })),
        ),
      });
  // Names are never broken within a word.
  Font.registerHyphenationCallback((word) => [word]);
}
