// Pages of help, one for each thing that can be told: those beside the findings, and those of cautions out of the libraries.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './bundles.mjs';

const FOLDER = 'server/engine/findings/help';

/** Libraries that have cautions, in the order of a page. */
const COUNTRIES = { uk: 'United Kingdom', de: 'Germany', us: 'United States' };

/** Lines of a caution that a page shows. */
const SHOWN = /^ {2}(source|say|ask)\s+"(.*?)"\s*(?:#.*)?$/;

/** @returns each caution of a library: its name, its title, and its lines by their words */
function cautionsOf(country) {
  const text = readFileSync(path.join(root, `server/library/${country}.perp`), 'utf8');
  return text.split(/^(?=caution )/m).flatMap((block) => {
    const [, name, title] = /^caution (\S+) "(.*?)"/.exec(block) ?? [];
    if (!name) return [];
    const lines = block.split('\n').flatMap((line) => {
      const [, word, said] = SHOWN.exec(line) ?? [];
      return word ? [{ word, said: said.replaceAll('\\"', '"') }] : [];
    });
    return [{ name, title, lines }];
  });
}

function inCountry(country, { lines }) {
  const said = (word) => lines.filter((line) => line.word === word).map((line) => line.said);
  const words = [...said('say'), ...said('ask')].join(' ');
  return `**${COUNTRIES[country]}.** ${words} _Source: ${said('source').join('; ')}._`;
}

/** Pages by code. */
export function helpPages() {
  const pages = {};
  for (const file of readdirSync(path.join(root, FOLDER)).sort())
    pages[path.basename(file, '.md')] = readFileSync(path.join(root, FOLDER, file), 'utf8');
  const [, ...about] = pages.caution.trimEnd().split('\n\n');
  const cautions = new Map();
  for (const country of Object.keys(COUNTRIES))
    for (const caution of cautionsOf(country)) {
      const page = cautions.get(caution.name) ?? { title: caution.title, countries: [] };
      page.countries.push(inCountry(country, caution));
      cautions.set(caution.name, page);
    }
  for (const [name, { title, countries }] of cautions)
    pages[`caution-${name}`] ??= `${[`# ${title}`, ...countries, ...about].join('\n\n')}\n`;
  return pages;
}
