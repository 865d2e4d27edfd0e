// The licences of the packages that went into the bundles, from the bundles' own record of their inputs.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './bundles.mjs';

const PACKAGE = /^(?:.*\/)?node_modules\/((?:@[^/]+\/)?[^/]+)\//;

/** The folder of the package that an input file belongs to, or undefined for a file of our own. */
function packageFolder(input) {
  return PACKAGE.exec(input)?.[0];
}

function licenceText(folder) {
  const file = readdirSync(folder).find((name) => /^licen[cs]e(\.|$)/i.test(name));
  return file && readFileSync(path.join(folder, file), 'utf8').trim();
}

function entry(folder) {
  const absolute = path.join(root, folder);
  const about = JSON.parse(readFileSync(path.join(absolute, 'package.json'), 'utf8'));
  const text = licenceText(absolute);
  if (!text) throw new Error(`${about.name} ${about.version} is bundled, and has no licence file.`);
  const extra = path.join(absolute, 'thirdpartynotices.txt');
  const further = existsSync(extra) ? `\n\n${readFileSync(extra, 'utf8').trim()}` : '';
  return {
    name: about.name,
    text: `${about.name} ${about.version} (${about.license})\n\n${text}${further}`,
  };
}

/**
 * The text of THIRD-PARTY-NOTICES.txt.
 * @param metafiles esbuild's metafiles of all bundles that ship
 * @throws when a bundled package has no licence file
 */
export function notices(metafiles) {
  const inputs = metafiles.flatMap((metafile) => Object.keys(metafile.inputs));
  const folders = new Set(inputs.map(packageFolder).filter(Boolean));
  const entries = [...folders].map(entry).sort((a, b) => (a.name < b.name ? -1 : 1));
  const rule = `\n\n${'-'.repeat(78)}\n\n`;
  const head = 'Perpend contains parts of the packages below, each under its own licence.';
  return `${[head, ...entries.map((each) => each.text)].join(rule)}\n`;
}
