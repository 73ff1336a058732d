// What a device wrote says where it comes from, unless it is the device at hand.

import { expect, it } from 'vitest';
import { cameFrom, deviceName } from './devices.ts';
import type { DeviceStand } from './types/DeviceStand.ts';

const device: DeviceStand = { device: 'ab', code: '1234 5678', name: '', trust: 'confirmed', confirmed: true, met: 0 };

it.each<[Partial<DeviceStand>, string]>([
  [{ trust: 'this-device' }, ''],
  [{ trust: 'confirmed' }, 'Written on 1234 5678'],
  [{ trust: 'confirmed', name: 'Bay 2' }, 'Written on Bay 2'],
  [{ trust: 'not-confirmed' }, 'From a device not yet confirmed'],
  [{ trust: 'retired' }, 'From a device that was retired'],
  [{ trust: 'before-signatures' }, 'Written before there were signatures'],
])('says where an entry comes from', (known, said) => {
  expect(cameFrom({ ...device, ...known }).replace(/[\u2068\u2069]/g, '')).toBe(said);
});

it('says that a device has no name', () => {
  expect([deviceName({ ...device, name: 'Bay 2' }), deviceName(device)]).toEqual(['Bay 2', 'Device without a name']);
});
