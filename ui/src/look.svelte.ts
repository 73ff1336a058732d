// How the screens look on this device: the theme, and the thumb that the foot of the screen is laid out
// for. Kept on the device at once, so that the first picture after a start is in the right one.

export const THEMES = ['system', 'dark', 'daylight', 'contrast'] as const;
export const THUMBS = ['right', 'left'] as const;

export type Theme = (typeof THEMES)[number];
export type Thumb = (typeof THUMBS)[number];

export const look = $state<{ theme: Theme; thumb: Thumb }>({
  theme: stored('theme', THEMES),
  thumb: stored('thumb', THUMBS),
});

/** Shows a theme at once and keeps it. */
export function setTheme(theme: Theme): void {
  look.theme = theme;
  store('theme', theme);
  showTheme();
}

/** Lays the foot of the screen out for a thumb at once and keeps it. */
export function setThumb(thumb: Thumb): void {
  look.thumb = thumb;
  store('thumb', thumb);
  showThumb();
}

/** Puts the chosen theme, or the system's, on the page. */
export function showTheme(): void {
  document.documentElement.dataset.theme = look.theme === 'system' ? ofSystem() : look.theme;
}

/** Puts the chosen thumb on the page. */
export function showThumb(): void {
  document.documentElement.dataset.thumb = look.thumb;
}

/** Shows the system's theme anew whenever it changes; gives back how to stop. */
export function followSystem(): () => void {
  const asked = ['(prefers-color-scheme: light)', '(prefers-contrast: more)'].map((query) => matchMedia(query));
  for (const each of asked) each.addEventListener('change', showTheme);
  return () => {
    for (const each of asked) each.removeEventListener('change', showTheme);
  };
}

/** The one of these that a remembered word names; else the first. */
export function named<Word extends string>(words: readonly [Word, ...Word[]], word: string | null | undefined): Word {
  return words.find((each) => each === word) ?? words[0];
}

function ofSystem(): Exclude<Theme, 'system'> {
  if (matchMedia('(prefers-contrast: more)').matches) return 'contrast';
  return matchMedia('(prefers-color-scheme: light)').matches ? 'daylight' : 'dark';
}

function stored<Word extends string>(name: string, words: readonly [Word, ...Word[]]): Word {
  return named(words, localStorage.getItem(`steady.${name}`));
}

function store(name: string, value: string): void {
  try {
    localStorage.setItem(`steady.${name}`, value);
  } catch {
    return;
  }
}
