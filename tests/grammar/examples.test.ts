import { describe, expect, test } from 'vitest';
import { HEADINGS, type LineKind } from '../../grammar/lines';
import { format } from '../../grammar/print';
import { commentsOf, faultsOf, fixtures, meaning } from './reading';

interface Case {
  readonly name: string;
  readonly text: string;
  readonly kinds: readonly LineKind[];
}

/** Each kind of line by itself, under the headings that it needs. */
function cases(kind: LineKind, above: readonly LineKind[] = []): Case[] {
  const kinds = [...above, kind];
  const text = kinds.map((each, depth) => '  '.repeat(depth) + each.example).join('\n');
  const name = kinds.map((each) => each.key).join(' > ');
  return [{ name, text, kinds }, ...(kind.body ?? []).flatMap((line) => cases(line, kinds))];
}

const all = HEADINGS.flatMap((kind) => cases(kind));

describe('the example of each kind of line', () => {
  test.each(all)('$name reads without a fault', ({ text }) => {
    expect(faultsOf(`${text}\n`)).toEqual([]);
  });

  test.each(all)('$name says what it is', ({ text, kinds }) => {
    let said = meaning(text) as [string, string, object, unknown[]][];
    for (const kind of kinds) {
      expect(said).toHaveLength(1);
      const [key, , values, body] = said[0]!;
      expect(key).toBe(kind.key);
      const wanted = kind.takes.some((slot) => slot.slot !== 'literal' && slot.slot !== 'optional');
      expect(Object.keys(values).length > 0 || !wanted).toBe(true);
      said = body as typeof said;
    }
  });

  test.each(all)('$name is printed in one spacing', ({ text, kinds }) => {
    const formatted = format(text);
    const example = kinds.at(-1)!.example;
    expect(formatted.trimEnd().split('\n').at(-1)!.trim().replace(/ +/g, ' ')).toBe(
      example.replace(/ +/g, ' '),
    );
    expect(meaning(formatted)).toEqual(meaning(text));
  });

  test('is different for lines that take different things', () => {
    for (const heading of HEADINGS) {
      const keys = (heading.body ?? []).filter((line) => !line.open).map((line) => line.key);
      expect(keys).toEqual([...new Set(keys)]);
    }
  });
});

describe('an example of the design', () => {
  const names = Object.keys(fixtures);

  test('is there', () => expect(names).toHaveLength(5));

  test.each(names)('%s reads without a fault', (name) => {
    expect(faultsOf(fixtures[name]!)).toEqual([]);
  });

  test.each(names)('%s stands in its canonical form', (name) => {
    expect(format(fixtures[name]!)).toBe(fixtures[name]);
  });

  test.each(names)('%s comes back from being squeezed and spread', (name) => {
    const text = fixtures[name]!;
    const squeezed = text.replace(/(\S) +(?=[^\s#])/g, '$1 ').replace(/(\S) +#/g, '$1  #');
    const spread = text.replace(/^( *\S+) /gm, '$1     ').replace(/^ {2}/gm, '\t');
    for (const changed of [squeezed, spread]) {
      expect(changed).not.toBe(text);
      expect(format(changed)).toBe(text);
      expect(meaning(changed)).toEqual(meaning(text));
      expect(commentsOf(changed)).toEqual(commentsOf(text));
    }
  });
});
