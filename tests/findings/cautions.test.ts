import { describe, expect, test } from 'vitest';
import { jobOf } from '../engine/world';
import { FIRM, findingsIn, isCaution, tells } from './tells';

const head = 'perpend 1\nuse "firm.perp"\n';
const told = (text: string) =>
  findingsIn(head + text)
    .filter(isCaution)
    .map((f) => f.code.slice('caution-'.length))
    .sort();

const wall = (lines: string) =>
  `wall a\n  brick red\n  length 1790 mm\n  height 4 courses\n${lines}`;

describe('a caution', () => {
  test('is told at the first piece of work that brings it up, with its source', () => {
    const found = tells(`
      perpend 1
      use "firm.perp"
      wall north
           ^^^^^ caution-silica: HSE
           ^^^^^ caution-cement: Wet cement burns
           ^^^^^ caution-weather: NHBC
        brick   red
        stands  held
        length  1790 mm
        height  4 courses
      wall south
           ^^^^^ caution-boundary: Party Wall etc. Act 1996
        brick   red
        length  1790 mm
        height  4 courses
    `);
    for (const each of found) {
      expect(each.severity).toBe('information');
      expect(each.related.map((r) => r.place.file)).toEqual(['library:uk.perp']);
    }
  });

  test.each([
    [
      'an english wall on its length, which closers are cut for',
      wall('  bond english\n  thick 1 brick\n  stands held\n'),
      ['cement', 'silica', 'weather'],
    ],
    [
      'a wall that holds soil back',
      wall('  stands retaining\n'),
      ['cement', 'retaining', 'silica', 'weather'],
    ],
    [
      'a wall in lime',
      wall('  stands held\n  mix lime-soft\n'),
      ['hydraulic-lime', 'silica', 'weather'],
    ],
    [
      'a pier of whole bricks',
      'pier g\n  brick red\n  size 1 x 1 bricks\n  height 4 courses\n',
      ['boundary', 'cement', 'piers', 'weather'],
    ],
    [
      'a repair that rakes joints out',
      'repair r\n  brick red\n  repoint 1 m2 raked 20 mm\n',
      ['cement', 'raking', 'weather'],
    ],
    [
      'a repair that takes down',
      'repair r\n  brick red\n  rebuild 900 mm x 4 courses\n',
      ['cement', 'taking-down', 'weather'],
    ],
    ['a job with no work', 'job "A"\n', []],
    ['a firm’s file', 'brick mine\n', []],
  ])('is told of %s: each where it applies, and no other', (_, text, wanted) => {
    expect(told(text)).toEqual(wanted);
  });

  test('may be one of the firm’s own, about a material by its name', () => {
    const own = 'caution __proto__ "Ours"\n  when sand\n  say "Sweep up."\n';
    const found = findingsIn(head + own + wall('')).find((f) => f.code === 'caution-__proto__')!;
    expect(found.message).toBe('Ours: Sweep up.');
    const never = own.replace('sand', 'constructor');
    expect(told(never + wall(''))).not.toContain('__proto__');
  });

  test('stands in the library with its source, every one', () => {
    const job = jobOf(head, { 'firm.perp': FIRM });
    const blocks = job.book.blocksOf('caution');
    expect(blocks.length).toBeGreaterThan(6);
    for (const block of blocks) {
      const keys = block.read.heading!.body.map((line) => line.kind.key);
      expect(keys).toEqual(expect.arrayContaining(['source', 'when', 'say']));
    }
  });
});
