// What only a phone can do: felt answers, a lit screen, its share sheet, its safe areas, its Back button.
// One file, and each of its functions does nothing in a browser. None of them may stop a screen: what a
// phone refuses is left undone.
// Back is the screens' own: the web view skips history entries made without a touch, as after a restart. The
// screens hear the button through Tauri, go one entry back, and from the first screen behind the other apps.

interface Device {
  invoke(command: string, args?: unknown): Promise<unknown>;
  transformCallback(heard: (message: unknown) => void): number;
}

interface Insets {
  top: number;
  right: number;
  bottom: number;
  left: number;
}

let lit: WakeLockSentinel | null = null;
let wanted = false;
const adopted = new Map<string, string>();

/** Lets an answer be felt: short, or long for DANGER. */
export function feel(feel: 'tick' | 'danger'): void {
  void tell('feel', { feel });
}

/** Keeps the screen lit, or lets it go dark again. Asks the page's own lock first, then the phone. */
export async function stayAwake(on: boolean): Promise<void> {
  wanted = on;
  if ('wakeLock' in navigator) {
    await hold().catch(() => tell('stay_awake', { on }));
    return;
  }
  await tell('stay_awake', { on });
}

/** How a file reaches a person here: a browser's tab, a folder of downloads, or the phone's sheet alone. */
export function ways(): { open: boolean; save: boolean } {
  return { open: device() === undefined, save: !onPhone() };
}

/** Opens the phone's sheet for a file of the core's, by its id. What the person then does with it is not known. */
export async function sheet(file: string, name: string, mime: string): Promise<void> {
  await device()?.invoke('share_file', { file, name, mime });
}

/** A photo that Android's camera left in its folder. */
export interface Shot {
  name: string;
  bytes: number;
  /** When it was written, milliseconds since 1970. */
  at: number;
}

/** Photos that the camera left behind, latest first: taken while the app was ended, for one. */
export async function shots(): Promise<Shot[]> {
  if (!onPhone()) return [];
  return ((await device()
    ?.invoke('shots')
    .catch(() => null)) ?? []) as Shot[];
}

/**
 * Takes a photo over by its name, as an upload of this name; false where the camera's folder has none. No byte
 * of it crosses the page. Its file stays until `releaseShot`.
 */
export async function adopt(name: string, upload: string): Promise<boolean> {
  if (!onPhone()) return false;
  if (
    (await device()
      ?.invoke('adopt_shot', { name, upload })
      .catch(() => false)) !== true
  )
    return false;
  adopted.set(upload, name);
  return true;
}

/** The core has done with an upload: where it came from the camera's folder, the file there can go. */
export async function releaseShot(upload: string): Promise<void> {
  const name = adopted.get(upload);
  adopted.delete(upload);
  if (name !== undefined)
    await device()
      ?.invoke('forget_shot', { name })
      .catch(() => undefined);
}

/** From here on: safe areas as the phone reports them, the Back button, and a lit screen kept lit. */
export function listen(): void {
  document.addEventListener('visibilitychange', () => {
    // The system takes the lock away with the page.
    if (document.visibilityState === 'visible' && wanted) void stayAwake(true);
  });
  if (!onPhone()) return;
  globalThis.addEventListener('device-insets', () => void takeInsets());
  globalThis.addEventListener('resize', () => void takeInsets());
  void takeInsets();
  hearBack();
}

/** One step back; from the first screen, behind the other apps. */
export function back(): void {
  if (location.hash === '' || location.hash === '#/') void tell('leave', {});
  else history.back();
}

async function hold(): Promise<void> {
  if (!wanted) {
    await lit?.release();
    lit = null;
  } else if (lit === null || lit.released) {
    lit = await navigator.wakeLock.request('screen');
  }
}

// A floor under the stylesheets' `env(safe-area-inset-*)`, which older webviews leave at nought.
async function takeInsets(): Promise<void> {
  const insets = (await tell('insets', {})) as Insets | null;
  if (!insets) return;
  for (const edge of ['top', 'right', 'bottom', 'left'] as const) {
    document.documentElement.style.setProperty(`--device-${edge}`, `${insets[edge]}px`);
  }
}

// Tauri's own plugin tells of the button once somebody listens; the text is how a channel is written.
function hearBack(): void {
  const phone = device();
  if (!phone) return;
  const handler = `__CHANNEL__:${phone.transformCallback(() => back())}`;
  void phone.invoke('plugin:app|register_listener', { event: 'back-button', handler }).catch(() => undefined);
}

async function tell(command: string, args: unknown): Promise<unknown> {
  try {
    return onPhone() ? await device()?.invoke(`plugin:device|${command}`, args) : null;
  } catch {
    return null;
  }
}

function device(): Device | undefined {
  return (globalThis as { __TAURI_INTERNALS__?: Device }).__TAURI_INTERNALS__;
}

// The window of a desktop has Tauri too, and none of this. A tablet of Apple's calls itself a Mac, with fingers.
function onPhone(): boolean {
  if (device() === undefined) return false;
  const name = navigator.userAgent;
  return /Android|iPhone|iPad/.test(name) || (name.includes('Macintosh') && navigator.maxTouchPoints > 1);
}
