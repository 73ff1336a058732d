// Where the page starts: take the secret out of the address, come back to the screen that was open,
// draw.

import { mount } from 'svelte';
import App from './App.svelte';
import { adoptKey } from './client.ts';
import { listen } from './device.ts';
import { resume } from './resume.ts';
import { showTheme, showThumb } from './look.svelte.ts';
import { chooseLocale, firstWish } from './text.svelte.ts';
import './tokens.css';
import './safe-area.css';
import './base.css';
import './drawings/drawings.css';

adoptKey();
showTheme();
showThumb();
resume();
listen();
void start();

// Drawn once, in the language it will be read in: no sentence changes under the reader's eyes.
async function start(): Promise<void> {
  await chooseLocale(firstWish()).catch(() => undefined);
  const target = document.getElementById('app');
  if (target) mount(App, { target });
}
