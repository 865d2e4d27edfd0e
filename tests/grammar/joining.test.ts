/** A plain number has no unit: the word that a line has after one must not be taken for it, in any line there is. */
import { describe, expect, test } from 'vitest';
import { HEADINGS, type LineKind, type Slot } from '../../grammar/lines';
import { JOINING } from '../../grammar/parser';
import { read } from '../../grammar/read/read';

const all = (kind: LineKind): LineKind[] => [kind, ...(kind.body ?? []).flatMap(all)];

/** What may come next, given all slots that are left. */
function next(slots: readonly Slot[]): Slot[] {
  const [first, ...rest] = slots;
  if (!first) return [];
  if (first.slot === 'optional') return [...next(first.slots), ...next(rest)];
  if (first.slot === 'either') return first.of.flatMap((group) => next([...group, ...rest]));
  return first.slot === 'list' ? next([...first.slots, ...rest]) : [first];
}

function wordsOf(slot: Slot): readonly string[] {
  const words = slot.slot === 'literal' ? [slot.text] : slot.slot === 'choice' ? slot.of : [];
  return words.filter((word) => /^[a-z]{2,}/.test(word));
}

/** Words that can stand behind a plain number. */
function behindNumbers(slots: readonly Slot[], rest: readonly Slot[]): string[] {
  return slots.flatMap((slot, i) => {
    const after = [...slots.slice(i + 1), ...rest];
    if (slot.slot === 'optional') return behindNumbers(slot.slots, after);
    if (slot.slot === 'either') return slot.of.flatMap((group) => behindNumbers(group, after));
    if (slot.slot === 'list') return behindNumbers(slot.slots, after);
    // Money ends in a plain number where its code stands before it: EUR 6.40.
    const bare = slot.slot === 'money' || (slot.slot === 'quantity' && slot.bare);
    return bare ? next(after).flatMap(wordsOf) : [];
  });
}

describe('the word behind a plain number', () => {
  const kinds = HEADINGS.flatMap(all);

  test('is one that joins, in every line', () => {
    const found = kinds.flatMap((kind) =>
      behindNumbers(kind.takes, []).map((word) => `${kind.key}: ${word}`),
    );
    expect(found).toContain('bats: of');
    expect(found.filter((each) => !JOINING.has(each.split(': ')[1]!))).toEqual([]);
  });

  test.each([
    'wall a\n  bats 9 of 75 mm',
    'bond a\n  courses 2 stretcher from 1/2 brick',
    'bond a\n  courses 2 header',
    'bond a\n  course stretcher, header 2 centred',
    'bond a\n  course stretcher 3 core header back header',
    'bond a\n  course stretcher 3 back stretcher 2, header',
    'record\n  invoiced 2026-03-12 EUR 362.50 as 26-041-1 "Deposit"',
    'record\n  paid 2026-03-20 EUR 362.50 deducted EUR 12',
    'record\n  retained 2026-03-20 EUR 72.50 until 2026-09-16',
    'record\n  spent 2026-03-09 EUR 212.40 for labour',
    'price\n  agreed EUR 1400 with tax',
  ])('is not taken for its unit: %s', (text) => {
    const block = read(text.split('\n'));
    expect(block.faults).toEqual([]);
    expect(block.heading?.body).toHaveLength(1);
  });
});
