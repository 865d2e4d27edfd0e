/** One job through its whole life, replayed in a git repository: what is told in its history.md, commit by commit. */
import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { inside } from '../cli/inside';
import { readInvoice } from '../documents/en16931/read';
import { broken } from '../documents/en16931/rules';

const EXAMPLES = path.resolve(import.meta.dirname, '../../examples');
const FOLDER = path.join(EXAMPLES, 'whole-life');

interface Step {
  readonly file: string;
  readonly day: string;
  readonly what: string;
  /** Each with the day it was run on. */
  readonly commands: readonly { readonly words: readonly string[]; readonly day: string }[];
  readonly price: string;
  readonly option: string;
}

/** `record paid £484.50` as a shell reads it. */
const wordsOf = (command: string) =>
  [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, text, word]) => text ?? word!);

function stepsTold(): Step[] {
  const rows = readFileSync(path.join(FOLDER, 'history.md'), 'utf8').matchAll(
    /^\| (\d\d-\S+) \| (\S+) \| (.+?) \| (.+?) \| (\S+) \| (\S+) \|$/gm,
  );
  return [...rows].map(([, file, day, what, how, price, option]) => ({
    file: file!,
    day: day!,
    what: what!,
    commands: [...how!.matchAll(/`([^`]+)`(?: on (\S+?),)?/g)].map(([, command, on]) => ({
      words: wordsOf(command!),
      day: on ?? day!,
    })),
    price: price!,
    option: option!,
  }));
}

const steps = stepsTold();
const textOf = (file: string) => readFileSync(path.join(FOLDER, `${file}.perp`), 'utf8');

let root: string;
let job: string;

function git(...args: string[]): string {
  const identity = ['-c', 'user.name=Wren', '-c', 'user.email=wren@example.invalid'];
  const done = spawnSync('git', [...identity, ...args], { cwd: root, encoding: 'utf8' });
  expect(done.stderr).toBe('');
  return done.stdout;
}

const perpend = (...args: string[]) => inside(args, { cwd: path.dirname(job) });

beforeAll(() => {
  root = mkdtempSync(path.join(tmpdir(), 'perpend-life-'));
  job = path.join(root, 'lane/job.perp');
  mkdirSync(path.dirname(job));
  for (const file of ['firm.perp', 'repairs.perp'])
    copyFileSync(path.join(EXAMPLES, file), path.join(root, file));
  git('init', '-q', '-b', 'main');
  for (const { file, what } of steps) {
    writeFileSync(job, textOf(file));
    git('add', '-A');
    git('commit', '-q', '-m', what);
  }
});

afterAll(() => rmSync(root, { recursive: true, force: true }));

test('there are eleven days of it', () => {
  expect(steps).toHaveLength(11);
  expect(steps.filter((step) => step.commands.length)).toHaveLength(7);
  expect(git('log', '--format=%s').trim().split('\n').reverse()).toEqual(steps.map((s) => s.what));
});

const written = steps.filter((step) => step.commands.length);

test.each(written)('$file is what its commands write', ({ file, commands }) => {
  const cwd = path.join(root, file);
  mkdirSync(cwd);
  const at = steps.findIndex((step) => step.file === file);
  writeFileSync(path.join(cwd, 'job.perp'), textOf(steps[at - 1]!.file));
  for (const { words, day } of commands) {
    const [command, ...rest] = words;
    const ran = inside([command!, 'job.perp', ...rest, '--date', day], { cwd });
    expect(ran.err).toBe('');
  }
  expect(readFileSync(path.join(cwd, 'job.perp'), 'utf8')).toBe(textOf(file));
});

test.each(steps)('$file comes to the price that is told', ({ file, price, option }) => {
  const { out } = inside(['price', path.join(FOLDER, `${file}.perp`), '--json']);
  const [priced] = (JSON.parse(out) as { files: { figures: Figure[] }[] }).files;
  const figure = (id: string) => priced!.figures.find((f) => f.id === id);
  const total = figure('job.price')!;
  expect(total.complete ? total.text : 'incomplete').toBe(price);
  expect(figure('option.all-round.price')?.text ?? '–').toBe(option);
});

interface Figure {
  readonly id: string;
  readonly text: string;
  readonly complete: boolean;
}

test('git tells what the revision moved, by meaning', () => {
  const revised = steps.length - 5;
  const { out } = perpend('compare', 'job.perp', '--since', `HEAD~${revised + 1}`);
  expect(out).toContain('rebuild 1.8 m x 9 courses → 2.25 m x 12 courses');
  expect(out).toContain('recope 1.8 m → 2.25 m');
  expect(out).toMatch(/Price +£918\.00 +£1,308\.00 +\+£390\.00/);
});

test('the note to the client says why, what and how much, and no cost', () => {
  const { out } = perpend(
    'changes',
    'job.perp',
    '--since',
    `HEAD~${steps.length - 4}`,
    '--as',
    'md',
  );
  expect(out).toContain('the split runs on to the gate');
  expect(out).toMatch(/£918\.00.*£1,938\.00.*£1,020\.00/);
  expect(out).toContain('Added: The rest of the lane side');
  expect(out).not.toContain('27.50');
  expect(out).not.toContain('£1,224.26');
});

test('the invoices add up to the price, and keep the rules of EN 16931', () => {
  const number = (xml: string, name: string) =>
    Number(readInvoice(xml).one(`LegalMonetaryTotal/${name}`));
  const all = ['26-083-1', '26-083-2'].map((id) => {
    const { out } = perpend('invoice', 'job.perp', '--number', id, '--as', 'ubl');
    expect(broken(readInvoice(out))).toEqual([]);
    return out;
  });
  expect(all.map((xml) => number(xml, 'PayableAmount'))).toEqual([484.5, 1453.5]);
  const net = all.reduce((sum, xml) => sum + number(xml, 'TaxExclusiveAmount'), 0);
  expect(net).toBeCloseTo(1615, 9);
});

test('the result tells what it left, and that nothing is owed', () => {
  const { out } = perpend('result', 'job.perp');
  expect(out).toMatch(/Owed +£0\.00/);
  expect(out).toMatch(/What it leaves +£268\.31 +£\d/);
  expect(out).toMatch(/facework +\S+ h +\S+ h +234 bricks +234 bricks/);
});

test('after the client said yes, what is said beside a quote is of what was accepted', () => {
  const { err } = perpend('quote', 'job.perp', '--as', 'md');
  const [low, high] = [...err.matchAll(/£([\d,.]+\d)/g)].map(([, text]) =>
    Number(text!.replaceAll(',', '')),
  );
  expect(low).toBeLessThan(1938);
  expect(low).toBeGreaterThan(1308);
  expect(high).toBeGreaterThanOrEqual(1938);
});
