// What the package may weigh: a build that outgrows it fails, and somebody looks for what came in.
import { statSync } from 'node:fs';
import path from 'node:path';
import { root } from './bundles.mjs';

const KIB = 1024;

/** Of the whole package, packed. */
const PACKAGE = 1.7 * KIB * KIB;

/** Of each bundle, not packed: what an editor has to read. */
export const bundleBudgets = {
  'dist/engine.cjs': 1400 * KIB,
  'dist/client.cjs': 560 * KIB,
  'dist/server.cjs': 300 * KIB,
  'dist/perpend.cjs': 180 * KIB,
  'dist/papers.cjs': 560 * KIB,
  'dist/web/client.js': 520 * KIB,
  'dist/web/server.js': 290 * KIB,
  'dist/preview/preview.js': 80 * KIB,
};

function assertSize(file, most) {
  const { size } = statSync(path.resolve(root, file));
  const kib = (bytes) => `${Math.round(bytes / KIB)} KiB`;
  if (size > most) throw new Error(`${file} has ${kib(size)}; at most ${kib(most)} were planned.`);
}

/** @throws when the package or one of its bundles is larger than was planned */
export function assertSizes(vsix) {
  for (const [file, most] of Object.entries(bundleBudgets)) assertSize(file, most);
  assertSize(vsix, PACKAGE);
}
