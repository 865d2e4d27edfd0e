// npm run package: the installable extension, out/perpend-<version>.vsix, with its contents checked.
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, statSync } from 'node:fs';
import path from 'node:path';
import vsce from '@vscode/vsce';
import { root } from './bundles.mjs';
import { must } from './steps.mjs';

/** All that may be in the package, and all that must be. */
const contents = [
  'CHANGELOG.md',
  'LICENSE',
  'README.md',
  'client/media/editor.png',
  'dist/THIRD-PARTY-NOTICES.txt',
  'dist/client.cjs',
  'dist/fonts/NotoSans-Bold.ttf',
  'dist/fonts/NotoSans-Regular.ttf',
  'dist/fonts/NotoSansMath-Signs.ttf',
  'dist/fonts/OFL.txt',
  'dist/library/de.perp',
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
  'dist/server.cjs',
  'grammar/textmate/language-configuration.json',
  'grammar/textmate/perpend.tmLanguage.json',
  'package.json',
];

/**
 * Dates the package by the last commit, so that one commit gives the same bytes wherever it is packaged.
 * Outside a git checkout vsce's own choice stands: the time of packaging.
 */
function fixDate() {
  const asked = spawnSync('git', ['log', '-1', '--format=%ct'], { cwd: root, encoding: 'utf8' });
  if (asked.status === 0) process.env.SOURCE_DATE_EPOCH ??= asked.stdout.trim();
}

function assertContents(files) {
  const odd = files.filter((file) => !contents.includes(file));
  const missing = contents.filter((file) => !files.includes(file));
  if (odd.length > 0) throw new Error(`must not be in the package: ${odd.join(', ')}`);
  if (missing.length > 0) throw new Error(`is not in the package: ${missing.join(', ')}`);
}

async function main() {
  if (!process.argv.includes('--built')) await must('.scripts/build.mjs');
  const files = await vsce.listFiles({ cwd: root, packageManager: vsce.PackageManager.None });
  assertContents(files);
  const { version } = JSON.parse(readFileSync(path.join(root, 'package.json'), 'utf8'));
  const file = path.join('out', `perpend-${version}.vsix`);
  mkdirSync(path.join(root, 'out'), { recursive: true });
  fixDate();
  // vsce 4 asks for Node 22; 3.9 is the newest that runs on Node 20.
  await vsce.createVSIX({
    cwd: root,
    packagePath: file,
    dependencies: false,
    allowMissingRepository: true,
    // The picture is in the package; there is no address that a link to it could be made to.
    rewriteRelativeLinks: false,
  });
  console.log(`\n${file}  ${(statSync(path.join(root, file)).size / 1024).toFixed(0)} KiB`);
}

main().catch((error) => {
  console.error(`package: ${error.message}`);
  process.exitCode = 1;
});
