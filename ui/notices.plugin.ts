// What others made and what comes with it: `notices.txt` beside the screens, with the licences of every crate of the
// programs and every npm package of the page, and a list for machines (CycloneDX 1.5) in `target/sbom`, with the sums
// that the locks hold and with what needs what. Both are made of what is built in, each time: crates by Cargo's own
// resolution for one system (`STEADY_TARGET`, else this one), npm packages by the modules that are in the page.
import { execFileSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import type { Plugin } from 'vite';

/** Something that others made. */
interface Part {
  name: string;
  version: string;
  /** As its package says, mostly in the words of SPDX. */
  licence: string;
  /** Package URL; none of what comes from no registry. */
  purl: string;
  /** Where its licence is looked for. */
  folder: string;
  /** The sum that its lock names, hex. */
  sum?: { alg: 'SHA-256' | 'SHA-512'; content: string };
  /** What it needs, by package URL. */
  needs: string[];
  /** The programs or the page ask for it themselves. */
  asked: boolean;
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
      const parts = [...crates(root), ...packages(root, modules), ...fonts(root)];
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

/** The system that is built for. */
function system(): string {
  const told = () => execFileSync('rustc', ['-vV'], { encoding: 'utf8' });
  return process.env.STEADY_TARGET ?? /^host: (.+)$/m.exec(told())?.[1] ?? '';
}

/** The crates of both programs, build tools left out. */
function crates(root: string): Part[] {
  const words = ['metadata', '--locked', '--format-version', '1', '--filter-platform', system()];
  const told = execFileSync('cargo', words, {
    cwd: root,
    encoding: 'utf8',
    maxBuffer: 1 << 28,
    stdio: ['ignore', 'pipe', 'inherit'],
  });
  const { packages, resolve: tree } = JSON.parse(told) as Metadata;
  const byId = new Map(packages.map((each) => [each.id, each]));
  const needs = new Map(
    tree.nodes.map(({ id, deps }) => [
      id,
      deps.filter(({ dep_kinds }) => dep_kinds.some(({ kind }) => kind === null)).map(({ pkg }) => pkg),
    ]),
  );
  const built = new Set<string>();
  const open = packages.filter(({ name, source }) => source === null && PROGRAMS.includes(name)).map(({ id }) => id);
  while (open.length > 0) {
    const id = open.pop() ?? '';
    if (built.has(id)) continue;
    built.add(id);
    open.push(...(needs.get(id) ?? []));
  }
  const isOurs = (id: string) => byId.get(id)?.source === null;
  const asked = new Set([...built].filter(isOurs).flatMap((id) => needs.get(id) ?? []));
  const purl = ({ name, version }: Package) => `pkg:cargo/${name}@${version}`;
  const sums = crateSums(root);
  return packages
    .filter(({ id }) => built.has(id) && !isOurs(id))
    .map((each) => ({
      name: each.name,
      version: each.version,
      licence: each.license ?? '',
      purl: purl(each),
      folder: dirname(each.manifest_path),
      sum: sums.get(`${each.name} ${each.version}`),
      needs: (needs.get(each.id) ?? []).flatMap((id) => byId.get(id) ?? []).map(purl),
      asked: asked.has(each.id),
    }));
}

/** The sums in Cargo's lock, by name and version. */
function crateSums(root: string): Map<string, Part['sum']> {
  const lock = readFileSync(join(root, 'Cargo.lock'), 'utf8');
  const row = /^name = "(.+)"\nversion = "(.+)"\nsource = ".+"\nchecksum = "([0-9a-f]{64})"$/gm;
  return new Map(
    [...lock.matchAll(row)].map(([, name, version, content]) => [
      `${name ?? ''} ${version ?? ''}`,
      { alg: 'SHA-256', content: content ?? '' },
    ]),
  );
}

interface Locked {
  integrity?: string;
  dependencies?: Record<string, string>;
}

/** The npm packages that the page's modules are of. */
function packages(root: string, modules: string[]): Part[] {
  const folders = new Set(
    modules
      .map((id) => /^\0?(.*node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1])
      .filter((folder) => folder !== undefined),
  );
  const lock = JSON.parse(readFileSync(join(root, 'ui/package-lock.json'), 'utf8')) as {
    packages: Record<string, Locked>;
  };
  const ours = JSON.parse(readFileSync(join(root, 'ui/package.json'), 'utf8')) as {
    dependencies?: Record<string, string>;
    devDependencies?: Record<string, string>;
  };
  const asked = new Set(Object.keys({ ...ours.dependencies, ...ours.devDependencies }));
  const found = [...folders].map((folder) => {
    const own = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8')) as Record<string, string>;
    const { name = '', version = '', license = '' } = own;
    const locked = lock.packages[relative(join(root, 'ui'), folder).replaceAll('\\', '/')];
    const sum = /^sha512-(.+)$/.exec(locked?.integrity ?? '')?.[1];
    return {
      name,
      version,
      licence: license,
      purl: `pkg:npm/${name.replace('@', '%40')}@${version}`,
      folder,
      sum: sum ? { alg: 'SHA-512' as const, content: Buffer.from(sum, 'base64').toString('hex') } : undefined,
      needs: Object.keys(locked?.dependencies ?? {}),
      asked: asked.has(name),
    };
  });
  // Only what is in the page itself.
  return found.map((part) => ({
    ...part,
    needs: found.filter(({ name }) => part.needs.includes(name)).map(({ purl }) => purl),
  }));
}

/** The papers' letters. */
function fonts(root: string): Part[] {
  const folder = join(root, 'src-tauri/papers/fonts');
  const name = 'Noto Sans and Noto Emoji (fonts)';
  return [{ name, version: '', licence: 'OFL-1.1', purl: '', folder, needs: [], asked: true }];
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
  const listed = parts.filter(({ purl }) => purl !== '');
  const components = listed.map(({ name, version: of, licence, purl, sum }) => ({
    type: 'library',
    'bom-ref': purl,
    name,
    version: of,
    purl,
    hashes: sum ? [sum] : [],
    licenses: [{ expression: licence.replaceAll('/', ' OR ') }],
  }));
  const asked = listed.filter((part) => part.asked).map(({ purl }) => purl);
  return {
    bomFormat: 'CycloneDX',
    specVersion: '1.5',
    version: 1,
    metadata: {
      component: { type: 'application', 'bom-ref': 'steady', name: 'steady', version },
      properties: [{ name: 'steady:built-for', value: system() }],
    },
    components,
    dependencies: [
      { ref: 'steady', dependsOn: asked },
      ...listed.map(({ purl, needs }) => ({ ref: purl, dependsOn: [...new Set(needs)] })),
    ],
  };
}
