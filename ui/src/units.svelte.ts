// Lengths on the screens in the workshop's unit, as the core writes them on paper: millimetres where it chose
// none, thousandths of an inch, and inches from a tenth of an inch on (25.4 mm exactly, NIST SP 811).

import { number, rounded, t } from './text.svelte.ts';
import type { Units } from './types/Units.ts';

const INCH = 25.4;
const IN_INCHES_FROM = 2.54;

const chosen = $state<{ units: Units }>({ units: { length: null, distance: null } });

/** Takes the units that the core says the workshop works in. */
export function takeUnits(units: Units): void {
  chosen.units = units;
}

/** A length in millimetres with so many decimals, or the same in the workshop's unit. */
export function length(mm: number, decimals: number): string {
  if (chosen.units.length !== 'thou') return t('length-mm', { mm: number(mm, decimals) });
  if (Math.abs(mm) >= IN_INCHES_FROM) return t('length-inch', { inch: number(mm / INCH, 4) });
  return t('length-thou', { thou: number((mm / INCH) * 1000, 1) });
}

/** A movement felt through a shaft, in millimetres: finer than a micrometre says nothing. */
export function movement(mm: number): string {
  return chosen.units.length === 'thou' ? thou(mm) : t('length-mm', { mm: rounded(mm, 3) });
}

/** A form error or an uncertainty given in micrometres, to a tenth of one. */
export function fine(um: number): string {
  return chosen.units.length === 'thou' ? thou(um / 1000) : t('length-um', { um: rounded(um, 1) });
}

function thou(mm: number): string {
  return t('length-thou', { thou: rounded((mm / INCH) * 1000, 2) });
}
