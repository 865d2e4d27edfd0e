import { everyCaution } from './each';

const wall = (lines: string, length = '8 ft') => `
      wall a
        length ${length}
${lines}`;

const low = `        height 4 courses\n`;

everyCaution('us', {
  piers: {
    shown: `
      pier g
           ^ caution-piers: licensed structural engineer
        size 1 x 1 bricks
        height 4 courses
    `,
    not: wall(low),
  },
  lintel: {
    shown: wall(`        height 24 courses
        opening w
          from left 24 in
          width 24 3/8 in
          sill 6 courses
          height 9 courses
          lintel 3 5/8 x 8 in
          ^^^^^^^^^^^^^^^^^^^ caution-lintel: Prop it
`),
    not: wall(`        height 24 courses
        opening w
          from left 24 in
          width 24 3/8 in
          sill 6 courses
`),
  },
  arch: {
    shown: wall(`        height 36 courses
        opening w
          from left 24 in
          width 24 3/8 in
          sill 6 courses
          height 9 courses
          head semicircular
          ^^^^^^^^^^^^^^^^^ caution-arch: 31A
`),
    not: wall(`        height 24 courses
        opening w
          from left 24 in
          width 24 3/8 in
          sill 6 courses
          height 9 courses
          lintel angle
`),
  },
  high: {
    shown: wall(`        height 24 courses
        ^^^^^^^^^^^^^^^^^ caution-high: it is 5 ft 4 in high, over 5 ft
`),
    not: wall(`        height 22 courses\n`),
  },
  silica: {
    shown: wall(`${low}        bond third
`).replace(
      '        length 8 ft\n',
      '        length 8 ft\n        ^^^^^^^^^^^ caution-silica: 1926.1153, Table 1\n',
    ),
    not: `
      pier g
        size 1 x 1 bricks
        height 4 courses
    `,
  },
  raking: {
    shown: `
      repair r
        repoint 10 ft2 raked 3/4 in
        ^^^^^^^^^^^^^^^^^^^^^^^^^^^ caution-raking: shroud, dust collector and respirator
    `,
    not: `
      repair r
        rebuild 4 ft x 4 courses
    `,
  },
  cement: {
    shown: wall(`${low}        mix type-n
            ^^^^^^ caution-cement: Portland cement in Type N mortar 1 : 1 : 6; Hydrated lime in
`),
    not: `
      mix earth
        parts mason-sand 3
        joint 3/8 in
      wall a
        length 8 ft
        height 4 courses
        mix earth
    `,
  },
  weather: {
    shown: wall(low).replace('wall a\n', 'wall a\n           ^ caution-weather: 40 and 95 F\n'),
    not: 'job "Only bricks"\ncost bricks "Bricks delivered" 1 at $240\n',
  },
  wind: {
    shown: wall(`${low}        stands free
        ^^^^^^^^^^^ caution-wind: 10 lb per square foot
`),
    not: wall(`${low}        stands held\n`),
  },
  'access-zone': {
    shown: wall(low).replace('wall a\n', 'wall a\n           ^ caution-access-zone: 1926.706(a)\n'),
    not: `
      repair r
        rebuild 4 ft x 4 courses
    `,
  },
  bracing: {
    shown: wall(`        height 38 courses
        ^^^^^^^^^^^^^^^^^ caution-bracing: it is 8 ft 5 5/16 in high, over 8 ft
`),
    not: wall(`        height 36 courses\n`),
  },
  leaning: {
    shown: `
      repair r
        leans 1 1/4 in
        ^^^^^^^^^^^^^^ caution-leaning: it leans 1 1/4 in, over 1 1/8 in
        rebuild 4 ft x 4 courses
    `,
    not: `
      repair r
        leans 1 in
        rebuild 4 ft x 4 courses
    `,
  },
  'taking-down': {
    shown: `
      repair r
        rebuild 4 ft x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^^^ caution-taking-down: 1926.850(a)
    `,
    not: `
      repair r
        repoint 10 ft2 raked 3/4 in
    `,
  },
  lumps: {
    shown: `
      repair r
        rebuild 4 ft x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^^^ caution-lumps: bricks in a lump with their mortar are more than 51 lb
    `,
    not: `
      repair r
        rebuild 1 ft x 2 courses
    `,
  },
  lifting: {
    shown: `
      pier g
        size 1.5 x 1.5 bricks
        height 4 courses
        cap 16 x 16 x 3 in
        ^^^^^^^^^^^^^^^^^^ caution-lifting: each cap 16 x 16 x 3 in is 67 lb, over 51 lb
    `,
    not: `
      pier g
        size 1.5 x 1.5 bricks
        height 4 courses
        cap 16 x 16 x 2 in
    `,
  },
  bags: {
    shown: wall(`${low}        mix type-n
            ^^^^^^ caution-bags: Portland cement comes by the 94 lb bag, over 51 lb
`),
    not: `
      material portland-cement
        pack 47 lb bag at $9
      wall a
        length 8 ft
        height 4 courses
        mix type-n
    `,
  },
  digging: {
    shown: wall(`${low}        footing 16 x 8 in
        ^^^^^^^^^^^^^^^^^ caution-digging: Call 811
`),
    not: wall(low),
  },
  boundary: {
    shown: wall(`${low}        footing 16 x 8 in
        boundary 2 ft
        ^^^^^^^^^^^^^ caution-boundary: the boundary is 2 ft away, within 10 ft
`),
    not: wall(`${low}        footing 16 x 8 in\n        boundary 11 ft\n`),
  },
  permit: {
    shown: wall(`        height 32 courses
        ^^^^^^^^^^^^^^^^^ caution-permit: it is 7 ft 1 5/16 in high, over 7 ft
        road 40 ft
`),
    not: wall(`        height 30 courses\n        road 40 ft\n`),
  },
  retaining: {
    shown: wall(`${low}        stands retaining
        ^^^^^^^^^^^^^^^^ caution-retaining: licensed structural engineer's
`),
    not: wall(low),
  },
  road: {
    shown: wall(`${low}        road 3 ft
        ^^^^^^^^^ caution-road: a road is 3 ft away, within 10 ft
`),
    not: wall(`${low}        road 11 ft\n`),
  },
  'old-lime': {
    shown: `
      repair r
        mix type-n
            ^^^^^^ caution-old-lime: NPS Preservation Brief 2
        stands-in lime
        repoint 10 ft2 raked 3/4 in
    `,
    not: `
      repair r
        mix type-n
        stands-in type-m
        repoint 10 ft2 raked 3/4 in
    `,
  },
});
