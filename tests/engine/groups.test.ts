/** Groups against making everything anew, after edits of every kind. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { Groups, joined } from '../../server/engine/workspace/groups';
import '../harness/seed';

const edit = fc.record({
  at: fc.nat(200),
  gone: fc.nat(3),
  come: fc.nat(3),
});

test('groups hold what is in the list, and make again only what is near an edit', () => {
  fc.assert(
    fc.property(fc.nat(200), fc.array(edit, { maxLength: 20 }), (length, edits) => {
      let next = 0;
      let made = 0;
      const fresh = (count: number) => Array.from({ length: count }, () => ({ n: next++ }));
      const items = fresh(length);
      const groups = new Groups((of: readonly { n: number }[]) => {
        made += of.length;
        return of.map((item) => item.n);
      });
      for (const { at, gone, come } of edits) {
        items.splice(at, gone, ...fresh(come));
        expect(joined(groups.of(items))).toEqual(items.map((item) => item.n));
        made = 0;
        if (items.length) items[at % items.length] = { n: next++ };
        expect(joined(groups.of(items))).toEqual(items.map((item) => item.n));
        expect(made).toBeLessThanOrEqual(32);
      }
    }),
    { numRuns: 200 },
  );
});
