// npm run package: the installable extension, out/perpend-<version>.vsix, with its contents checked.
import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import vsce from '@vscode/vsce';
import { assertSizes } from './budget.mjs';
import { root } from './bundles.mjs';
import { must } from './steps.mjs';

/** All that may be in the package, and all that must be. */
const contents = [
  'CHANGELOG.md',
  'LICENSE',
  'README.md',
  'client/l10n/bundle.l10n.de.json',
  'client/l10n/server.de.json',
  'client/media/editor.png',
  'client/media/file-dark.svg',
  'client/media/file-light.svg',
  'client/media/first/example.svg',
  'client/media/first/firm.svg',
  'client/media/first/measure.svg',
  'client/media/first/new.svg',
  'client/media/first/preview.svg',
  'client/media/first/quote.svg',
  'client/media/icon.png',
  'client/media/job.svg',
  'client/media/preview-dark.svg',
  'client/media/preview-light.svg',
  'dist/THIRD-PARTY-NOTICES.txt',
  'dist/client.cjs',
  'dist/engine.cjs',
  'dist/examples.json',
  'dist/fonts/NotoSans-Bold.ttf',
  'dist/fonts/NotoSans-Regular.ttf',
  'dist/fonts/NotoSansMath-Signs.ttf',
  'dist/fonts/OFL.txt',
  'dist/help.json',
  'dist/library/de.perp',
  'dist/library/starts/de.perp',
  'dist/library/starts/uk.perp',
  'dist/library/starts/us.perp',
  'dist/library/templates/frost-damage.perp',
  'dist/library/templates/garden-wall.perp',
  'dist/library/templates/gate-piers.perp',
  'dist/library/templates/knocked-pier.perp',
  'dist/library/templates/repoint-wall.perp',
  'dist/library/uk.perp',
  'dist/library/us.perp',
  'dist/library/world.perp',
  'dist/papers.cjs',
  'dist/perpend.cjs',
  'dist/preview/preview.css',
  'dist/preview/preview.js',
  'dist/server.cjs',
  'dist/web/client.js',
  'dist/web/server.js',
  'grammar/textmate/language-configuration.json',
  'grammar/textmate/perpend.tmLanguage.json',
  'package.json',
  'package.nls.de.json',
  'package.nls.json',
];

/**
 * Dates the package by the last commit, so that one commit gives the same bytes wherever it is packaged.
 * Outside a git checkout, or one that is another user's, by the time now: the same for both packings.
 */
function fixDate() {
  const asked = spawnSync('git', ['log', '-1', '--format=%ct'], { cwd: root, encoding: 'utf8' });
  const now = String(Math.floor(Date.now() / 1000));
  process.env.SOURCE_DATE_EPOCH ??= (asked.status === 0 && asked.stdout.trim()) || now;
}

function assertContents(files) {
  const odd = files.filter((file) => !contents.includes(file));
  const missing = contents.filter((file) => !files.includes(file));
  if (odd.length > 0) throw new Error(`must not be in the package: ${odd.join(', ')}`);
  if (missing.length > 0) throw new Error(`is not in the package: ${missing.join(', ')}`);
}

/** Folders that files of the package stand in; of these, package.json says which. */
const FOLDERS = ['client/l10n', 'client/media', 'dist', 'grammar/textmate'];
const AT_TOP = /^(package(\.nls.*)?\.json|README\.md|CHANGELOG\.md|LICENSE)$/;

/** Rights are packed too, and hang on who checked the files out: here the same for everybody. */
function sameRights(folder) {
  for (const entry of readdirSync(folder, { withFileTypes: true, recursive: true })) {
    const runs = entry.isDirectory() || entry.name === 'perpend.cjs';
    chmodSync(path.join(entry.parentPath ?? entry.path, entry.name), runs ? 0o755 : 0o644);
  }
}

/** Copies what may be packed into a folder of its own: vsce looks through all that stands around a manifest. */
function stage(folder) {
  const names = [...FOLDERS, ...readdirSync(root).filter((name) => AT_TOP.test(name))];
  for (const name of names)
    if (existsSync(path.join(root, name)))
      cpSync(path.join(root, name), path.join(folder, name), { recursive: true });
  sameRights(folder);
}

/** vsce 4 asks for Node 22; 3.9 is the newest that runs on Node 20. */
function pack(cwd, packagePath) {
  return vsce.createVSIX({
    cwd,
    packagePath,
    dependencies: false,
    allowMissingRepository: true,
    // The picture is in the package; there is no address that a link to it could be made to.
    rewriteRelativeLinks: false,
  });
}

const hashOf = (file) => createHash('sha256').update(readFileSync(file)).digest('hex');

/** Whoever packs the same files gets the same bytes, and can see that nothing else is in them. */
async function assertSameAgain(file, staged) {
  const again = path.join(staged, '..', 'again.vsix');
  await pack(staged, again);
  if (hashOf(again) !== hashOf(file))
    throw new Error('the package has other bytes when it is packed again');
}

/** @param file where to. @param staged a folder with what may be packed */
async function packChecked(file, staged) {
  const packageManager = vsce.PackageManager.None;
  assertContents(await vsce.listFiles({ cwd: staged, packageManager }));
  await pack(staged, file);
  await assertSameAgain(file, staged);
  assertSizes(file);
}

/** An archive keeps the time of the place it was packed at, and its files stand in the order of its language. */
const EVERYWHERE = { TZ: 'UTC', LC_ALL: 'C' };

/** The language of a program is settled as it begins. @returns whether it was done by another */
function doneElsewhere() {
  if (Object.entries(EVERYWHERE).every(([name, value]) => process.env[name] === value))
    return false;
  const env = { ...process.env, ...EVERYWHERE };
  const done = spawnSync(process.execPath, process.argv.slice(1), { env, stdio: 'inherit' });
  process.exitCode = done.status ?? 1;
  return true;
}

async function main() {
  if (doneElsewhere()) return;
  if (!process.argv.includes('--built')) await must('.scripts/build.mjs');
  const { version } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
  const name = `out/perpend-${version}.vsix`;
  const file = path.join(root, name);
  mkdirSync(path.dirname(file), { recursive: true });
  fixDate();
  const folder = mkdtempSync(path.join(tmpdir(), 'perpend-pack-'));
  try {
    stage(path.join(folder, 'staged'));
    await packChecked(file, path.join(folder, 'staged'));
  } finally {
    rmSync(folder, { recursive: true });
  }
  console.log(`\n${name}  ${(statSync(file).size / 1024).toFixed(0)} KiB  sha256 ${hashOf(file)}`);
}

main().catch((error) => {
  console.error(`package: ${error.message}`);
  process.exitCode = 1;
});
