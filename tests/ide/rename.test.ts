/** Another name for a thing, in all files that mean it: «…» stands around what changes. */
import { describe, expect, test } from 'vitest';
import { isRefused, renamableAt, renamed } from '../../server/engine/ide/rename';
import { aroundOf, done, edited, markedFiles } from './marked-files';

function to(marked: string, name: string) {
  const each = markedFiles(marked);
  const { world, jobOf } = aroundOf(each.files);
  const found = done(renamed(jobOf(each.file), each.at, name, world));
  if (isRefused(found)) return { refused: found.refused, files: each.files, wanted: each.files };
  return { refused: '', files: edited(each.files, found.edits), wanted: each.with(name) };
}

const USE = 'use "firm.perp"';

describe('rename', () => {
  test.each<[title: string, marked: string, name: string]>([
    ['a brick', 'brick «re$0d»\nwall a\n  brick «red»', 'crimson'],
    ['a brick, from where it is used', 'brick «red»\nwall a\n  brick «re$0d»', 'crimson'],
    [
      'a brick in every job of a firm',
      `--- firm.perp\nbrick «r$0ed»\n--- a.perp\n${USE}\nwall a\n  brick «red»\n--- b.perp\n${USE}\nwall a\n  brick «red»`,
      'crimson',
    ],
    [
      'a brick from one of its jobs',
      `--- firm.perp\nbrick «red»\n--- a.perp\n${USE}\nwall a\n  brick «r$0ed»\n--- b.perp\n${USE}\nwall a\n  brick «red»`,
      'crimson',
    ],
    [
      'a brick of which two files tell',
      `--- firm.perp\nbrick «red»\n--- a.perp\n${USE}\nbrick «r$0ed»\n  price £1 each`,
      'crimson',
    ],
    [
      'nothing in a file that means another',
      '--- a.perp\nbrick «r$0ed»\n--- b.perp\nbrick red\nwall w\n  brick red',
      'crimson',
    ],
    [
      'a wall with all that is said of it',
      'wall «no$0rth»\nwall south\n  left quoin «north»\nrepair r\n  in «north»\noption o\n  change «north» height 9 courses',
      'east',
    ],
    [
      'a wall to a name with hyphens and digits',
      'wall «no$0rth»\nrepair r\n  in «north»',
      'north-2b',
    ],
    ['a wall to a name in another alphabet', 'wall «no$0rth»\nrepair r\n  in «north»', 'Ødegård'],
    [
      'an opening in its wall',
      'wall a\n  opening «ga$0te»\n  pier p\n    at «gate» left\nwall b\n  opening gate',
      'door',
    ],
    [
      'an opening to what another wall has',
      'wall a\n  opening «ga$0te»\nwall b\n  opening door',
      'door',
    ],
    ['a pier in its wall', 'wall a\n  pier «p$0»\nwall b\n  pier p\nrepair r\n  in a «p»', 'q'],
    ['a pier by itself', 'pier «p$0»\nwall b\n  pier p\nrepair r\n  in «p»', 'q'],
    ['a repair', 'wall a\nrepair «r$0»\n  in a', 'crack'],
    [
      'a trade, with its plural',
      'labour\n  «mas$0on» £30 per h\n  gang 2 «masons» + 1 «mason»',
      'bricky',
    ],
    [
      'a material in parts and packs',
      'material «gr$0it»\nmix m\n  parts «grit» 3, lime 1',
      'gravel',
    ],
    ['a mix', 'mix «me$0llow»\nwall a\n  mix «mellow»', 'soft'],
    ['a bond of one’s own', 'bond «mo$0nkey»\nwall a\n  bond «monkey»', 'abbot'],
    [
      'an option wherever it is taken',
      'option «a$0»\nwall w\n  option «a», b\noption b\n  instead-of «a»\nrecord\n  accepted 2026-03-02 «a»',
      'c',
    ],
    ['a cost', 'cost «sk$0ip» "Skip" 1 at £9\noption o\n  leave-out «skip»', 'lorry'],
    ['a partner', 'partner «ab$0c» "A"\nwall w\n  by «abc»', 'xyz'],
    [
      'through a file between',
      '--- base.perp\nbrick «r$0ed»\n--- firm.perp\nuse "base.perp"\n--- job.perp\nuse "firm.perp"\nwall a\n  brick «red»',
      'crimson',
    ],
    [
      'a wall in the figures that a record keeps',
      'wall «no$0rth»\nwall north-2\nrecord\n  sent 2026-03-02 £100\n    was job.bricks 9 bricks\n    was «north».bricks 9 bricks\n    was north-2.bricks 9 bricks',
      'east',
    ],
    [
      'a wall from a figure that a record keeps',
      'wall «north»\nrecord\n  sent 2026-03-02 £100\n    was «no$0rth».price £100',
      'east',
    ],
    [
      'a brick in the costs that a record keeps',
      'brick «re$0d»\nwall red\nrecord\n  sent 2026-03-02 £100\n    was cost.«red» £9\n    was red.price £9',
      'crimson',
    ],
    [
      'an option and a partner in what a record keeps',
      'option «a$0»\npartner b "B"\nrecord\n  sent 2026-03-02 £100\n    was option.«a».price £9\n    was partner.b.hours 3 h',
      'c',
    ],
    [
      'with comments and texts left alone',
      'brick «re$0d» "red brick" # red\nwall a\n  brick «red» # red',
      'crimson',
    ],
    ['to itself does nothing', 'brick re$0d', 'red'],
  ])('%s', (_, marked, name) => {
    const { refused, files, wanted } = to(marked, name);
    expect(refused).toBe('');
    expect(files).toEqual(wanted);
  });
});

