/** What a caution hangs on and no line says is asked, and shows no caution; what is said is not asked. */
import { describe, expect, test } from 'vitest';
import { toFindOut } from '../../../server/engine/views/find-out';
import { jobOf } from '../../engine/world';
import { type Country, codesOf } from './told';

const FIRM = `perpend 1
use COUNTRY
`;
const WALL = `wall w
  length 2240 mm
  height 14 courses
`;
const FOOTING = '  footing 450 x 225 mm\n';
const REPAIR = `repair r
  brick standard
  mix general
  repoint 1 m2 raked 20 mm
`;

function asked(country: Country, text: string) {
  return toFindOut(jobOf(`${FIRM.replace('COUNTRY', country)}${text}`));
}

describe('what to find out', () => {
  test.each(['uk', 'us', 'de'] as const)(
    'how far the boundary is, where one digs: %s',
    (country) => {
      const found = asked(country, `${WALL}${FOOTING}`);
      expect(found).toMatchObject([{ what: 'how far the boundary is', works: ['w'] }]);
      expect(found[0]!.for).toHaveLength(1);
      expect(found[0]!.place.line).toBe(5);
      expect(codesOf(country, `${WALL}${FOOTING}`)).not.toContain('boundary');
      expect(asked(country, `${WALL}${FOOTING}  boundary 20 m\n`)).toEqual([]);
      expect(asked(country, WALL)).toEqual([]);
    },
  );

  test('once for all the work that it is asked for', () => {
    const two = `${WALL}${FOOTING}${WALL.replace('wall w', 'wall v')}${FOOTING}`;
    expect(asked('uk', two).map(({ works }) => works)).toEqual([['w', 'v']]);
  });

  test('nothing is asked of what is not dug', () => {
    expect(asked('uk', 'wall w\n  length ?\n  height 14 courses\n')).toEqual([]);
  });

  test('what mortar a wall stands in that is mended in cement', () => {
    expect(asked('uk', REPAIR)).toMatchObject([
      { what: 'what mortar it stands in', line: 'stands-in lime', works: ['r'] },
    ]);
    expect(codesOf('uk', REPAIR)).not.toContain('old-lime');
  });

  test.each([
    ['in lime, the job says', REPAIR.replace('general', 'lime-soft')],
    ['it stands in cement', `${REPAIR}  stands-in cement\n`],
  ])('not what mortar it stands in where %s', (_, text) => {
    expect(asked('uk', text)).toEqual([]);
  });

  test('old lime that a line tells of is a caution, and no question', () => {
    for (const said of ['  stands-in lime\n', '  stands-in lime-soft\n']) {
      expect(codesOf('uk', `${REPAIR}${said}`)).toContain('old-lime');
      expect(asked('uk', `${REPAIR}${said}`)).toEqual([]);
    }
    const inWall = `${WALL}  mix lime-soft\n${REPAIR.replace('  brick standard\n', '  in w\n')}`;
    expect(codesOf('uk', inWall)).toContain('old-lime');
    expect(asked('uk', inWall)).toEqual([]);
  });

  test('a road only when it is said', () => {
    expect(asked('uk', WALL)).toEqual([]);
    expect(codesOf('uk', WALL)).not.toContain('planning');
    expect(codesOf('uk', `${WALL}  road 1 m\n`)).toContain('planning');
  });

  test('a firm’s own caution asks too, by the words of its line', () => {
    const own =
      'caution ours "Ours"\n  when wall, leans unsaid\n  when wall, arch unsaid\n  say "Look."\n';
    expect(asked('uk', `${own}${WALL}`).map(({ what }) => what)).toEqual([
      'how far it leans',
      'whether there is any arch',
    ]);
  });
});
