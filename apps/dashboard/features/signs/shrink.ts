/** The most photographs that the office keeps of one sign. */
export const MOST_PHOTOS = 10;

/** Longest side of a photograph that is kept [px]. */
const LONGEST_PX = 1600;
const QUALITY = 0.82;

/**
 * A picture as a JPEG of at most 1600 px, drawn anew: smaller to send over a field's thin line, turned upright, and without
 * what the camera wrote into the file, where it was taken among it. Null where this browser cannot read the picture.
 */
export async function shrink(file: Blob): Promise<Blob | null> {
  const picture = await createImageBitmap(file).catch(() => null);
  if (!picture) return null;
  const scale = Math.min(1, LONGEST_PX / Math.max(picture.width, picture.height));
  const canvas = document.createElement("canvas");
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  const pen = canvas.getContext("2d");
  if (!pen) return null;
  // JPEG knows no glass: what is see-through becomes paper.
  pen.fillStyle = "white";
  pen.fillRect(0, 0, canvas.width, canvas.height);
  pen.imageSmoothingQuality = "high";
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((resolve) => canvas.toBlob(resolve, "image/jpeg", QUALITY));
}
