/** What is told of a word that may be put in, when a reader looks at it. */
import { describe, expect, test } from 'vitest';
import { completion, explained } from '../../server/engine/ide/completion';
import type { CompletionKind } from '../../server/engine/ide/types';
import { asked, job, spaced } from './ask';

const HEAD = 'perpend 1\nuse "firm.perp"\n';

/** Of one that is offered at the cursor, asked as an editor asks: by its label, its kind and where its word begins. */
function told(marked: string, label: string, kind?: CompletionKind): string | undefined {
  const { job: of, at } = asked(HEAD + marked);
  const { items, span } = completion(of, at)!;
  const item = items.find((i) => i.label === label && (!kind || i.kind === kind))!;
  const text = explained(of, { line: at.line, column: span.start, label, kind: item.kind });
  return text && spaced(text);
}

describe('of a line’s word is told', () => {
  test.each([
    ['what it means', 'wall n\n  $0', 'thick', 'Thickness in bricks'],
    ['how it is written', 'wall n\n  $0', 'height', '```perpend\nheight '],
    ['what holds without it', 'wall n\n  $0', 'thick', 'Left out: `thick 1/2 brick`'],
    ['and where that stands', 'wall n\n  $0', 'thick', 'uk'],
    ['in words where no line says it', 'wall n\n  $0', 'dpc', 'Left out: none.'],
    ['when its word is begun', 'wall n\n  thi$0', 'thick', 'Thickness in bricks'],
    ['deeper down', 'wall n\n  opening o\n    $0', 'sill', 'sill'],
    [
      'of an option’s line',
      'wall north\n  length 3 m\noption o\n  change north $0',
      'height',
      'Height',
    ],
  ])('%s', (_, marked, label, wanted) => {
    expect(told(marked, label)).toContain(wanted);
  });
});

describe('of a heading is told', () => {
  test.each([
    ['what it means', '$0', 'wall', 'A straight wall.'],
    ['with its example', '$0', 'wall', '```perpend\nwall north'],
    ['also when its word is begun', 'rep$0', 'repair', 'Mending of work that stands.'],
  ])('%s', (_, marked, label, wanted) => {
    expect(told(marked, label, 'heading')).toContain(wanted);
  });

  test('the same of its whole block', () => {
    expect(told('$0', 'wall …')).toBe(told('$0', 'wall', 'heading'));
  });
});

describe('of a name is told', () => {
  test.each([
    [
      'the thing itself, as it is written',
      'wall n\n  brick $0',
      'red',
      'size   215 x 102.5 x 65 mm',
    ],
    ['its title', 'wall n\n  brick $0', 'red', '**brick red** Harwick red'],
    ['its file and line', 'wall n\n  brick $0', 'red', 'firm.perp:3'],
    ['of a bond of the library', 'wall n\n  bond $0', 'flemish', 'Flemish bond'],
    [
      'a wall, what it comes to',
      'wall a\n  brick red\n  length 1790 mm\n  height 8 courses\nrepair r\n  in $0',
      'a',
      '64 bricks',
    ],
    ['a material in a list', 'mix m\n  parts cement 1, $0', 'sand', 'pack  850 kg bag at £50'],
    ['a trade', 'labour\n  mason £33 per h\n  gang 2 $0', 'mason', 'mason £33 per h'],
  ])('%s', (_, marked, label, wanted) => {
    expect(told(marked, label)).toContain(wanted);
  });
});

describe('nothing is told', () => {
  test.each([
    ['of a unit', 'wall n\n  length 7 $0', 'mm'],
    ['of a choice', 'wall n\n  left $0', 'stopped'],
    ['of a word that stands as it is', 'brick b\n  price £1 $0', 'each'],
  ])('%s', (_, marked, label) => {
    expect(told(marked, label)).toBeUndefined();
  });

  test('of one that is not offered there any more', () => {
    const of = job(`${HEAD}wall n\n  brick red\n`);
    const at = { line: 3, column: 8 };
    expect(explained(of, { ...at, label: 'gone', kind: 'name' })).toBeUndefined();
    expect(explained(of, { ...at, label: 'red', kind: 'key' })).toBeUndefined();
    expect(explained(of, { line: 99, column: 5, label: 'red', kind: 'name' })).toBeUndefined();
  });
});

test('text of the job cannot become markup', () => {
  const text = told('brick odd "[x](command:evil) <b>"\nwall n\n  brick $0', 'odd')!;
  const outside = text.replace(/```[\s\S]*?```/g, '').replace(/\\./g, '');
  expect(outside).not.toMatch(/[[<]/);
});

test('the list itself explains nothing: only the one that is looked at is', () => {
  const { job: of, at } = asked(`${HEAD}wall n\n  $0`);
  for (const item of completion(of, at)!.items)
    expect(['function', 'undefined']).toContain(typeof item.explains);
});
