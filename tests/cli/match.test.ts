import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readJson } from '../tree';
import { perpend, useCommandLine } from './perpend';

useCommandLine();

const TEXT = `perpend 1

use uk

job "Yard wall"
  tax  0%

brick plain "Plain red"
  size   215 x 102.5 x 65 mm
  joint  10 mm
  price  £1 each

brick tall "Tall antique"
  size       215 x 102.5 x 67 mm
  joint      10 mm
  price      £124 per pack
  pack       80
  waste      8%
  tolerance  T1
  colour     "red multi"

brick inch "Inch stock"
  size   228 x 108 x 68 mm
  joint  10 mm
  price  £2 each
  waste  0%
  made   reclaimed

repair frost "Frost damage"
  brick       plain
  mix         general
  measured    214 x 102 x 66 mm of 10 bricks
  gauge       4 courses 310 mm
  rebuild     1.35 m x 9 courses
  match       inch
  candidates  tall, inch
`;

const match = (...more: string[]) => perpend(['match', '-', ...more], { input: TEXT });
const plain = (text: string) => text.replaceAll('\u00a0', ' ');

describe('perpend match', () => {
  test('prints the candidates, ranked, with what each comes to beside what stands', () => {
    const { code, out } = match();
    expect(code).toBe(0);
    const text = plain(out);
    expect(text).toMatch(/^Frost damage \(repair frost\)\n/);
    expect(text).toContain(
      'beside 214 x 102 x 66 mm (measured, the mean of 10 bricks); courses of 77.5\n  mm, measured',
    );
    // 77.5 - 67 and 77.5 - 68; 9 x (77 - 77.5) and 9 x (78 - 77.5).
    expect(text).toMatch(/\n {2}1 tall +\+1, \+0\.5, \+1 mm +10\.5 mm +−4\.5 mm +£124\.00\n/);
    expect(text).toMatch(/\n {2}2 inch \* +\+14, \+6, \+2 mm +9\.5 mm +4\.5 mm +£[\d.]+\n/);
    expect(text).toContain('Ranked by gauge, size, price.');
    const [over] = text.split(/\n +differs by/);
    for (const column of ['Differs by', 'Bed joint', 'Drift', 'Cost', '* is'])
      expect(over!.replace(/\n */g, ' ')).toContain(column);
    expect(text).toContain(
      'Before Inch stock: alike in gauge; its size is within T2 of what stands,',
    );
    // 228 - 214 is 14, and T1 of 228 mm allows 0.40 x 15.1 = 6: EN 771-1.
    expect(text).toContain('out of T1: length by 8 mm');
    expect(text).toContain('no upright joint that anyone would accept keeps the bond');
    expect(text).toContain('They are described as red multi.');
    expect(text).toContain('Reclaimed bricks differ in size, shade and soundness.');
    expect(text.split('\n').filter((line) => line.length > 80)).toEqual([]);
  });

  test('of one repair, and says what it does not know', () => {
    expect(match('frost').out).toBe(match().out);
    expect(match('forst')).toMatchObject({ code: 2, out: '' });
    expect(match('forst').err).toContain('Did you mean frost?');
    const none = perpend(['match', '-'], { input: 'perpend 1\n\nuse uk\n\njob "A"\n' });
    expect(none).toMatchObject({ code: 2, out: '' });
    expect(none.err).toContain('There is nothing to compare');
  });

  test('as JSON that keeps its promise', () => {
    const document = JSON.parse(match('--json').out);
    const valid = new Ajv2020({ strict: false }).compile(
      readJson('shared/json-schema/perpend-1.schema.json') as object,
    );
    expect(valid(document), JSON.stringify(valid.errors)).toBe(true);
    const [block] = document.blocks;
    expect(block).toMatchObject({
      kind: 'repair',
      name: 'frost',
      order: ['gauge', 'size', 'price'],
    });
    expect(block.stands).toMatchObject({ measured: true, gauged: true, course: { value: '77.5' } });
    const [tall, inch] = block.candidates;
    expect(tall).toMatchObject({
      rank: 1,
      chosen: false,
      brick: 'tall',
      larger: { height: { value: '1', unit: 'mm' } },
      tolerance: { class: 'T2', within: true },
      bed: { joint: { value: '10.5' }, accepted: true, drift: { value: '-4.5' } },
      cost: { value: '124', unit: 'GBP' },
    });
    expect(inch).toMatchObject({
      chosen: true,
      tolerance: { class: 'T1', within: false, side: 'length', out: { value: '8' } },
      perpend: { joint: { value: '-4' }, accepted: false },
    });
    expect(inch.why).toBeUndefined();
  });

  test('JSON of what is not known leaves it out', () => {
    const text =
      'perpend 1\n\nuse uk\n\nbrick odd "Odd"\n\nrepair r\n  rebuild 9 bricks\n  match odd\n';
    const { out } = perpend(['match', '-', '--json'], { input: text });
    const document = JSON.parse(out);
    const valid = new Ajv2020({ strict: false }).compile(
      readJson('shared/json-schema/perpend-1.schema.json') as object,
    );
    expect(valid(document), JSON.stringify(valid.errors)).toBe(true);
    expect(document.blocks[0].stands.size).toBeUndefined();
    expect(Object.keys(document.blocks[0].candidates[0])).not.toContain('cost');
  });
});
