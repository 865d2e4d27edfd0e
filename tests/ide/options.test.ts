/** Options in the editor: names in their lines are names, and what is written anew is completed like the line itself. */
import { describe, expect, test } from 'vitest';
import { completion } from '../../server/engine/ide/completion';
import { definition } from '../../server/engine/ide/definition';
import { hintsOf } from '../../server/engine/ide/hints';
import { hover } from '../../server/engine/ide/hover';
import { highlights } from '../../server/engine/ide/occurrences';
import { references } from '../../server/engine/ide/references';
import { asked, job, spaced } from './ask';

const HEAD = 'perpend 1\nuse "firm.perp"\njob "A"\n';
const WALL = `wall north
  brick   red
  length  3590 mm
  height  8 courses
  opening gate
    from   left 1 m
    width  1010 mm
`;

function labels(text: string): string[] {
  const { job: of, at } = asked(HEAD + WALL + text);
  return (completion(of, at)?.items ?? []).map((item) => item.label);
}

function leads(text: string): string[] {
  const { job: of, at } = asked(HEAD + WALL + text);
  return (definition(of, at)?.targets ?? []).map(({ place: p }) => `${p.line}:${p.start}-${p.end}`);
}

function meant(text: string): string[] {
  const { job: of, at } = asked(HEAD + text);
  return references(of, at, true).map((p) => `${p.line}:${p.start}-${p.end}`);
}

describe('completion in an option', () => {
  test('offers the names of work, openings and costs', () => {
    expect(labels('option o\n  change $0')).toEqual(expect.arrayContaining(['north', 'gate']));
  });

  test('offers the lines of what is named, and what such a line takes', () => {
    const lines = labels('option o\n  change north $0');
    expect(lines).toEqual(expect.arrayContaining(['brick', 'height', 'coping']));
    expect(lines).not.toContain('opening');
    expect(lines).not.toContain('option');
    expect(labels('option o\n  change gate $0')).toEqual(expect.arrayContaining(['width', 'sill']));
    expect(labels('option o\n  change north brick $0')).toContain('red');
    expect(labels('option o\n  change north height 9 $0')).toContain('courses');
    expect(labels('option o\n  leave-out gate $0')).toContain('width');
    expect(labels('option o\n  change nobody $0')).toEqual([]);
  });

  test('offers the options where one is named', () => {
    const other = 'option a\noption b\n  instead-of $0';
    expect(labels(other)).toEqual(['a']); // not itself
    expect(labels('option a\nwall w\n  option $0')).toEqual(['a']);
    expect(labels('option a\nrecord\n  accepted 2026-03-02 $0')).toEqual(['a']);
  });
});

describe('a name in an option', () => {
  test.each([
    ['leads to a wall', 'option o\n  change nor$0th height 9 courses', ['3:5-10']],
    ['leads to an opening', 'option o\n  change ga$0te width 900 mm', ['7:10-14']],
    ['leads to a cost', 'cost skip "Skip" 1 at £9\noption o\n  leave-out sk$0ip', ['10:5-9']],
    ['leads to an option', 'option a\noption b\n  instead-of $0a', ['10:7-8']],
  ])('%s', (_, text, wanted) => {
    expect(leads(text)).toEqual(wanted);
  });

  test('leads to the brick that a changed line names, in whatever file', () => {
    const { job: of, at } = asked(`${HEAD}${WALL}option o\n  change north brick re$0d`);
    expect(definition(of, at)!.targets[0]!.place.file).toMatch(/firm\.perp$/);
  });

  test('is found with all others that mean the same', () => {
    const text = `${WALL}option o\n  change  gate width 900 mm\n  change  nor$0th brick red\n  leave-out north coping\n`;
    expect(meant(text)).toEqual(['3:5-10', '12:10-15', '13:12-17']);
    expect(
      meant(text.replace('nor$0th', 'north').replace('opening gate', 'opening ga$0te')),
    ).toEqual(['7:10-14', '11:10-14']);
    expect(
      meant(
        `${text.replace('$0', '').replace('option o', 'option $0o')}record\n  accepted 2026-03-02 o\n`,
      ),
    ).toEqual(['10:7-8', '15:22-23']);
  });

  test('of a brick in a changed line is lit with the others of the file', () => {
    const own = 'brick own\n  size 215 x 102.5 x 65 mm\n  price £1 each\n';
    const { job: of, at } = asked(`${HEAD}${WALL}${own}option o\n  change north brick o$0wn\n`);
    expect(highlights(of, at).map((h) => h.line)).toEqual([10, 14]);
  });
});

describe('beside an option', () => {
  const text = `${HEAD}${WALL}option o "Higher"\n  change north height 10 courses\nwall east\n  brick red\n  length 890 mm\n  height 4 courses\n  option o\n`;

  test('stands what it adds and what the job comes to with it', () => {
    const hints = hintsOf(job(text), { first: 0, last: 100 }).map(
      (h) => `${h.line}: ${spaced(h.text)}`,
    );
    expect(hints.find((h) => h.startsWith('10:'))).toMatch(/^10: \+£[\d.]+ · £[\d.,]+ with it$/);
    expect(hints.find((h) => h.startsWith('12:'))).toMatch(/^12: price £[\d.]+ · 16 bricks/);
  });

  test('a hover tells its figures, and what a word in its line means', () => {
    const over = (marked: string) => {
      const { job: of, at } = asked(marked);
      return spaced(hover(of, at)?.markdown ?? '');
    };
    expect(over(text.replace('option o "H', 'opt$0ion o "H'))).toMatch(
      /Price with Higher \| \*\*£/,
    );
    expect(over(text.replace('north height 10', 'north hei$0ght 10'))).toMatch(/courses/i);
    expect(over(text.replace('change north', 'change nor$0th'))).toContain('**wall north**');
  });
});
