import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readJson } from '../tree';
import { perpend, useCommandLine } from './perpend';

useCommandLine();

const HEAD = 'perpend 1\n\nuse uk\n\njob "A"\n  tax  0%\n\nprice\n  round  £0.01\n\n';
const measure = (text: string, ...more: string[]) =>
  perpend(['measure', '-', ...more], { input: HEAD + text });

describe('perpend measure', () => {
  test('lists what is still to be measured, where, and what waits for it', () => {
    const { code, out } = measure('wall north\n  stands  held\n  length  ?\n  height  4 courses\n');
    expect(code).toBe(0);
    expect(out).toMatch(/^Still to be measured\n {2}line +where +waits for it\n/);
    expect(out).toMatch(/length \? {2}\S*:13 {2}north\.\S+, .* and \d+ more\n/);
  });

  test('lists the ranges, the one that the price most hangs on first', () => {
    const { out } = measure(
      'cost skip "Skip" 1 at £100..£120\n\ncost hire "Hire" 1 at £200..£260\n',
    );
    // Variances go with the squares: 20² and 60², 10% and 90%. The middle is 110 + 230.
    expect(out).toMatch(/^Measure this before you price\n/);
    expect(out).toMatch(/cost hire .*90%\n.*cost skip .*10%\n/);
    expect(out).toMatch(
      /price likely £340\.00; in eight of ten jobs alike £31\d\.\d\d to £36\d\.\d\d\n$/,
    );
  });

  test('lists what no line says and a caution hangs on', () => {
    const { out } = measure(
      'wall north\n  stands held\n  length 2 m\n  height 4 courses\n  footing 450 x 225 mm\n' +
        '\nrepair r\n  brick standard\n  repoint 1 m2 raked 20 mm\n',
    );
    expect(out).toMatch(/^To find out on site\n {2}what +of +where +said by a line like/);
    expect(out).toContain('stands-in lime');
    expect(out).toMatch(/how far the boundary is +north +\S+:15 +boundary 0\.4 m/);
  });

  test('says when there is nothing to measure', () => {
    expect(measure('cost skip "Skip" 1 at £100\n').out).toContain(
      'nothing is left to measure, and no range moves the price.',
    );
  });

  test('as JSON that keeps its promise', () => {
    const { out } = measure(
      'wall south\n  length 2 m\n  height 4 courses\n  footing 450 x 225 mm\n\nwall north\n  stands held\n  length ?\n  height 4 courses\n\ncost hire "Hire" 1 at £200..£260\n',
      '--json',
    );
    const document = JSON.parse(out);
    const valid = new Ajv2020({ strict: false }).compile(
      readJson('shared/json-schema/perpend-1.schema.json') as object,
    );
    expect(valid(document), JSON.stringify(valid.errors)).toBe(true);
    expect(document.unmeasured).toHaveLength(1);
    expect(document.unmeasured[0]).toMatchObject({ text: 'length ?', place: { line: 18 } });
    expect(document.unmeasured[0].waiting).toContain('job.price');
    expect(document.findOut).toMatchObject([
      { what: 'how far the boundary is', line: 'boundary 0.4 m', works: ['south'] },
    ]);
    expect(document.ranges).toHaveLength(1);
    expect(document.ranges[0].share).toBeGreaterThan(0.99);
    expect(document.range.low.value < document.range.high.value).toBe(true);
  });
});
