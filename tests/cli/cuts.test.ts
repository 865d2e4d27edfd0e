import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readJson } from '../tree';
import { perpend, useCommandLine } from './perpend';

useCommandLine();

const JOB = (lines: string) =>
  `perpend 1\n\nuse uk\n\nwall north "North boundary"\n  stands  held\n${lines}`;
const PLAIN = '  length  2240 mm\n  height  4 courses\n';
const cuts = (text: string, ...more: string[]) => perpend(['cuts', '-', ...more], { input: text });

describe('perpend cuts', () => {
  test('lists what is cut, in which courses and where, and from which bricks', () => {
    const { code, out } = cuts(JOB(PLAIN));
    expect(code).toBe(0);
    // 2240 mm = ten bricks: every second course begins and ends with a half bat, two from a brick.
    expect(out).toBe(`north, bricks in the wall (Standard brick)
  courses  piece      each  in all  from the left
  2, 4     half bats     2       4  0 mm; 2137.5 mm
  cut from 2 bricks:
    2 bricks, each into 2 half bats
`);
  });

  test('a band by its brick, whose name stays as it is written', () => {
    const { out } = cuts(
      JOB(
        '  bond flemish\n  thick 1 brick\n  band engineering courses 8 to 9\n  length 4490 mm\n  height 12 courses\n',
      ),
    );
    expect(out.match(/bricks in the band of Class B engineering brick/g)).toHaveLength(1);
  });

  test('bats at hand come first, and those left are told', () => {
    const { out } = cuts(JOB(`${PLAIN}  bats    3\n`));
    expect(out).toContain('cut from 1 brick and 3 bats at hand:\n');
    expect(out).toContain('3 bats of 102.5 mm, each into 1 half bat\n');
    expect(out).toContain('1 brick into 1 half bat\n');
    expect(cuts(JOB(`${PLAIN}  bats    9\n`)).out).toContain(
      '5 bats of 102.5 mm at hand are left\n',
    );
    // 75 mm is too short for a half bat, 140 mm is not.
    const short = cuts(JOB(`${PLAIN}  bats    9 of 75 mm\n`));
    expect(short.code).toBe(0);
    expect(short.out).toContain('cut from 2 bricks:\n');
    expect(short.out).toContain('9 bats of 75 mm at hand are left\n');
    const { out: long } = cuts(JOB(`${PLAIN}  bats    3 of 140 mm\n`));
    expect(long).toContain('cut from 1 brick and 3 bats at hand:\n');
    expect(long).toContain('3 bats of 140 mm, each into 1 half bat\n');
  });

  test('piers alike share the bats at hand', () => {
    // A pier of 1.5 x 1.5 bricks has a half bat in each course (the library’s plan): six, and five bats for two piers.
    const pier =
      'perpend 1\nuse uk\npier gate\n  number 2\n  size 1.5 x 1.5 bricks\n  height 6 courses\n  bats 5\n';
    const { out } = cuts(pier);
    expect(out).toContain('2 bats of 102.5 mm, each into 1 half bat\n');
    expect(out).toContain('2 bricks, each into 2 half bats\n');
  });

  test('of one block, or of all; a strange name is answered', () => {
    const two = JOB(
      `${PLAIN}\npier gate\n  size    2 x 1 bricks\n  height  6 courses\n  number  2\n`,
    );
    expect(cuts(two).out).toMatch(/^north[\s\S]*\n\ngate, bricks in one pier .*each of 2 alike/);
    expect(cuts(two, 'north').out).not.toContain('gate');
    expect(cuts(two, 'nroth')).toEqual({
      code: 2,
      out: '',
      err: 'perpend: <stdin> has nothing called nroth that is laid. Did you mean north?\n',
    });
    expect(cuts('perpend 1\nuse uk\n').code).toBe(2);
  });

  test('says where nothing is cut', () => {
    expect(cuts(JOB('  length  2240 mm\n  height  1 courses\n')).out).toBe(
      'north: nothing is cut.\n',
    );
  });

  test('a wall as thick as a brick, with a damp course: each brick by itself', () => {
    const { out } = cuts(
      JOB(
        '  bond english\n  thick 1 brick\n  dpc engineering 2 courses\n  length 1340 mm\n  height 6 courses\n',
      ),
    );
    expect(out).toContain('north, bricks in the wall (Standard brick)');
    expect(out).toContain('north, bricks in the damp course (Class B engineering brick)');
    expect(out).toMatch(/4, 6 +queen closers +2 +4 /);
    expect(out).toMatch(/2 +queen closers +2 +2 /);
  });

  test('prints JSON of the promised shape', () => {
    const schema = readJson<object>('shared/json-schema/perpend-1.schema.json');
    const validate = new Ajv2020({ strict: true, strictRequired: false }).compile(schema);
    const document = JSON.parse(cuts(JOB(`${PLAIN}  bats 1\n`), '--json').out);
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    const [part] = document.blocks[0].parts;
    expect(part.places[0]).toEqual({
      piece: 'half',
      length: 102.5,
      courses: { first: 2, last: 4, every: 2 },
      each: 2,
      count: 4,
      at: [
        { from: 0, by: 112.5, count: 1 },
        { from: 2137.5, by: 112.5, count: 1 },
      ],
    });
    const pieces = part.cuttings.flatMap((c: { times: number; pieces: { count: number }[] }) =>
      c.pieces.map((p) => p.count * c.times),
    );
    expect(pieces.reduce((a: number, b: number) => a + b, 0)).toBe(4);
  });
});
