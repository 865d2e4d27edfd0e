/** Every line of the table, word by word: what is offered there could be meant, and taking it makes no error. */
import { describe, expect, test } from 'vitest';
import { readLine } from '../../grammar/blocks';
import { HEADINGS, type LineKind } from '../../grammar/lines';
import { match } from '../../grammar/read/match';
import type { Item } from '../../grammar/syntax';
import { expected } from '../../server/engine/ide/complete-values';
import { completion } from '../../server/engine/ide/completion';
import type { Completion } from '../../server/engine/ide/types';
import { unitNamed } from '../../shared/units';
import { jobOf } from '../engine/world';
import { asked, FILES } from './ask';

/** Something of each kind that lines name; nothing of it can be laid, which would only take time. */
const BASE = `perpend 1
use "firm.perp"
wall base
  brick red
  opening hole
  pier knob
pier lone
  brick red
option opt "Opt"
`.split('\n');

/** A place: the lines above, the line as far as it is written, and its kind. */
interface Stop {
  readonly above: readonly string[];
  readonly lead: string;
  readonly kind: LineKind;
  readonly label: string;
}

const first = (text: string) => text.split('\n')[0]!;

function stopsIn(kind: LineKind, parents: readonly LineKind[]): Stop[] {
  const pad = (depth: number) => '  '.repeat(depth);
  const above = parents.map((parent, i) => pad(i) + first(parent.example));
  const example = first(kind.example);
  const items = (readLine(example, 0)?.items ?? []) as Item[];
  const columns = items.flatMap((item) =>
    item.kind === 'measure' && item.unit
      ? [item.span.start, item.unit.span.start]
      : [item.span.start],
  );
  const label = [...parents, kind].map((each) => each.key).join('/');
  const own = [...new Set([...columns, example.length])].map((column): Stop => {
    const said = example.slice(0, column).trimEnd();
    return { above, lead: `${pad(parents.length)}${said} `, kind, label: `${label}: ${said}` };
  });
  return [...own, ...(kind.body ?? []).flatMap((inner) => stopsIn(inner, [...parents, kind]))];
}

const STOPS = HEADINGS.flatMap((kind) => stopsIn(kind, []));
/** All places under the same lines stand in one text: a job for each of them would take too long. */
const TEXTS = grouped(STOPS);

function grouped(stops: readonly Stop[]): Map<string, Stop[]> {
  const found = new Map<string, Stop[]>();
  for (const stop of stops) {
    const key = stop.above.join('\n');
    found.set(key, [...(found.get(key) ?? []), stop]);
  }
  return found;
}

interface Offered extends Stop {
  readonly items: readonly Completion[];
}

const offered = [...TEXTS.values()].flatMap(offeredIn);

function offeredIn(stops: readonly Stop[]): Offered[] {
  const above = [...BASE, ...stops[0]!.above];
  const job = jobOf([...above, ...stops.map(({ lead }) => lead)].join('\n'), FILES);
  return stops.flatMap((stop, i) => {
    const items = completion(job, { line: above.length + i, column: stop.lead.length })?.items;
    return items ? [{ ...stop, items }] : [];
  });
}

/** Places where one of these is offered. */
const where = (is: (item: Completion, at: Offered) => boolean) =>
  offered.flatMap((at) =>
    at.items.filter((item) => is(item, at)).map((item) => `${at.label} | ${item.label}`),
  );

/** The number in front of the cursor, in the base units of what is offered. */
function amount({ lead }: Stop, { label }: Completion): number {
  const number = /([\d.]+)(?:\/(\d+))? $/.exec(lead);
  const unit = unitNamed(label);
  if (!number || !unit) return Number.NaN;
  return (Number(number[1]) / Number(number[2] ?? 1)) * unit.factor.toNumber();
}

const isUnit = (item: Completion, dimension: string) =>
  item.kind === 'unit' && unitNamed(item.label)?.dimension === dimension;

const expectedAfter = (kind: LineKind, items: readonly Item[]) => expected(kind, items).length > 0;

