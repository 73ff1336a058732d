// Papers and handover files that the core made. On a phone they go to its sheet by their id, and no byte of them
// comes into the page; elsewhere the page fetches them, to be opened, saved or shared by the browser.

import { bytesOf } from './client.ts';
import { sheet, ways } from './device.ts';

/** A file of the core's, by what it is fetched or shared by. */
export interface Outgoing {
  file: string;
  name: string;
  mime: string;
  /** Length. */
  bytes: number;
}

/** One that a person can be offered; fetched where a person saves files. */
export interface Ready extends Outgoing {
  got: File | null;
  /** Where a link finds what was fetched. */
  address: string;
}

/** Fetches a file, where it is not the phone that hands it on. */
export async function ready(made: Outgoing): Promise<Ready> {
  const { file, name, mime, bytes } = made;
  if (!ways().save) return { file, name, mime, bytes, got: null, address: '' };
  const got = new File([await bytesOf(file)], name, { type: mime });
  return { file, name, mime, bytes, got, address: URL.createObjectURL(got) };
}

/** Lets go of what was fetched. */
export function release(made: Ready | null): void {
  if (made?.got) URL.revokeObjectURL(made.address);
}

/** Whether `share` has a sheet to open: the phone's, or the browser's for this file. */
export function canShare(made: Ready): boolean {
  return made.got === null || ('canShare' in navigator && navigator.canShare({ files: [made.got] }));
}

/** Opens the share sheet for a file. What the person then does with it is not known. */
export function share(made: Ready): Promise<void> {
  return made.got === null ? sheet(made.file, made.name, made.mime) : navigator.share({ files: [made.got] });
}
