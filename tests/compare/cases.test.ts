/** Two revisions and what is to be told of them. The sums were done by hand. */
import { describe, expect, test } from 'vitest';
import {
  type Comparison,
  compared,
  type LineChange,
  saidChange,
} from '../../server/engine/compare';
import { pairedByLikeness } from '../../server/engine/compare/pair';
import { ZERO } from '../../shared/exact';
import { FIRM, JOB } from '../cli/jobs';
import { type Files, jobOf } from '../engine/world';

/** Compares a text with the same after some replacements. */
function since(
  changes: readonly (readonly [string, string])[],
  {
    text = JOB,
    firm = FIRM,
    firmNow = firm,
  }: { text?: string; firm?: string; firmNow?: string } = {},
): Comparison {
  const now = changes.reduce((all, [from, to]) => {
    expect(all).toContain(from);
    return all.replace(from, to);
  }, text);
  return compared(jobOf(text, { 'firm.perp': firm }), jobOf(now, { 'firm.perp': firmNow }));
}

const said = (lines: readonly LineChange[]) =>
  lines.map((line) => {
    const { what, before, after: now } = saidChange(line);
    return [line.change, ...line.under, what, before ?? '', now ?? ''].join('|');
  });

const facts = ({ facts: all }: Comparison) =>
  all.flatMap((fact) => [`${fact.change} ${fact.head}`, ...said(fact.lines)]);

const works = ({ work }: Comparison) =>
  work.map(({ change, before, after: now }) =>
    [change, ...new Set([before?.name, now?.name])].filter(Boolean).join(' '),
  );

describe('lines of a piece of work', () => {
  test('are told as the notation says them', () => {
    const found = since([
      ['length  5 m', 'length 5.1 m'],
      ['width  1010 mm', 'width 1122.5 mm'],
      ['  bond    flemish\n', ''],
      ['  thick   1 brick\n', '  thick   1 brick\n  dpc engineering 2 courses\n'],
    ]);
    expect(works(found)).toEqual(['changed walnorth']);
    expect(said(found.work[0]!.lines)).toEqual([
      'new|dpc||engineering 2 courses',
      'changed|length|5 m|5.1 m',
      'changed|opening gatehole|width|1010 mm|1122.5 mm',
      'gone|bond|flemish|',
    ]);
    expect(facts(found)).toEqual([]);
  });

  test('another title is a change of the heading, and so is another kind', () => {
    const found = since([
      ['"Wall along the lane"', '"Lane wall"'],
      ['wall walsouth', 'pier walsouth'],
    ]);
    expect(found.work.map(({ lines }) => said(lines)[0])).toEqual([
      'changed|wall walnorth|"Wall along the lane"|"Lane wall"',
      'changed||wall walsouth|pier walsouth',
    ]);
  });

  test.each([
    ['length  5 m', 'length 5000 mm'],
    ['length  5 m', 'length 500 cm   # as measured'],
    ['client  "T. Alder"', 'client "T. Alder"'],
    ['  height  12 courses\n', ''],
  ] as const)('%s written as %s', (from, to) => {
    const found = since([[from, to]]);
    expect(found.nothing).toBe(to !== '');
  });

  test('several of a word are told one from another by what they begin with', () => {
    const firmNow = FIRM.replace('"With the order" 30%', '"With the order" 25%');
    const found = since([], { firmNow });
    expect(facts(found)).toEqual(['changed price', 'changed|stage "With the order"|30%|25%']);
  });

  test('a new order of lines that are told in order is a change', () => {
    const text = JOB.replace('  note ', '  note "First the hedge."\n  note ');
    const turned = JOB.replace(/( {2}note .*\n)/, '$1  note "First the hedge."\n');
    const [a, b] = [text, turned].map((each) => jobOf(each, { 'firm.perp': FIRM }));
    const found = compared(a!, b!);
    expect(found.work.flatMap(({ lines }) => lines.map(({ change }) => change))).toEqual(['moved']);
    expect(found.nothing).toBe(false);
  });

  test('a line that cannot be read is told as it is written', () => {
    const found = since([['length  3.25 m', 'lenght  3.25 m']]);
    expect(said(found.work[0]!.lines)).toEqual(['new|lenght||3.25 m', 'gone|length|3.25 m|']);
    expect(found.findings.new.map(({ code }) => code)).toContain('line-unknown');
    expect(found.money!.incomplete).toBe(true);
  });
});

