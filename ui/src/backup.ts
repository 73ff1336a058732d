// Backups of everything as one file, between the core and the person: made ready to be saved or sent, sent in pieces
// to be taken in. What a backup holds is the core's to say.

import { toBase64 } from './bytes.ts';
import { ask } from './client.ts';
import { ready, type Ready } from './outgoing.ts';
import type { BackupReady } from './types/BackupReady.ts';
import type { Restored } from './types/Restored.ts';

const PIECE = 512 * 1024;

/** A backup, ready to be saved or sent, and what the core says of it. */
export interface MadeBackup {
  file: Ready;
  said: BackupReady;
}

/** Makes a backup file; `done` hears how far it is, 0 to 1. */
export async function makeBackup(done: (share: number) => unknown): Promise<MadeBackup> {
  const backup = crypto.randomUUID();
  let said = await ask({ ask: 'prepare-backup', backup });
  while (!said.ready) {
    done(said.done / said.of);
    said = await ask({ ask: 'prepare-backup', backup });
  }
  done(1);
  return { file: await ready({ ...said, mime: 'application/x-tar' }), said };
}

/** Sends a backup file to the core; `sent` hears the share that has gone, 0 to 1. */
export async function takeBackup(file: Blob, sent: (share: number) => unknown): Promise<Restored> {
  const upload = crypto.randomUUID();
  for (let index = 0; index === 0 || index * PIECE < file.size; index += 1) {
    const piece = file.slice(index * PIECE, (index + 1) * PIECE);
    await ask({ ask: 'restore-piece', upload, index, base64: await toBase64(piece) });
    sent(Math.min(1, ((index + 1) * PIECE) / Math.max(file.size, 1)));
  }
  return ask({ ask: 'restore', upload });
}
