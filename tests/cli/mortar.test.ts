import { expect, test } from 'vitest';
import { FIRM } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

const FILES = {
  'firm.perp': FIRM.replace(
    'pack  850 kg bag at £54.37',
    'pack  850 kg bulk-bag at £54.37\n  pack  25 kg bag at £3.19',
  ),
  'job.perp': `perpend 1

job "Wall"
use "firm.perp"

wall w
  brick   secret-red
  length  5840 mm
  height  24 courses
`,
};

test('perpend price tells how the mortar is mixed and what is left of what is bought', () => {
  const cwd = folderOf(FILES);
  const { out, code } = perpend(['price', 'job.perp'], { cwd });
  expect(code).toBe(0);
  const text = out.replaceAll('\u00a0', ' ');
  expect(text).toMatch(
    /\nMortar\n {2}General mortar 1 : 1 : 6 +[\d.]+ +l +\d+ batches of [\d.]+ l/,
  );
  expect(text).toMatch(/in a batch: Building sand +[\d.]+ +l +[\d.]+ buckets/);
  expect(text).toMatch(/\nLeft over\n {2}Cement +[\d.]+ +kg/);
  expect(text).toMatch(/would make General mortar/);
  expect(text).toMatch(/lays \d+ bricks or points [\d.]+ m²/);
  expect(out.split('\n').filter((line) => line.length > 80)).toEqual([]);
});

test('its JSON has every one of these figures, and the packs in words', () => {
  const cwd = folderOf(FILES);
  const { out } = perpend(['price', '--json', 'job.perp'], { cwd });
  const { figures } = JSON.parse(out).files[0] as {
    figures: { id: string; value: string; text: string }[];
  };
  const of = (id: string) => figures.find((f) => f.id === id);
  for (const id of [
    'left.sand',
    'lays.general',
    'lays.general.bricks',
    'lays.general.pointing',
    'batches.general',
    'batch.general.cement',
    'last.general',
    'over.general',
  ])
    expect(Number(of(id)?.value), id).toBeGreaterThanOrEqual(0);
  expect(of('buy.sand')?.text).toMatch(/bags?$/);
});
