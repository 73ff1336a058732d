// The one door to the core. In the app's window a request goes through Tauri, in a browser to the
// loopback desk; everything else in ui/ calls `ask` and knows neither.

import { releaseShot } from './device.ts';
import type { Failure } from './types/Failure.ts';
import type { Replies } from './types/Replies.ts';
import type { Request } from './types/Request.ts';
import type { Response } from './types/Response.ts';

/** What the core answers to a request of this name. */
export type ReplyTo<Ask extends Request['ask']> = Extract<Response, { is: Replies[Ask] }>;

/** Requests that the core answers so. */
export type RequestFor<Is extends Response['is']> = Extract<
  Request,
  { ask: { [Ask in Request['ask']]: Replies[Ask] extends Is ? Ask : never }[Request['ask']] }
>;

/** A request that the core refused, or that never reached it (`code` is then `no-core`). */
export class Refusal extends Error {
  readonly failure: Failure;

  constructor(failure: Failure) {
    super(failure.message);
    this.failure = failure;
  }
}

interface TauriInternals {
  invoke(command: string, args: unknown): Promise<unknown>;
  convertFileSrc(path: string, protocol: string): string;
}

/** Requests that send a piece or look at it; every other one that names an upload has done with it. */
const PIECES: Request['ask'][] = ['upload', 'import-piece', 'preview-import', 'restore-piece'];

const KEY_STORE = 'steady.key';
const KEY_FRAGMENT = /^#(?:\/?\?)?key=([^&]+)/;

/**
 * Takes the page's secret out of the address and keeps it for this tab alone.
 * Without one in the address, an earlier one of this tab stays.
 */
export function adoptKey(): void {
  const found = KEY_FRAGMENT.exec(location.hash);
  if (!found?.[1]) return;
  sessionStorage.setItem(KEY_STORE, decodeURIComponent(found[1]));
  history.replaceState(history.state, '', location.pathname + location.search);
}

let practised: string | null = null;

/** Names the visit to practise on: what is asked about it goes where it is kept, apart from the real ones. */
export function practiseOn(visit: string | null): void {
  practised = visit;
}

/** Hands one request to the core. */
export async function ask<Q extends Request>(request: Q): Promise<ReplyTo<Q['ask']>> {
  const window = tauri();
  const sent = practises(request) ? ({ ask: 'practise', request } as Request) : request;
  const reply = window ? await throughWindow(window, sent) : await throughDesk(sent);
  const upload = uploadOf(request);
  if (upload !== null && !PIECES.includes(request.ask)) void releaseShot(upload);
  return reply as ReplyTo<Q['ask']>;
}

// A photo on its way, read for a VIN or kept for a wish names no visit; it belongs to the one on the screen.
function practises(request: Request): boolean {
  if (practised === null) return false;
  if (['upload', 'read-vin', 'keep-wanted'].includes(request.ask))
    return location.hash.startsWith(`#/visit/${practised}`);
  if ('visits' in request) return request.visits.includes(practised);
  return 'visit' in request && request.visit === practised;
}

/** The upload a request names. */
function uploadOf(request: Request): string | null {
  if ('upload' in request) return request.upload;
  if ('act' in request && 'upload' in request.act) return request.act.upload;
  return null;
}

/**
 * Where a kept photo is shown from. An address may be copied or kept somewhere, so the desk's has a token in it that is
 * good for this one photo: the first half of an HMAC-SHA-256 over the photo, under the key.
 */
export async function photoUrl(sha256: string, size: 'thumb' | 'full'): Promise<string> {
  const window = tauri();
  const photo = `${sha256}/${size}`;
  if (window) return window.convertFileSrc(photo, 'photo');
  const text = new TextEncoder();
  const how = { name: 'HMAC', hash: 'SHA-256' };
  // No key at all is none that can be imported; the desk then says that there is none.
  const secret = await crypto.subtle.importKey('raw', text.encode(key() || '-'), how, false, ['sign']);
  const mac = new Uint8Array(await crypto.subtle.sign('HMAC', secret, text.encode(photo)));
  const token = Array.from(mac.slice(0, 16), (byte) => byte.toString(16).padStart(2, '0')).join('');
  return `/photo/${photo}?token=${token}`;
}

/** The bytes of a file that the core made, by the id in its answer. */
export async function bytesOf(file: string): Promise<Blob> {
  const window = tauri();
  if (window) {
    const bytes = await window.invoke('file_bytes', { file }).catch((problem: unknown) => {
      throw refusalFrom(problem);
    });
    return new Blob([bytes as ArrayBuffer]);
  }
  const answer = await reach(`/file/${file}`, { headers: { 'X-Steady-Key': key() } });
  if (!answer.ok) throw refusalFrom(await answer.json().catch(() => undefined));
  return answer.blob().catch(() => {
    throw refusalFrom(undefined);
  });
}

/** What to show of a caught problem. */
export function failureOf(problem: unknown): Failure {
  if (problem instanceof Refusal) return problem.failure;
  return { code: 'screen', message: '', help: '', field: null };
}

/** Whether a caught value is a refusal with this code. */
export function hasCode(problem: unknown, code: string): boolean {
  return problem instanceof Refusal && problem.failure.code === code;
}

function tauri(): TauriInternals | undefined {
  return (globalThis as { __TAURI_INTERNALS__?: TauriInternals }).__TAURI_INTERNALS__;
}

function key(): string {
  return sessionStorage.getItem(KEY_STORE) ?? '';
}

async function throughWindow(window: TauriInternals, request: Request): Promise<unknown> {
  try {
    return await window.invoke('ask', { request });
  } catch (problem) {
    throw refusalFrom(problem);
  }
}

async function throughDesk(request: Request): Promise<unknown> {
  const answer = await reach('/api', {
    method: 'POST',
    headers: { 'Content-Type': 'application/json', 'X-Steady-Key': key() },
    body: JSON.stringify(request),
  });
  const body: unknown = await answer.json().catch(() => undefined);
  if (!answer.ok || body === undefined) throw refusalFrom(body);
  return body;
}

async function reach(address: string, how: RequestInit): Promise<globalThis.Response> {
  return fetch(address, how).catch(() => {
    throw refusalFrom(undefined);
  });
}

function refusalFrom(problem: unknown): Refusal {
  const failure = problem as Partial<Failure> | undefined | null;
  if (failure && typeof failure.code === 'string' && typeof failure.message === 'string') {
    const { code, message, help = '', field = null } = failure;
    return new Refusal({ code, message, help, field });
  }
  return new Refusal({ code: 'no-core', message: '', help: '', field: null });
}
