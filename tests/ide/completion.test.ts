import { describe, expect, test } from 'vitest';
import { HEADINGS } from '../../grammar/lines';
import { completion } from '../../server/engine/ide/completion';
import { asked } from './ask';

function offered(marked: string) {
  const { job, at } = asked(marked);
  return completion(job, at);
}

function labels(marked: string): string[] {
  return (offered(marked)?.items ?? []).map((item) => item.label);
}

const HEAD = 'perpend 1\nuse "firm.perp"\n';

describe('in the first column', () => {
  test('every heading is offered, the lone ones that are there left out', () => {
    const found = labels(`${HEAD}job\n$0`);
    const words = HEADINGS.map((h) => h.key).filter((k) => k !== 'perpend' && k !== 'job');
    expect(found).toEqual(expect.arrayContaining(words));
    expect(found).not.toContain('job');
    expect(found).not.toContain('perpend');
  });

  test('a block is offered whole, with places to fill in', () => {
    const whole = offered(`${HEAD}wa$0`)!.items.find((i) => i.label === 'wall …')!;
    expect(whole.isSnippet).toBe(true);
    expect(whole.insert).toMatch(/^wall \$\{1:north/);
    expect(whole.insert).toMatch(/\n {2}length +\$\{\d:7\.4 m\}/);
  });

  test('the word begun is what is replaced', () => {
    expect(offered(`${HEAD}wa$0`)!.span).toEqual({ line: 2, start: 0, end: 2 });
  });
});

describe('under a heading', () => {
  test('the lines that fit and are not there yet are offered', () => {
    const found = labels(`${HEAD}wall n\n  length 3 m\n  $0\n  thick 1 brick`);
    expect(found).toEqual(expect.arrayContaining(['height', 'brick', 'bond', 'note', 'opening']));
    expect(found).not.toContain('length');
    expect(found).not.toContain('thick');
    expect(found).not.toContain('salvage');
  });

  test('a line does not hide itself', () => {
    expect(labels(`${HEAD}wall n\n  length$0 3 m`)).toContain('length');
  });

  test('lines that may stand several times stay', () => {
    expect(labels(`${HEAD}wall n\n  note "One."\n  $0`)).toContain('note');
  });

  test('deeper, those of the opening; as deep as the wall’s, the wall’s', () => {
    expect(labels(`${HEAD}wall n\n  opening o\n    $0`)).toEqual(
      expect.arrayContaining(['from', 'width', 'sill']),
    );
    expect(labels(`${HEAD}wall n\n  opening o\n    $0`)).not.toContain('bond');
    expect(labels(`${HEAD}wall n\n  opening o\n    from left 1 m\n  $0`)).toContain('bond');
  });

  test('a new line lines up with the others', () => {
    const item = offered(`${HEAD}wall n\n  length    3 m\n  $0`)!.items.find(
      (i) => i.label === 'mix',
    )!;
    expect(item.insert).toBe('mix       ');
  });

  test('each says what it means and what holds without it', () => {
    const item = offered(`${HEAD}wall n\n  $0`)!.items.find((i) => i.label === 'thick')!;
    expect(item.explains).toContain('Thickness in bricks');
    expect(item.explains).toContain('`thick 1/2 brick`');
  });

  test('nothing under a heading that has no lines', () => {
    expect(labels('perpend 1\n  $0')).toEqual([]);
  });
});

describe('after a word', () => {
  test.each([
    [
      'names of bricks, with their titles',
      'wall n\n  brick $0',
      ['red', 'standard', 'engineering'],
    ],
    ['names begun', 'wall n\n  brick re$0', ['red']],
    ['bonds', 'wall n\n  bond $0', ['stretcher', 'english', 'flemish']],
    ['choices', 'wall n\n  left $0', ['stopped', 'toothed', 'butted']],
    ['mixes where one may follow a size', 'wall n\n  footing 450 x 225 mm $0', ['general']],
    ['walls', 'wall north\nrepair r\n  in $0', ['north']],
    [
      'openings of this wall',
      'wall a\n  opening x\nwall b\n  opening y\n  pier p\n    at $0',
      ['y'],
    ],
    ['materials of a mix', 'mix m\n  parts cement 1, $0', ['cement', 'lime', 'sand']],
    ['libraries', 'use $0', ['uk', 'us', 'de']],
    ['currencies', 'job\n  currency $0', ['GBP', 'EUR', 'USD']],
    ['joining words', 'brick b\n  price £1 $0', ['each', 'per']],
    ['units of time', 'labour\n  mason £30 per $0', ['h', 'day']],
    ['trades after a number', 'labour\n  mason £30 per h\n  gang 2 $0', ['mason']],
    ['runs', 'wall n\n  fit $0', ['coping', 'height']],
    ['runs of an opening', 'wall n\n  opening o\n    fit $0', ['head', 'arch', 'lintel-height']],
    ['what a fit line does', 'wall n\n  fit coping $0', ['joints', 'half-bond', 'cut']],
  ])('%s', (_, text, wanted) => {
    expect(labels(`${HEAD}${text}`)).toEqual(expect.arrayContaining(wanted));
  });

  test('a name comes with its title and its file', () => {
    const red = offered(`${HEAD}wall n\n  brick $0`)!.items.find((i) => i.label === 'red')!;
    expect(red).toMatchObject({ detail: 'Harwick red', explains: 'firm.perp', kind: 'name' });
  });

  test('openings of another wall are not offered', () => {
    expect(labels(`${HEAD}wall a\n  opening x\nwall b\n  pier p\n    at $0`)).not.toContain('x');
  });

  test('nothing that the line has no room for', () => {
    expect(labels(`${HEAD}wall n\n  left stopped $0`)).toEqual([]);
    expect(labels(`${HEAD}wall n\n  brick red $0`)).toEqual([]);
  });
});

describe('units', () => {
  test('of the dimension that the line takes, those of the job’s system first', () => {
    const found = labels(`${HEAD}wall n\n  length 7.4 $0`);
    expect(found.slice(0, 3)).toEqual(['mm', 'cm', 'm']);
    expect(found).toContain('ft');
    expect(found).not.toContain('kg');
    expect(labels('perpend 1\nuse us\nwall n\n  length 24 $0')[0]).toBe('in');
  });

  test('words of number agree with their number', () => {
    expect(labels(`${HEAD}wall n\n  height 18 $0`)).toContain('courses');
    expect(labels(`${HEAD}wall n\n  thick 1 $0`)).toEqual(['brick']);
    expect(labels(`${HEAD}wall n\n  thick 1/2 $0`)).toEqual(['brick']);
  });

  test('after the last side of a size', () => {
    expect(labels(`${HEAD}wall n\n  footing 450 x 225 $0`)).toContain('mm');
  });

  test('begun, close up to the number', () => {
    expect(labels(`${HEAD}wall n\n  length 7.4m$0`)).toContain('mm');
  });
});

describe('silent', () => {
  test.each([
    ['in a comment', `${HEAD}wall n\n  # br$0`],
    ['in a comment at a line’s end', `${HEAD}wall n\n  brick red # $0`],
    ['in a text', `${HEAD}job "Or$0chard"`],
    ['in an open text', `${HEAD}job "Or$0`],
    ['right after a text', `${HEAD}job "Orchard"$0`],
    ['for file names', `${HEAD}use "$0`],
    ['in a number', `${HEAD}wall n\n  length 7.$0`],
    ['right after a digit', `${HEAD}wall n\n  length 74$0`],
    ['where a name is given', `${HEAD}wall $0`],
    ['where a date stands', `${HEAD}job\n  date $0`],
    ['after an unknown word', `${HEAD}wall n\n  lenght $0`],
    ['after something that does not fit', `${HEAD}wall n\n  brick 7 m $0`],
  ])('%s', (_, marked) => {
    expect(labels(marked)).toEqual([]);
  });
});
