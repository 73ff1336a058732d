import { expect, test } from 'vitest';
import { decimalOf, isUnread, wholeOf } from './written.ts';

test.each([
  ['81200', 81200],
  [' 560 ', 560],
  ['81 200', 81200],
  ['81\u202f200', 81200],
  ['81,200', null],
  ['81.200', null],
  ['560.5', null],
  ['-5', null],
  ['six', null],
  ['', null],
  ['8 1', null],
])('a whole number is read or left: %s', (text, value) => {
  expect(wholeOf(text)).toBe(value);
});

test.each([
  ['0.15', 0.15],
  ['0,15', 0.15],
  ['0.125', 0.125],
  ['1.5', 1.5],
  ['2', 2],
  ['1,250', null],
  ['12.500', null],
  ['0.15 mm', null],
  ['.5', null],
  ['-1', null],
  ['', null],
])('a number with decimals is read or left: %s', (text, value) => {
  expect(decimalOf(text)).toBe(value);
});

test('what is written and not read is told from what is empty', () => {
  expect(['', ' ', '560', '81,200'].map((text) => isUnread(text, wholeOf))).toEqual([false, false, false, true]);
});
