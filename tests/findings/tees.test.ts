import { describe, expect, test } from 'vitest';
import { tally } from '../../server/engine/setting-out';
import { jobOf } from '../engine/world';
import { JOB, wallText } from '../harness/walls';
import { afterWay, FIRM, findingsIn, findingsOf, silent, tells } from './tells';

const PRICED = `${FIRM}material starter-tie
  price  £0.40 each
`;
const files = { 'firm.perp': PRICED };

const wall = (name: string, more: string, length = '2240 mm', courses = 9) =>
  wallText({ name, length, height: `${courses} courses` }, more);
const job = (inner: string, north = '') =>
  JOB + wall('north', north) + wall('inner', inner, '1125 mm');

const work = (text: string, name: string) => jobOf(text, files).works.find((w) => w.name === name)!;
const bricks = (text: string, name: string) =>
  work(text, name)
    .figures.find((f) => f.key === 'bricks')!
    .term.value.toNumber();
const ties = (text: string) =>
  jobOf(text, files)
    .price.purchases.find((p) => p.name === 'starter-tie')
    ?.needed.value.toNumber();

describe('tee-place', () => {
  test('is told of a wall that would run into no wall', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          stands  held
          length  2240 mm
          height  8 courses
        wall inner
          brick   red
          stands  held
          length  1125 mm
          height  8 courses
          left    tee north 2.2 m
                            ^^^^^ tee-place: This wall cannot run into north there. There is no wall there.
      `,
      { files },
    );
  });

  test('two walls that run into each other, or meet twice: neither can be built', () => {
    const told = (text: string) =>
      findingsIn(text, files).filter((f) => f.code === 'tee-place' && f.severity === 'error');
    const both = told(job('  left tee north 1 m\n', '  right tee inner 0.5 m\n'));
    expect(both.map((f) => f.place.line)).toEqual([7, 13]);
    expect(both[0]!.message).toContain('The wall inner is said to run into this one.');
    const text = job('  left tee north 1 m\n', '  right tee inner 0.5 m\n');
    expect(told(afterWay(text, both[0]!.ways[0]!.edits))).toEqual([]);
    expect(ties(text)).toBeUndefined();
    // One wall with both its ends in the face of another, and one with a corner and a tee.
    expect(told(job('  left tee north 1 m\n  right tee north 2 m\n'))).toHaveLength(1);
    expect(
      told(job('  left quoin north\n  right tee north 1 m\n', '  right quoin inner\n')),
    ).toHaveLength(1);
    expect(told(job('  left tee north 1 m\n'))).toEqual([]);
  });

  test('or into an opening, a movement joint or itself; not where it comes against brickwork', () => {
    const told = (inner: string, north = '') =>
      findingsOf('tee-place', job(inner, north), files).length;
    const gate = '  opening gate\n    from left 890 mm\n    width 460 mm\n';
    expect(told('  left tee north 1 m\n')).toBe(0);
    expect(told('  left tee north 1 m\n', gate)).toBe(1);
    expect(told('  left tee north 1 m\n', '  movement-joint left 1015 mm\n')).toBe(1);
    expect(told('  left tee inner 0.5 m\n')).toBe(1);
  });
});

const GATE = '  opening gate\n    from left 1181.25 mm\n    width 460 mm\n';

describe('tee-unbonded', () => {
  test('is told where courses cannot be run into the other wall, and it is tied', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        wall north
          brick   red
          bond    english
          thick   1 brick
          stands  held
          length  2240 mm
          height  8 courses
        wall inner
          brick   red
          stands  held
          length  1125 mm
          height  8 courses
          left    tee north 1 m bonded
                                ^^^^^^ tee-unbonded: This wall is not bonded into north: No way was found to lay the bricks of that wall round it so that they lap: its side is not on a quarter brick of the bond there.
      `,
      {
        files,
        ways: [
          'Move it to where it can be bonded, 1012.5 mm from the left end of north',
          'Tie it: tied',
        ],
      },
    );
  });

  test('is not told where a way is found', () => {
    const thick = (more: string) => job(more, '  bond english\n  thick 1 brick\n');
    silent(thick('  left tee north 900 mm bonded\n'), 'tee-unbonded', files);
    silent(thick('  left tee north 956.25 mm bonded\n'), 'tee-unbonded', files);
  });

  test.each([
    ['The other wall has a backing.', '  backing block-100 cavity 75 mm\n', 900],
    ['so that they lap: an end of it is near.', '', 56.25],
    ['so that they lap: the opening gate is near.', GATE, 900],
    [
      'A head or a lintel of that wall is too near.',
      '  opening o\n    from left 1350 mm\n    width 450 mm\n    height 4 courses\n    lintel 100 x 65 mm slab\n',
      900,
    ],
    ['The other wall is bonded into other work at its own end.', '  right block-bonded\n', 900],
  ])('says why: %s', (why, north, at) => {
    const text = job(
      `  left tee north ${at} mm bonded\n`,
      `  bond english\n  thick 1 brick\n${north}`,
    );
    const told = findingsIn(text, files).find((f) => f.code === 'tee-unbonded');
    expect(told?.message).toContain(why);
  });

  test('a half-brick wall with a backing too: it is tied to that, and the face is left whole', () => {
    const [backed, faced] = ['  backing block-100 cavity 75 mm\n', ''].map((north) =>
      job('  left tee north 1015 mm bonded\n', north),
    );
    const [told] = findingsOf('tee-unbonded', backed!, files);
    expect(told!.message).toContain('This wall stands against that, not against its face.');
    expect(told!.ways.map((w) => w.title)).toEqual(['Tie it: tied']);
    silent(afterWay(backed!, told!.ways[0]!.edits), 'tee-unbonded', files);
    silent(faced!, 'tee-unbonded', files);
    // By hand: a tie on the fourth and the eighth of nine courses; ten bricks in each course of the face.
    expect(ties(backed!)).toBe(2);
    const { facts } = work(backed!, 'north');
    expect(tally(facts.laid ?? facts.settingOut!)).toMatchObject({ wholes: 86, halves: 8 });
    expect(work(backed!, 'inner').facts.says).toContain('Tie it into the backing of north.');
  });

  test('of a wall that has a backing itself: its face is not at its own side', () => {
    const own = job('  left tee north 1015 mm bonded\n  backing block-100 cavity 75 mm\n');
    const [told] = findingsOf('tee-unbonded', own, files);
    expect(told!.message).toContain('This wall has a backing.');
  });

  test('of two walls near one another the second is tied', () => {
    const second = wall('second', '  left tee north 1350 mm bonded\n', '1125 mm');
    const text = `${job('  left tee north 900 mm bonded\n', '  bond english\n  thick 1 brick\n')}${second}`;
    const told = findingsOf('tee-unbonded', text, files);
    expect(told.map((f) => f.message)).toEqual([
      expect.stringContaining('Another wall that is bonded into it is too near.'),
    ]);
  });

  test('is not told of a half-brick wall of the same courses', () => {
    silent(job('  left tee north 1 m bonded\n'), 'tee-unbonded', files);
    silent(job('  left tee north 1 m tied\n'), 'tee-unbonded', files);
  });
});

describe('a wall tied to another', () => {
  // Common practice: a tie on every fourth course, 300 mm. Nine courses: on the fourth and the eighth.
  test('takes its ties, and keeps its own bricks', () => {
    const tied = job('  left tee north 1 m\n');
    expect(ties(tied)).toBe(2);
    expect(bricks(tied, 'north')).toBe(bricks(job(''), 'north'));
    expect(work(tied, 'inner').facts.says).toContain('Tie it into the face of north.');
  });
});

describe('a wall bonded into another', () => {
  const bonded = job('  left tee north 1015 mm bonded\n');

  test('takes no ties', () => expect(ties(bonded)).toBeUndefined());

  test('by hand: in every second course a stretcher runs in, and the other wall leaves room for it', () => {
    // 1125 mm against a face are five bricks; where it runs in by half a brick, five and a half.
    const { laid } = work(bonded, 'inner').facts;
    const pieces = laid!.bands[0]!.segments[0]!.runs.map((run) =>
      run.groups.flatMap((g) => g.pieces.map((p) => `${p.count * g.times} ${p.piece}`)),
    );
    expect(pieces).toEqual([['5 stretcher', '1 half'], ['5 stretcher']]);
  });
});
