import { everyCaution } from './each';

const wall = (lines: string, length = '1990 mm') => `
      wall a
        length ${length}
${lines}`;

const low = `        height 4 courses\n`;

everyCaution('de', {
  piers: {
    shown: `
      pier g
           ^ caution-piers: Tragwerksplaner
        size 1 x 1 bricks
        height 4 courses
    `,
    not: wall(low),
  },
  lintel: {
    shown: wall(`        height 18 courses
        opening w
          from left 750 mm
          width 510 mm
          sill 3 courses
          height 6 courses
          lintel 115 x 71 mm
          ^^^^^^^^^^^^^^^^^^ caution-lintel: Unterstützen, bis
`),
    not: wall(`        height 18 courses
        opening w
          from left 750 mm
          width 510 mm
          sill 3 courses
`),
  },
  arch: {
    shown: wall(`        height 24 courses
        opening w
          from left 750 mm
          width 510 mm
          sill 3 courses
          height 6 courses
          head semicircular
          ^^^^^^^^^^^^^^^^^ caution-arch: Tragwerksplaner
`),
    not: wall(`        height 24 courses
        opening w
          from left 750 mm
          width 510 mm
          sill 3 courses
          height 6 courses
          lintel 115 x 71 mm
`),
  },
  high: {
    shown: wall(`        height 25 courses
        ^^^^^^^^^^^^^^^^^ caution-high: it is 2,08 m high, over 2 m
`),
    not: wall(`        height 24 courses\n`),
  },
  silica: {
    shown: `
      wall a
        length 1990 mm
        ^^^^^^^^^^^^^^ caution-silica: TRGS 559
        height 4 courses
    `,
    not: `
      pier g
        size 1 x 1 bricks
        height 4 courses
    `,
  },
  raking: {
    shown: `
      repair r
        repoint 1 m2 raked 20 mm
        ^^^^^^^^^^^^^^^^^^^^^^^^ caution-raking: Staubklasse M
    `,
    not: `
      repair r
        rebuild 990 mm x 4 courses
    `,
  },
  cement: {
    shown: wall(`${low}        mix mg-iia
            ^^^^^^ caution-cement: Zement in Mörtelgruppe IIa, 1 : 1 : 6; Kalkhydrat in
`),
    not: `
      mix lehm
        parts sand 3
        joint 10 mm
      wall a
        length 1990 mm
        height 4 courses
        mix lehm
    `,
  },
  weather: {
    shown: wall(low).replace('wall a\n', 'wall a\n           ^ caution-weather: DIN EN 1996-2\n'),
    not: 'job "Only bricks"\ncost bricks "Bricks delivered" 1 at 240 €\n',
  },
  wind: {
    shown: wall(`        height 13 courses
        ^^^^^^^^^^^^^^^^^ caution-wind: it is 1,08 m high, over 1 m
      repair r
        size 365 x 365 mm
        rebuild 13 courses
        ^^^^^^^^^^^^^^^^^^ caution-wind: it is 1,08 m high, over 1 m
`),
    not: wall(`        height 12 courses\n`),
  },
  height: {
    shown: wall(`${low}        stands free
        ^^^^^^^^^^^ caution-height: Bauaufsicht
`),
    not: wall(`${low}        stands held\n`),
  },
  leaning: {
    shown: `
      repair r
        leans 40 mm
        ^^^^^^^^^^^ caution-leaning: it leans 40 mm, over 30 mm
        rebuild 990 mm x 4 courses
    `,
    not: `
      repair r
        leans 20 mm
        rebuild 990 mm x 4 courses
    `,
  },
  'taking-down': {
    shown: `
      repair r
        rebuild 990 mm x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^^^^^ caution-taking-down: DGUV Vorschrift 38, section 22
    `,
    not: `
      repair r
        repoint 1 m2 raked 20 mm
    `,
  },
  lumps: {
    shown: `
      repair r
        rebuild 990 mm x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^^^^^ caution-lumps: 6 bricks in a lump with their mortar are more than 25 kg
    `,
    not: `
      repair r
        rebuild 240 mm x 2 courses
    `,
  },
  lifting: {
    shown: `
      pier g
        size 1.5 x 1.5 bricks
        height 4 courses
        cap 490 x 490 x 60 mm
        ^^^^^^^^^^^^^^^^^^^^^ caution-lifting: each cap 490 x 490 x 60 mm is 35 kg, over 25 kg
    `,
    not: `
      pier g
        size 1.5 x 1.5 bricks
        height 4 courses
        cap 490 x 490 x 40 mm
    `,
  },
  bags: {
    shown: wall(`${low}        mix mg-iia
            ^^^^^^ caution-bags: Zement comes by the 25 kg Sack, no less than 25 kg
`),
    not: `
      material zement
        pack 20 kg Sack at 6 €
      wall a
        length 1990 mm
        height 4 courses
        mix mg-iia
    `,
  },
  digging: {
    shown: wall(`${low}        footing 400 x 800 mm
        ^^^^^^^^^^^^^^^^^^^^ caution-digging: Leitungsauskunft
`),
    not: wall(low),
  },
  boundary: {
    shown: wall(`${low}        footing 400 x 800 mm
        boundary 0.4 m
        ^^^^^^^^^^^^^^ caution-boundary: the boundary is 0,4 m away, within 3 m
`),
    not: wall(`${low}        footing 400 x 800 mm\n        boundary 4 m\n`),
  },
  permit: {
    shown: wall(`        height 25 courses
        ^^^^^^^^^^^^^^^^^ caution-permit: Musterbauordnung
`),
    not: wall(`        height 24 courses\n`),
  },
  retaining: {
    shown: wall(`${low}        stands retaining
        ^^^^^^^^^^^^^^^^ caution-retaining: Tragwerksplaners
`),
    not: wall(low),
  },
  road: {
    shown: wall(`${low}        road 1 m
        ^^^^^^^^ caution-road: RSA 21
`),
    not: wall(`${low}        road 3 m\n`),
  },
  'old-lime': {
    shown: `
      repair r
        mix mg-iia
            ^^^^^^ caution-old-lime: it stands in lime
        stands-in lime
        repoint 1 m2 raked 20 mm
    `,
    not: `
      repair r
        mix mg-iia
        stands-in cement
        repoint 1 m2 raked 20 mm
    `,
  },
});
