/** Every part of every drawing leads to the line that puts it there: plans, tops and rods as well as faces. */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { DRAWINGS, INKS, type Part, type Shown } from '../../shared/protocol/preview';
import { Previewing } from './shown';

const EXAMPLES = path.resolve(import.meta.dirname, '../../examples');
const read = (name: string) => readFileSync(path.join(EXAMPLES, name), 'utf8');
const FILES = Object.fromEntries(
  ['firm.perp', 'repairs.perp', 'de/firm.perp', 'us/firm.perp'].map((name) => [name, read(name)]),
);
const JOBS = readdirSync(EXAMPLES, { recursive: true, encoding: 'utf8' })
  .filter((name) => /job\.perp$/.test(name))
  .sort();

/** A piece, an outline or a word, with what it leads to. */
interface Led {
  readonly what: string;
  readonly to: string;
  /** The title of the drawing that it is of. */
  readonly of: string;
}

/** A line where work is cut off in the drawing, and one that a figure stands at, come from nothing. */
const NO_LINES: readonly string[] = ['break', 'dimension', 'rod', 'mark', 'course'];

function ledIn({ picture, from }: Shown): Led[] {
  let of = '';
  const { order = [], parts } = picture!;
  const to = (at: number) => from[at]?.label ?? 'nothing';
  return order.flatMap((key): Led[] => {
    const part = parts[key]!;
    if (part.kind === 'frame') of = part.title;
    if (part.kind === 'row') return piecesOf(parts[part.pattern]!, to, of);
    if (part.kind !== 'marks') return [];
    const drawn = [...part.lines, ...part.shapes].map(({ ink, from: at }) => ({
      what: INKS[ink]!,
      to: to(at),
      of,
    }));
    const words = part.texts.map(({ text, from: at }) => ({ what: text, to: to(at), of }));
    return [...drawn.filter(({ what }) => !NO_LINES.includes(what)), ...words];
  });
}

function piecesOf(part: Part, to: (at: number) => string, of: string): Led[] {
  const pieces = part.kind === 'pattern' ? part.pieces : [];
  const starts = Array.from({ length: pieces.length / 4 }, (_, i) => 4 * i);
  return starts.map((i) => ({ what: INKS[pieces[i + 2]!]!, to: to(pieces[i + 3]!), of }));
}

describe.each(JOBS)('%s', (name) => {
  const job = new Previewing(read(name), FILES, name);
  const { works } = job.shown();
  // Of pointing alone there is nothing to draw, and that is said.
  const keys = works.length ? works.map(({ key }) => key) : [''];
  const all = keys.flatMap((key) => DRAWINGS.map((show) => ({ key, show })));
  test.each(all)('$key, $show: whatever is drawn leads to a line', ({ key, show }) => {
    const shown = job.shown({ show, work: key, pinned: true });
    if (!shown.picture) return expect(shown.nothing).toBeTruthy();
    const led = ledIn(shown);
    expect(led.length).toBeGreaterThan(5);
    expect(led.filter(({ to }) => to === 'nothing')).toEqual([]);
  });
});

/** What the drawings of the lesson's wall say, and the lines that say it there. */
describe('the right line', () => {
  const wall = new Previewing(read('garden-wall/job.perp'), FILES, 'garden-wall/job.perp');
  const led = (show: string) => ledIn(wall.shown({ show }));
  const table: [show: string, of: RegExp, what: string, to: string][] = [
    // The two lowest courses are damp-proof bricks.
    ['plan', /^Left end, Course 2/, 'header', 'dpc'],
    ['plan', /^Left end/, '215', 'thick'],
    ['plan', /^Left end, Course 1/, '225', 'brick'],
    ['plan', /^Hanging pier, Course 1/, 'half', 'pier Hanging pier'],
    ['plan', /^Hanging pier/, '56.3', 'size'],
    ['plan', /^Hanging pier/, '215', 'thick'],
    ['plan', /^Hanging pier/, '2577.5', 'from'],
    ['plan', /^Shutting pier/, '3915', 'size'],
    ['top', /^Cap/, 'cap', 'cap'],
    // A cap is measured by itself: 400 mm of it are no place along the wall.
    ['top', /^Cap/, '400', 'cap'],
    ['top', /^Cap/, '327.5', 'size'],
    ['top', /^Cap/, '36.3', 'cap'],
    ['top', /0 mm to 2250 mm$/, 'on-edge', 'coping'],
    ['top', /3587\.5 mm to 3915 mm$/, '50', 'coping'],
    ['rod', /./, 'damp-proof course', 'dpc'],
    ['rod', /./, 'coping top 1462.5', 'coping'],
    ['rod', /./, 'wall top', 'height'],
    ['rod', /./, 'Hanging pier top, Shutting pier top', 'height'],
    ['rod', /./, '7', 'brick'],
    ['front', /./, '1010', 'width'],
    ['back', /./, '1010', 'width'],
  ];
  test.each(table)('%s, %s: %s', (show, of, what, to) => {
    const found = led(show).filter((each) => each.what === what && of.test(each.of));
    expect(found.length).toBeGreaterThan(0);
    expect([...new Set(found.map((each) => each.to))]).toEqual([to]);
  });

  test('two copings of one work are told apart', () => {
    const shown = wall.shown({ show: 'top' });
    const lines = shown.from.filter(({ label }) => label === 'coping').map(({ line }) => line);
    expect(new Set(lines).size).toBe(2);
    const { order = [], parts } = shown.picture!;
    const used = order.flatMap((key) => {
      const part = parts[key]!;
      const pattern = part.kind === 'row' ? parts[part.pattern] : undefined;
      return pattern?.kind === 'pattern' ? pattern.pieces.filter((_, i) => i % 4 === 3) : [];
    });
    const led = new Set(used.map((at) => shown.from[at]!.line));
    expect(lines.every((line) => led.has(line))).toBe(true);
  });

  test('a band is told apart on a rod and on plan', () => {
    const stepped = new Previewing(read('stepped-wall/job.perp'), FILES, 'stepped-wall/job.perp');
    const rod = ledIn(stepped.shown({ show: 'rod' })).filter(({ what }) => /^band of/.test(what));
    expect(rod.map(({ to }) => to)).toEqual(['band', 'band']);
    const front = ledIn(stepped.shown());
    const to = (what: string) => front.find((each) => each.what === what)?.to;
    expect(['1800', '2690', '3600', '910'].map(to)).toEqual(['ground', 'top', 'ground', 'ground']);
  });
});