describe('pieces of work', () => {
  test('are found again under another name by their lines', () => {
    expect(works(since([['wall walnorth', 'wall laneside']]))).toEqual([
      'renamed walnorth laneside',
    ]);
    const more = since([
      ['wall walnorth', 'wall laneside'],
      ['length  5 m', 'length 5.1 m'],
    ]);
    expect(works(more)).toEqual(['renamed walnorth laneside']);
    expect(said(more.work[0]!.lines)).toContain('changed|length|5 m|5.1 m');
    expect(more.work[0]!.figures.map(({ id }) => id)).toContain('laneside.bricks');
  });

  test('that have less than half their lines in common are two', () => {
    const found = since([
      ['wall walsouth', 'wall other'],
      ['length  3.25 m', 'length 2 m'],
      ['height  8 courses', 'height 4 courses'],
    ]);
    expect(works(found)).toEqual(['new other', 'gone walsouth']);
    const [fresh, gone] = found.work;
    expect(fresh!.figures.every(({ before }) => before === undefined)).toBe(true);
    expect(gone!.figures.every(({ after: now }) => now === undefined)).toBe(true);
  });

  test('in another order are told, as papers are written in it', () => {
    const turned = JOB.replace(/(wall walnorth[\s\S]*?)(wall walsouth[\s\S]*)/, '$2\n$1');
    const found = compared(jobOf(JOB, { 'firm.perp': FIRM }), jobOf(turned, { 'firm.perp': FIRM }));
    expect(found).toMatchObject({ reordered: true, nothing: false });
    expect(found.work.flatMap(({ lines }) => lines)).toEqual([]);
  });

  test('of which there are too many to try each with each are left as they are', () => {
    const many = (name: string) => Array.from({ length: 2000 }, (_, i) => `${name}${i}`);
    let tried = 0;
    const like = () => {
      tried += 1;
      return 1;
    };
    const found = pairedByLikeness(many('a'), many('b'), like, () => 5);
    expect([found.pairs.length, found.gone.length, found.added.length]).toEqual([0, 2000, 2000]);
    expect(tried).toBe(0);
    const few = pairedByLikeness(['a', 'b'], ['c', 'd', 'e'], like, () => 5);
    expect([few.pairs.length, few.gone.length, few.added.length, tried]).toEqual([2, 0, 1, 6]);
  });
});

describe('facts of the files that a job uses', () => {
  test('are told where they count: a brick that is laid', () => {
    const found = since([], { firmNow: FIRM.replace('£0.97 each', '£0.99 each') });
    expect(facts(found)).toEqual([
      'changed brick secret-red',
      'changed|price|£0.97 each|£0.99 each',
    ]);
    expect(found.facts[0]!.used).toBe(true);
    // What the work is and takes stays; its money is told with the price.
    expect(works(found)).toEqual([]);
    expect(found.money!.works.map(({ key }) => key).sort()).toEqual(['walnorth', 'walsouth']);
  });

  test('and not where they do not: a brick that is not, a price that the job says itself', () => {
    const other = `${FIRM}\nbrick idle-blue "Blue"\n  size 215 x 102.5 x 65 mm\n  price £1 each\n`;
    const dearer = since([], { firm: other, firmNow: other.replace('£1 each', '£2 each') });
    expect(dearer).toMatchObject({ nothing: true, idle: 1 });
    const text = `${JOB}\nbrick secret-red\n  price £1.20 each\n`;
    const own = since([], { text, firmNow: FIRM.replace('£0.97 each', '£0.99 each') });
    expect(own).toMatchObject({ nothing: true, idle: 0 });
  });

  test('what the firm pays, and what nothing of the job asks for', () => {
    const rates = `${FIRM}\noutput\n  facework 50 bricks per h\n  repoint 1 m2 per h\n`;
    const firmNow = rates
      .replace('£28.70', '£29.70')
      .replace('facework 50', 'facework 55')
      .replace('repoint 1', 'repoint 2');
    const found = since([], { firm: rates, firmNow });
    expect(facts(found)).toEqual([
      'changed labour',
      'changed|bricklayer|£28.70 per h|£29.70 per h',
      'changed output',
      'changed|facework|50 bricks per h|55 bricks per h',
    ]);
    expect(found.idle).toBe(1);
  });

  test('another country is another set of defaults', () => {
    const found = since([], { firmNow: FIRM.replace('use uk', 'use de') });
    expect(found.nothing).toBe(false);
    expect(found.money).toBeUndefined();
  });
});

