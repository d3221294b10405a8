// Sends a picture to be laid under a bed's drawing.
import { z } from "zod";

const MAX_BYTES = 15_000_000;
const MIMES: ReadonlySet<string> = new Set(["image/png", "image/jpeg", "image/webp"]);

export type PictureAnswer = { readonly ok: true; readonly imageId: string; readonly widthPx: number; readonly heightPx: number } | { readonly ok: false; readonly words: string };

const kept = z.object({ id: z.string(), widthPx: z.number(), heightPx: z.number() });
const refused = z.object({ message: z.string() });

/** Width and height as the browser draws it; null where it cannot. */
async function pictureSize(file: File): Promise<{ widthPx: number; heightPx: number } | null> {
  const url = URL.createObjectURL(file);
  const image = new Image();
  image.src = url;
  try {
    await image.decode();
    return { widthPx: image.naturalWidth, heightPx: image.naturalHeight };
  } catch {
    return null;
  } finally {
    URL.revokeObjectURL(url);
  }
}

/** Checks a picture here, then sends it. @param path of the bed: /jobs/…/beds/… */
export async function pictureUpload(path: string, file: File): Promise<PictureAnswer> {
  const fault = (words: string) => ({ ok: false, words }) as const;
  if (!MIMES.has(file.type))
    return fault(`“${file.name}” is not a PNG, JPEG or WebP picture. Save the plan or photo as one of these (a PDF has to be saved as a picture) and choose it again.`);
  if (file.size > MAX_BYTES)
    return fault(`“${file.name}” is ${(file.size / 1e6).toFixed(1)} MB; at most 15 MB are taken. Make it smaller or cut it to the bed, then choose it again.`);
  const size = await pictureSize(file);
  if (!size) return fault(`“${file.name}” cannot be drawn: the file is damaged, or not the picture its name says. Save it anew and choose it again.`);
  const form = new FormData();
  form.set("picture", file);
  form.set("widthPx", String(size.widthPx));
  form.set("heightPx", String(size.heightPx));
  const response = await fetch(`${path}/underlay`, { method: "POST", body: form }).catch(() => null);
  if (!response) return fault("The picture was not kept: the program does not answer. Is it still running? Choose the picture again when it is.");
  const answer: unknown = await response.json().catch(() => null);
  const parsed = kept.safeParse(answer);
  if (response.ok && parsed.success) return { ok: true, imageId: parsed.data.id, widthPx: parsed.data.widthPx, heightPx: parsed.data.heightPx };
  const said = refused.safeParse(answer);
  return fault(said.success ? said.data.message : `The picture was not kept (answer ${response.status}). Choose it again.`);
}
