// Where the page starts: take the secret out of the address, come back to the screen that was open,
// draw.

import { mount } from 'svelte';
import App from './App.svelte';
import { adoptKey } from './client.ts';
import { listen } from './device.ts';
import { resume } from './resume.ts';
import { chooseLocale } from './text.svelte.ts';
import './tokens.css';
import './safe-area.css';
import './base.css';
import './drawings/drawings.css';

adoptKey();
chooseLocale(navigator.languages);
resume();
listen();
const target = document.getElementById('app');
if (target) mount(App, { target });
