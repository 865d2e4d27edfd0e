import { describe, expect, test } from 'vitest';
import { cautionViews } from '../../server/engine/views/caution-view';
import { jobOf } from '../engine/world';
import { cautionsOf, codesOf, tellsOf } from './cautions/told';
import { FIRM, findingsIn, isCaution } from './tells';

const head = 'perpend 1\nuse "firm.perp"\n';
const told = (text: string) => codesOf('uk', text).sort();
const wall = (lines: string) =>
  `wall a\n  brick red\n  length 1790 mm\n  height 4 courses\n${lines}`;
const repair = (lines: string) => `repair r\n  brick red\n${lines}`;

describe('a caution', () => {
  test.each([
    [
      'an english wall on its length, which closers are cut for',
      wall('  bond english\n  thick 1 brick\n  stands held\n'),
      ['bags', 'cement', 'silica', 'weather'],
    ],
    [
      'a wall that holds soil back',
      wall('  stands retaining\n'),
      ['bags', 'cement', 'mortar', 'retaining', 'silica', 'weather'],
    ],
    [
      'a wall in lime',
      wall('  stands held\n  mix lime-soft\n'),
      ['bags', 'cement', 'silica', 'weather'],
    ],
    [
      'a pier of whole bricks',
      'pier g\n  brick red\n  size 1 x 1 bricks\n  height 4 courses\n',
      ['bags', 'cement', 'piers', 'weather'],
    ],
    [
      'a repair that rakes joints out of a wall in cement',
      repair('  stands-in cement\n  repoint 1 m2 raked 20 mm\n'),
      ['bags', 'cement', 'raking', 'weather'],
    ],
    [
      'a repair that takes down',
      repair('  stands-in cement\n  rebuild 900 mm x 4 courses\n'),
      ['bags', 'cement', 'lumps', 'taking-down', 'weather'],
    ],
    ['a job with no work', 'job "A"\n', []],
    ['bricks that are only delivered', 'cost bricks "Bricks delivered" 1 at £240\n', []],
    ['a firm’s file', 'brick mine\n', []],
    [
      'a wall whose length is still to be measured',
      'wall a\n  brick red\n  length ?\n  stands held\n',
      ['bags', 'cement', 'weather'],
    ],
  ])('is told of %s: each where it applies, and no other', (_, text, wanted) => {
    expect(told(text)).toEqual(wanted);
  });

  test('is told at the first piece of work only where it is the same of every other', () => {
    const found = cautionsOf('uk', `${wall('')}${wall('').replace('wall a', 'wall b')}`);
    expect(found.filter((f) => f.code === 'caution-weather')).toHaveLength(1);
    expect(found.filter((f) => f.code === 'caution-cement')).toHaveLength(1);
    expect(found.filter((f) => f.code === 'caution-bags')).toHaveLength(1);
  });

  test('of what is this work’s own is told of each: how high it is, how it leans', () => {
    const leaning = repair('  leans 40 mm\n  rebuild 900 mm x 4 courses\n');
    const found = cautionsOf('uk', leaning + leaning.replace('repair r', 'repair s'));
    expect(found.filter((f) => f.code === 'caution-leaning')).toHaveLength(2);
  });

  test('of very many pieces of work is told of the first ten, and how many more there are', () => {
    const many = Array.from({ length: 13 }, (_, i) =>
      repair('  leans 40 mm\n  rebuild 900 mm x 4 courses\n').replace('repair r', `repair r${i}`),
    ).join('');
    const found = cautionsOf('uk', many).filter((f) => f.code === 'caution-leaning');
    expect(found).toHaveLength(10);
    expect(found.at(-1)!.message).toContain(
      'The same holds for 3\u00a0pieces of work further down.',
    );
    const job = jobOf(head + many, { 'firm.perp': FIRM });
    const view = cautionViews(job).find((v) => v.code === 'caution-leaning')!;
    expect(view.here).toHaveLength(13);
  });

  test('may be one of the firm’s own, about a material by its name', () => {
    const own = 'caution __proto__ "Ours"\n  when sand\n  say "Sweep up."\n';
    const found = findingsIn(head + own + wall(''), { 'firm.perp': FIRM }).find(
      (f) => f.code === 'caution-__proto__',
    )!;
    expect(found.message).toBe('Ours (Building sand in General mortar 1 : 1 : 6): Sweep up.');
    const never = own.replace('sand', 'constructor');
    expect(told(never + wall(''))).not.toContain('__proto__');
  });

  test('of the firm holds in place of the library’s of the same name', () => {
    const own = 'caution weather "Ours"\n  when raking\n  say "Look up."\n';
    expect(told(own + wall(''))).not.toContain('weather');
    const raking = cautionsOf('uk', own + repair('  repoint 1 m2 raked 20 mm\n'));
    expect(raking.find((f) => f.code === 'caution-weather')!.message).toBe('Ours: Look up.');
  });

  test('of cement and lime goes by what a material is, whatever it is called', () => {
    const mix = (is: string) =>
      `material binder "Binder"\n${is}mix own\n  parts binder 1, sand 3\n  joint 10 mm\n`;
    const text = (is: string) => mix(is) + wall('  mix own\n');
    expect(told(text('  is cement\n'))).toContain('cement');
    expect(told(text('  is lime\n'))).toContain('cement');
    expect(told(text(''))).not.toContain('cement');
    expect(told(text('').replaceAll('binder', 'quick-lime'))).toContain('cement');
  });
});

