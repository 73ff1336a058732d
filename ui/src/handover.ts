// Handover files between the core and the person: made to be saved or sent, sent in pieces to be taken in. What a
// file holds is the core's to say.

import { toBase64 } from './bytes.ts';
import { ask } from './client.ts';
import { ready, type Ready } from './outgoing.ts';
import type { Preview } from './types/Preview.ts';

const PIECE = 512 * 1024;

/** Papers to go along: in this language, or, with none, as each was last made. */
export interface Papers {
  locale: string | null;
}

/** A handover file of these visits, ready to be saved or sent. */
export async function makeHandover(visits: string[], papers: Papers | null = null): Promise<Ready> {
  const made = await ask({
    ask: 'export',
    visits,
    papers: papers !== null,
    locale: papers?.locale ?? null,
    sheet: null,
  });
  return ready({ ...made, mime: 'application/zip' });
}

/** A file that the core holds and has looked at. */
export interface Looked {
  upload: string;
  preview: Preview;
}

/** Sends a handover file to the core and asks what it would change; `sent` hears the share that has gone, 0 to 1. */
export async function lookAt(file: Blob, sent: (share: number) => unknown): Promise<Looked> {
  const upload = crypto.randomUUID();
  for (let index = 0; index === 0 || index * PIECE < file.size; index += 1) {
    const piece = file.slice(index * PIECE, (index + 1) * PIECE);
    await ask({ ask: 'import-piece', upload, index, base64: await toBase64(piece) });
    sent(Math.min(1, ((index + 1) * PIECE) / Math.max(file.size, 1)));
  }
  return { upload, preview: await ask({ ask: 'preview-import', upload }) };
}

/** The word that confirms erasing: the plate, or the last block of the visit's id. */
export function eraseWord(visit: string, plate: string): string {
  return plate.trim() || (visit.split('-').at(-1) ?? visit);
}
