import { describe, expect, test } from 'vitest';
import { tokensOf } from '../../server/engine/ide/tokens';
import { SourceFile } from '../../server/engine/workspace/source';
import { TOKEN_MODIFIERS, TOKEN_TYPES } from '../../server/lsp/token-types';
import { difference, packed, SentTokens } from '../../server/lsp/tokens';
import { read } from '../tree';

/** `word kind`, in the order of the text. */
function tokens(text: string): string[] {
  const file = new SourceFile('job.perp', text);
  return tokensOf(file).map(({ line, start, end, kind, declares }) => {
    const word = file.lines[line]!.slice(start, end);
    return `${word} ${kind}${declares ? ' declares' : ''}`;
  });
}

describe('every word of a line', () => {
  test.each([
    ['perpend 1', ['perpend keyword', '1 number']],
    ['use uk', ['use keyword', 'uk operator']],
    ['use "firm.perp"', ['use keyword', '"firm.perp" string']],
    ['job "Orchard"', ['job keyword', '"Orchard" string']],
    ['wall north "N"', ['wall keyword', 'north class declares', '"N" string']],
    [
      'wall n\n  length 7.4 m',
      ['wall keyword', 'n class declares', 'length property', '7.4 number'],
    ],
    [
      'wall n\n  height 18 courses # high',
      ['wall keyword', 'n class declares', 'height property', '18 number', '# high comment'],
    ],
    [
      'wall n\n  footing 450 x 225 mm general',
      [
        'wall keyword',
        'n class declares',
        'footing property',
        '450 number',
        '225 number',
        'general class',
      ],
    ],
    [
      'wall n\n  opening g\n    from left 1 m',
      [
        'wall keyword',
        'n class declares',
        'opening keyword',
        'g class declares',
        'from property',
        'left enumMember',
        '1 number',
      ],
    ],
    [
      'repair r\n  in north\n  repoint 2..3 m2',
      [
        'repair keyword',
        'r class declares',
        'in property',
        'north class',
        'repoint property',
        '2 number',
        '3 number',
      ],
    ],
    [
      'cost s "Skip" 1 at £240',
      [
        'cost keyword',
        's class declares',
        '"Skip" string',
        '1 number',
        'at operator',
        '240 number',
      ],
    ],
    [
      'brick b\n  price £0.92 each',
      ['brick keyword', 'b class declares', 'price property', '0.92 number', 'each operator'],
    ],
    [
      'mix m\n  parts cement 1, sand 6',
      [
        'mix keyword',
        'm class declares',
        'parts property',
        'cement class',
        '1 number',
        'sand class',
        '6 number',
      ],
    ],
    ['labour\n  gang 2 masons', ['labour keyword', 'gang property', '2 number', 'masons class']],
    [
      'job\n  ref 26-041\n  date 2026-03-02',
      ['job keyword', 'ref property', '26-041 number', 'date property', '2026-03-02 number'],
    ],
    [
      'option o\n  change north height 8 courses',
      ['option keyword', 'o class declares', 'change property', 'north class'],
    ],
    ['# a note', ['# a note comment']],
    [
      'wall n\n  note "a # b"',
      ['wall keyword', 'n class declares', 'note property', '"a # b" string'],
    ],
    ['wall n\n  length ?', ['wall keyword', 'n class declares', 'length property']],
    ['wall n\n  note "open', ['wall keyword', 'n class declares', 'note property', '"open string']],
  ])('%s', (text, wanted) => {
    expect(tokens(text).slice(0, wanted.length)).toEqual(wanted);
  });
});

describe('some lines, and what has changed', () => {
  const TEXT = read('examples/garden-wall/job.perp');
  const pack = (text: string, range?: { first: number; last: number }) =>
    packed(tokensOf(new SourceFile('a.perp', text), range));

  test('lines within a block are as they are in the whole', () => {
    const file = new SourceFile('a.perp', TEXT);
    for (const range of [
      { first: 0, last: 0 },
      { first: 15, last: 20 },
      { first: 30, last: 9999 },
    ]) {
      const whole = tokensOf(file).filter((t) => t.line >= range.first && t.line <= range.last);
      expect(tokensOf(file, range)).toEqual(whole);
    }
  });

  test.each([
    ['a key in a number', (text: string) => text.replace('7.3 m', '7.35 m')],
    ['a line more', (text: string) => text.replace('  thick', '  note "One."\n  thick')],
    ['a line less', (text: string) => text.replace(/ {2}coping.*\n/, '')],
    ['all of it', () => ''],
    ['nothing', (text: string) => text],
  ])('%s: the difference makes the new words of the old', (_, change) => {
    const [before, after] = [pack(TEXT), pack(change(TEXT))];
    const made = [...before];
    for (const { start, deleteCount, data } of difference(before, after))
      made.splice(start, deleteCount, ...data);
    expect(made).toEqual(after);
  });

  test('a difference is of the answer before, and of no other', () => {
    const sent = new SentTokens();
    const first = sent.full('a', pack(TEXT));
    const second = sent.delta('a', first.resultId, pack(`${TEXT}\nwall x\n`));
    expect(second).toHaveProperty('edits');
    expect(sent.delta('a', first.resultId, pack(TEXT))).toHaveProperty('data');
    sent.forget('a');
    expect(sent.delta('a', second.resultId, pack(TEXT))).toHaveProperty('data');
  });
});

describe('any theme', () => {
  const manifest = JSON.parse(read('package.json'));
  const [{ language, scopes }] = manifest.contributes.semanticTokenScopes;

  test('knows a scope for every kind of word', () => {
    expect(language).toBe('perpend');
    for (const type of TOKEN_TYPES) expect(scopes[type], type).not.toHaveLength(0);
    for (const modifier of TOKEN_MODIFIERS) expect(scopes[`class.${modifier}`]).toBeDefined();
  });

  test('which is one that the grammar gives, so that words keep their colour when the server has spoken', () => {
    const grammar = read('grammar/textmate/perpend.tmLanguage.json');
    for (const type of TOKEN_TYPES)
      expect(
        scopes[type].some((scope: string) => grammar.includes(`"${scope}"`)),
        type,
      ).toBe(true);
  });
});