describe('what is lifted', () => {
  const masses = (text: string) =>
    cautionsOf('uk', `caution all "All"\n  when mass over 0 kg\n  say "."\n${text}`)
      .filter((f) => f.code === 'caution-all')
      .map((f) => f.message);

  test('is weighed by its size and density: length times width times height times kg/m3', () => {
    // 0.440 x 0.100 x 0.215 m x 2000 kg/m3 = 18.92 kg: just under the 20 kg of HSE CIS 37.
    const [block] = masses('wall a\n  brick block-100\n  length 1790 mm\n  height 4 courses\n');
    expect(block).toContain(
      'one of “Dense block, 100 mm”, 440 x 100 x 215 mm, is 19 kg, over 0 kg',
    );
    // 0.215 x 0.1025 x 0.065 m x 1950 kg/m3 = 2.79 kg.
    expect(masses(wall(''))[0]).toContain('one of “Red facing”, 215 x 102.5 x 65 mm, is 2.8 kg');
  });

  test('a block of 140 mm is over the 20 kg that are laid alone: HSE CIS 37', () => {
    const thick =
      'brick block-140 "Block, 140 mm"\n  size 440 x 140 x 215 mm\n  joint 10 mm\n  density 2000 kg/m3\n';
    const text = `${thick}wall a\n  brick block-140\n  length 1790 mm\n  height 4 courses\n`;
    // 0.440 x 0.140 x 0.215 x 2000 = 26.488 kg.
    expect(cautionsOf('uk', text).find((f) => f.code === 'caution-lifting')!.message).toContain(
      'is 26 kg, over 20 kg',
    );
  });

  test('what a line says it weighs comes before its size, and its own density before the defaults’', () => {
    const pier = (own: string) =>
      `material slab "Slab"\n${own}pier g\n  brick red\n  size 1 x 1 bricks\n  height 4 courses\n  cap 400 x 400 x 75 mm slab\n`;
    // 0.400 x 0.400 x 0.075 m = 12 l: at 2400 kg/m3 28.8 kg, at 2000 24 kg.
    expect(masses(pier(''))[0]).toContain('400 x 400 x 75 mm, is 29 kg');
    expect(masses(pier('  density 2000 kg/m3\n'))[0]).toContain('is 24 kg');
    expect(masses(pier('  mass 31 kg\n'))[0]).toContain('is 31 kg');
  });

  test('a lintel is as long as its opening and its bearings', () => {
    const text = `wall a
  brick red
  length 3590 mm
  height 20 courses
  opening w
    from left 1125 mm
    width 1360 mm
    sill 4 courses
    height 8 courses
    lintel 100 x 140 mm
`;
    // 1360 + 2 x 150 = 1660 mm; 1.66 x 0.1 x 0.14 x 2400 = 55.8 kg.
    const found = cautionsOf('uk', text).find((f) => f.code === 'caution-lifting')!;
    expect(found.message).toContain('each lintel 1660 x 100 x 140 mm is 56 kg, over 20 kg');
    expect(found.place.line).toBe(11);
  });

  test('a cap whose thickness no line says may be any weight, and is told of', () => {
    tellsOf(
      'uk',
      'lifting',
      `
      perpend 1
      use "firm.perp"
      pier g
        brick red
        size 1 x 1 bricks
        height 4 courses
        cap 300 x 300 mm
        ^^^^^^^^^^^^^^^^ caution-lifting: no line says how thick one of “Another cap”, 300 x 300 mm, is
    `,
    );
  });

  test('a bag must be heavy enough and light enough itself: two kinds do not make one', () => {
    const packs =
      'material cement\n  pack 20 kg bag at £5\nmaterial lime\n  pack 850 kg bag at £90\n';
    expect(told(packs + wall(''))).not.toContain('bags');
    expect(told(packs.replace('850', '30') + wall(''))).toContain('bags');
  });

  test('a lump that comes down is bricks in their mortar: 225 x 112.5 x 75 mm each', () => {
    // 1.898 l x 1950 kg/m3 = 3.70 kg; 12 x 4 half-brick bricks = 178 kg; six are 22.2 kg.
    const [found] = tellsOf(
      'uk',
      'lumps',
      `
      perpend 1
      use "firm.perp"
      repair r
        brick red
        rebuild 2.7 m x 4 courses
        ^^^^^^^^^^^^^^^^^^^^^^^^^ caution-lumps: what comes down is 178 kg in all; 6 bricks in a lump
    `,
    );
    expect(found!.message).toContain('more than 20 kg');
  });
});

