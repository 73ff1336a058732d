// The Fluent files as modules, one for each language, so that a language is fetched when it is chosen:
// `virtual:text/TAG` gives its files without their comments, `virtual:texts` English, how to fetch the
// others, and what each calls itself. A way of writing, such as `en-US`, has the files of what differs alone.
import { readdirSync, readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import type { Plugin } from 'vite';

const FALLBACK = 'en';
/** Messages that only the core says, on paper and in its answers. */
const CORE_ONLY =
  /^(?:(?:finding|note|repair|unknown|caution|signed|field|detail|month|bore|fit|skim|verdict)-|rule-[a-z-]+-owner )/;
const OWN_NAME = 'language-name';

export function texts(folder: string): Plugin {
  const top = resolve(folder);
  const tags = readdirSync(top, { withFileTypes: true })
    .filter((entry) => entry.isDirectory())
    .map((entry) => entry.name)
    .sort();
  const paths = (tag: string) =>
    readdirSync(join(top, tag))
      .filter((name) => name.endsWith('.ftl'))
      .sort()
      .map((name) => join(top, tag, name));
  const messages = (path: string) =>
    readFileSync(path, 'utf8')
      .replace(/^#.*\n?/gm, '')
      .replace(/\n{2,}/g, '\n')
      .split(/^(?=[a-z])/m);
  const bare = (path: string) =>
    messages(path)
      .filter((message) => !CORE_ONLY.test(message))
      .join('');

  function language(tag: string, watch: (path: string) => void): string {
    const sources = paths(tag);
    sources.forEach(watch);
    return `export default ${JSON.stringify(sources.map(bare).join('\n'))};`;
  }

  function index(): string {
    const own = new RegExp(`^${OWN_NAME} = (.+)$`, 'm');
    const name = (tag: string) => own.exec(readFileSync(join(top, tag, 'language.ftl'), 'utf8'))?.[1] ?? tag;
    const names = Object.fromEntries(tags.map((tag) => [tag, name(tag)]));
    const others = tags.filter((tag) => tag !== FALLBACK).map((tag) => `'${tag}': () => import('virtual:text/${tag}')`);
    return `export { default as english } from 'virtual:text/${FALLBACK}';
      export const names = ${JSON.stringify(names)};
      export const others = { ${others.join(', ')} };`;
  }

  return {
    name: 'texts',
    resolveId: (id) => (id.startsWith('virtual:text') ? `\0${id}` : undefined),
    load(id) {
      if (id === '\0virtual:texts') return index();
      const tag = /^\0virtual:text\/([a-zA-Z-]+)$/.exec(id)?.[1];
      return tag === undefined ? undefined : language(tag, (path) => this.addWatchFile(path));
    },
  };
}
