// Marks as they are drawn over a photo, kept on this device at each stroke until the ledger has them: each change can
// be taken back, and none of it touches what the ledger has.

import { dropDraft, saveDraft, readDraft } from './drafts.ts';
import type { Mark } from './types/Mark.ts';

export class Drawn {
  /** Null while they are those of the ledger. */
  marks = $state.raw<Mark[] | null>(null);
  /** They were kept just now. */
  saved = $state(false);
  /** The last change was taken back just now. */
  undone = $state(false);
  #before = $state.raw<(Mark[] | null)[]>([]);
  #draft: string | null = null;

  /** Something was drawn here that can be taken back. */
  readonly undoes = $derived(this.#before.length > 0);

  /** Draws over this photo from here on; what was drawn over it and not kept is there again. */
  over(draft: string): void {
    if (draft === this.#draft) return;
    this.#draft = draft;
    this.#before = [];
    this.marks = readDraft<Mark[]>(draft);
  }

  draw(marks: Mark[]): void {
    this.#before = [...this.#before, this.marks];
    this.marks = marks;
    this.#say();
  }

  /** Takes the last change back. */
  undo(): void {
    if (!this.undoes) return;
    this.marks = this.#before.at(-1) ?? null;
    this.#before = this.#before.slice(0, -1);
    this.#say('undone');
  }

  /** Leaves the marks as the ledger has them. */
  drop(): void {
    this.#forget();
    this.#say();
  }

  /** They are in the ledger now. */
  recorded(): void {
    this.#forget();
    this.#say('saved');
  }

  #forget(): void {
    this.marks = null;
    this.#before = [];
  }

  #say(what?: 'saved' | 'undone'): void {
    if (this.#draft !== null) {
      if (this.marks === null) dropDraft(this.#draft);
      else saveDraft(this.#draft, this.marks);
    }
    this.saved = what === 'saved';
    this.undone = what === 'undone';
  }
}
