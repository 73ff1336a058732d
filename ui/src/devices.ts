// What a device reads as, and where what it wrote comes from.

import { t } from './text.svelte.ts';
import type { DeviceStand } from './types/DeviceStand.ts';

/** The name that a device was given here, or that it has none. */
export function deviceName(device: DeviceStand): string {
  return device.name || t('ui-device-unnamed');
}

/** Where an entry or a visit comes from, in a sentence; empty for what this device wrote. */
export function cameFrom({ trust, name, code }: DeviceStand): string {
  return trust === 'this-device' ? '' : t(`ui-from-${trust}`, { device: name || code });
}
