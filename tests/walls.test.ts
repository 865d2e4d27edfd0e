import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { files, importsOf, read } from './tree';

/** What a folder may import: other folders, packages, and whether anything of Node. */
interface Wall {
  readonly folders: readonly string[];
  readonly packages: readonly string[];
  readonly node: boolean;
}

const walls: Readonly<Record<string, Wall>> = {
  shared: { folders: [], packages: ['decimal.js'], node: false },
  grammar: { folders: ['shared'], packages: ['chevrotain'], node: false },
  // The library is text to the engine, not code.
  'server/engine': { folders: ['grammar', 'shared', 'server/library'], packages: [], node: false },
  'server/lsp': {
    folders: ['server/engine', 'server/documents', 'shared'],
    packages: ['vscode-languageserver'],
    node: false,
  },
  // Files of a disk, standard output, the entry: the rest of the server also runs in a worker of a browser.
  'server/lsp/node': {
    folders: ['server/lsp', 'server/engine', 'server/documents', 'shared'],
    packages: ['vscode-languageserver'],
    node: true,
  },
  'server/cli': {
    folders: ['server/engine', 'server/documents', 'shared'],
    packages: [],
    node: true,
  },
  'server/documents': {
    folders: ['server/engine', 'shared'],
    packages: ['fflate', 'pdfkit'],
    node: false,
  },
  client: { folders: ['shared'], packages: ['vscode', 'vscode-languageclient'], node: false },
};

const ALLOWED_AT_TOP =
  /^(README\.md|DEVELOPERS\.md|CHANGELOG\.md|LICENSE|package(-lock|\.nls(\.[a-z-]+)?)?\.json|tsconfig\.json|client|server|grammar|examples|tests|shared|\..+)$/;

function isIn(file: string, folder: string): boolean {
  return file.startsWith(`${folder}/`);
}

/** In a folder, and in none that stands in it with walls of its own. */
function isOf(file: string, folder: string): boolean {
  const inner = Object.keys(walls).filter((each) => isIn(each, folder));
  return isIn(file, folder) && !inner.some((each) => isIn(file, each));
}

/** The package of an import: `a/b` is of `a`, `@a/b/c` of `@a/b`. */
function packageOf(specifier: string): string {
  return specifier
    .split('/')
    .slice(0, specifier.startsWith('@') ? 2 : 1)
    .join('/');
}

/** Why a file of `folder` may not import this, or undefined when it may. */
function breach(folder: string, file: string, specifier: string): string | undefined {
  const wall = walls[folder]!;
  const said = `${file} imports ${specifier}`;
  if (/^\..*\.[cm]?[jt]s$/.test(specifier)) return `${said}, with an extension`;
  if (specifier.startsWith('node:')) return wall.node ? undefined : said;
  if (!specifier.startsWith('.'))
    return wall.packages.includes(packageOf(specifier)) ? undefined : said;
  const target = path.posix.join(path.posix.dirname(file), specifier);
  return [folder, ...wall.folders].some((each) => isOf(target, each)) ? undefined : said;
}

function breaches(folder: string): string[] {
  const sources = files().filter((file) => isOf(file, folder) && /\.[cm]?[jt]s$/.test(file));
  return sources.flatMap((file) =>
    importsOf(read(file)).flatMap((specifier) => breach(folder, file, specifier) ?? []),
  );
}

describe('the walls between folders', () => {
  test.each(Object.keys(walls))('%s imports only what it may', (folder) => {
    expect(files().some((file) => isOf(file, folder) && file.endsWith('.ts'))).toBe(true);
    expect(breaches(folder)).toEqual([]);
  });

  test('no folder of code stands outside them', () => {
    const code = files().filter((file) => /\.[cm]?[jt]s$/.test(file));
    const known = [...Object.keys(walls), 'tests', '.scripts'];
    expect(code.filter((file) => !known.some((folder) => isIn(file, folder)))).toEqual([]);
  });

  test('the library and the examples are no code', () => {
    const data = files().filter((file) => isIn(file, 'server/library') || isIn(file, 'examples'));
    expect(data.length).toBeGreaterThan(0);
    expect(data.filter((file) => !/\.(perp|md|json|svg|png|gitignore)$/.test(file))).toEqual([]);
  });

  test('the top level holds only its few names', () => {
    const names = new Set(files().map((file) => file.split('/')[0]!));
    expect([...names].filter((name) => !ALLOWED_AT_TOP.test(name))).toEqual([]);
  });

  test('what runs in a worker of a browser too asks for nothing of Node', () => {
    const folders = ['shared', 'grammar', 'server/engine', 'server/documents', 'server/lsp'];
    const sources = files().filter((file) => folders.some((folder) => isOf(file, folder)));
    const ofNode = /\bBuffer\b|\bprocess\.|\b__dirname\b|\b__filename\b|\bNodeJS\b|\brequire\(/;
    expect(sources.filter((file) => file.endsWith('.ts') && ofNode.test(read(file)))).toEqual([]);
  });

  test('only the entries of the client and the server know where they run', () => {
    const own = files().filter((file) => /^(client|server)\/.*\.ts$/.test(file));
    const somewhere = own.filter((file) =>
      importsOf(read(file)).some((each) => /^vscode-language\w+\/(node|browser)$/.test(each)),
    );
    expect(somewhere.sort()).toEqual([
      'client/browser.ts',
      'client/node.ts',
      'server/lsp/browser/main.ts',
      'server/lsp/node/main.ts',
      'server/lsp/node/stdout.ts',
    ]);
  });

  test('what computes has no clock and no chance', () => {
    const pure = ['shared', 'grammar', 'server/engine', 'server/documents'];
    const sources = files().filter((file) => pure.some((folder) => isIn(file, folder)));
    const impure = /\bDate\.now\b|\bnew Date\(\s*\)|\bMath\.random\b|\bperformance\.now\b/;
    expect(sources.filter((file) => file.endsWith('.ts') && impure.test(read(file)))).toEqual([]);
  });
});

describe('the reader of imports', () => {
  test('finds each way to write one', () => {
    const text = [
      "import a from 'one';",
      "import type { B } from './two';",
      'import {',
      '  c,',
      "} from '../three';",
      "import * as d from 'node:four';",
      "import e, { f } from 'five';",
      "import 'six';",
      "export { g } from './seven';",
      "export * from './eight';",
      "export type { H } from './nine';",
      "const i = await import('ten');",
      "const j = require('eleven');",
      'const text = "taken from \'nowhere\'";',
    ].join('\n');
    const wanted = [
      'one',
      './two',
      '../three',
      'node:four',
      'five',
      'six',
      './seven',
      './eight',
      './nine',
      'ten',
      'eleven',
    ];
    expect(importsOf(text).sort()).toEqual(wanted.sort());
  });

  test('tells a breach from what is allowed', () => {
    const of = (specifier: string) => breach('grammar', 'grammar/read/wall.ts', specifier);
    expect(['../tokens', '../../shared/span', 'chevrotain'].map(of)).toEqual(
      Array(3).fill(undefined),
    );
    const wrong = [
      '../../server/engine/price',
      'vscode',
      'node:fs',
      '../tokens.ts',
      '../../shared-not/x',
    ];
    expect(wrong.map(of)).not.toContain(undefined);
  });
});
