// The Fluent files as modules, two for each language, so that a start fetches no more than its first screens say:
// `virtual:text/TAG` gives what the screens say that `main.ts` brings with it, `virtual:rest/TAG` everything else,
// both without comments. `virtual:texts` gives the first part of English, how to fetch every other part, and what each
// language calls itself. A way of writing, such as `en-US`, has what differs alone.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { Plugin } from 'vite';

const FALLBACK = 'en';
/** Messages that only the core says, on paper and in its answers. */
const CORE_ONLY =
  /^(?:(?:finding|note|repair|unknown|caution|signed|field|detail|month|bore|fit|skim|verdict)-|rule-[a-z-]+-owner )/;
/** What the first screens can say and seldom do; `Problem.svelte` waits for it. */
const SELDOM_FIRST = /^error-/;
const OWN_NAME = 'language-name';

/** What a file names by `import ... from`: it comes with the file, and what `import()` names does not. */
const COMES_WITH = /^\s*(?:import|export) (?!type )(?:[^'";]* from )?'(\.[^']+)'/gm;
const LITERAL = /['"`]([a-z][a-z0-9-]*)['"`]/g;
const PUT_TOGETHER = /`([a-z][a-z0-9-]*-)\$\{/g;
const NAMED_WITHIN = /\{\s*([a-z][a-z0-9-]*)\s*\}/g;

/** Every file that comes with this one, itself among them, by its path. */
function cameWith(path: string, found = new Map<string, string>()): Map<string, string> {
  if (found.has(path) || !existsSync(path)) return found;
  const source = readFileSync(path, 'utf8');
  found.set(path, source);
  if (!/\.(?:ts|svelte)$/.test(path)) return found;
  for (const [, name = ''] of source.matchAll(COMES_WITH)) cameWith(join(dirname(path), name), found);
  return found;
}

const idOf = (message: string) => /^[a-z][A-Za-z0-9-]*/.exec(message)?.[0] ?? '';

export function texts(folder: string, entry: string): Plugin {
  const top = resolve(folder);
  const tags = readdirSync(top, { withFileTypes: true })
    .filter((one) => one.isDirectory())
    .map((one) => one.name)
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
      .split(/^(?=[a-z])/m)
      .filter((message) => !CORE_ONLY.test(message));

  /** Ids of what the first screens say: keys they name, keys they put together, and what those messages name. */
  function first(watch: (path: string) => void): Set<string> {
    const files = cameWith(resolve(entry));
    [...files.keys()].forEach(watch);
    const code = [...files.values()].join('\n');
    const literal = new Set([...code.matchAll(LITERAL)].map(([, key]) => key ?? ''));
    const starts = [...code.matchAll(PUT_TOGETHER)].map(([, start]) => start ?? '');
    const english = new Map(
      paths(FALLBACK)
        .flatMap(messages)
        .map((message) => [idOf(message), message]),
    );
    const said = new Set<string>();
    const say = (id: string): void => {
      const message = english.get(id);
      if (message === undefined || said.has(id)) return;
      said.add(id);
      for (const [, named = ''] of message.matchAll(NAMED_WITHIN)) say(named);
    };
    for (const id of english.keys()) {
      if (SELDOM_FIRST.test(id)) continue;
      if (literal.has(id) || starts.some((start) => id.startsWith(start))) say(id);
    }
    return said;
  }

  function part(which: string, tag: string, watch: (path: string) => void): string {
    const sources = paths(tag);
    sources.forEach(watch);
    const early = first(watch);
    const mine = sources.flatMap(messages).filter((message) => early.has(idOf(message)) === (which === 'text'));
    return `export default ${JSON.stringify(mine.join(''))};`;
  }

  function index(): string {
    const own = new RegExp(`^${OWN_NAME} = (.+)$`, 'm');
    const name = (tag: string) => own.exec(readFileSync(join(top, tag, 'language.ftl'), 'utf8'))?.[1] ?? tag;
    const names = Object.fromEntries(tags.map((tag) => [tag, name(tag)]));
    const fetched = (which: string, some: string[]) =>
      some.map((tag) => `'${tag}': () => import('virtual:${which}/${tag}')`).join(', ');
    const others = tags.filter((tag) => tag !== FALLBACK);
    return `export { default as english } from 'virtual:text/${FALLBACK}';
      export const names = ${JSON.stringify(names)};
      export const others = { ${fetched('text', others)} };
      export const rests = { ${fetched('rest', tags)} };`;
  }

  return {
    name: 'texts',
    resolveId: (id) => (/^virtual:(?:texts$|text\/|rest\/)/.test(id) ? `\0${id}` : undefined),
    load(id) {
      if (id === '\0virtual:texts') return index();
      const [, which, tag] = /^\0virtual:(text|rest)\/([a-zA-Z-]+)$/.exec(id) ?? [];
      if (which === undefined || tag === undefined) return undefined;
      return part(which, tag, (path) => this.addWatchFile(path));
    },
  };
}
