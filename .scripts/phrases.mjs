// npm run phrases: writes what a translator is given, client/l10n/server.json and client/l10n/bundle.l10n.json,
// from the phrases in the sources.
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { getL10nJson } from '@vscode/l10n-dev';
import { build } from 'esbuild';
import { parseAst } from 'vite';
import { root } from './bundles.mjs';

/** Where all languages of the extension are kept. */
export const FOLDER = 'client/l10n';
/** The server's phrases in English; `server.de.json` has the German of each. */
export const SERVER = `${FOLDER}/server.json`;
/** The client's, as `vscode.l10n.t` has them. */
export const CLIENT = `${FOLDER}/bundle.l10n.json`;

const TAGS = new Set(['phrase', 'later']);

function sources(...folders) {
  const found = folders.flatMap((folder) =>
    readdirSync(path.join(root, folder), { recursive: true }).map((name) =>
      path.join(folder, name).replaceAll('\\', '/'),
    ),
  );
  return found.filter((name) => name.endsWith('.ts') && !name.endsWith('.d.ts')).sort();
}

const text = (file) => readFileSync(path.join(root, file), 'utf8');

/** Calls `see` with every node of a syntax tree. */
function walk(node, see) {
  if (!node || typeof node !== 'object') return;
  if (typeof node.type === 'string') see(node);
  for (const value of Object.values(node)) walk(value, see);
}

/** A phrase as a bundle calls it: the same as `keyOf` of shared/phrase.ts. */
const keyOf = ({ quasis }) =>
  quasis.reduce((key, { value }, i) => key + (i ? `{${i - 1}}` : '') + value.cooked, '');

export function phrasesIn(source, file) {
  const found = [];
  walk(parseAst(source, { lang: 'ts' }, file), ({ type, tag, quasi }) => {
    if (type === 'TaggedTemplateExpression' && TAGS.has(tag.name)) found.push(keyOf(quasi));
  });
  return found;
}

/** The sentences of the table of lines: data, so that they are asked for and not read. */
async function wordsOfLines() {
  const outfile = path.join(root, '.cache/words.mjs');
  const options = { bundle: true, platform: 'node', format: 'esm', logLevel: 'warning' };
  const entryPoints = ['grammar/reference/words.ts'];
  await build({ absWorkingDir: root, entryPoints, outfile, ...options });
  return (await import(pathToFileURL(outfile).href)).wordsOfLines();
}

/** @returns English phrase to itself, sorted: the form that every other language has */
export async function serverPhrases(lines) {
  const files = sources('shared', 'grammar', 'server').filter((file) =>
    /\b(phrase|later)`/.test(text(file)),
  );
  const all = [...files.flatMap((file) => phrasesIn(text(file), file)), ...lines];
  return Object.fromEntries([...new Set(all)].sort().map((phrase) => [phrase, phrase]));
}

export async function clientPhrases() {
  const files = sources('client').filter((file) => text(file).includes('l10n'));
  const found = await getL10nJson(
    files.map((file) => ({ extension: '.ts', contents: text(file) })),
  );
  return Object.fromEntries(Object.entries(found).sort(([a], [b]) => (a < b ? -1 : 1)));
}

export const written = (phrases) => `${JSON.stringify(phrases, null, 2)}\n`;

async function main() {
  mkdirSync(path.join(root, FOLDER), { recursive: true });
  const server = await serverPhrases(await wordsOfLines());
  const client = await clientPhrases();
  writeFileSync(path.join(root, SERVER), written(server));
  writeFileSync(path.join(root, CLIENT), written(client));
  for (const [file, phrases] of [
    [SERVER, server],
    [CLIENT, client],
  ])
    console.log(`${file}: ${Object.keys(phrases).length} phrases`);
}

if (process.argv[1] === import.meta.filename) await main();
