import { beforeEach, expect, it } from 'vitest';
import { remember, resume } from './resume.ts';

beforeEach(() => {
  localStorage.clear();
  history.replaceState(null, '', '#/');
});

it('comes back to the step that was open, with the list beneath it', () => {
  remember({ screen: 'step', visit: 'v1', step: 'play-vertical' });
  const before = history.length;
  resume();
  expect(location.hash).toBe('#/visit/v1/step/play-vertical');
  expect(history.length).toBe(before + 1);
});

it('comes back to the walk where leaving a part was shown', () => {
  remember({ screen: 'leave', visit: 'v1', set: 'lift' });
  resume();
  expect(location.hash).toBe('#/visit/v1');
});

it('stays where an address was given', () => {
  remember({ screen: 'result', visit: 'v1' });
  history.replaceState(null, '', '#/visit/v2/note');
  resume();
  expect(location.hash).toBe('#/visit/v2/note');
});

it('starts at the list where nothing is remembered', () => {
  resume();
  expect(location.hash).toBe('#/');
});
