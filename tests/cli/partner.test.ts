/** Work done by a partner firm at the command line: its labour stands under its name, and the rows add up. */
import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { inside } from './inside';
import { folderOf } from './perpend';

const FILES = {
  'halden.perp': `perpend 1
use uk
labour
  bricklayer £30 per h
  gang 2 bricklayers
output
  facework 40 bricks per h
`,
  'job.perp': `perpend 1
use uk
job "A"
brick red
  size   215 x 102.5 x 65 mm
  gauge  4 courses 300 mm
  price  £0.50 each
labour
  bricklayer £20 per h
  gang 1 bricklayer
  day 8 h
output
  facework 50 bricks per h
partner halden "Halden Brothers"
  file "halden.perp"
wall b
  brick red
  stands held
  length 4490 mm
  height 10 courses
  by halden
`,
};

test('price shows what a partner charges under its name, in its hours', () => {
  const { out } = inside(['price', 'job.perp'], { cwd: folderOf(FILES) });
  // 200 bricks by two who lay 40 an hour each: 2.5 h at 60 pounds.
  expect(out).toMatch(/Halden Brothers: labour, 2\.5\sh\s+£150\.00/);
  expect(out).toMatch(/Labour, 0\sh\s+£0\.00/);
});

test('JSON has its figures, and why tells where they come from', () => {
  const cwd = folderOf(FILES);
  const { files } = JSON.parse(inside(['price', 'job.perp', '--json'], { cwd }).out);
  const value = (id: string) => files[0].figures.find((f: { id: string }) => f.id === id)?.value;
  expect(value('partner.halden.hours')).toBe('2.5');
  expect(value('partner.halden.labour')).toBe('150');
  const { out } = inside(['why', 'job.perp', 'partner.halden.labour'], { cwd });
  expect(out).toContain('halden.perp');
});

test('a file outside the workspace is not read', () => {
  const cwd = folderOf({
    ...FILES,
    'in/job.perp': FILES['job.perp'].replace('halden.perp', '../halden.perp'),
  });
  const { out } = inside(['check', 'in/job.perp', '--workspace', 'in'], { cwd });
  expect(out).toContain('partner-file');
});

test('the next job in another folder names the partner’s file from there', () => {
  const cwd = folderOf({ ...FILES, 'new/keep.perp': 'perpend 1\n' });
  const done = inside(['next', 'job.perp', '--out', 'new/next.perp'], { cwd });
  expect(done.err).toBe('');
  expect(readFileSync(path.join(cwd, 'new/next.perp'), 'utf8')).toContain('"../halden.perp"');
});

test('what a partner charged is kept with a price that is sent, and what moves of it is told', () => {
  const packs = ['cement', 'lime', 'sand']
    .map((name) => `material ${name}\n  pack 25 kg bag at £6\n`)
    .join('');
  const cwd = folderOf({ ...FILES, 'job.perp': FILES['job.perp'] + packs });
  expect(inside(['record', 'job.perp', 'sent', '--date', '2026-03-02'], { cwd }).err).toBe('');
  const text = readFileSync(path.join(cwd, 'job.perp'), 'utf8');
  expect(text).toMatch(/was +partner\.halden\.labour £150/);
  expect(inside(['check', 'job.perp'], { cwd }).out).not.toContain('sent-moved');
  writeFileSync(path.join(cwd, 'halden.perp'), FILES['halden.perp'].replace('£30', '£33'));
  const { out } = inside(['check', 'job.perp'], { cwd });
  expect(out).toContain('sent-moved');
  expect(out.replace(/\s+/g, ' ')).toContain('Halden Brothers: labour');
});
