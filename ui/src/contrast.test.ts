// Contrast of every declared pair of colours in every theme, by the WCAG 2.2 formula, which is itself
// checked against published ratios.

import { expect, test } from 'vitest';
import tokens from './tokens.css?raw';

function luminance(hex: string): number {
  const part = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * part(1) + 0.7152 * part(3) + 0.0722 * part(5);
}

function contrast(a: string, b: string): number {
  const [light = 0, dark = 0] = [luminance(a), luminance(b)].sort((one, other) => other - one);
  return (light + 0.05) / (dark + 0.05);
}

// W3C techniques G183, G195, G207 and Understanding 1.4.3, recomputed to three digits.
test.each([
  ['#3366cc', '#000000', 3.913],
  ['#ff3838', '#ffffff', 3.575],
  ['#e3660e', '#ffffff', 3.402],
  ['#777777', '#ffffff', 4.478],
  ['#767676', '#ffffff', 4.542],
  ['#595959', '#ffffff', 7.005],
  ['#000000', '#ffffff', 21],
])('%s on %s has its published contrast', (a, b, ratio) => {
  expect(Math.abs(contrast(a, b) - ratio)).toBeLessThan(0.0006);
});

/** Colours of a theme: those of the plain root, then the theme's own. */
function colours(theme: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const [, selector = '', body = ''] of tokens
    .replace(/\/\*[\s\S]*?\*\//g, '')
    .matchAll(/([^{}]+)\{([^{}]*)\}/g)) {
    const plain = selector.trim() === ':root';
    if (!plain && !selector.includes(`data-theme="${theme}"`)) continue;
    for (const [, name = '', value = ''] of body.matchAll(/--([a-z-]+):\s*(#[0-9a-f]{6});/g)) found.set(name, value);
  }
  return found;
}

/** Signal words stand in large type alone. */
const LARGE = new Set(['warning']);

for (const theme of ['dark', 'daylight', 'contrast']) {
  test(`every pair of the ${theme} theme can be read`, () => {
    const found = colours(theme);
    let pairs = 0;
    for (const [name, colour] of found) {
      const [, base = '', role = ''] = /^(.*)-(ink|shape)$/.exec(name) ?? [];
      if (!base) continue;
      const ground = found.get(`${base}-ground`);
      expect(ground, `${name} has no ground`).toBeDefined();
      const least = role === 'shape' ? 3 : LARGE.has(base) ? 4.5 : 7;
      expect(contrast(colour, ground ?? colour), `${name} in ${theme}`).toBeGreaterThanOrEqual(least);
      pairs += 1;
    }
    expect(pairs).toBeGreaterThan(20);
  });
}
