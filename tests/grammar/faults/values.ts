import type { Case } from './case';

/** Faults of what stands in a line. */
export const values: readonly Case[] = [
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
    says: 'a time that no clock shows',
    marked: `
      labour
        start 07:60
              ^^^^^ clock-wrong: minutes from 00 to 59
    `,
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
        thick 1..2 bricks
              ^^^^^^^^^^^ value-wrong: only one value: a wall has one thickness, and another is another wall
    `,
  },
  {
    says: 'a range of what is fixed',
    marked: `
      job "A"
        tax 5..20%
            ^^^^^^ value-wrong: No range is taken here, only one value: a tax rate is fixed
    `,
  },
  {
    says: 'a range of money that is decided',
    marked: `
      price
        round £1..£5
              ^^^^^^ value-wrong: only one value: what a price is rounded to is decided
    `,
  },
  {
    says: 'a range of a size that is decided',
    marked: `
      pier p
        size 1..2 x 1.5 bricks
             ^^^^ value-wrong: only one value: a pier has one size, and another is another pier
    `,
  },
  {
    says: 'a side of a size turned round',
    marked: `
      wall north
        footing 450 x 300..225 mm
                      ^^^^^^^^ range-backwards: 225..300
    `,
    way: 'Write 225..300',
    leaves: 'wall north\n  footing 450 x 225..300 mm\n',
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
