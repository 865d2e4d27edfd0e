/** Questions of a template that no answer could be written for. */
import { expect, test } from 'vitest';
import { findingsIn, tells } from '../tells';

test('ask-idle is told where nothing has that name', () => {
  tells(
    `
      perpend 1
      template "Post"
        ask pots height "How high?"
            ^^^^ ask-idle: No wall, pier, repair, opening or cost of this file is called “pots”. Did you mean “post”? It is not asked.
      use "firm.perp"
      pier post
        brick   red
        size    1.5 x 1.5 bricks
        height  6 courses
    `,
    { ways: ['Write post'] },
  );
});

test('and where it has no such line, or one with lines of its own', () => {
  tells(
    `
      perpend 1
      template "Wall"
        ask north lenth "How long?"
                  ^^^^^ ask-idle: “lenth” is no line of wall north. Did you mean “length”? It is not asked.
        ask north pier "Which pier?"
                  ^^^^ ask-idle: “pier” of wall north has lines of its own. Ask for one of those by its name. It is not asked.
        ask job client "For whom?"
        ask job clint "For whom?"
                ^^^^^ ask-idle: “clint” is no line of job. Did you mean “client”? It is not asked.
      job "A"
      use "firm.perp"
      wall north
        brick   red
        length  2.24 m
        height  4 courses
    `,
    { ways: ['Write length', 'Write client'] },
  );
});

test('a template lacks no price, a job of it does', () => {
  const text = 'perpend 1\nuse uk\nwall north\n  length 2.24 m\n  height 4 courses\n';
  const codes = (t: string) => new Set(findingsIn(t).map((f) => f.code));
  expect(codes(text).has('incomplete')).toBe(true);
  expect(codes(text.replace('use uk', 'template "Wall"\nuse uk')).has('incomplete')).toBe(false);
});
