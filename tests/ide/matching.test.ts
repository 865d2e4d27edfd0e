/** Over the name of a brick that might be bought stands how it compares with what stands there. */
import { expect, test } from 'vitest';
import { hover } from '../../server/engine/ide/hover';
import { asked, FILES, FIRM, spaced } from './ask';

const TALL = 'brick tall "Tall one"\n  size 215 x 102.5 x 67 mm\n  price £1 each\n  waste 0%\n';
const files = { ...FILES, 'firm.perp': FIRM + TALL };
const over = (candidates: string) => {
  const { job, at } = asked(
    `perpend 1\nuse "firm.perp"\nrepair frost\n  brick red\n  gauge 4 courses 310 mm\n  rebuild 1 m x 4 courses\n  candidates ${candidates}\n`,
    files,
  );
  return spaced(hover(job, at)!.markdown);
};

test('its place, its size, its joint and its price', () => {
  // 310 / 4 - 67 = 10.5; 4 x (67 + 10 - 77.5) = -2; 215 x 102.5 x 67 beside 215 x 102.5 x 65.
  expect(over('ta$0ll, red')).toMatch(
    /In frost 1 of 2 by gauge, size, price: 0, 0, \\?\+2 mm \\?\(within T2\\?\) · bed joints 10\.5 mm · drift −2 mm at its usual bed · cost £[\d.]+/,
  );
  // They are alike in all of it, so that the one that is named first is the first.
  expect(over('tall, r$0ed')).toContain('In frost 2 of 2');
  expect(over('r$0ed, tall')).toContain('In frost 1 of 2');
});

test('nothing where it is compared nowhere', () => {
  const { job, at } = asked(
    'perpend 1\nuse "firm.perp"\nwall n\n  brick ta$0ll\n  length 2 m\n  height 4 courses\n  stands held\n',
    files,
  );
  expect(hover(job, at)!.markdown).not.toContain('bed joints');
});
