// A photo on its way from the camera to the core: shrunk and turned upright here, then handed over in
// pieces. What the page cannot decode goes as it is, and the core says what it thinks of it.

import { toBase64 } from './bytes.ts';
import { ask } from './client.ts';
import { adopt } from './device.ts';

const LONG_SIDE = 2560;
const QUALITY = 0.85;
const PIECE = 256 * 1024;

/**
 * Sends a photo; gives the upload's name for `keep-photo`. One that a phone's camera wrote into its own folder
 * is taken over there instead.
 */
export async function upload(file: Blob): Promise<string> {
  const name = crypto.randomUUID();
  if (file instanceof File && (await adopt(file.name, name))) return name;
  const photo = await shrink(file);
  for (let index = 0; index === 0 || index * PIECE < photo.size; index += 1) {
    const piece = photo.slice(index * PIECE, (index + 1) * PIECE);
    await ask({ ask: 'upload', upload: name, index, base64: await toBase64(piece) });
  }
  return name;
}

/** The size a picture is kept at: its long side at most 2,560 pixels, never enlarged. */
export function keptSize(width: number, height: number): { width: number; height: number } {
  const scale = Math.min(1, LONG_SIDE / Math.max(width, height, 1));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/**
 * Whether a JPEG ends before its picture does: no end marker behind the last scan. A browser would fill the
 * rest with grey; the file goes as it is, and the core says what is wrong.
 */
export function cutShort(bytes: Uint8Array): boolean {
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return false;
  let at = bytes.length - 2;
  while (at >= 0 && !(bytes[at] === 0xff && (bytes[at + 1] === 0xd9 || bytes[at + 1] === 0xda))) at -= 1;
  return bytes[at + 1] !== 0xd9;
}

async function shrink(file: Blob): Promise<Blob> {
  if (cutShort(new Uint8Array(await file.arrayBuffer()))) return file;
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return file;
  }
  try {
    const size = keptSize(bitmap.width, bitmap.height);
    const canvas = document.createElement('canvas');
    canvas.width = size.width;
    canvas.height = size.height;
    const pen = canvas.getContext('2d');
    if (!pen) return file;
    pen.imageSmoothingQuality = 'high';
    pen.drawImage(bitmap, 0, 0, size.width, size.height);
    return (await jpeg(canvas)) ?? file;
  } finally {
    bitmap.close();
  }
}

function jpeg(canvas: HTMLCanvasElement): Promise<Blob | null> {
  return new Promise((done) => canvas.toBlob(done, 'image/jpeg', QUALITY));
}
