/** A picture made small on the device, before anything is sent: at most 1600 px a side, JPEG, under 2 MB. */

export const longestSide = 1_600;
export const mostBytes = 2_000_000;

/** The size it is drawn at: never larger than it was, the longer side no more than `most`. Pure. */
export function sizeWithin(
  width: number,
  height: number,
  most = longestSide,
): { width: number; height: number } {
  const scale = Math.min(1, most / Math.max(width, height, 1));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

const asBase64 = (blob: Blob): Promise<string> =>
  new Promise((resolve, reject) => {
    const reader = new FileReader();
    reader.onload = () => resolve(String(reader.result).replace(/^data:[^,]*,/, ''));
    reader.onerror = () => reject(new Error('The picture could not be read.'));
    reader.readAsDataURL(blob);
  });

const asJpeg = (canvas: HTMLCanvasElement, quality: number): Promise<Blob> =>
  new Promise((resolve, reject) =>
    canvas.toBlob(
      (blob) =>
        blob === null ? reject(new Error('This device could not make a JPEG of it.')) : resolve(blob),
      'image/jpeg',
      quality,
    ),
  );

/** The picture as it is sent. The place it was taken at, and all else a camera writes beside it, stays behind. */
export async function madeSmall(file: Blob): Promise<{ base64: string; bytes: number }> {
  let picture: ImageBitmap;
  try {
    picture = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    throw new Error('This is no picture that this device can open. Take a JPEG, PNG or WebP.');
  }
  const canvas = document.createElement('canvas');
  for (const side of [longestSide, 1_200, 900]) {
    const { width, height } = sizeWithin(picture.width, picture.height, side);
    canvas.width = width;
    canvas.height = height;
    canvas.getContext('2d')?.drawImage(picture, 0, 0, width, height);
    for (const quality of [0.82, 0.65, 0.5]) {
      const blob = await asJpeg(canvas, quality);
      if (blob.size <= mostBytes) {
        picture.close();
        return { base64: await asBase64(blob), bytes: blob.size };
      }
    }
  }
  picture.close();
  throw new Error('The picture stays too large however small it is made. Take another.');
}
