// Pictures laid under a bed's drawing. Where they lie is part of the drawing; here is only the picture.
import { database } from "./database";
import { newId } from "./identity";
import { type ImageMime, imageHead } from "./image-head";

/** Largest picture taken, in bytes. */
export const UNDERLAY_MAX_BYTES = 15_000_000;
/** Pictures kept for a bed: the newest, so that undo finds the ones before; and always the one that lies under the saved drawing. */
const KEPT_OF_A_BED = 6;
/** Pixels along one side that every browser still draws. */
const SIDE_MAX_PX = 16_384;

export type UnderlayAnswer =
  | { readonly kind: "kept"; readonly id: string; readonly widthPx: number; readonly heightPx: number }
  | { readonly kind: "fault"; readonly status: 400 | 404 | 413 | 415; readonly message: string };

const fault = (status: 400 | 404 | 413 | 415, message: string): UnderlayAnswer => ({ kind: "fault", status, message });

/** The picture under the saved drawing; null when there is none. */
function imageIdOf(drawing: unknown): string | null {
  if (typeof drawing !== "object" || drawing === null || !("underlay" in drawing)) return null;
  const { underlay } = drawing;
  return typeof underlay === "object" && underlay !== null && "imageId" in underlay && typeof underlay.imageId === "string" ? underlay.imageId : null;
}

/**
 * Keeps a picture for a bed. The kind of file and its size are read from its bytes; the size that the browser drew has to agree, either way up, since
 * a camera's JPEG may be stored lying on its side.
 */
export async function underlayAdd(
  jobId: string,
  bedId: string,
  picture: { readonly name: string; readonly bytes: Uint8Array<ArrayBuffer>; readonly widthPx: number; readonly heightPx: number },
): Promise<UnderlayAnswer> {
  const { name, bytes, widthPx, heightPx } = picture;
  if (bytes.length > UNDERLAY_MAX_BYTES) return fault(413, "The picture is larger than 15 MB. Make it smaller or cut it to the bed, then choose it again.");
  const head = imageHead(bytes);
  if (!head) return fault(415, `“${name}” is not a PNG, JPEG or WebP picture. Save the plan or photo as one of these and choose it again.`);
  if (Math.max(head.widthPx, head.heightPx) > SIDE_MAX_PX)
    return fault(413, `The picture is ${head.widthPx} × ${head.heightPx} pixels. At most ${SIDE_MAX_PX} along a side can be drawn: make it smaller.`);
  const upright = widthPx === head.widthPx && heightPx === head.heightPx;
  const turned = head.mime === "image/jpeg" && widthPx === head.heightPx && heightPx === head.widthPx;
  if (!upright && !turned)
    return fault(
      400,
      `The picture is damaged: its file says ${head.widthPx} × ${head.heightPx} pixels, the browser drew ${widthPx} × ${heightPx}. Save it anew and choose it again.`,
    );
  const id = newId();
  return database().$transaction(async (tx): Promise<UnderlayAnswer> => {
    const bed = await tx.bed.findFirst({ where: { id: bedId, jobId, deletedAt: null }, select: { drawing: true } });
    if (!bed) return fault(404, "This bed is no longer there, so the picture was not kept.");
    await tx.underlay.create({ data: { id, bedId, name: name.slice(0, 200), mime: head.mime, widthPx, heightPx, bytes } });
    const stored = await tx.underlay.findMany({ where: { bedId }, select: { id: true }, orderBy: { createdAt: "desc" } });
    const inUse = imageIdOf(bed.drawing);
    const old = stored.slice(KEPT_OF_A_BED).flatMap((picture) => (picture.id === inUse || picture.id === id ? [] : [picture.id]));
    if (old.length) await tx.underlay.deleteMany({ where: { id: { in: old } } });
    return { kind: "kept", id, widthPx, heightPx };
  });
}

export type UnderlayFile = { readonly mime: ImageMime; readonly bytes: Uint8Array<ArrayBuffer> };

/** A picture of a bed, with the kind that its bytes are; null where there is none. */
export async function underlayFile(jobId: string, bedId: string, id: string): Promise<UnderlayFile | null> {
  const found = await database().underlay.findFirst({ where: { id, bedId, bed: { jobId } }, select: { bytes: true } });
  const head = found ? imageHead(found.bytes) : null;
  return found && head ? { mime: head.mime, bytes: new Uint8Array(found.bytes) } : null;
}
