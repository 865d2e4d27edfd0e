/** Where a name is meant, in this file and all others: «…» stands around each place. */
import { describe, expect, test } from 'vitest';
import { referencesAround } from '../../server/engine/ide/references';
import { aroundOf, done, markedFiles, saidPlace } from './marked-files';

function found(marked: string, withGiven = true) {
  const { files, file, at, places } = markedFiles(marked);
  const { world, jobOf } = aroundOf(files);
  const steps = referencesAround(jobOf(file), at, world, withGiven);
  return { found: done(steps).map(saidPlace).sort(), wanted: [...places].sort() };
}

const USE = 'use "firm.perp"';

const CASES: readonly [title: string, marked: string][] = [
  ['a brick in its own file', 'brick «re$0d»\nwall a\n  brick «red»\nwall b\n  brick «red»'],
  ['from where it is used', 'brick «red»\nwall a\n  brick «re$0d»'],
  ['at the end of the word', 'brick «red»\nwall a\n  brick «red$0»'],
  [
    'into the firm’s file',
    `--- firm.perp\nbrick «red»\n--- job.perp\n${USE}\nwall a\n  brick «re$0d»`,
  ],
  [
    'from the firm’s file into every job that uses it',
    `--- firm.perp\nbrick «r$0ed»\n--- a.perp\n${USE}\nwall a\n  brick «red»\n--- b.perp\n${USE}\nwall b\n  brick «red»`,
  ],
  [
    'from one job into another that uses the same file',
    `--- firm.perp\nbrick «red»\n--- a.perp\n${USE}\nwall a\n  brick «r$0ed»\n--- b.perp\n${USE}\nwall b\n  brick «red»`,
  ],
  [
    'through a file between',
    `--- base.perp\nbrick «red»\n--- firm.perp\nuse "base.perp"\n--- job.perp\n${USE}\nwall a\n  brick «r$0ed»`,
  ],
  [
    'from the bottom to the top through a file between',
    `--- base.perp\nbrick «r$0ed»\n--- firm.perp\nuse "base.perp"\n--- job.perp\n${USE}\nwall a\n  brick «red»`,
  ],
  [
    'not in a file that uses none of them',
    '--- a.perp\nbrick «r$0ed»\nwall a\n  brick «red»\n--- b.perp\nbrick red\nwall b\n  brick red',
  ],
  [
    'not in a job that uses the file and gives the wall itself',
    `--- firm.perp\nbrick x\n--- a.perp\n${USE}\nwall «n$0orth»\nrepair r\n  in «north»\n--- b.perp\n${USE}\nwall north\nrepair r\n  in north`,
  ],
  [
    'where two files tell of one brick',
    `--- firm.perp\nbrick «red»\n  size 215 x 102.5 x 65 mm\n--- job.perp\n${USE}\nbrick «red»\n  price £1 each\nwall a\n  brick «re$0d»`,
  ],
  [
    'an opening in its wall alone',
    'wall a\n  opening «ga$0te»\n  pier p\n    at «gate» left\nwall b\n  opening gate\n  pier p\n    at gate left',
  ],
  ['an opening in an option', 'wall a\n  opening «ga$0te»\noption o\n  change «gate» width 1 m'],
  [
    'a pier by its wall',
    'wall a\n  pier «p$0»\nwall b\n  pier p\nrepair r\n  in a «p»\nrepair s\n  in b p',
  ],
  [
    'a pier that stands alone is not one in a wall',
    'pier «p$0»\nwall b\n  pier p\nrepair r\n  in «p»\nrepair s\n  in b p',
  ],
  ['a trade, one or several', 'labour\n  «mas$0on» £30 per h\n  gang 2 «masons» + 1 labourer'],
  ['a mix is no brick of that name', 'brick red\nmix «re$0d»\nwall a\n  brick red\n  mix «red»'],
  ['a material in a mix', 'material «gr$0it»\nmix m\n  parts «grit» 3, lime 1'],
  ['a list of options', 'option «a$0»\noption b\nwall w\n  option «a», b'],
  ['a wall that another meets', 'wall «no$0rth»\nwall south\n  left quoin «north»'],
  ['a partner', 'partner «ab$0c» "A"\nwall w\n  by «abc»'],
];

describe('references', () => {
  test.each(CASES)('%s', (_, marked) => {
    const each = found(marked);
    expect(each.found).toEqual(each.wanted);
  });

  test('into the library that gives it', () => {
    const { found: places } = found('use uk\nwall a\n  bond fle$0mish');
    expect(places).toContain('job.perp:2:7-14');
    expect(places.some((place) => place.startsWith('uk'))).toBe(true);
  });

  test('without where it is given', () => {
    const marked = 'brick re$0d\nwall a\n  brick «red»';
    expect(found(marked, false).found).toEqual(found(marked).wanted);
  });

  test('of a file: every line that names it, from whatever folder', () => {
    const each = found(
      '--- firm.perp\nbrick red\n--- job.perp\nuse «"fi$0rm.perp"»\n--- jobs/a.perp\nuse «"../firm.perp"»\n--- b.perp\nuse "other.perp"',
    );
    expect(each.found).toEqual(each.wanted.map((place) => place.replace('jobs/', '')).sort());
  });

  test.each([
    'wa$0ll a',
    'wall a\n  brick nob$0ody',
    '# re$0d\nbrick red',
    'job "re$0d"\nbrick red',
  ])('none of what is no name: %j', (marked) => {
    expect(found(marked).found).toEqual([]);
  });

  test('a circle of files ends', () => {
    const each = found(
      '--- a.perp\nuse "b.perp"\nbrick «r$0ed»\n--- b.perp\nuse "a.perp"\nwall w\n  brick «red»',
    );
    expect(each.found).toEqual(each.wanted);
  });
});