describe('money', () => {
  /** No rounding, no least price: what moves it can be worked out with a pencil. */
  const plain = `perpend 1

job "Skip"
  tax 20% "VAT"

use uk

cost skip "Skip hire" 1 at £240
cost mixer "Mixer hire" 2 at £35

price
  overhead 10%
  profit   20%
  least    £0
  round    £0.01

wall low
  length 2 m
  height 4 courses
  brick red

brick red
  size 215 x 102.5 x 65 mm
  price £1 each
  pack 100
`;

  test('is moved by its parts, the biggest first, to the penny', () => {
    const found = since(
      [
        ['£240', '£260'],
        ['2 at £35', '1 at £35'],
      ],
      { text: plain },
    );
    const parts = found.money!.parts.map((p) => [p.label, p.difference.toFixed(2)]);
    // 20 dearer, 35 cheaper: 15 off the cost; 10% of it is 1.50, 20% of 16.50 is 3.30, 20% of 19.80 is 3.96.
    expect(parts).toEqual([
      ['Mixer hire', '-35.00'],
      ['Skip hire', '20.00'],
      ['VAT', '-3.96'],
      ['Profit', '-3.30'],
      ['Overhead', '-1.50'],
    ]);
    expect(found.money!.total.difference.toFixed(2)).toBe('-23.76');
    expect(found.money!.net.difference.toFixed(2)).toBe('-19.80');
  });

  test('tells how much is bought of what moved it', () => {
    const found = since(
      [
        ['height 4', 'height 8'],
        ['pack 100', 'pack 120'],
      ],
      { text: plain },
    );
    const bricks = found.money!.parts.find(({ key }) => key === 'buy brick red')!;
    expect([bricks.bought?.before?.value.toFixed(), bricks.bought?.after?.value.toFixed()]).toEqual(
      ['38', '76'],
    );
    expect(bricks.difference.toFixed(2)).toBe('38.00');
  });

  test('rounding and a least price are parts of their own', () => {
    const least = since([['least    £0', 'least £5000']], { text: plain });
    const [part] = least.money!.parts;
    expect([part!.label, least.money!.parts.length]).toEqual(['Up to the least price', 2]);
    const rounded = since([['round    £0.01', 'round £50']], { text: plain });
    expect(rounded.money!.parts.map(({ label }) => label).sort()).toEqual(['Rounding', 'VAT']);
  });

  test('a margin, a discount, what cannot be foreseen, an agreed price: each is a part, and no part moves for nothing', () => {
    const labels = (found: Comparison) => found.money!.parts.map(({ label }) => label).sort();
    const marked = since(
      [['  profit   20%', '  margin 25%\n  contingency 5%\n  discount £7 "Second job"']],
      { text: plain },
    );
    expect(labels(marked)).toEqual(['Contingency', 'Overhead', 'Profit', 'Second job', 'VAT']);
    const agreed = since([['  profit   20%', '  profit 20%\n  agreed £900.01 with tax']], {
      text: plain,
    });
    expect(labels(agreed).filter((label) => label !== 'Rounding')).toEqual([
      'Up or down to the agreed price',
      'VAT',
    ]);
    for (const { money } of [marked, agreed])
      expect(money!.parts.reduce((sum, p) => sum.add(p.difference), ZERO).toFixed()).toBe(
        money!.total.difference.toFixed(),
      );
  });

  test('in two currencies is not put side by side', () => {
    const found = since([['  tax 20% "VAT"', '  tax 20% "VAT"\n  currency EUR']], { text: plain });
    expect(found.money).toBeUndefined();
    expect(facts(found)).toContain('new|currency||EUR');
  });
});

describe('what is told of the work', () => {
  test('cautions and findings come and go', () => {
    const high = since([['height  12 courses', 'height 40 courses']]);
    expect(high.findings.new.map(({ code }) => code)).toContain('height-over');
    const back = since([['height 40 courses', 'height  12 courses']], {
      text: JOB.replace('height  12 courses', 'height 40 courses'),
    });
    expect(back.findings.gone.map(({ code }) => code)).toContain('height-over');
    expect(back.cautions.gone.map(({ caution }) => caution.code)).toEqual(
      high.cautions.new.map(({ caution }) => caution.code),
    );
  });

  test('a finding that stands on another line, with another figure in it, is the same', () => {
    const found = since([
      [
        '  brick   secret-red\n  length  3.25 m',
        '  # longer\n  brick   secret-red\n  length  3.26 m',
      ],
    ]);
    expect(found.findings).toEqual({ new: [], gone: [] });
  });
});

describe('files that say little or nothing', () => {
  const cases: [string, string][] = [
    ['', ''],
    ['', JOB],
    [JOB, ''],
    ['\u0000\u0001', '\ufffd\ufffd'],
    ['wall', 'wall wall wall'],
    [JOB.replace('5 m', '9e99 m'), JOB.replace('5 m', '-5 m')],
    [JOB.replace('5 m', `${'9'.repeat(400)} m`), JOB.replace('5 m', '0 m')],
  ];
  test.each(cases)('%j and %j', (before, now) => {
    const job = (text: string, files: Files = {}) => jobOf(text, files);
    const found = compared(job(before), job(now));
    expect(found.nothing).toBe(before === now || (before + now).trim() === '');
    expect(compared(job(now), job(now)).nothing).toBe(true);
  });
});
