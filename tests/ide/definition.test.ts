import { describe, expect, test } from 'vitest';
import { definition } from '../../server/engine/ide/definition';
import { asked } from './ask';

const HEAD = 'perpend 1\nuse "firm.perp"\n';

/** `file:line:start-end` of each place, lines from 0. */
function places(marked: string): string[] {
  const { job, at } = asked(marked);
  const found = definition(job, at)?.targets ?? [];
  return found.map(
    ({ place: p }) => `${p.file.replace(/^.*[/:]/, '')}:${p.line}:${p.start}-${p.end}`,
  );
}

describe('a name leads', () => {
  test.each([
    ['to a brick of the firm', 'wall n\n  brick re$0d', ['firm.perp:2:6-9']],
    [
      'to a wall of this file',
      'wall north\n  brick red\nrepair r\n  in nor$0th',
      ['job.perp:2:5-10'],
    ],
    [
      'to an opening of its own wall',
      'wall a\n  opening gate\nwall b\n  opening gate\n  pier p\n    at ga$0te left',
      ['job.perp:5:10-14'],
    ],
    ['to a trade', 'labour\n  mason £30 per h\n  gang 2 mas$0ons', ['job.perp:3:2-7']],
    [
      'to a pier of the wall that is named',
      'wall a\n  pier p\nwall b\n  pier p\nrepair r\n  in b p$0',
      ['job.perp:5:7-8'],
    ],
    [
      'to a pier that stands alone',
      'pier p\nwall b\n  pier p\nrepair r\n  in p$0',
      ['job.perp:2:5-6'],
    ],
    ['to a material', 'material grit\nmix m\n  parts gr$0it 3', ['job.perp:2:9-13']],
    [
      'to a measure in the plural',
      'measures\n  pail 10 l\nmix m\n  batch 3 pa$0ils sand',
      ['job.perp:3:2-6'],
    ],
    ['to an option', 'option cheap\nwall w\n  option che$0ap', ['job.perp:2:7-12']],
    ['to a partner', 'partner abc "A"\nwall w\n  by ab$0c', ['job.perp:2:8-11']],
    [
      'to a wall that it meets',
      'wall north\nwall south\n  left quoin nor$0th',
      ['job.perp:2:5-10'],
    ],
    [
      'to a cost that an option leaves out',
      'cost skip "Skip" 1 at £9\noption o\n  leave-out sk$0ip',
      ['job.perp:2:5-9'],
    ],
    ['to itself where it is given', 'wall no$0rth', []],
    ['nowhere when nothing has it', 'wall n\n  brick nob$0ody', []],
  ])('%s', (_, text, wanted) => {
    expect(places(HEAD + text)).toEqual(wanted);
  });

  test('into a library', () => {
    const { job, at } = asked(`${HEAD}wall n\n  bond flem$0ish`);
    const [target] = definition(job, at)!.targets;
    expect(target!.place.file).toContain('uk');
    const line = job.scope.files.find((f) => f.name === target!.place.file)!.lines[
      target!.place.line
    ];
    expect(line).toMatch(/^bond flemish\b/);
  });

  test('to each file that says something of it, nearest first', () => {
    const found = places(
      `${HEAD}brick engineering\n  price £1 each\nwall n\n  brick engin$0eering`,
    );
    expect(found[0]).toBe('job.perp:2:6-17');
    expect(found).toHaveLength(2);
  });

  test('with the whole block as its extent', () => {
    const { job, at } = asked(`${HEAD}wall n\n  brick re$0d`);
    expect(definition(job, at)!.targets[0]!.lines).toEqual({ first: 2, last: 7 });
  });

  test('from the word’s own columns', () => {
    const { job, at } = asked(`${HEAD}wall n\n  brick re$0d`);
    expect(definition(job, at)!.span).toEqual({ line: 3, start: 8, end: 11 });
  });
});

describe('use leads', () => {
  test('to the file it names', () => {
    expect(places('perpend 1\nuse "fir$0m.perp"')).toEqual(['firm.perp:0:0-0']);
  });

  test('to the library it names', () => {
    expect(places('perpend 1\nuse d$0e')[0]).toMatch(/^de(\.perp)?:0:0-0$/);
  });

  test('to the file of a partner', () => {
    expect(places('perpend 1\npartner p "P"\n  file "fir$0m.perp"')).toEqual(['firm.perp:0:0-0']);
  });

  test('nowhere when the file is missing or outside', () => {
    expect(places('perpend 1\nuse "no$0.perp"')).toEqual([]);
    expect(places('perpend 1\nuse "../../et$0c/passwd"')).toEqual([]);
  });
});

describe('a line’s word leads to the default', () => {
  test('that it stands in for', () => {
    const { job, at } = asked(`${HEAD}wall n\n  thi$0ck 1 brick`);
    const [target] = definition(job, at)!.targets;
    const file = job.scope.files.find((f) => f.name === target!.place.file)!;
    expect(file.lines[target!.place.line]).toMatch(/^ +thick +1\/2 brick/);
  });

  test('a heading’s to all that hold for lines it leaves out', () => {
    const { job, at } = asked(`${HEAD}wa$0ll n\n  thick 1 brick\n  brick red`);
    const keys = definition(job, at)!.targets.map(({ place }) => {
      const file = job.scope.files.find((f) => f.name === place.file)!;
      return file.lines[place.line]!.trim().split(/\s/)[0];
    });
    expect(keys).toEqual(expect.arrayContaining(['mix', 'bond', 'left', 'right', 'stands']));
    expect(keys).not.toContain('thick');
    expect(keys).not.toContain('brick');
  });

  test('nowhere when there is none, or from a default itself', () => {
    expect(places(`${HEAD}wall n\n  leng$0th 3 m`)).toEqual([]);
    expect(places('perpend 1\nuse uk\ndefaults\n  thi$0ck 1 brick')).toEqual([]);
  });
});
