/** The examples are read by people who learn from them: they warn of what they mean to teach, and of nothing else. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { format } from '../../grammar/print';
import { jobOnDisk } from './engine';

const ROOT = path.resolve(import.meta.dirname, '../..');

/** Warnings and hints that an example is meant to show. */
const TAUGHT: Readonly<Record<string, readonly string[]>> = {
  'examples/garden-wall/job.perp': ['opening-width', 'fit-coping'],
  // A part of it cannot be seen before the work begins.
  'examples/repointing/job.perp': ['incomplete'],
  'examples/whole-life/01-looked-at.perp': ['incomplete'],
  // The price that went out is not the one it comes to since: until the revised quote has gone out.
  'examples/whole-life/05-revised.perp': ['sent-moved'],
};

/** A firm's file to fill in: its name, two lines of its address, its telephone and its email; where one is usual, a tax number. */
const TO_FILL = Object.fromEntries(
  [['uk', 6] as const, ['us', 5] as const, ['de', 6] as const].map(([country, blanks]) => [
    `server/library/starts/${country}.perp`,
    Array.from({ length: blanks }, () => 'blank'),
  ]),
);

const files = (folder: string) =>
  readdirSync(path.join(ROOT, folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.perp'))
    .map((name) => `${folder}/${name}`);

describe.each([...files('examples'), ...files('server/library')])('%s', (file) => {
  test('has the findings that it teaches, and no other', () => {
    const found = jobOnDisk(file)
      .findings.filter((f) => f.severity !== 'information')
      .map((f) => f.code);
    expect(found).toEqual({ ...TAUGHT, ...TO_FILL }[file] ?? []);
  });

  test('assumes nothing', () => {
    const assumed = jobOnDisk(file).findings.filter((f) => f.code === 'library-assumed');
    expect(assumed).toEqual([]);
  });

  test('is as the formatter leaves it', () => {
    const text = readFileSync(path.join(ROOT, file), 'utf8');
    expect(format(text)).toBe(text);
  });
});

test('there are eleven jobs, and a firm for each country', () => {
  const jobs = files('examples').filter((f) => f.endsWith('/job.perp'));
  expect(jobs).toHaveLength(11);
  expect(files('examples').filter((f) => f.endsWith('firm.perp'))).toHaveLength(3);
});
