// A phone's picture made small enough to wait on it and to send over a poor line.

const LONG_SIDE_PX = 1280;
const QUALITY = 0.7;

/** The picture as a JPEG data address, its longer side at most 1,280 pixels. Rejects where the file is no picture. */
export async function photoShrunk(file: File): Promise<string> {
  const image = await createImageBitmap(file);
  const share = Math.min(1, LONG_SIDE_PX / Math.max(image.width, image.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(image.width * share));
  canvas.height = Math.max(1, Math.round(image.height * share));
  canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  image.close();
  return canvas.toDataURL("image/jpeg", QUALITY);
}
