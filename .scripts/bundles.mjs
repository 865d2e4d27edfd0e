// What is bundled, and how. The build, the tests and the packager all read this one list.
import { existsSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';

export const root = path.resolve(import.meta.dirname, '..');

/** The bundles that ship. `type` in package.json is "module", so CommonJS must be called `.cjs`. */
export const shipped = [
  { entry: 'client/extension.ts', out: 'dist/client.cjs', external: ['vscode'] },
  { entry: 'server/lsp/main.ts', out: 'dist/server.cjs' },
  { entry: 'server/cli/main.ts', out: 'dist/perpend.cjs', banner: '#!/usr/bin/env node' },
  // What writes PDF and XLSX is heavier than all the rest, and read only where one is asked for. It needs no Node.
  { entry: 'server/documents/paper/heavy.ts', out: 'dist/papers.cjs', platform: 'browser' },
];

/** The suite that runs inside an editor; it stays out of the package. */
export const suite = {
  entry: 'tests/host/suite/index.ts',
  out: 'dist/test/suite.cjs',
  external: ['vscode'],
  // Mocha's parallel mode names files of its own; a suite in one editor does not use it.
  logOverride: { 'require-resolve-not-external': 'silent' },
};

/** @throws when a bundle's entry file is not there: a build without it must not look like a build. */
function assertEntry({ entry, out }) {
  if (existsSync(path.join(root, entry))) return;
  throw new Error(`${out} cannot be built: its entry file ${entry} does not exist.`);
}

/** Our own sources ask for the heavy writers by their name; the other bundles find them in the one beside them. */
const papersBeside = {
  name: 'papers-beside',
  setup({ onResolve }) {
    onResolve({ filter: /\/documents\/paper\/heavy$/ }, () => ({
      path: './papers.cjs',
      external: true,
    }));
  },
};

/** fontkit unpacks fonts of the web (WOFF2) by it. Ours are none, and as it loads it unpacks a dictionary first. */
const noBrotli = {
  name: 'no-brotli',
  setup({ onLoad, onResolve }) {
    onResolve({ filter: /^brotli\// }, () => ({ path: 'brotli', namespace: 'none' }));
    onLoad({ filter: /^brotli$/, namespace: 'none' }, () => ({ contents: 'export default null;' }));
  },
};

/**
 * esbuild's options for one bundle. The editor we promise runs Node 20, older than the one that most
 * editors bring, and so does the command line: hence the target. Library files (`.perp`) become text.
 * Chevrotain 13 asks for Node 22 and uses nothing newer than `Object.groupBy`; `grammar/` loads a
 * polyfill for that before it, which is lighter than a second Node in every development checkout.
 */
function options(bundle, { dev, write }) {
  return {
    absWorkingDir: root,
    entryPoints: [bundle.entry],
    outfile: bundle.out,
    external: bundle.external ?? [],
    banner: bundle.banner ? { js: bundle.banner } : {},
    bundle: true,
    platform: bundle.platform ?? 'node',
    format: 'cjs',
    plugins: [papersBeside, noBrotli],
    // pdfkit looks beside itself for a file of colours that papers do not use, as it loads.
    define: { 'import.meta.url': '"https://none.invalid/"' },
    target: 'node20',
    loader: { '.perp': 'text' },
    minify: !dev,
    sourcemap: dev ? 'linked' : false,
    // Licence texts ship in one file of their own, see notices.mjs.
    legalComments: 'none',
    metafile: true,
    logLevel: 'warning',
    logOverride: bundle.logOverride ?? {},
    write,
  };
}

/**
 * Makes one bundle.
 * @returns esbuild's metafile: which source files and which outside modules went into it
 */
export async function makeBundle(bundle, { dev = false, write = true } = {}) {
  assertEntry(bundle);
  const made = await build(options(bundle, { dev, write }));
  return made.metafile;
}