describe('what is offered in every line', () => {
  test('there are many such places', () => {
    expect(STOPS.length).toBeGreaterThan(600);
    expect(offered.length).toBeGreaterThan(300);
  });

  test('can stand there: with it the line is whole, or goes on', () => {
    const wrong = where(({ insert, isSnippet }, { lead, kind }) => {
      if (isSnippet || !lead.trim()) return false;
      const items = (readLine(`${lead}${insert}`, 0)?.items ?? []) as Item[];
      const { values, faults, mismatch } = match(kind.takes, items);
      // A line that has to go on is told of when it does not.
      const goesOn = mismatch?.at === items.length || expectedAfter(kind, items);
      return !goesOn && (faults.length > 0 || !values);
    });
    expect(wrong).toEqual([]);
  });

  // A wall of a kilometre, and a merchant half a day away: both are far beyond any job here (common practice).
  test('lengths are such as work has, and ways such as one drives', () => {
    const far = where((item, at) => isUnit(item, 'length') && amount(at, item) > 1e6);
    expect(far.filter((each) => !each.startsWith('travel/run'))).toEqual([]);
    const drives = where((_, at) => at.label === 'travel/run: run 2 x 38');
    expect(drives.map((each) => each.split('| ')[1])).toEqual(['km', 'mile']);
  });

  test('what is a joint or a rake deep is in no metres', () => {
    const small =
      /\b(?<!movement-)(joint|kerf|raked|cap-step|corbel 2 courses project|movement-width)(?! every)\b[^|]* \d+ \|/;
    const units = where((item) => isUnit(item, 'length')).filter((each) => small.test(each));
    expect(units.length).toBeGreaterThan(10);
    expect(units.filter((each) => /\| (m|ft|yd|km|mile)$/.test(each))).toEqual([]);
  });

  // Two tonnes and two cubic metres are a lorry’s (common practice).
  test('weights and volumes are such as are bought and mixed', () => {
    const bought = ({ label }: Offered) => !label.startsWith('record');
    expect(where((i, at) => bought(at) && isUnit(i, 'mass') && amount(at, i) > 5000)).toEqual([]);
    expect(where((i, at) => bought(at) && isUnit(i, 'volume') && amount(at, i) > 60_000)).toEqual(
      [],
    );
  });

  test('outputs are in what the task is laid in', () => {
    const of = (task: string) =>
      offered
        .find((at) => new RegExp(`^output/${task}: ${task} [\\d.]+$`).test(at.label))!
        .items.map((item) => item.label);
    expect(of('coping')).toEqual(['bricks']);
    expect(of('repoint')).toEqual(['m2', 'ft2']);
    expect(of('centre')).toEqual(['piece']);
    expect(of('facework').slice(0, 2)).toEqual(['bricks', 'm2']);
    expect(of('footing')).not.toContain('bricks');
  });

  test('work of bricks is offered bricks, and a backing blocks too', () => {
    const block = where((item) => item.label === 'block-100').map((each) => each.split(':')[0]);
    expect(block).toContain('wall/backing');
    expect(block).toContain('defaults/brick');
    expect(block.filter((each) => /^(pier|wall\/(dpc|band|coping|pier))/.test(each!))).toEqual([]);
  });

  test('what is measured loose goes into a mix, what comes by the piece is bedded', () => {
    const places = (name: string) =>
      where((item) => item.label === name).map((e) => e.split(':')[0]!);
    expect(
      places('sand').filter((each) => !/^(mix|material|mortar-class|caution)\//.test(each)),
    ).toEqual([]);
    expect(places('wall-tie').filter((each) => /^mix\/(parts|batch)/.test(each))).toEqual([]);
    expect(places('creasing-tile')).toEqual(
      expect.arrayContaining(['wall/pier/cap', 'defaults/creasing']),
    );
  });

  test('nothing that is in a list already', () => {
    expect(
      where((item, at) => at.lead.includes(`${item.label} 1,`) && item.kind === 'name'),
    ).toEqual([]);
    const twice = where((item, at) => new RegExp(`[ ,]${item.label},`).test(at.lead));
    // A course of a bond goes on with what it began with.
    expect(twice.filter((each) => !/^bond\//.test(each))).toEqual([]);
  });
});

describe('a name that is taken makes no error', () => {
  const WALL = 'wall n\n  length 2240 mm\n  height 6 courses\n';
  test.each([
    ['the brick of a wall of a brick', `${WALL}  thick 1 brick\n  brick $0`, ['red', 'standard']],
    [
      'the brick of a pier',
      'pier p\n  size 1.5 x 1.5 bricks\n  height 6 courses\n  brick $0',
      ['red'],
    ],
    ['the brick of half a brick', `${WALL}  brick $0`, ['red', 'standard', 'block-100']],
    ['a band', `${WALL}  brick red\n  band $0 courses 3`, ['standard']],
    ['a backing', `${WALL}  brick red\n  backing $0 cavity 75 mm`, ['red', 'block-100']],
    ['the bond of a wall of a brick', `${WALL}  thick 1 brick\n  bond $0`, ['flemish']],
    [
      'the pier of a wall',
      `${WALL}  pier a\n    at left\n    size 1.5 x 1.5 bricks\npier b\nrepair r\n  in n $0`,
      ['a'],
    ],
  ])('%s', (_, marked, some) => {
    const text = `perpend 1\nuse "firm.perp"\n${marked}`;
    const { job, at } = asked(text);
    const names = completion(job, at)!.items.map((item) => item.insert);
    expect(names).toEqual(expect.arrayContaining(some));
    for (const name of names) {
      const line = jobOf(text.replace('$0', name), FILES).findings.filter(
        ({ severity, place }) => severity === 'error' && place.line === at.line,
      );
      expect(
        line.map(({ message }) => message),
        name,
      ).toEqual([]);
    }
  });

  test('in work that may be of blocks they come behind the bricks', () => {
    const { job, at } = asked(`perpend 1\nuse "firm.perp"\n${WALL}  brick $0`);
    expect(completion(job, at)!.items.at(-1)!.label).toBe('block-100');
  });
});
