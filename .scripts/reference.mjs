// npm run reference: writes grammar/REFERENCE.md and the editor's files from the table of lines.
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { build } from 'esbuild';
import { root } from './bundles.mjs';
import { must } from './steps.mjs';

const out = path.join(root, '.cache/reference.mjs');
await build({
  absWorkingDir: root,
  entryPoints: ['grammar/generated.ts'],
  outfile: out,
  bundle: true,
  platform: 'node',
  format: 'esm',
  logLevel: 'warning',
});
const { generated } = await import(pathToFileURL(out).href);
const files = generated();
for (const [name, text] of Object.entries(files)) writeFileSync(path.join(root, name), text);
const json = Object.keys(files).filter((name) => name.endsWith('.json'));
await must('node_modules/@biomejs/biome/bin/biome', ['format', '--write', ...json]);
