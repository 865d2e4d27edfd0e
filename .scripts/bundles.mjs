// What is bundled, and how. The build, the tests and the packager all read this one list.
import { existsSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { ENGINE, engineBeside, engineEntry } from './engine.mjs';

export const root = path.resolve(import.meta.dirname, '..');

/** For a browser: CommonJS too, since that is how an editor loads an extension there. */
const WEB = { platform: 'browser', target: 'es2022' };

/** A script or a style sheet of a page that an editor shows. */
const PAGE = { platform: 'browser', target: 'es2022', format: 'iife' };

/**
 * The bundles that ship. package.json has no `type`: an editor in a browser loads a `.js` of CommonJS and nothing else,
 * and asks package.json whether it is that.
 */
export const shipped = [
  ENGINE,
  { entry: 'client/node.ts', out: 'dist/client.cjs', external: ['vscode'] },
  { entry: 'client/browser.ts', out: 'dist/web/client.js', external: ['vscode'], ...WEB },
  { entry: 'server/lsp/node/main.ts', out: 'dist/server.cjs', asks: true },
  { entry: 'server/lsp/browser/main.ts', out: 'dist/web/server.js', asks: true, ...WEB },
  {
    entry: 'server/cli/main.ts',
    out: 'dist/perpend.cjs',
    banner: '#!/usr/bin/env node',
    asks: true,
  },
  // What writes PDF and XLSX is heavier than all the rest, and read only where one is asked for. It needs no Node.
  { entry: 'server/documents/paper/heavy.ts', out: 'dist/papers.cjs', platform: 'browser' },
  // The page of the preview: it may read nothing outside its folder.
  { entry: 'client/preview/page/main.ts', out: 'dist/preview/preview.js', ...PAGE },
  { entry: 'client/preview/page/page.css', out: 'dist/preview/preview.css', ...PAGE },
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
function assertEntry({ entry, out, engine }) {
  if (engine) return;
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
function options(bundle, { dev, write, apart }) {
  const entry = bundle.engine ? { stdin: engineEntry() } : { entryPoints: [bundle.entry] };
  const beside = apart && bundle.asks ? [engineBeside(bundle.out)] : [];
  return {
    absWorkingDir: root,
    ...entry,
    outfile: bundle.out,
    external: bundle.external ?? [],
    banner: bundle.banner ? { js: bundle.banner } : {},
    bundle: true,
    platform: bundle.platform ?? 'node',
    format: bundle.format ?? 'cjs',
    plugins: [papersBeside, noBrotli, ...beside],
    // pdfkit looks beside itself for a file of colours that papers do not use, as it loads.
    define: { 'import.meta.url': '"https://none.invalid/"' },
    target: bundle.target ?? 'node20',
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
 * @param apart whether it asks for the engine in the bundle beside it, as what ships does; else it holds all it needs
 * @returns esbuild's metafile: which source files and which outside modules went into it
 */
export async function makeBundle(bundle, { dev = false, write = true, apart = false } = {}) {
  assertEntry(bundle);
  const made = await build(options(bundle, { dev, write, apart }));
  return made.metafile;
}
