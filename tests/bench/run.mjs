// Bundles the benchmarks and their empty server into a folder of their own, and runs them.
import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { build } from 'esbuild';

const root = path.resolve(import.meta.dirname, '../..');
const out = path.join(root, '.cache/bench');
await build({
  absWorkingDir: root,
  entryPoints: ['tests/bench/main.ts', 'tests/bench/empty-server.ts'],
  outdir: out,
  outExtension: { '.js': '.cjs' },
  bundle: true,
  minify: true,
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  loader: { '.perp': 'text' },
  external: ['playwright-core'],
  logLevel: 'warning',
});
const main = path.join(out, 'main.cjs');
const done = spawnSync(process.execPath, [main, path.join(out, 'empty-server.cjs')], {
  cwd: root,
  stdio: 'inherit',
});
process.exit(done.status ?? 1);
