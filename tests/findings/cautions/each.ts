/** Every caution of a country’s library is shown where it applies, and is not where it does not: a pair of texts for each. */
import { describe, expect, test } from 'vitest';
import { jobOf } from '../../engine/world';
import { type Country, tellsOf } from './told';

export interface Pair {
  /** With a mark at the line that brings it up. */
  readonly shown: string;
  /** As near to it as can be, and without it. */
  readonly not: string;
}

/** Puts the marked text of a piece of work under the lines that every job begins with. */
export function job(text: string): string {
  return `perpend 1\nuse "firm.perp"\n${text.replace(/^\n/, '').replace(/^ {6}/gm, '')}`;
}

export function everyCaution(country: Country, pairs: Readonly<Record<string, Pair>>): void {
  const blocks = jobOf(`perpend 1\nuse ${country}\n`).book.blocksOf('caution');

  describe(`cautions of ${country}`, () => {
    test('each has a pair of texts, and no other', () => {
      expect(Object.keys(pairs).sort()).toEqual(blocks.map((b) => b.name).sort());
    });

    test.each(blocks.map((b) => [b.name!, b] as const))(
      '%s says when it applies, what to do, whom to ask, and who says so',
      (_, block) => {
        const { body, values } = block.read.heading!;
        expect(block.read.faults).toEqual([]);
        expect(values.title).toBeDefined();
        const keys = body.map((line) => line.kind.key);
        expect(keys).toEqual(expect.arrayContaining(['source', 'when', 'say', 'ask']));
      },
    );

    test.each(Object.entries(pairs))('%s is shown at the line that brings it up', (name, pair) => {
      const found = tellsOf(country, name, job(pair.shown));
      expect(found.length).toBeGreaterThan(0);
      for (const each of found)
        expect(each.related.at(-1)!.place.file).toBe(`library:${country}.perp`);
    });

    test.each(Object.entries(pairs))('%s is not shown where it does not apply', (name, pair) => {
      expect(pair.not).not.toContain('^');
      tellsOf(country, name, job(pair.not));
    });
  });
}
