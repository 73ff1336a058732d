// Where a photo on the screen is shown from: its address is worked out, so it comes a moment after the photo is known.

import { photoUrl } from './client.ts';

/** The address of the photo that `photo` names; the one before until it is there. For use while a part is set up. */
export function photoSource(photo: () => { sha256: string; size: 'thumb' | 'full' }): {
  readonly url: string | undefined;
} {
  let url = $state<string>();
  $effect(() => {
    let wanted = true;
    const { sha256, size } = photo();
    void photoUrl(sha256, size).then((found) => {
      if (wanted) url = found;
    });
    return () => {
      wanted = false;
    };
  });
  return {
    get url() {
      return url;
    },
  };
}
