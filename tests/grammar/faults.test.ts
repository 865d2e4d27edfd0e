import { describe, expect, test } from 'vitest';
import { applied } from '../harness/edits';
import { expectFindings, parseMarks } from '../harness/marks';
import { files, read } from '../tree';
import { faultsOf } from './reading';

interface Case {
  readonly says: string;
  readonly marked: string;
  /** The way out to take, by its title, and the text it leaves. It must then read without this fault. */
  readonly way?: string;
  readonly leaves?: string;
  /** Of all ways, when there are more than the one taken. */
  readonly ways?: readonly string[];
}

const cases: readonly Case[] = [
  {
    says: 'a number can be read two ways',
    marked: `
      wall north
        length 1,450 mm
               ^^^^^ number-two-ways: 1450 mm or 1.45 mm
    `,
    ways: ['It is 1450 mm', 'It is 1.45 mm'],
    way: 'It is 1450 mm',
    leaves: 'wall north\n  length 1450 mm\n',
  },
  {
    says: 'a point could part thousands too',
    marked: `
      price
        round £1.450
               ^^^^^ number-two-ways: 1.45 or 1450
    `,
    ways: ['It is 1.45', 'It is 1450'],
    way: 'It is 1.45',
    leaves: 'price\n  round £1.45\n',
  },
  {
    says: 'the fraction after a number read two ways stays',
    marked: `
      wall north
        length 1,450 1/2 in
               ^^^^^ number-two-ways
    `,
    ways: ['It is 1450 in', 'It is 1.45 in'],
    way: 'It is 1450 in',
    leaves: 'wall north\n  length 1450 1/2 in\n',
  },
  {
    says: 'marks that no number has',
    marked: `
      wall north
        length 1'450 mm
               ^^^^^ number-unreadable: Write 1450, 1,450.00 or 14.5
    `,
  },
  {
    says: 'a fraction over nothing',
    marked: `
      wall north
        thick 1/0 brick
              ^^^ number-unreadable: divides by zero
    `,
  },
  {
    says: 'a length that no job has',
    marked: `
      wall north
        length 74000 m
               ^^^^^ number-absurd: Check the number and its unit
    `,
  },
  {
    says: 'a number without end',
    marked: `
      wall north
        length 1234567890123456789012345678901 mm
               ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ number-absurd: at most 30
    `,
  },
  {
    says: 'a fraction too long to be exact',
    marked: `
      wall north
        thick 1234567890123456/3 brick
              ^^^^^^^^^^^^^^^^^^ number-absurd
    `,
  },
  {
    says: 'a unit misspelt',
    marked: `
      wall north
        dpc slate 2 corses
                    ^^^^^^ unit-wrong: no unit that is known
    `,
    way: 'Write courses',
    leaves: 'wall north\n  dpc slate 2 courses\n',
  },
  {
    says: 'a unit of something else',
    marked: `
      wall north
        length 7.4 kg
                   ^^ unit-wrong: a unit of mass
    `,
  },
  {
    says: 'a day that February has not',
    marked: `
      job
        date 2026-02-30
             ^^^^^^^^^^ date-impossible: February 2026 has days 01 to 28
    `,
    way: 'Write 2026-02-28',
    leaves: 'job\n  date 2026-02-28\n',
  },
  {
    says: 'a leap day in a year that has none',
    marked: `
      job
        date 1900-02-29
             ^^^^^^^^^^ date-impossible: 01 to 28
    `,
    way: 'Write 1900-02-28',
    leaves: 'job\n  date 1900-02-28\n',
  },
  {
    says: 'a day nought',
    marked: `
      record
        paid 2026-04-00 £5
             ^^^^^^^^^^ date-impossible: April has days 01 to 30
    `,
    way: 'Write 2026-04-01',
    leaves: 'record\n  paid 2026-04-01 £5\n',
  },
  {
    says: 'a thirteenth month, with no guess at which was meant',
    marked: `
      job
        date 2026-13-01
             ^^^^^^^^^^ date-impossible: months 01 to 12
    `,
  },
  {
    says: 'a date without its noughts',
    marked: `
      job
        date 2026-3-2
             ^^^^^^^^ value-wrong: a date such as 2026-03-02
    `,
    way: 'Write 2026-03-02',
    leaves: 'job\n  date 2026-03-02\n',
  },
  {
    says: 'a heading that moved in',
    marked: `
      # above it
        wall north
        ^^^^ heading-indented: first column
    `,
    way: 'Move it to the first column',
    leaves: '# above it\nwall north\n',
  },
  {
    says: 'a block inside another',
    marked: `
      wall north
        repair frost
        ^^^^^^ heading-indented: cannot stand in wall
          in north
    `,
    way: 'Move it to the first column',
    leaves: 'wall north\nrepair frost\n    in north\n',
  },
  {
    says: 'a heading misspelt, whose lines are then left out without more ado',
    marked: `
      repiar frost
      ^^^^^^ heading-unknown: Did you mean “repair”?
        in north
        nonsense
    `,
    way: 'Write repair',
    leaves: 'repair frost\n  in north\n  nonsense\n',
  },
  {
    says: 'a heading that nobody knows',
    marked: `
      chimney stack
      ^^^^^^^ heading-unknown: It can be job, use, firm
    `,
  },
  {
    says: 'a line above any heading',
    marked: `
      length 7.4 m
      ^^^^^^^^^^^^ line-homeless: a line of wall
        height 2 m
      wall north
    `,
  },
  {
    says: 'a line that lost its indent',
    marked: `
      wall north
      length 7.4 m
      ^^^^^^ indent-astray: belongs to the wall above
    `,
    way: 'Indent it to match',
    leaves: 'wall north\n  length 7.4 m\n',
  },
  {
    says: 'a line of an opening at the depth of the wall',
    marked: `
      wall north
        opening gate
        width 1010 mm
        ^^^^^ indent-astray: belongs to the opening above
    `,
    way: 'Indent it to match',
    leaves: 'wall north\n  opening gate\n    width 1010 mm\n',
  },
  {
    says: 'a line of the wall among those of an opening',
    marked: `
      wall north
        opening gate
          length 7.4 m
          ^^^^^^ indent-astray: belongs to the wall above
    `,
    way: 'Indent it to match',
    leaves: 'wall north\n  opening gate\n  length 7.4 m\n',
  },
  {
    says: 'a line of an opening after the wall went on',
    marked: `
      wall north
        opening gate
        length 7.4 m
        width 1010 mm
        ^^^^^ indent-astray: belongs to the opening above
    `,
    way: 'Indent it to match',
    leaves: 'wall north\n  opening gate\n  length 7.4 m\n    width 1010 mm\n',
  },
  {
    says: 'a line of the wall or of an opening, after the wall went on',
    marked: `
      wall north
        opening gate
        length 7.4 m
          width 1010 mm
          height 18 courses
          ^^^^^^ indent-parted: read as one of the opening above
    `,
    way: 'Take its indent back',
    leaves: 'wall north\n  opening gate\n  length 7.4 m\n    width 1010 mm\n  height 18 courses\n',
  },
  {
    says: 'a heading that begins with no word',
    marked: `
      26 walls
      ^^^^^^^^ line-unreadable: begins with a word
    `,
  },
  {
    says: 'a line that begins with no word',
    marked: `
      wall north
        18 courses
        ^^^^^^^^^^ line-unreadable: the others stand
        length 7.4 m
    `,
  },
  {
    says: 'a word misspelt',
    marked: `
      wall north
        lenght 7.4 m
        ^^^^^^ line-unknown: Did you mean “length”?
    `,
    way: 'Write length',
    leaves: 'wall north\n  length 7.4 m\n',
  },
  {
    says: 'a word that stands elsewhere',
    marked: `
      repair frost
        opening gate
        ^^^^^^^ line-unknown: so it and the lines under it are left out. It is a line of wall.
          width 1010 mm
          nonsense
    `,
  },
  {
    says: 'a word that stands nowhere',
    marked: `
      pier gate
        chimney 2
        ^^^^^^^ line-unknown: Under pier there can be number, brick
    `,
  },
  {
    says: 'a line under a heading that has none',
    marked: `
      perpend 1
        draft
        ^^^^^ line-unknown: Nothing stands under perpend
    `,
  },
  {
    says: 'a misspelt opening keeps its lines from the wall',
    marked: `
      wall north
        openning gate
        ^^^^^^^^ line-unknown: the lines under it are left out. Did you mean “opening”?
          height 12 courses
        height 18 courses
    `,
    way: 'Write opening',
    leaves: 'wall north\n  opening gate\n    height 12 courses\n  height 18 courses\n',
  },
  {
    says: 'one thing said twice',
    marked: `
      wall north
        length 7.4 m
        height 2 m
        length 7.5 m # measured again
        ^^^^^^^^^^^^ line-twice: the first, 2 lines up, holds
    `,
    way: 'Take this line out',
    leaves: 'wall north\n  length 7.4 m\n  height 2 m\n # measured again\n',
  },
  {
    says: 'a text left open',
    marked: `
      wall north "North boundary   # and its end
                 ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ text-open: taken to the end of the line
    `,
    way: 'Close the text',
    leaves: 'wall north "North boundary   # and its end"\n',
  },
  {
    says: 'a text that ends in a backslash',
    marked: `
      use "C:\\
          ^^^^ text-open
    `,
    way: 'Close the text',
    leaves: 'use "C:\\\\"\n',
  },
  {
    says: 'a curved text left open',
    marked: `
      wall north “North
                 ^^^^^^ text-open
    `,
    way: 'Close the text',
    leaves: 'wall north “North”\n',
  },
  {
    says: 'a line not finished',
    marked: `
      wall north
        length
        ^^^^^^ value-missing: it needs a length such as 7.4 m
    `,
  },
  {
    says: 'a list not finished',
    marked: `
      mix general
        parts cement 1,
        ^^^^^^^^^^^^^^^ value-missing: the name of a material
    `,
  },
  {
    says: 'more than is read',
    marked: `
      wall north
        length 7.4 m or so
                     ^^^^^ value-spare: Nothing more is read after “length”
    `,
    way: 'Take it out',
    leaves: 'wall north\n  length 7.4 m \n',
  },
  {
    says: 'a number without its unit',
    marked: `
      wall north
        length 7.4
               ^^^ value-wrong: A number here needs its unit.
    `,
  },
  {
    says: 'a word nearly right',
    marked: `
      wall north
        left stoped
             ^^^^^^ value-wrong: one of stopped, toothed, butted
    `,
    way: 'Write stopped',
    leaves: 'wall north\n  left stopped\n',
  },
  {
    says: 'a range written with a hyphen',
    marked: `
      repair frost
        salvage 60-75%
                ^^^^^ value-wrong: two points, such as 60..75
    `,
    way: 'Write 60..75',
    leaves: 'repair frost\n  salvage 60..75%\n',
  },
  {
    says: 'a range where one number is taken',
    marked: `
      wall north
        length 7..8 m
               ^^^^^^ value-wrong: a length such as 7.4 m
    `,
  },
  {
    says: 'a trade named as it is written',
    marked: `
      labour
        bricklayer 27.50
                   ^^^^^ value-wrong: “bricklayer” wants money
    `,
  },
  {
    says: 'one wrong line beside a right one',
    marked: `
      wall north
        height ^ courses
               ^ value-wrong
        length 7.4 m
    `,
  },
];

