// npm run build: every bundle into dist/. With --dev: readable, with source maps.
import { chmodSync, cpSync, rmSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { makeBundle, root, shipped, suite } from './bundles.mjs';
import { examples } from './examples.mjs';
import { makeFonts } from './fonts.mjs';
import { helpPages } from './help.mjs';
import { notices } from './notices.mjs';

function report(bundle, metafile) {
  const bytes = metafile.outputs[bundle.out].bytes;
  console.log(`${bundle.out.padEnd(20)} ${(bytes / 1024).toFixed(0).padStart(6)} KiB`);
}

async function make(bundle, dev) {
  const metafile = await makeBundle(bundle, { dev, apart: true });
  report(bundle, metafile);
  return metafile;
}

async function main() {
  const dev = process.argv.includes('--dev');
  rmSync(path.join(root, 'dist'), { recursive: true, force: true });
  const metafiles = [];
  for (const bundle of shipped) metafiles.push(await make(bundle, dev));
  // The text is in the bundles too; the files are for an editor to open where a figure came from.
  cpSync(path.join(root, 'server/library'), path.join(root, 'dist/library'), { recursive: true });
  writeFileSync(path.join(root, 'dist/help.json'), JSON.stringify(helpPages()));
  writeFileSync(path.join(root, 'dist/examples.json'), JSON.stringify(examples()));
  await makeFonts(path.join(root, 'dist/fonts'));
  chmodSync(path.join(root, 'dist/perpend.cjs'), 0o755);
  writeFileSync(path.join(root, 'dist/THIRD-PARTY-NOTICES.txt'), notices(metafiles));
  await make(suite, true); // never ships, and its stacks are to be read
}

main().catch((error) => {
  console.error(`build: ${error.message}`);
  process.exitCode = 1;
});
