import { describe, expect, test } from 'vitest';
import { generated } from '../../grammar/generated';
import { HEADINGS, type LineKind } from '../../grammar/lines';
import { format } from '../../grammar/print';
import { readNumber } from '../../shared/exact';
import { UNITS } from '../../shared/units';
import { read } from '../tree';
import { faultsOf } from './reading';

const files = generated();
const reference = files['grammar/REFERENCE.md']!;

describe('what is committed is what the table makes (npm run reference)', () => {
  test.each(Object.keys(files).filter((name) => name.endsWith('.json')))('%s', (name) => {
    expect(JSON.parse(read(name))).toEqual(JSON.parse(files[name]!));
  });

  test('grammar/REFERENCE.md', () => expect(read('grammar/REFERENCE.md')).toBe(reference));
});

describe('the reference', () => {
  function all(kind: LineKind): LineKind[] {
    return [kind, ...(kind.body ?? []).flatMap(all)];
  }

  const section = (key: string): string => {
    const from = reference.indexOf(`\n### ${key}\n`);
    const to = reference.indexOf('\n### ', from + 1);
    return reference.slice(from, to < 0 ? undefined : to);
  };

  test.each(HEADINGS.map((kind) => [kind.key, kind] as const))('says all of %s', (key, heading) => {
    const text = section(key);
    for (const kind of all(heading)) {
      expect(text).toContain(kind.example);
      expect(text).toContain(kind.means);
      if (kind.later) expect(text).toContain(`**Not computed yet:** ${kind.later}`);
      if (kind.unless && key !== 'defaults') expect(text).toContain(`Left out: ${kind.unless}.`);
    }
    const many = (heading.body ?? []).filter(
      (line) => line.many && (!line.body || line.inColumn),
    ).length;
    expect(text.split('\n#### ')[0]!.split('May stand more than once.')).toHaveLength(many + 1);
  });

  test('shows no block that cannot be read', () => {
    const blocks = [...reference.matchAll(/^```perpend\n([\s\S]*?)^```$/gm)].map(
      (found) => found[1]!,
    );
    expect(blocks.length).toBeGreaterThan(HEADINGS.length);
    for (const block of blocks) {
      expect(faultsOf(block)).toEqual([]);
      expect(format(block)).toBe(block);
    }
  });

  test('names every unit, and says of each number in its table what the reader says', () => {
    for (const unit of UNITS) expect(reference).toContain(`\`${unit.name}\``);
    const table = reference.slice(
      reference.indexOf('| written'),
      reference.indexOf('**Fractions**'),
    );
    const rows = [...table.matchAll(/^\| `([^`]+)` +\| (.*?) +\|$/gm)];
    expect(rows.length).toBeGreaterThan(8);
    for (const [, written, said] of rows) {
      const number = readNumber(written!);
      if (number.faulty) expect(said).toMatch(/^(an error|no number)/);
      else expect(number.value.eq(said!)).toBe(true);
    }
  });
});

interface Snippet {
  readonly prefix: string;
  readonly body: readonly string[];
}

describe('a snippet', () => {
  const all = JSON.parse(files['grammar/textmate/snippets.json']!) as Record<string, Snippet>;

  /** As it stands when nothing is filled in. */
  function plain(body: readonly string[]): string {
    const lines = body.filter((line) => !line.includes('$0')).join('\n');
    return `${lines.replace(/\$\{\d+:((?:[^\\}]|\\.)*)\}/g, '$1').replace(/\\(.)/g, '$1')}\n`;
  }

  test.each(Object.entries(all))(
    '%s reads without a fault, in its canonical form',
    (name, made) => {
      const outer = name.split(' in ')[1];
      const body = plain(made.body);
      const heading = HEADINGS.find((kind) => kind.key === outer)?.example;
      const text = heading ? `${heading}\n${body.replace(/^(?=.)/gm, '  ')}` : body;
      expect(faultsOf(text)).toEqual([]);
      expect(format(text)).toBe(text);
      expect(made.body.at(-1)).toBe('  $0');
    },
  );
});

describe('the language configuration', () => {
  const made = JSON.parse(files['grammar/textmate/language-configuration.json']!) as {
    readonly wordPattern: string;
    readonly indentationRules: Readonly<Record<string, string>>;
  };

  test('takes a name with hyphens, a unit and a number for one word each', () => {
    const words = 'harwick-red 7.4 m² kg/m3 o’neill 1,450.00 '.match(
      new RegExp(made.wordPattern, 'g'),
    );
    expect(words).toEqual(['harwick-red', '7.4', 'm²', 'kg', 'm3', 'o’neill', '1,450.00']);
    expect(''.match(new RegExp(made.wordPattern))).toBeNull();
  });

  test('indents after a heading that has lines, and after no other line', () => {
    const increase = new RegExp(made.indentationRules.increaseIndentPattern!);
    const yes = ['wall a "b"', 'labour', 'brick red # c', '  opening gate', '    pier b'];
    const no = [
      'perpend 1',
      'use uk',
      '  brick red',
      '  length 7 m',
      '# wall',
      'wallpaper',
      'job-x',
    ];
    expect([...yes, ...no].filter((line) => increase.test(line))).toEqual(yes);
  });

  test('takes the indent back for a heading that stands nowhere else', () => {
    const decrease = new RegExp(made.indentationRules.decreaseIndentPattern!);
    const yes = ['  wall b', '  repair c', '\trecord'];
    const no = ['wall b', '  brick red', '  pier c', '  price £5 each', '  mix general'];
    expect([...yes, ...no].filter((line) => decrease.test(line))).toEqual(yes);
  });
});