describe('a fault', () => {
  test.each(cases)('of $says', ({ marked, way, leaves, ways }) => {
    const { text, found } = expectFindings(marked, faultsOf);
    const offered = found.flatMap((fault) => fault.ways);
    expect(offered.map((each) => each.title)).toEqual(ways ?? (way ? [way] : []));
    const taken = offered.find((each) => each.title === way);
    if (!taken) return;
    const after = applied(text, taken.edits);
    expect(after).toBe(leaves);
    const fixed = found.find((fault) => fault.ways.includes(taken))!;
    expect(faultsOf(after).map((fault) => fault.code)).not.toContain(fixed.code);
  });

  test('has a case for every code that the reader can give', () => {
    const sources = files().filter((file) => /^grammar\/read\/.*\.ts$/.test(file));
    const calls = sources.flatMap((file) => [...read(file).matchAll(/\bfault\(\s*'([a-z-]+)'/g)]);
    const codes = new Set(calls.map((call) => call[1]));
    const tested = cases.flatMap((each) => parseMarks(each.marked).expected.map((e) => e.code));
    expect(codes.size).toBeGreaterThan(10);
    expect([...new Set(tested)].sort()).toEqual([...codes].sort());
  });

  test('clips what is too long to be read', () => {
    const [found] = faultsOf(`wall a\n  length ${'1,1'.repeat(1000)} m\n`);
    expect(found!.message.length).toBeLessThan(200);
  });
});

describe('the ways out of a fault', () => {
  test('say one thing each, and read better afterwards', () => {
    const text = 'wall a\n  length 7,4 m\n';
    const [found] = faultsOf(text);
    const after = found!.ways.map((way) => applied(text, way.edits));
    expect(after).toEqual(['wall a\n  length 7, 4 m\n', 'wall a\n  length 7.4 m\n']);
    expect(faultsOf(after[1]!)).toEqual([]);
  });
});
