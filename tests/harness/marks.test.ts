import { describe, expect, test } from 'vitest';
import { expectFindings, type Found, parseMarks } from './marks';

const found = (line: number, start: number, end: number, code: string, message = ''): Found => ({
  code,
  message,
  place: { line, start, end },
});

describe('a marked text', () => {
  test('gives its text, its cursor and what it expects', () => {
    const { text, cursor, expected } = parseMarks(`
      wall north
        length 7$0.4 m
               ^^^^^ some-code: some words, and: more
        height ?
    `);
    expect(text).toBe('wall north\n  length 7.4 m\n  height ?\n');
    expect(cursor).toEqual({ line: 1, column: 10 });
    expect(expected).toEqual([
      { line: 1, start: 9, end: 12, code: 'some-code', words: 'some words, and: more' },
    ]);
  });

  test('may have several marks under one line, without words', () => {
    const { text, expected } = parseMarks('a b\n^ one\n  ^ two');
    expect(text).toBe('a b');
    expect(expected.map((e) => [e.line, e.start, e.code, e.words])).toEqual([
      [0, 0, 'one', ''],
      [0, 2, 'two', ''],
    ]);
  });

  test('refuses a mark with nothing above it, and two cursors', () => {
    expect(() => parseMarks('^^ code')).toThrow('no line above');
    expect(() => parseMarks('a$0\nb$0')).toThrow('Two cursors');
  });
});

describe('expecting findings', () => {
  const marked = 'a b\n  ^ two: words';

  test('passes when all are there and no other', () => {
    expect(expectFindings(marked, () => [found(0, 2, 3, 'two', 'many words')]).text).toBe('a b');
    expectFindings(marked, () => [found(0, 2, 2, 'two', 'words at an empty place')]);
  });

  test.each([
    ['one is missing', []],
    ['one is too many', [found(0, 2, 3, 'two', 'words'), found(0, 0, 1, 'one')]],
    ['one comes twice', [found(0, 2, 3, 'two', 'words'), found(0, 2, 3, 'two', 'words')]],
    ['the line is another', [found(1, 2, 3, 'two', 'words')]],
    ['the place is another', [found(0, 1, 3, 'two', 'words')]],
    ['the code is another', [found(0, 2, 3, 'three', 'words')]],
    ['the words are others', [found(0, 2, 3, 'two', 'something else')]],
  ])('fails when %s', (_, all) => {
    expect(() => expectFindings(marked, () => all)).toThrow();
  });
});
