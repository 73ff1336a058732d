// What Steady says in a language, read from its Fluent files, and what on a screen is still English.

import { readFileSync, readdirSync } from "node:fs";
import { createRequire } from "node:module";
import { fileURLToPath } from "node:url";

const ofScreens = createRequire(new URL("../../ui/package.json", import.meta.url));
const { FluentBundle, FluentResource } = ofScreens("@fluent/bundle");
const TEXTS = fileURLToPath(new URL("../../src-tauri/core/text/", import.meta.url));

/** Every language there are texts in, English first. */
export const LANGUAGES = readdirSync(TEXTS, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => name)
  .sort((one, other) => Number(other === "en") - Number(one === "en") || one.localeCompare(other));

/** Whether a language says everything itself; a way of writing, such as en-US, says only what differs. */
export const whole = (tag) => readdirSync(`${TEXTS}${tag}`).includes("papers.ftl");

/** Words that hold an English sentence together and are none in German. */
const ENGLISH = /\b(the|and|of|with|you|your|this|that|from|are|has|been|is|to|by|or|on|for|it|not)\b/;

/** Says messages of one language by their keys. */
export function speaker(tag) {
  const bundle = bundleOf(tag);
  const say = (key, values) => {
    const { value } = bundle.getMessage(key) ?? {};
    if (!value) throw new Error(`there is no text ${key} in ${tag}`);
    return bundle.formatPattern(value, values);
  };
  /** Says the first of these that there is a text for. */
  say.first = (keys, values) => say(keys.find((key) => bundle.hasMessage(key)) ?? keys[0], values);
  return say;
}

/**
 * Finds which of these texts are English, of a page in another language: sentences of ours, and, where nobody typed
 * English on it, single words too.
 */
export function englishIn(tag, { typed = false } = {}) {
  const english = messages("en");
  const own = messages(tag);
  const differs = [...english].filter(([key, { source }]) => own.get(key)?.source !== source);
  const long = (part) => part.split(/\s+/).length > 2;
  // What both languages say alike, such as a name and a unit, is no English.
  const alike = (key, part) => own.get(key)?.parts.some((its) => its.includes(part));
  const pieces = differs.flatMap(([key, { parts }]) =>
    parts.filter((part) => long(part) && !alike(key, part)).map((part) => [key, part]),
  );
  const whole = (all) =>
    all
      .filter(([, { parts }]) => parts.some((part) => /\p{L}{2}/u.test(part)))
      .map(([key, { source }]) => [key, new RegExp(`^${source}$`, "u")]);
  const [certain, meant] = [whole(differs), whole([...own])];

  return (texts) =>
    texts.flatMap((text) => {
      const said = text.replace(/\s+/g, " ").trim();
      const piece = pieces.find(([, part]) => said.includes(part));
      if (piece) return [`${piece[0]}: ${said}`];
      if (!typed && ENGLISH.test(said)) return [`an English word: ${said}`];
      const message = certain.find(([, form]) => form.test(said));
      return message && !meant.some(([, form]) => form.test(said)) ? [`${message[0]}: ${said}`] : [];
    });
}

/** Everything a page shows or says to who cannot see it, but for what it marks as words of another language. */
export function textsOf(page) {
  return page.evaluate(() => {
    const found = new Set([document.title]);
    const foreign = (one) => one.closest("[lang]:not(html)") !== null;
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    while (walker.nextNode()) {
      const { parentElement, textContent } = walker.currentNode;
      if (!parentElement.closest("script, style") && !foreign(parentElement)) found.add(textContent);
    }
    for (const one of document.querySelectorAll("[aria-label], [alt], [title], [placeholder]")) {
      if (foreign(one)) continue;
      for (const name of ["aria-label", "alt", "title", "placeholder"]) found.add(one.getAttribute(name) ?? "");
    }
    return [...found].filter((text) => text.trim() !== "");
  });
}

const ANYTHING = ".{1,60}?";

function bundleOf(tag) {
  const bundle = new FluentBundle(tag, { useIsolating: false });
  for (const folder of whole(tag) ? [tag] : [tag.split("-")[0], tag]) {
    for (const name of readdirSync(`${TEXTS}${folder}`).filter((each) => each.endsWith(".ftl"))) {
      bundle.addResource(new FluentResource(readFileSync(`${TEXTS}${folder}/${name}`, "utf8")), {
        allowOverrides: true,
      });
    }
  }
  return bundle;
}

/** Every message as the source of an expression that its sentences match, and its parts without variables. */
function messages(tag) {
  const bundle = bundleOf(tag);
  return new Map(
    [...bundle._messages].map(([key, { value }]) => {
      const parts = [];
      return [key, { source: sourceOf(value, parts), parts }];
    }),
  );
}

function sourceOf(value, parts) {
  if (typeof value === "string") {
    const plain = value.replace(/\s+/g, " ");
    parts.push(plain.trim());
    return plain.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
  }
  if (Array.isArray(value)) return value.map((part) => sourceOf(part, parts)).join("");
  if (value?.type === "select") {
    return `(?:${value.variants.map((variant) => sourceOf(variant.value, parts)).join("|")})`;
  }
  return ANYTHING;
}
