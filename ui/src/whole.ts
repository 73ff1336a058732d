// Tests of single screens read every text, as a screen does that was waited for.
import { wholeTexts } from './text.svelte.ts';

await wholeTexts();
