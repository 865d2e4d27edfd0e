import { describe, expect, test } from 'vitest';
import { completion } from '../../server/engine/ide/completion';
import { definition } from '../../server/engine/ide/definition';
import { hover } from '../../server/engine/ide/hover';
import { jobOf } from '../engine/world';
import { asked } from '../ide/ask';
import { silent, tells } from './tells';

const HALDEN = { 'halden.perp': 'perpend 1\nuse uk\noutput\n  facework 40 bricks per h\n' };
const WALL =
  'wall a\n  brick red\n  stands held\n  length 4490 mm\n  height 10 courses\n  by halden\n';

describe('partner-file', () => {
  test('is told of a file that is not there, lies outside, or is the job itself', () => {
    tells(`
      perpend 1
      use "firm.perp"
      partner a
        file "nowhere.perp"
             ^^^^^^^^^^^^^^ partner-file: is not there
      partner b
        file "../b.perp"
             ^^^^^^^^^^^ partner-file: lies outside the workspace
      partner c
        file "job.perp"
             ^^^^^^^^^^ partner-file: is this file itself
      partner d
      ^^^^^^^^^ partner-file: No line says where
      wall w
        brick red
        stands held
        length 4490 mm
        height 10 courses
        by a
      repair r
        in w
        repoint 2 m2
        by b
      pier p
        brick red
        size 440 x 440 mm
        height 4 courses
        by c
      pier q
        brick red
        size 440 x 440 mm
        height 4 courses
        by d
    `);
  });

  test('leaves the price incomplete, as the partner’s rates are not known', () => {
    const text = `perpend 1\nuse uk\njob "A"\npartner halden\n  file "x.perp"\n${WALL}`;
    const gaps = jobOf(text).price.total.gaps.map((g) => g.what);
    expect(gaps.some((what) => what.includes('x.perp'))).toBe(true);
  });
});

describe('partner-idle', () => {
  test('is told of a partner whom no work names', () => {
    tells(
      `
      perpend 1
      use "firm.perp"
      partner halden
      ^^^^^^^^^^^^^^ partner-idle: No work is done by this partner
        file "halden.perp"
      wall a
        brick red
        stands held
        length 4490 mm
        height 10 courses
    `,
      { files: HALDEN },
    );
  });

  test('is not told where work or an option does', () => {
    const head = 'perpend 1\nuse uk\nuse "firm.perp"\npartner halden\n  file "halden.perp"\n';
    silent(head + WALL, 'partner-idle', HALDEN);
    const later = WALL.replace('  by halden\n', '');
    silent(`${head}${later}option o\n  change a by halden\n`, 'partner-idle', HALDEN);
  });
});

describe('the name of a partner', () => {
  test('that no block gives is unknown, and the near one is offered', () => {
    tells(
      `
      perpend 1
      use "firm.perp"
      partner halden
        file "halden.perp"
      wall a
        brick red
        stands held
        length 4490 mm
        height 10 courses
        by haldn
           ^^^^^ name-unknown: Did you mean “halden”
      wall b
        brick red
        stands held
        length 4490 mm
        height 10 courses
        by halden
    `,
      { ways: ['Write halden'], files: HALDEN },
    );
  });

  test('that no block gives leaves the price incomplete', () => {
    const gaps = jobOf(`perpend 1\nuse uk\njob "A"\n${WALL}`).price.total.gaps;
    expect(gaps.map((g) => g.what)).toContain('no partner is called “halden”');
  });

  test('is completed, hovered and led to', () => {
    const head = 'perpend 1\nuse "firm.perp"\npartner halden "Halden Brothers"\n';
    const open = asked(`${head}wall a\n  by $0`);
    expect(completion(open.job, open.at)?.items.map((i) => i.label)).toContain('halden');
    const on = asked(`${head}wall a\n  by hal$0den`);
    expect(definition(on.job, on.at)?.targets.map(({ place }) => place.line)).toEqual([2]);
    expect(hover(on.job, on.at)?.markdown ?? JSON.stringify(hover(on.job, on.at))).toContain(
      'Halden Brothers',
    );
  });
});
