/** A job file is untrusted: it can name files of its own workspace, and nothing it says reaches into the tool. */
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { allFigures, jobView } from '../../server/engine/views/job-view';
import { workingOf } from '../../server/engine/views/working';
import { inRoot, jobOf, ROOT, workspaceOf } from '../engine/world';
import { FIRM } from '../findings/tells';
import { sound } from './sound';

const seed = 20260302;

/** Names that every object of JavaScript answers to. */
const TRAPS = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'valueOf',
  'prototype',
  '__defineGetter__',
];

describe('a use line', () => {
  const told = (to: string) => {
    const asked = { resolved: [] as string[], read: [] as string[] };
    const workspace = workspaceOf({ 'job.perp': `perpend 1\nuse uk\nuse "${to}"\n` }, asked);
    const job = workspace.job(inRoot('job.perp'))!;
    sound(job);
    return { codes: job.findings.map((f) => f.code), read: asked.read };
  };

  test.each([
    '../secret.perp',
    '../../../../../etc/passwd',
    'a/../../secret.perp',
    '/etc/passwd',
    '/jobs/../secret.perp',
    '/',
    '..',
    '/jobsecret/a.perp',
  ])('to “%s” lies outside, and is not even read', (to) => {
    const { codes, read } = told(to);
    expect(codes).toEqual(['use-outside']);
    expect(read).toEqual([inRoot('job.perp')]);
  });

  test.each([
    'http://example.org/a.perp',
    'file:///etc/passwd',
    'C:\\Windows\\a.perp',
    '\\\\server\\share\\a.perp',
    'a\0b.perp',
    '%2e%2e/secret.perp',
    '~/.ssh/id_rsa',
    '$HOME/a',
    'x'.repeat(10_000),
    ...TRAPS,
  ])('to “%s” is a name inside the workspace, and there is no such file', (to) => {
    const { codes, read } = told(to);
    expect(codes).toEqual(['use-missing']);
    for (const name of read) expect(path.posix.normalize(name).startsWith(`${ROOT}/`)).toBe(true);
  });

  test('never asks for a file outside, whatever it says', () => {
    const piece = fc.constantFrom(
      '..',
      '.',
      '/',
      '//',
      'a',
      '\\',
      '~',
      '%2e',
      ':',
      '\0',
      ' ',
      'etc',
    );
    fc.assert(
      fc.property(fc.array(piece, { maxLength: 8 }), (pieces) => {
        for (const name of told(pieces.join('')).read)
          expect(path.posix.resolve(name).startsWith(`${ROOT}/`)).toBe(true);
      }),
      { seed, numRuns: 200 },
    );
  });
});

describe('a name that every object answers to', () => {
  test.each(TRAPS)('%s names everything there is to name', (name) => {
    const text = `perpend 1
use "firm.perp"
job "${name}"
  ref ${name}
brick ${name}
  size   215 x 102.5 x 65 mm
  price  £1 per ${name}
  pack   100
mix ${name}
  parts  ${name} 1, sand 3
  joint  10 mm
material ${name}
  pack   25 kg ${name} at £6
  loose  1440 kg/m3
bond ${name}
  course  stretcher
  course  stretcher from 1/2 brick
labour
  ${name}  £20 per h
  gang     1 ${name}
wall ${name}
  brick   ${name}
  mix     ${name}
  bond    ${name}
  stands  held
  length  2240 mm
  height  4 courses
  opening ${name}
    from   left 665 mm
    width  235 mm
  pier ${name}
    at    right
    size  1 x 1 bricks
    cap   400 x 400 mm ${name}
repair ${name}
  in       ${name}
  rebuild  900 mm x 4 courses
cost ${name} "${name}" 1 at £1
caution ${name}
  when  ${name}
  say   "Careful."
option ${name} "${name}"
  change ${name} ${name} ${name}
`;
    const job = jobOf(text, { 'firm.perp': FIRM });
    sound(job);
    const codes = job.findings.map((f) => f.code);
    expect(codes).not.toContain('name-unknown');
    expect(codes).toContain(`caution-${name}`);
    expect(jobView(job).blocks.map((b) => b.name)).toEqual([name, name]);
    const bricks = job.price.purchases.find((p) => p.kind === 'brick' && p.name === name)!;
    expect(bricks.bought.value.toNumber()).toBeGreaterThan(0);
    expect(bricks.cost.gaps).toEqual([]);
    const bags = job.price.purchases.find((p) => p.kind === 'material' && p.name === name)!;
    expect(workingOf(bags.bought, job.env).result).toContain(name);
  });

  test.each(TRAPS)(
    '%s in the place of a key, a unit, a currency or a word of a list is only unknown',
    (name) => {
      const text = `perpend 1
use "firm.perp"
${name} x
${name}
  ${name}
job "A"
  currency ${name}
wall a
  ${name} 3
  brick   red
  length  2 ${name}
  height  4 ${name}
  left    ${name}
  coping  ${name}
  stands  ${name}
  fit     ${name} ${name}
travel
  run  2 x 3 ${name} per day at £1 per ${name}
defaults
  units    ${name}
  figures  "${name}"
`;
      const job = jobOf(text, { 'firm.perp': FIRM });
      sound(job);
      expect(job.findings.length).toBeGreaterThan(8);
    },
  );

  test('nothing has come onto every object', () => {
    expect(Object.keys(Object.prototype)).toEqual([]);
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

describe('what a file says comes out as it went in', () => {
  const MARKUP = '<script>alert(1)</script> & "q" <img src=x onerror=y> $(1) `x` \u202e';

  test('markup in titles, notes and names of units is text in every view, for each face to escape', () => {
    const said = MARKUP.replaceAll('"', "'");
    const text = `perpend 1\nuse "firm.perp"\njob "${said}"\nwall a "${said}"\n  brick red\n  length 2 m\n  height 4 courses\n  note "${said}"\n`;
    const job = jobOf(text, { 'firm.perp': FIRM });
    sound(job);
    const view = jobView(job);
    expect([view.name, view.blocks[0]!.title, job.works[0]!.notes[0]]).toEqual([said, said, said]);
    for (const { term } of allFigures(job)) workingOf(term, job.env);
  });
});
