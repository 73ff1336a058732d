// A photo on its way from the camera to the core, in pieces. What the core reads goes as the camera gave it,
// so that its bytes, its capture time and its sharpness arrive; any other kind is turned into a JPEG here
// where the engine can, and where it cannot the core says what to do.

import { toBase64 } from './bytes.ts';
import { ask } from './client.ts';
import { adopt } from './device.ts';

const LONG_SIDE = 2560;
const QUALITY = 0.92;
const PIECE = 256 * 1024;

/** First bytes of the kinds the core reads: JPEG and PNG. */
const READ_BY_CORE = [
  [0xff, 0xd8, 0xff],
  [0x89, 0x50, 0x4e, 0x47],
];

/**
 * Sends a photo; gives the upload's name for `keep-photo`. One that a phone's camera wrote into its own folder
 * is taken over there instead.
 */
export async function upload(file: Blob): Promise<string> {
  const name = crypto.randomUUID();
  if (file instanceof File && (await adopt(file.name, name))) return name;
  const photo = await readable(file);
  for (let index = 0; index === 0 || index * PIECE < photo.size; index += 1) {
    const piece = photo.slice(index * PIECE, (index + 1) * PIECE);
    await ask({ ask: 'upload', upload: name, index, base64: await toBase64(piece) });
  }
  return name;
}

/** The size a picture is kept at: its long side at most 2,560 pixels, never enlarged. */
export function storedSize(width: number, height: number): { width: number; height: number } {
  const scale = Math.min(1, LONG_SIDE / Math.max(width, height, 1));
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** The file itself where the core reads it; else a JPEG of it, upright; the file again where there is no way. */
async function readable(file: Blob): Promise<Blob> {
  const head = new Uint8Array(await file.slice(0, 4).arrayBuffer());
  if (READ_BY_CORE.some((magic) => magic.every((byte, at) => head[at] === byte))) return file;
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch {
    return file;
  }
  try {
    const size = storedSize(bitmap.width, bitmap.height);
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
