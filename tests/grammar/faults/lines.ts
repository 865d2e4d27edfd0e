import type { Case } from './case';

/** Faults of headings, lines and their indentation. */
export const lines: readonly Case[] = [
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
      ^^^^^^^ heading-unknown: It can be template, job, use, bill-to, firm, partner, wall, pier, repair, travel, cost, price, option, record, brick, mix, material, labour, output, serving, defaults, measures, yield-model, mortar-class, least-mortar, bond, pier-plan, limit, tolerance, caution or currencies.
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
    says: 'a line of a pier in a wall, in a pier alone',
    marked: `
      pier gate
        at left
        ^^ line-unknown: “at” is no line of pier, so it is left out. It is a line of a pier inside a wall.
    `,
  },
  {
    says: 'a line of a pier alone, in a pier of a wall',
    marked: `
      wall north
        pier hanging
          number 2
          ^^^^^^ line-unknown: It is a line of a pier in a block of its own.
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
];
