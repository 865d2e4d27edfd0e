// The examples as one file for the editor to copy out: their texts, and what each teaches.
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { root } from './bundles.mjs';

const FOLDER = path.join(root, 'examples');

/** In the order in which they are learnt from. */
const ORDER = [
  'garden-wall',
  'repair',
  'knocked-pier',
  'repointing',
  'gate-piers',
  'arched-gate',
  'enclosure',
  'stepped-wall',
  'log-store',
  'us-wall',
  'de-mauer',
];

function texts() {
  const names = readdirSync(FOLDER, { recursive: true }).map((name) => name.replaceAll('\\', '/'));
  const shown = names.filter((name) => /\.perp$|history\.md$/.test(name)).sort();
  return Object.fromEntries(
    shown.map((name) => [name, readFileSync(path.join(FOLDER, name), 'utf8')]),
  );
}

/** Its title, and the comment at its head that says what it is there for. */
function jobOf(file, text) {
  const lesson = /^perpend 1\n\n((?:#.*\n)+)/.exec(text)?.[1] ?? '';
  return {
    file,
    title: /^job "(.*)"/m.exec(text)?.[1] ?? file,
    lesson: inList(lesson),
  };
}

/** A row of the list is short, and every one of them is a lesson. */
function inList(lesson) {
  const text = lesson.replace(/^# ?/gm, '').replace(/\s+/g, ' ').replaceAll('`', '').trim();
  const what = text.replace(/^A lesson:? /, '');
  return what.charAt(0).toUpperCase() + what.slice(1);
}

export function examples() {
  const files = texts();
  const shown = [...ORDER.map((name) => `${name}/job.perp`), 'whole-life/11-paid.perp'];
  const jobs = shown.map((name) => jobOf(name, files[name]));
  return { jobs, files };
}
