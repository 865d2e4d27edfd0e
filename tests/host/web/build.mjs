// The extension as it ships, in a folder of its own, with the suite and its files in memory beside.
import { cpSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { build } from 'esbuild';
import { root } from '../places.mjs';

function examples() {
  const folder = path.join(root, 'examples');
  const names = readdirSync(folder, { recursive: true }).filter((name) => name.endsWith('.perp'));
  return Object.fromEntries(
    names.map((name) => [
      name.replaceAll('\\', '/'),
      readFileSync(path.join(folder, name), 'utf8'),
    ]),
  );
}

function bundle(entry, outfile, more = {}) {
  return build({
    absWorkingDir: root,
    entryPoints: [entry],
    outfile,
    bundle: true,
    platform: 'browser',
    format: 'cjs',
    target: 'es2022',
    external: ['vscode'],
    logLevel: 'warning',
    ...more,
  });
}

/** The folders that the package takes its files from. */
const SHIPPED = ['dist', 'grammar/textmate', 'client/media'];

/** @returns the folder of the extension and the suite in it */
export async function buildForWeb(folder) {
  const extension = path.join(folder, 'extension');
  const within = (name) => path.join(extension, name);
  for (const name of SHIPPED) cpSync(path.join(root, name), within(name), { recursive: true });
  for (const name of readdirSync(root).filter((each) => each.startsWith('package.nls')))
    cpSync(path.join(root, name), within(name));
  const manifest = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
  // As if there were no Node: a server of an editor would take it first.
  delete manifest.main;
  manifest.browser = './dist/web/entry.js';
  manifest.activationEvents.push('onFileSystem:memory');
  writeFileSync(within('package.json'), JSON.stringify(manifest));
  await bundle('tests/host/web/memory.ts', within('dist/web/entry.js'), {
    define: { EXAMPLES: JSON.stringify(examples()) },
    alias: { shipped: within('dist/web/client.js') },
  });
  await bundle('tests/host/web/suite.ts', within('dist/web/suite.js'));
  return { extension, suite: within('dist/web/suite.js') };
}