describe('a repair in a wall of the job', () => {
  const job = (wallLines: string, repairLines = '') => `perpend 1
use "firm.perp"
wall north
  brick red
  length 1790 mm
  height 24 courses
${wallLines}repair r
  in north
  rebuild 900 mm x 4 courses
${repairLines}`;
  const messages = (text: string, name: string) =>
    findingsIn(text)
      .filter((f) => f.code === `caution-${name}` && f.place.line > 5)
      .map((f) => f.message);

  test('is as high as the wall, and leans as it does', () => {
    const text = job('  leans 50 mm\n');
    expect(messages(text, 'high').join()).toContain('it is 1.8 m high, over 1.5 m');
    expect(messages(text, 'leaning')).toHaveLength(2);
  });

  test('stands in the mortar that the wall’s own line says', () => {
    expect(messages(job('  mix lime-soft\n', '  mix general\n'), 'old-lime').join()).toContain(
      'it stands in Lime mortar 1 : 3',
    );
    expect(messages(job('  mix general\n', '  mix strong\n'), 'old-lime')).toEqual([]);
    expect(messages(job('', '  mix strong\n'), 'old-lime')).toEqual([]);
  });
});

describe('the list of cautions for the site', () => {
  test('has each once, with every piece of work and reason, what to do, whom to ask and the source', () => {
    const text = `${head}${repair('  leans 40 mm\n  rebuild 900 mm x 4 courses\n')}repair s "Second"
  brick red
  leans 60 mm
  rebuild 900 mm x 4 courses
`;
    const job = jobOf(text, { 'firm.perp': FIRM });
    const views = cautionViews(job);
    expect(new Set(views.map((v) => v.code)).size).toBe(views.length);
    const codes = new Set(job.findings.filter(isCaution).map((f) => f.code));
    expect(views.map((v) => v.code).sort()).toEqual([...codes].sort());
    const leaning = views.find((v) => v.code === 'caution-leaning')!;
    expect(leaning.here.map((h) => [h.title, h.why, h.places[0]!.line])).toEqual([
      ['r', ['it leans 40 mm, over 30 mm'], 4],
      ['Second', ['it leans 60 mm, over 30 mm'], 8],
    ]);
    for (const each of views)
      for (const list of [each.say, each.ask, each.source]) expect(list.length).toBeGreaterThan(0);
  });
});
