import { everyCaution } from './each';

const wall = (lines: string, length = '1790 mm') => `
      wall a
        brick red
        length ${length}
${lines}`;

const low = `        height 4 courses\n`;

everyCaution('uk', {
  piers: {
    shown: `
      pier g
           ^ caution-piers: No table here covers
        brick red
        size 1 x 1 bricks
        height 4 courses
    `,
    not: wall(low),
  },
  lintel: {
    shown: wall(
      `        height 20 courses
        opening w
          from left 675 mm
          width 685 mm
          sill 4 courses
          height 8 courses
          lintel 100 x 65 mm
          ^^^^^^^^^^^^^^^^^^ caution-lintel: Prop it
`,
      '2240 mm',
    ),
    not: wall(
      `        height 20 courses
        opening w
          from left 675 mm
          width 685 mm
          sill 4 courses
`,
      '2240 mm',
    ),
  },
  arch: {
    shown: wall(
      `        height 24 courses
        opening w
          from left 675 mm
          width 685 mm
          sill 4 courses
          height 8 courses
          head semicircular
          ^^^^^^^^^^^^^^^^^ caution-arch: stands on its centre
`,
      '2240 mm',
    ),
    not: wall(
      `        height 24 courses
        opening w
          from left 675 mm
          width 685 mm
          sill 4 courses
          height 8 courses
          head soldier
          lintel 100 x 65 mm
`,
      '2240 mm',
    ),
  },
  high: {
    shown: wall(`        height 21 courses
        ^^^^^^^^^^^^^^^^^ caution-high: it is 1.58 m high, over 1.5 m
      repair r
        brick red
        size 1.5 x 1.5 bricks
        rebuild 21 courses
        ^^^^^^^^^^^^^^^^^^ caution-high: it is 1.58 m high, over 1.5 m
`),
    not: wall(`        height 20 courses
      repair r
        brick red
        size 1.5 x 1.5 bricks
        rebuild 20 courses
`),
  },
  silica: {
    shown: `
      wall a
        brick red
        length 1790 mm
        ^^^^^^^^^^^^^^ caution-silica: HSE
        height 4 courses
    `,
    not: `
      pier g
        brick red
        size 1 x 1 bricks
        height 4 courses
    `,
  },
  raking: {
    shown: `
      repair r
        brick red
        repoint 1 m2 raked 20 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^ caution-raking: INDG463
    `,
    not: `
      repair r
        brick red
        rebuild 900 mm x 4 courses
    `,
  },
  cement: {
    shown: `
      wall a
        brick red
        length 1790 mm
        height 4 courses
        mix general
            ^^^^^^^ caution-cement: Cement in General mortar 1 : 1 : 6; Hydrated lime in
      wall b
        brick red
        length 1790 mm
        height 4 courses
        mix general
    `,
    not: `
      mix earth
        parts sand 3
        joint 10 mm
      wall a
        brick red
        length 1790 mm
        height 4 courses
        mix earth
    `,
  },
  weather: {
    shown: `
      wall a
           ^ caution-weather: NHBC
        brick red
        length 1790 mm
        height 4 courses
    `,
    not: 'job "Only bricks"\ncost bricks "Bricks delivered" 1 at £240\n',
  },
  wind: {
    shown: wall(`        height 13 courses
        ^^^^^^^^^^^^^^^^^ caution-wind: it is 0.98 m high, over 900 mm
      repair r
        brick red
        size 1.5 x 1.5 bricks
        rebuild 13 courses
        ^^^^^^^^^^^^^^^^^^ caution-wind: it is 0.98 m high, over 900 mm
`),
    not: wall(`        height 13 courses
        stands held
      repair r
        brick red
        size 1.5 x 1.5 bricks
        rebuild 12 courses
      repair s
        brick red
        size 1.5 x 1.5 bricks
        repoint 2 m2
`),
  },
  leaning: {
    shown: `
      repair r
        brick red
        leans 31 mm
        ^^^^^^^^^^^ caution-leaning: it leans 31 mm, over 30 mm
        rebuild 900 mm x 4 courses
      repair s
        brick red
        thick 1 brick
        bond english
        leans 71 mm
        ^^^^^^^^^^^ caution-leaning: it leans 71 mm, over 70 mm
        rebuild 900 mm x 4 courses
      repair t
        brick red
        thick 1.5 bricks
        bond english
        leans 101 mm
        ^^^^^^^^^^^^ caution-leaning: it leans 101 mm, over 100 mm
        rebuild 900 mm x 4 courses
      repair u
        brick red
        thick 1.5 bricks
        size 1.5 x 1.5 bricks
        leans 31 mm
        ^^^^^^^^^^^ caution-leaning: it leans 31 mm, over 30 mm
        rebuild 4 courses
    `,
    not: `
      repair r
        brick red
        leans 30 mm
        rebuild 900 mm x 4 courses
      repair s
        brick red
        thick 1 brick
        bond english
        leans 70 mm
        rebuild 900 mm x 4 courses
      repair t
        brick red
        thick 1.5 bricks
        bond english
        leans 100 mm
        rebuild 900 mm x 4 courses
    `,
  },
  'taking-down': {
    shown: `
      repair r
        brick red
        rebuild 900 mm x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^^^^^ caution-taking-down: from the top
    `,
    not: `
      repair r
        brick red
        repoint 1 m2 raked 20 mm
    `,
  },
  lumps: {
    shown: `
      repair r
        brick red
        rebuild 900 mm x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^^^^^ caution-lumps: 6 bricks in a lump with their mortar are more than 20 kg
    `,
    not: `
      repair r
        brick red
        rebuild 450 mm x 2 courses
    `,
  },
  lifting: {
    shown: `
      pier g
        brick red
        size 1.5 x 1.5 bricks
        height 4 courses
        cap 440 x 440 x 75 mm
        ^^^^^^^^^^^^^^^^^^^^^ caution-lifting: one of “Another cap”, 440 x 440 x 75 mm, is 35 kg, over 20 kg
      material old-cap "The old cap"
        size 400 x 400 x 90 mm
      repair r
        brick red
        size 1.5 x 1.5 bricks
        rebed 1 piece old-cap
        ^^^^^^^^^^^^^^^^^^^^^ caution-lifting: one of “The old cap”, 400 x 400 x 90 mm, is 35 kg, over 20 kg
    `,
    not: `
      material old-cap "The old cap"
        size 400 x 400 x 50 mm
      repair r
        brick red
        size 1.5 x 1.5 bricks
        rebed 1 piece old-cap
      pier g
        brick red
        size 1.5 x 1.5 bricks
        height 4 courses
        cap 440 x 440 x 40 mm
    `,
  },
  bags: {
    shown: `
      wall a
        brick red
        length 1790 mm
        height 4 courses
        mix general
            ^^^^^^^ caution-bags: Cement comes by the 25 kg bag, no less than 25 kg
    `,
    not: `
      material cement
        pack 20 kg bag at £6
      material lime
        pack 850 kg bag at £90
      wall a
        brick red
        length 1790 mm
        height 4 courses
        mix general
    `,
  },
  digging: {
    shown: wall(`${low}        footing 450 x 225 mm
        ^^^^^^^^^^^^^^^^^^^^ caution-digging: HSG47
`),
    not: wall(low),
  },
  boundary: {
    shown: `
      wall a
        brick red
        length 1790 mm
        height 4 courses
        footing 450 x 225 mm
        boundary 6 m
        ^^^^^^^^^^^^ caution-boundary: the boundary is 6 m away, within 6 m
    `,
    not: `
      wall a
        brick red
        length 1790 mm
        height 4 courses
        footing 450 x 225 mm
        boundary 6.1 m
      wall c
        brick red
        length 1790 mm
        height 4 courses
        footing 450 x 225 mm
      wall b
        brick red
        length 1790 mm
        height 4 courses
        boundary 1 m
    `,
  },
  'party-wall': {
    shown: wall(`${low}        boundary 0 mm
        ^^^^^^^^^^^^^ caution-party-wall: it is on the boundary)
`),
    not: wall(`${low}        boundary 50 mm\n`),
  },
  planning: {
    shown: `
      wall a
        brick red
        length 1790 mm
        height 14 courses
        ^^^^^^^^^^^^^^^^^ caution-planning: it is 1.05 m high, over 1 m; a road is 2 m away, within 2 m
        road 2 m
      wall b
        brick red
        length 1790 mm
        height 27 courses
        ^^^^^^^^^^^^^^^^^ caution-planning: it is 2.03 m high, over 2 m
        road 20 m
    `,
    not: `
      wall a
        brick red
        length 1790 mm
        height 13 courses
        road 2 m
      wall b
        brick red
        length 1790 mm
        height 26 courses
        road 20 m
      wall c
        brick red
        length 1790 mm
        height 40 courses
        stands held
      wall d
        brick red
        length 1790 mm
        height 14 courses
    `,
  },
  retaining: {
    shown: wall(`${low}        stands retaining
        ^^^^^^^^^^^^^^^^ caution-retaining: structural engineer
`),
    not: wall(`${low}        stands held\n`),
  },
  'retaining-road': {
    shown: wall(`        height 19 courses
        stands retaining
        road 3.6 m
        ^^^^^^^^^^ caution-retaining-road: a road is 3.6 m away, within 4 yd; it is 1.43 m high, over 4.5 ft
`),
    not: wall(`        height 19 courses\n        stands retaining\n        road 3.7 m\n`),
  },
  road: {
    shown: `
      repair r
        brick red
        road 0 m
        ^^^^^^^^ caution-road: it is beside a road, within 2 m
        rebuild 900 mm x 4 courses
    `,
    not: `
      repair r
        brick red
        road 2.1 m
        rebuild 900 mm x 4 courses
    `,
  },
  'old-lime': {
    shown: `
      repair r
        brick red
        mix general
            ^^^^^^^ caution-old-lime: Cement in General mortar 1 : 1 : 6; it stands in lime
        stands-in lime
        repoint 1 m2 raked 20 mm
      repair s
        brick red
        mix strong
            ^^^^^^ caution-old-lime: it stands in Lime mortar 1 : 3
        stands-in lime-soft
        repoint 1 m2 raked 20 mm
    `,
    not: `
      repair r
        brick red
        mix lime-soft
        stands-in lime
        repoint 1 m2 raked 20 mm
      repair s
        brick red
        mix general
        stands-in cement
        repoint 1 m2 raked 20 mm
      repair t
        brick red
        mix general
        stands-in strong
        repoint 1 m2 raked 20 mm
      repair u
        brick red
        mix general
        repoint 1 m2 raked 20 mm
    `,
  },
});
