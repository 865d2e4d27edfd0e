/** Where a name is meant in the file before one: «…» around each place, `*` before the one that gives it. */
import { describe, expect, test } from 'vitest';
import { highlights } from '../../server/engine/ide/occurrences';
import { aroundOf, markedFiles } from './marked-files';

function found(marked: string) {
  const { files, file, at, places } = markedFiles(marked);
  const all = highlights(aroundOf(files).jobOf(file), at);
  return {
    found: all.map(({ line, start, end }) => `${file}:${line}:${start}-${end}`),
    wanted: places,
    given: all.filter((each) => each.declares).map((each) => each.line),
  };
}

describe('highlights', () => {
  test.each<[title: string, marked: string, given: number[]]>([
    ['a brick', 'brick «re$0d»\nwall a\n  brick «red»', [0]],
    ['a brick from its use', 'brick «red»\nwall a\n  brick «re$0d»\nwall b\n  brick «red»', [0]],
    [
      'of this file alone',
      '--- firm.perp\nbrick red\n--- job.perp\nuse "firm.perp"\nwall a\n  brick «re$0d»\nwall b\n  brick «red»',
      [],
    ],
    ['a wall', 'wall «no$0rth»\nrepair r\n  in «north»', [0]],
    ['two walls of one name', 'wall «no$0rth»\nwall «north»', [0, 1]],
    [
      'an opening, not that of another wall',
      'wall a\n  opening «ga$0te»\nwall b\n  opening gate',
      [1],
    ],
    [
      'an opening and where a pier stands at it',
      'wall a\n  opening «gate»\n  pier p\n    at «ga$0te» left',
      [1],
    ],
    ['a pier in a wall', 'wall a\n  pier «p$0»\nrepair r\n  in a «p»', [1]],
    ['a pier from the repair', 'wall a\n  pier «p»\nwall b\n  pier p\nrepair r\n  in a «p$0»', [1]],
    ['a trade in the plural', 'labour\n  «mason» £30 per h\n  gang 2 «mas$0ons»', [1]],
    ['a measure', 'measures\n  «bu$0cket» 10 l\nmix m\n  batch 3 «buckets» sand', [1]],
    ['a material', 'material «gr$0it»\nmix m\n  parts «grit» 3', [0]],
    ['a mix', 'mix «so$0ft»\nwall a\n  mix «soft»', [0]],
    ['a bond', 'bond «mo$0nkey»\nwall a\n  bond «monkey»', [0]],
    ['a bond of the library', 'wall a\n  bond «fle$0mish»\nwall b\n  bond «flemish»', []],
    ['an option', 'option «a$0»\nwall w\n  option «a»', [0]],
    [
      'a name that an option’s line writes anew',
      'brick «red»\nwall w\n  brick «re$0d»\noption o\n  change w brick «red»',
      [0],
    ],
    ['a cost', 'cost «sk$0ip» "Skip" 1 at £9\noption o\n  leave-out «skip»', [0]],
    [
      'a question of a template',
      'template "T"\n  ask «nor$0th» height "How high?"\nwall «north»',
      [2],
    ],
    ['a zone', 'limit l\n  zone «in$0land»\nwall w', [1]],
    ['nothing of a word of the notation', 'wa$0ll a\nwall b', []],
    ['nothing of a number', 'wall a\n  length 3$0 m\n  height 3 m', []],
    ['nothing in a comment', 'brick red\n# re$0d', []],
    ['nothing in a text', 'brick red "re$0d"', []],
    ['nothing beyond the text', 'brick red\n\n$0', []],
  ])('%s', (_, marked, given) => {
    const each = found(marked);
    expect(each.found).toEqual(each.wanted);
    expect(each.given).toEqual(given);
  });
});
