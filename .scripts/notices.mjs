// The licences of the packages that went into the bundles, from the bundles' own record of their inputs.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './bundles.mjs';
import { fontPackages } from './fonts.mjs';

const PACKAGE = /^(?:.*\/)?node_modules\/((?:@[^/]+\/)?[^/]+)\//;

/** The folder of the package that an input file belongs to, or undefined for a file of our own. */
function packageFolder(input) {
  return PACKAGE.exec(input)?.[0];
}

function licenceText(folder) {
  const files = readdirSync(folder);
  // A package of fonts has one licence for its code, which is not used, and one for the fonts.
  const file =
    files.find((name) => name === 'LICENSE_FONT') ??
    files.find((name) => /^(licen[cs]e|copying)(-mit)?(\.|$)/i.test(name));
  return file && readFileSync(path.join(folder, file), 'utf8').trim();
}

/** Packages that say MIT in their description and bring no text of it. */
const MIT_BY_DECLARATION = ['dfa', 'fontkit'];

function declared({ name, license, author }) {
  if (license !== 'MIT' || !MIT_BY_DECLARATION.includes(name)) return undefined;
  const text = readFileSync(path.join(root, 'LICENSE'), 'utf8');
  const [, terms] = text.split(/^Copyright .*$/m);
  const holder = String(author.name ?? author).replace(/ *<.*/, '');
  return `MIT License (as declared in its package.json)\n\nCopyright (c) ${holder}${terms.trimEnd()}`;
}

function entry(folder) {
  const absolute = path.join(root, folder);
  const about = JSON.parse(readFileSync(path.join(absolute, 'package.json'), 'utf8'));
  const text = licenceText(absolute) ?? declared(about);
  if (!text) throw new Error(`${about.name} ${about.version} is bundled, and has no licence file.`);
  const extra = path.join(absolute, 'thirdpartynotices.txt');
  const further = existsSync(extra) ? `\n\n${readFileSync(extra, 'utf8').trim()}` : '';
  return {
    name: about.name,
    text: `${about.name} ${about.version} (${about.license ?? 'its licence says'})\n\n${text}${further}`,
  };
}

/**
 * The text of THIRD-PARTY-NOTICES.txt.
 * @param metafiles esbuild's metafiles of all bundles that ship
 * @throws when a bundled package has no licence file
 */
export function notices(metafiles) {
  const inputs = metafiles.flatMap((metafile) => Object.keys(metafile.inputs));
  const folders = new Set([...inputs.map(packageFolder).filter(Boolean), ...fontPackages]);
  const entries = [...folders].map(entry).sort((a, b) => (a.name < b.name ? -1 : 1));
  const rule = `\n\n${'-'.repeat(78)}\n\n`;
  const head = 'Perpend contains parts of the packages below, each under its own licence.';
  return `${[head, ...entries.map((each) => each.text)].join(rule)}\n`;
}
