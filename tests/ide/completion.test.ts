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
    expect(item.explains!()).toContain('Thickness in bricks');
    expect(item.explains!()).toContain('`thick 1/2 brick`');
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
    ['materials of a mix that are not in it yet', 'mix m\n  parts cement 1, $0', ['lime', 'sand']],
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
    expect(red).toMatchObject({ detail: 'Harwick red', from: 'firm.perp', kind: 'name' });
  });

  test('openings of another wall are not offered', () => {
    expect(labels(`${HEAD}wall a\n  opening x\nwall b\n  pier p\n    at $0`)).not.toContain('x');
  });

  test('a wall makes no corner with itself, and an option stands in place of another', () => {
    expect(labels(`${HEAD}wall a\nwall b\n  left quoin $0`)).toEqual(['a']);
    expect(labels(`${HEAD}option a\noption b\n  instead-of $0`)).toEqual(['a']);
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

describe('whole blocks', () => {
  const block = (marked: string, label: string) =>
    offered(HEAD + marked)!.items.find((i) => i.label === label)!.insert;

  test('let one choose among the bricks that there are, the one that holds by default first', () => {
    expect(block('$0', 'wall …')).toMatch(
      /\n {2}brick +\$\{\d\|standard,red,[^|]*engineering[^|]*\|\}/,
    );
  });

  test('a brick of the job itself is among them', () => {
    expect(block('brick own\n\n$0', 'wall …')).toMatch(/brick +\$\{\d\|[^|]*\bown\b/);
  });

  test('and among bonds', () => {
    expect(block('$0', 'wall …')).toMatch(/\n {2}bond +\$\{\d\|stretcher,[^|]*flemish/);
  });

  test('what a default stands for is put in as it would hold, so that the block means the same', () => {
    const body = block('$0', 'wall …');
    expect(body).toMatch(/\n {2}bond +\$\{\d\|[^|]*\|\}\n/);
    expect(body).toMatch(/\n {2}thick +\$\{\d:1\/2 brick\}\n/);
    const thick = block('defaults\n  thick 1 brick\n  bond flemish\n\n$0', 'wall …');
    expect(thick).toMatch(/bond +\$\{\d\|flemish,/);
    expect(thick).toMatch(/thick +\$\{\d:1 brick\}/);
  });

  test('a repair is in one of the walls and piers of the job', () => {
    expect(block('wall a\nwall b\npier c\n$0', 'repair …')).toMatch(/in +\$\{\d\|a,b,c\|\}/);
  });

  test('where there is one alone it is put in, and where there is none the example', () => {
    expect(block('wall a\n$0', 'repair …')).toMatch(/in +\$\{\d:a\}/);
    expect(block('$0', 'repair …')).toMatch(/in +\$\{\d:north\}/);
  });

  test('words that may stand there are a choice', () => {
    expect(block('wall n\n  $0', 'opening …')).toMatch(
      /from +\$\{\d\|left,right\|\} \$\{\d:2\.7 m\}/,
    );
  });

  test('names begin with those of the example where no default says which', () => {
    const parts = /parts +\$\{\d\|(\S+?),.*? \$\{\d\|(\S+?),.*? \$\{\d\|(\S+?),/;
    const [, ...materials] = parts.exec(block('$0', 'mix …')) ?? [];
    expect(materials).toEqual(['cement', 'lime', 'sand']);
  });

  test('a record begins with nothing that has not happened', () => {
    expect(block('$0', 'record …')).toBe('record\n  $0');
  });

  test('inner blocks stand deeper than the cursor by one step', () => {
    expect(block('wall n\n  $0', 'opening …')).toMatch(/^opening \$\{1:gate\}[^\n]*\n {2}\w/);
  });

  test('places are numbered through, and the last is where one goes on', () => {
    const body = block('$0', 'wall …');
    const numbers = [...body.matchAll(/\$\{(\d+)/g)].map((m) => Number(m[1]));
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(body.endsWith('\n  $0')).toBe(true);
  });
});

describe('names of files', () => {
  const FILES_BESIDE = () => ['firm.perp', '../other/firm.perp'];
  const named = (marked: string) => {
    const { job, at } = asked(marked);
    return completion(job, at, FILES_BESIDE);
  };

  test.each([
    ['of a used file', 'perpend 1\nuse "$0'],
    ['begun', 'perpend 1\nuse "fir$0'],
    ['in a text that is closed', 'perpend 1\nuse "fir$0"'],
    ['with folders', 'perpend 1\nuse "../oth$0"'],
    ['of a partner', 'perpend 1\npartner p\n  file "$0"'],
  ])('are offered %s', (_, marked) => {
    expect(named(marked)!.items.map((i) => i.label)).toEqual(FILES_BESIDE());
  });

  test('all of the name is replaced, and the text closed where it is open', () => {
    expect(named('perpend 1\nuse "../oth$0er"')).toMatchObject({
      span: { line: 1, start: 5, end: 11 },
      wordEnd: 13,
    });
    expect(named('perpend 1\nuse "$0"')!.items[0]!.insert).toBe('firm.perp');
    expect(named('perpend 1\nuse "$0')!.items[0]!.insert).toBe('firm.perp"');
  });

  test.each([
    ['in another text', 'perpend 1\njob "$0"'],
    ['in a comment', 'perpend 1\nuse uk # "$0'],
    ['behind the text', 'perpend 1\nuse "a" "$0'],
  ])('and not %s', (_, marked) => {
    expect(named(marked)).toBeUndefined();
  });
});

describe('Enter and other keys', () => {
  const item = (marked: string, label: string) =>
    offered(HEAD + marked)!.items.find((i) => i.label === label)!;

  test('a word that is whole as it stands is put in as it stands, so that Enter ends the line', () => {
    expect(item('brick b\n  price £1 each$0', 'each').insert).toBe('each');
    expect(item('wall n\n  left stopped$0', 'stopped').insert).toBe('stopped');
    expect(item('wall n\n  length 7 m$0', 'm').insert).toBe('m');
  });

  test('behind one that wants more there is room for it', () => {
    expect(item('brick b\n  price £1 $0', 'per').insert).toBe('per ');
    expect(item('brick b\n  price £1 $0', 'per').more).toBe(true);
  });

  test('the sign of a list takes the name before it; a space never does', () => {
    expect(item('mix m\n  parts cement 1, $0', 'sand').commits).toEqual([',']);
    expect(item('wall n\n  brick $0', 'red').commits).toBeUndefined();
    expect(item('wall n\n  length 7 $0', 'mm').commits).toBeUndefined();
  });

  test('where the line could end is said: there nothing is offered unasked', () => {
    const whole = (line: string) => offered(`${HEAD}wall n\n  ${line}`)!.whole;
    expect(whole('footing 450 x 225 mm $0')).toBe(true);
    expect(whole('coping brick-on-edge $0')).toBe(true);
    expect(whole('length 7 $0')).toBe(false);
    expect(whole('left $0')).toBe(false);
    expect(whole('$0')).toBe(false);
  });

  test('a word that the cursor stands in is known to its end', () => {
    expect(offered(`${HEAD}wall n\n  brick r$0ed-brick x`)).toMatchObject({
      span: { start: 8, end: 9 },
      wordEnd: 17,
    });
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
