import type { Case } from './case';

/** Items that do not fit, where it is plain what they were meant for. */
export const meant: readonly Case[] = [
  {
    says: 'a number below nothing',
    marked: `
      wall north
        length -4.2 m
               ^^^^^^ value-wrong: cannot be negative
    `,
    way: 'Take the minus away',
    leaves: 'wall north\n  length 4.2 m\n',
  },
  {
    says: 'a size below nothing',
    marked: `
      wall north
        footing −450 x 225 mm
                ^^^^ value-wrong: cannot be negative
    `,
    way: 'Take the minus away',
    leaves: 'wall north\n  footing 450 x 225 mm\n',
  },
  {
    says: 'money below nothing',
    marked: `
      price
        least -£5
              ^^^ value-wrong: cannot be negative
    `,
    way: 'Take the minus away',
    leaves: 'price\n  least £5\n',
  },
  {
    says: 'money below nothing, the sign after the currency',
    marked: `
      price
        least £-5
              ^^^ value-wrong: cannot be negative
    `,
    way: 'Take the minus away',
    leaves: 'price\n  least £5\n',
  },
  {
    says: 'x before a digit in a name',
    marked: `
      wall x1
           ^^ value-wrong: “x1” cannot be a name, because x before a digit is the sign in a size
    `,
    way: 'Write x-1',
    leaves: 'wall x-1\n',
  },
  {
    says: 'x before a digit in a name, and another word',
    marked: `
      wall north
        pier a
          at x1 left
             ^^ value-wrong: “x1” cannot be a name
    `,
    way: 'Write x-1',
    leaves: 'wall north\n  pier a\n    at x-1 left\n',
  },
  {
    says: 'a digit first in a name',
    marked: `
      wall 2north
           ^^^^^^ value-wrong: “2north” cannot be a name, because it begins with a digit
    `,
  },
  {
    says: 'digits for a name',
    marked: `
      wall 26-041
           ^^^^^^ value-wrong: “26-041” cannot be a name, because it begins with a digit
    `,
  },
  {
    says: 'a number where a name is left out',
    marked: `
      mix lime
        parts 1 cement, 2 lime
              ^^^^^^^^ value-wrong: “parts” wants the name of a material here
    `,
  },
  {
    says: 'words for a word with hyphens',
    marked: `
      pier gate
        coping brick on edge
               ^^^^^^^^^^^^^ value-wrong: wants one of brick-on-edge, brick-on-end, none here. Did you mean “brick-on-edge”?
    `,
    way: 'Write brick-on-edge',
    leaves: 'pier gate\n  coping brick-on-edge\n',
  },
  {
    says: 'a thickness in words',
    marked: `
      wall north
        thick half brick
              ^^^^ value-wrong: a number of bricks such as 1/2 brick or 1 brick here
    `,
  },
];
