// What is on a screen that a person could miss once the app has come back.

/** Runs in the page, Chromium's or the window's: everything it needs is inside it. */
export function shown() {
  const all = (selector) => [...document.querySelectorAll(selector)];
  const named = (one) => one.closest("[data-testid]")?.dataset.testid ?? "";
  const fields = all("input:not([type=file]), textarea, select").filter((one) => one.value !== "");
  // The secret in a photo's address is another one at each start.
  const drawn = (one) => one.complete && one.naturalWidth > 0;
  const photos = all("img[src*='photo']").map((one) => [one.src.replace(/\?.*/, ""), drawn(one)]);
  return {
    place: location.hash,
    title: document.querySelector("h1")?.textContent,
    pressed: all("[aria-pressed=true]").map(named),
    written: fields.map((one) => [named(one), one.value]),
    photos,
    words: all("[data-word]").map((one) => [named(one), one.dataset.word]),
  };
}

/** Whether everything is there that is still to come: a heading, and each photo drawn. */
export const whole = (found) => Boolean(found.title) && found.photos.every(([, drawn]) => drawn);
