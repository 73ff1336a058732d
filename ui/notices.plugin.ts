// What others made and what comes with it: `notices.txt` beside the screens, with the licences of every crate of the
// programs and every npm package of the page, and a list for machines (CycloneDX 1.5) in `target/sbom`. Both are made
// of what is built in, each time: crates by Cargo's own resolution for one system (`STEADY_TARGET`, else this one), npm
// packages by the modules that are in the page.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import type { Plugin } from 'vite';

/** Something that others made. */
interface Part {
  name: string;
  version: string;
  /** As its package says, mostly in the words of SPDX. */
  licence: string;
  /** Package URL. */
  purl: string;
  /** Where its licence is looked for. */
  folder: string;
}

interface Package {
  id: string;
  name: string;
  version: string;
  license: string | null;
  source: string | null;
  manifest_path: string;
}

interface Metadata {
  packages: Package[];
  resolve: { nodes: { id: string; deps: { pkg: string; dep_kinds: { kind: string | null }[] }[] }[] };
}

const PROGRAMS = ['steady', 'steady-app'];
const LICENCE = /^(?:licen[cs]e|copying|copyright|notice|unlicense|ofl)/i;

export function notices(top: string): Plugin {
  const root = resolve(top);
  return {
    name: 'notices',
    apply: 'build',
    generateBundle(_, bundle) {
      const modules = Object.values(bundle).flatMap((file) => (file.type === 'chunk' ? file.moduleIds : []));
      const parts = [...crates(root), ...packages(modules), ...fonts(root)];
      parts.sort(
        (one, other) => one.name.localeCompare(other.name, 'en') || one.version.localeCompare(other.version, 'en'),
      );
      this.emitFile({ type: 'asset', fileName: 'notices.txt', source: text(parts) });
      const folder = join(root, 'target/sbom');
      mkdirSync(folder, { recursive: true });
      writeFileSync(join(folder, 'steady.cdx.json'), `${JSON.stringify(sbom(root, parts), null, 1)}\n`);
    },
  };
}

/** The crates of both programs, build tools left out. */
function crates(root: string): Part[] {
  const host = () => /^host: (.+)$/m.exec(execFileSync('rustc', ['-vV'], { encoding: 'utf8' }))?.[1] ?? '';
  const target = process.env.STEADY_TARGET ?? host();
  const words = ['metadata', '--locked', '--format-version', '1', '--filter-platform', target];
  const told = execFileSync('cargo', words, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const { packages, resolve: tree } = JSON.parse(told) as Metadata;
  const built = new Set<string>();
  const open = packages.filter(({ name, source }) => source === null && PROGRAMS.includes(name)).map(({ id }) => id);
  while (open.length > 0) {
    const id = open.pop() ?? '';
    if (built.has(id)) continue;
    built.add(id);
    const node = tree.nodes.find((each) => each.id === id);
    for (const { pkg, dep_kinds } of node?.deps ?? []) if (dep_kinds.some(({ kind }) => kind === null)) open.push(pkg);
  }
  return packages
    .filter(({ id, source }) => source !== null && built.has(id))
    .map(({ name, version, license, manifest_path }) => ({
      name,
      version,
      licence: license ?? '',
      purl: `pkg:cargo/${name}@${version}`,
      folder: dirname(manifest_path),
    }));
}

/** The npm packages that the page's modules are of. */
function packages(modules: string[]): Part[] {
  const folders = new Set(
    modules
      .map((id) => /^\0?(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1])
      .filter((folder) => folder !== undefined),
  );
  return [...folders].map((folder) => {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Record<
      string,
      string
    >;
    return {
      name: name ?? '',
      version: version ?? '',
      licence: license ?? '',
      purl: `pkg:npm/${(name ?? '').replace('@', '%40')}@${version ?? ''}`,
      folder,
    };
  });
}

/** The papers' letters. */
function fonts(root: string): Part[] {
  const folder = join(root, 'src-tauri/papers/fonts');
  return [{ name: 'Noto Sans and Noto Emoji (fonts)', version: '', licence: 'OFL-1.1', purl: '', folder }];
}

/** The parts in order, then every text once, with the parts that carry it. */
function text(parts: Part[]): string {
  const texts = new Map<string, string[]>();
  for (const part of parts) {
    for (const found of licences(part)) texts.set(found, [...(texts.get(found) ?? []), named(part)]);
  }
  const list = parts.map((part) => `${named(part)}: ${part.licence}`);
  const bodies = [...texts].map(([body, of]) => `${'='.repeat(72)}\n${of.join(', ')}\n\n${body}`);
  return `${list.join('\n')}\n\n${bodies.join('\n\n')}\n`;
}

const named = ({ name, version }: Part): string => `${name} ${version}`.trim();

/** The texts that a package brings; without any, its licence's name in the list has to do. */
function licences({ folder }: Part): string[] {
  if (!existsSync(folder)) return [];
  const names = readdirSync(folder, { withFileTypes: true }).filter((file) => file.isFile() && LICENCE.test(file.name));
  return names
    .map(({ name }) => readFileSync(join(folder, name), 'utf8').replace(/\r\n?/g, '\n').trim())
    .filter((found) => found !== '');
}

function sbom(root: string, parts: Part[]): unknown {
  const version = /^version = "(.+)"$/m.exec(readFileSync(join(root, 'Cargo.toml'), 'utf8'))?.[1] ?? '';
  const components = parts
    .filter(({ purl }) => purl !== '')
    .map(({ name, version: of, licence, purl }) => ({
      type: 'library',
      'bom-ref': purl,
      name,
      version: of,
      purl,
      licenses: [{ expression: licence.replaceAll('/', ' OR ') }],
    }));
  return {
    bomFormat: 'CycloneDX',
    specVersion: '1.5',
    version: 1,
    metadata: { component: { type: 'application', 'bom-ref': 'steady', name: 'steady', version } },
    components,
  };
}