describe('rename refuses, and says why', () => {
  test.each<[title: string, marked: string, name: string, words: RegExp]>([
    [
      'a name that is taken',
      'brick re$0d\nbrick blue',
      'blue',
      /“blue” is taken: job\.perp has a brick of that name in line 2/,
    ],
    [
      'a name taken in the firm’s file',
      `--- firm.perp\nbrick blue\n--- job.perp\n${USE}\nbrick re$0d`,
      'blue',
      /taken: firm\.perp/,
    ],
    [
      'a name taken in a job that uses the file',
      `--- firm.perp\nbrick re$0d\n--- job.perp\n${USE}\nbrick blue\nwall w\n  brick red`,
      'blue',
      /taken: job\.perp/,
    ],
    [
      'a name that a library has',
      'use uk\nbond mo$0nkey\nwall a\n  bond monkey',
      'flemish',
      /taken: .*uk/,
    ],
    [
      'an opening’s name taken in its wall',
      'wall a\n  opening ga$0te\n  opening door',
      'door',
      /“door” is taken/,
    ],
    [
      'a name that would make an option’s line mean two things',
      'wall a\n  opening ga$0te\nwall door\noption o\n  change gate width 1 m',
      'door',
      /“door” is taken/,
    ],
    [
      'a name that something means already',
      'brick re$0d\nwall a\n  brick blue',
      'blue',
      /“blue” is taken|has a brick/,
    ],
    ['no name at all', 'brick re$0d', '', /write one/],
    ['spaces', 'brick re$0d', 'dark red', /one word/],
    ['a number', 'brick re$0d', '65', /begins with a letter/],
    ['a quotation mark', 'brick re$0d', 'a"b', /one word/],
    ['a sign', 'brick re$0d', 'a,b', /one word/],
    ['a new line', 'brick re$0d', 'a\nb', /one word/],
    ['a sign of the notation', 'brick re$0d', 'x', /cannot be a name in line 1 of job\.perp/],
    ['the word of another line', 'labour\n  mas$0on £30 per h', 'gang', /read as something else/],
    [
      'a material that mixes of the library are of',
      'material sa$0nd',
      'grit',
      /sand stands in \S*uk/,
    ],
    [
      'a bond of the library',
      'use uk\nwall a\n  bond fle$0mish',
      'x',
      /flemish stands in \S*uk\S*, a library that ships/,
    ],
    [
      'a brick that the library gives a part of',
      'use uk\nbrick engineering\n  price £1 each\nwall a\n  brick engine$0ering',
      'x',
      /ships with the tool/,
    ],
    ['a word of the notation', 'wa$0ll a', 'x', /“wall” is a word of the notation/],
    ['a choice', 'wall a\n  left stop$0ped', 'x', /word of the notation/],
    ['a number in the text', 'wall a\n  length 3$0 m', 'x', /amount/],
    ['a text', 'job "Orch$0ard"', 'x', /text is no name/],
    ['a comment', '# re$0d\nbrick red', 'x', /Nothing here has a name/],
    ['nothing', 'brick red\n\n$0\n', 'x', /Nothing here has a name/],
    ['a name that nothing gives', 'wall a\n  brick nob$0ody', 'x', /Nothing is called “nobody”/],
    ['a line that cannot be read', 'wall a\n  lenght nor$0th', 'x', /cannot be read/],
  ])('%s', (_, marked, name, words) => {
    const { refused, files, wanted } = to(marked, name);
    expect(refused).toMatch(words);
    expect(files).toEqual(wanted);
  });
});

describe('before a rename', () => {
  test.each<[marked: string, words: RegExp]>([
    ['use uk\nmaterial ceme$0nt\n  pack 25 kg bag at £6', /The material cement stands in \S*uk/],
    ['use uk\nbrick engi$0neering\n  price £1 each', /The brick engineering stands in \S*uk/],
    ['use uk\nwall a\n  bond flem$0ish', /The bond flemish stands in \S*uk/],
    ['labour\n  ga$0ng 1 mason', /word of the notation/],
  ])('it is refused as the rename itself would be: %j', (marked, words) => {
    const { files, file, at } = markedFiles(marked);
    const { world, jobOf } = aroundOf(files);
    const found = renamableAt(jobOf(file), at);
    expect(found).toMatchObject({ refused: expect.stringMatching(words) });
    expect(done(renamed(jobOf(file), at, 'zz', world))).toEqual(found);
  });

  test.each<[marked: string, name: string]>([
    ['brick «re$0d»', 'red'],
    ['brick red\nwall a\n  brick «re$0d»', 'red'],
    ['labour\n  mason £30 per h\n  gang 2 «maso$0ns»', 'mason'],
    ['wall a\n  opening «ga$0te»', 'gate'],
  ])('the name and where it stands: %j', (marked, name) => {
    const { files, file, at, places } = markedFiles(marked);
    const found = renamableAt(aroundOf(files).jobOf(file), at);
    if (isRefused(found)) throw new Error(found.refused);
    const { line, start, end } = found.span;
    expect([`${file}:${line}:${start}-${end}`]).toEqual(places);
    expect(found.placeholder).toBe(name);
  });
});
