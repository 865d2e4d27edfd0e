/** Names written in several places at once: «…» around each place, the cursor where the name is given. */
import { describe, expect, test } from 'vitest';
import { linkedAt } from '../../server/engine/ide/linked';
import { renamed } from '../../server/engine/ide/rename';
import { aroundOf, done, edited, markedFiles } from './marked-files';

function found(marked: string) {
  const { files, file, at, places } = markedFiles(marked);
  const all = linkedAt(aroundOf(files).jobOf(file), at);
  return {
    found: all.map(({ line, start, end }) => `${file}:${line}:${start}-${end}`).sort(),
    wanted: [...places].sort(),
  };
}

describe('written together', () => {
  test.each<[title: string, marked: string]>([
    ['a wall that nothing speaks of', 'wall «no$0rth»\n  length 3 m'],
    ['a wall and its repair', 'wall «no$0rth»\nrepair r\n  in «north»'],
    ['at its end', 'wall «north$0»\nrepair r\n  in «north»'],
    ['at its beginning', 'wall «$0north»\nrepair r\n  in «north»'],
    ['both ends of a corner', 'wall «a$0»\n  left quoin b\nwall b\n  right quoin «a»'],
    ['a wall and its options', 'wall «a$0»\noption o\n  change «a» height 9 courses'],
    ['an opening and the pier at it', 'wall a\n  opening «ga$0te»\n  pier p\n    at «gate» left'],
    ['an opening, not another wall’s', 'wall a\n  opening «ga$0te»\nwall b\n  opening gate'],
    ['a pier in a wall', 'wall a\n  pier «p$0»\nrepair r\n  in a «p»'],
    ['a pier by itself', 'pier «post$0»\nrepair r\n  in «post»'],
    ['a repair', 'wall a\nrepair «fr$0ost»\n  in a\noption o\n  leave-out «frost»'],
    [
      'an option',
      'wall w\noption «ca$0ps»\n  change w height 9 courses\nrecord\n  accepted 2026-03-05 «caps»',
    ],
    [
      'a name of letters of two units beside it',
      'wall «no$0rth» "🧱"\nrepair r "🧱"\n  in «north»',
    ],
  ])('%s', (_, marked) => {
    const each = found(marked);
    expect(each.found).toEqual(each.wanted);
    expect(each.found.length).toBeGreaterThan(0);
  });

  test.each<[title: string, marked: string]>([
    ['from where it is used', 'wall north\nrepair r\n  in nor$0th'],
    ['a brick, which other files may mean', 'brick re$0d\nwall a\n  brick red'],
    ['a mix', 'mix so$0ft\nwall a\n  mix soft'],
    ['a trade, which stands in the plural', 'labour\n  mas$0on £30 per h\n  gang 2 masons'],
    ['two walls of one name', 'wall nor$0th\nwall north'],
    ['a word of the notation', 'wa$0ll north'],
    ['a title', 'wall north "Nor$0th"'],
    ['a comment', 'wall north # nor$0th'],
    ['an amount', 'wall north\n  length 3$0 m'],
    ['beside the name', 'wall north  $0'],
    ['nothing at all', '$0'],
  ])('not %s', (_, marked) => {
    expect(found(marked).found).toEqual([]);
  });

  test('it is what a rename would write', () => {
    const { files, file, at } = markedFiles(
      'wall no$0rth\n  right quoin east\nwall east\n  left quoin north\nrepair r\n  in north\n',
    );
    const { world, jobOf } = aroundOf(files);
    const rename = done(renamed(jobOf(file), at, 'south', world));
    if ('refused' in rename) throw new Error(rename.refused);
    const edits = linkedAt(jobOf(file), at).map((span) => ({
      place: { ...span, file: rename.edits[0]!.place.file },
      text: 'south',
    }));
    expect(edited(files, edits)).toEqual(edited(files, rename.edits));
  });
});
