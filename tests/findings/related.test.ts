import { expect, test } from 'vitest';
import { jobOf } from '../engine/world';

const text = `
perpend 1
use uk
wall north
  mix       general
  length    7.3 m
  height    16 courses
  thick     1 brick
  exposure  zone-1
  dpc       engineering 2 courses
  coping    brick-on-edge
`.trimStart();

test('a finding leads to each place once, though two limits name it', () => {
  const found = jobOf(text).findings.find(({ code }) => code === 'caution-mortar')!;
  const places = found.related.map(
    ({ place, message }) => `${place.file}:${place.line}:${place.start} ${message}`,
  );
  expect(places.length).toBeGreaterThan(2);
  expect(new Set(places).size).toBe(places.length);
});
