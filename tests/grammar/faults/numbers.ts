import type { Case } from './case';

/** Faults of numbers: doubtful ones, ranges, and more than there can be. */
export const numbers: readonly Case[] = [
  {
    says: 'a decimal comma, which could as well part two numbers',
    marked: `
      wall north
        length 4,2 m
               ^^^ number-two-ways: 4.2 m with a decimal comma, or two numbers, 4 and 2
    `,
    way: 'It is 4.2 m',
    leaves: 'wall north\n  length 4.2 m\n',
  },
  {
    says: 'a length in metres to the millimetre',
    marked: `
      wall north
        length 4.165 m
               ^^^^^ number-two-ways: 4.1650 m or 4165 m. If the point is a decimal point, write 4165 mm.
    `,
    ways: ['It is 4165 mm', 'It is 4.1650 m', 'It is 4165 m'],
    way: 'It is 4165 mm',
    leaves: 'wall north\n  length 4165 mm\n',
  },
  {
    says: 'the same with a comma and no space',
    marked: `
      wall north
        length 4,165m
               ^^^^^ number-two-ways: If the comma is a decimal comma, write 4165 mm.
    `,
    ways: ['It is 4165 mm', 'It is 4165 m', 'It is 4.1650 m'],
    way: 'It is 4165 mm',
    leaves: 'wall north\n  length 4165 mm\n',
  },
  {
    says: 'centimetres to a hundredth of a millimetre',
    marked: `
      brick red
        joint 1.025 cm
              ^^^^^ number-two-ways: write 10.25 mm
    `,
    ways: ['It is 10.25 mm', 'It is 1.0250 cm', 'It is 1025 cm'],
    way: 'It is 10.25 mm',
    leaves: 'brick red\n  joint 10.25 mm\n',
  },
  {
    says: 'a side of a size, whose unit the other sides share',
    marked: `
      wall north
        footing 1.200 x 0.3 m
                ^^^^^ number-two-ways: 1.2 m or 1200 m. Write the one you mean.
    `,
    ways: ['It is 1.2 m', 'It is 1200 m'],
    way: 'It is 1.2 m',
    leaves: 'wall north\n  footing 1.2 x 0.3 m\n',
  },
  {
    says: 'a feet-and-inches unit has none finer',
    marked: `
      wall north
        length 4.165 ft
               ^^^^^ number-two-ways: 4.1650 ft or 4165 ft. Write the one you mean.
    `,
    ways: ['It is 4.1650 ft', 'It is 4165 ft'],
    way: 'It is 4.1650 ft',
    leaves: 'wall north\n  length 4.1650 ft\n',
  },
  {
    says: 'a range written backwards',
    marked: `
      repair frost
        cut-out 5..2 bricks
                ^^^^ range-backwards: from the less to the more: 2..5
    `,
    way: 'Write 2..5',
    leaves: 'repair frost\n  cut-out 2..5 bricks\n',
  },
  {
    says: 'a range written backwards, with a fraction',
    marked: `
      repair frost
        salvage 7 1/2 .. 2%
                ^^^^^^^^^^ range-backwards
    `,
    way: 'Write 2..7 1/2',
    leaves: 'repair frost\n  salvage 2..7 1/2%\n',
  },
  {
    says: 'more than all of it, salvage of repair',
    marked: `
      repair frost
        salvage 60..120%
                    ^^^ number-absurd: 120% is more than there can be (at most 100%)
    `,
  },
  {
    says: 'more than all of it, frog of brick',
    marked: `
      brick red
        frog 101%
             ^^^ number-absurd: 101% is more than there can be (at most 100%)
    `,
  },
  {
    says: 'more than all of it, waste of brick',
    marked: `
      brick red
        waste 101%
              ^^^ number-absurd: 101% is more than there can be (at most 100%)
    `,
  },
  {
    says: 'more than all of it, waste of mix',
    marked: `
      mix lime
        waste 101%
              ^^^ number-absurd: 101% is more than there can be (at most 100%)
    `,
  },
  {
    says: 'more than all of it, brick-waste of defaults',
    marked: `
      defaults
        brick-waste 101%
                    ^^^ number-absurd: 101% is more than there can be (at most 100%)
    `,
  },
  {
    says: 'more than all of it, mortar-waste of defaults',
    marked: `
      defaults
        mortar-waste 101%
                     ^^^ number-absurd: 101% is more than there can be (at most 100%)
    `,
  },
  {
    says: 'more than all of it, stage of price',
    marked: `
      price
        stage "All" 101%
                    ^^^ number-absurd: 101% is more than there can be (at most 100%)
    `,
  },
  {
    says: 'half a pier',
    marked: `
      pier gate
        number 2.5
               ^^^ number-whole: 2.5 is no count: this comes in whole ones, at least 1.
    `,
    ways: ['Write 2', 'Write 3'],
    way: 'Write 3',
    leaves: 'pier gate\n  number 3\n',
  },
  {
    says: 'no pier at all',
    marked: `
      pier gate
        number 0
               ^ number-whole: at least 1
    `,
    way: 'Write 1',
    leaves: 'pier gate\n  number 1\n',
  },
  {
    says: 'a pack of a fraction, with the fraction marked too',
    marked: `
      brick red
        pack 2 1/2
             ^^^^^ number-whole: 2 1/2 is no count
    `,
    ways: ['Write 2', 'Write 3'],
    way: 'Write 2',
    leaves: 'brick red\n  pack 2\n',
  },
  {
    says: 'less than one in a pack',
    marked: `
      brick red
        pack 0.4
             ^^^ number-whole: at least 1
    `,
    way: 'Write 1',
    leaves: 'brick red\n  pack 1\n',
  },
  {
    says: 'half a brick cut out',
    marked: `
      repair frost
        cut-out 5.5 bricks
                ^^^ number-whole: 5.5 is no count
    `,
    ways: ['Write 5', 'Write 6'],
    way: 'Write 6',
    leaves: 'repair frost\n  cut-out 6 bricks\n',
  },
  {
    says: 'a range of bricks that ends within one',
    marked: `
      repair frost
        cut-out 0..3.5 bricks
                   ^^^ number-whole: 3.5 is no count
    `,
    ways: ['Write 3', 'Write 4'],
    way: 'Write 4',
    leaves: 'repair frost\n  cut-out 0..4 bricks\n',
  },
  {
    says: 'a range of bricks that begins within one',
    marked: `
      repair frost
        cut-out 1.5..3 bricks
                ^^^ number-whole: 1.5 is no count: this comes in whole ones.
    `,
    ways: ['Write 1', 'Write 2'],
    way: 'Write 1',
    leaves: 'repair frost\n  cut-out 1..3 bricks\n',
  },
  {
    says: 'an edition between two',
    marked: `
      perpend 1.5
              ^^^ number-whole: 1.5 is no count
    `,
    ways: ['Write 1', 'Write 2'],
    way: 'Write 1',
    leaves: 'perpend 1\n',
  },
];
