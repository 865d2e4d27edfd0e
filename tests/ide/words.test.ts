import { describe, expect, test } from 'vitest';
import { highlights } from '../../server/engine/ide/occurrences';
import { references } from '../../server/engine/ide/references';
import { tokensOf } from '../../server/engine/ide/tokens';
import { SourceFile } from '../../server/engine/workspace/source';
import { files, read } from '../tree';
import { asked, FIRM } from './ask';

function tokens(text: string): string[] {
  const file = new SourceFile('job.perp', text);
  return tokensOf(file).map((t) => {
    const word = file.lines[t.line]!.slice(t.start, t.end);
    return `${word} ${t.kind}${t.declares ? ' declares' : ''}`;
  });
}

describe('coloured words', () => {
  test.each([
    ['wall north "North"', ['wall keyword', 'north class declares', '"North" string']],
    ['wall n\n  brick red # best', ['brick property', 'red class', '# best comment']],
    ['wall n\n  left stopped', ['left property', 'stopped enumMember']],
    ['wall n\n  dpc red 2 courses', ['red class', '2 number']],
    ['wall n\n  opening gate', ['opening keyword', 'gate class declares']],
    ['labour\n  mason £30 per h', ['mason class', '30 number', 'per operator', 'h operator']],
    ['labour\n  gang 2 masons', ['gang property', '2 number', 'masons class']],
    ['job\n  date 2026-03-02', ['date property', '2026-03-02 number']],
    ['repair r\n  salvage 60..75%', ['60 number', '75 number']],
    ['# alone', ['# alone comment']],
  ])('%s', (text, wanted) => {
    expect(tokens(text)).toEqual(expect.arrayContaining(wanted));
  });

  test('a word that nobody knows stays plain', () => {
    expect(tokens('wall n\n  lenght 3 m')).not.toContain('lenght property');
    expect(tokens('zaun x')).toEqual([]);
  });

  test('some lines are answered as they stand in the whole', () => {
    const file = new SourceFile('firm.perp', FIRM);
    const some = tokensOf(file, { first: 4, last: 9 });
    expect(some).toEqual(tokensOf(file).filter((t) => t.line >= 4 && t.line <= 9));
    expect(some.length).toBeGreaterThan(5);
  });

  test.each(files().filter((name) => name.endsWith('.perp')))(
    'of %s come in order, apart, within their lines',
    (name) => {
      const file = new SourceFile(name, read(name));
      const found = tokensOf(file);
      found.forEach((token, i) => {
        const before = found[i - 1];
        expect(token.end).toBeLessThanOrEqual(file.lines[token.line]!.length);
        expect(token.start).toBeLessThan(token.end);
        if (before?.line === token.line) expect(before.end).toBeLessThanOrEqual(token.start);
        else if (before) expect(before.line).toBeLessThan(token.line);
      });
    },
  );
});

describe('where a name is meant', () => {
  const TEXT =
    'perpend 1\nuse "firm.perp"\nwall a\n  brick re$0d\n  dpc red 2 courses\nwall b\n  brick standard';
  const lines = (marked: string) => {
    const { job, at } = asked(marked);
    return highlights(job, at).map((h) => `${h.line}:${h.start}${h.declares ? ' given' : ''}`);
  };

  test('in this file', () => {
    expect(lines(TEXT)).toEqual(['3:8', '4:6']);
  });

  test('where it is given too', () => {
    expect(lines('perpend 1\nbrick re$0d\nwall a\n  brick red')).toEqual(['1:6 given', '3:8']);
    expect(lines('perpend 1\nbrick red\nwall a\n  brick re$0d')).toEqual(['1:6 given', '3:8']);
  });

  test('an opening only in its own wall', () => {
    const two =
      'wall a\n  opening g\n  pier p\n    at g$0 left\nwall b\n  opening g\n  pier p\n    at g left';
    expect(lines(`perpend 1\n${two}`)).toEqual(['2:10 given', '4:7']);
  });

  test('a trade by its own word and by the word for several', () => {
    expect(lines('perpend 1\nlabour\n  mas$0on £30 per h\n  gang 2 masons')).toEqual([
      '2:2 given',
      '3:9',
    ]);
  });

  test('a brick is not a mix of the same name', () => {
    expect(lines('perpend 1\nbrick re$0d\nmix red\nwall a\n  mix red\n  brick red')).toEqual([
      '1:6 given',
      '5:8',
    ]);
  });

  test('nothing is meant by a word that names nothing', () => {
    expect(lines('perpend 1\nwall a\n  left stop$0ped')).toEqual([]);
    expect(lines('perpend 1\n# re$0d')).toEqual([]);
  });

  test('in every file of the job', () => {
    const { job, at } = asked(TEXT);
    const found = references(job, at, true).map((p) => `${p.file.split('/').at(-1)}:${p.line}`);
    expect(found).toEqual(['job.perp:3', 'job.perp:4', 'firm.perp:2']);
    expect(references(job, at, false)).toHaveLength(2);
  });
});
