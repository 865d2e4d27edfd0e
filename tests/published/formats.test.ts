/**
 * Bricks to the square metre of half-brick wall, format by format. A wall of whole bricks, each with one joint
 * and one bed (its right end butted), has exactly one brick to each length x height with joints: what the tables
 * print is that number, rounded as each source rounds.
 */
import { describe, expect, test } from 'vitest';
import { figure, jobOf } from '../examples/engine';

interface Format {
  readonly name: string;
  /** Lines of a brick block; or the name of a brick that a library has. */
  readonly brick: string | { readonly of: string };
  readonly use: 'uk' | 'us' | 'de';
  /** Length and height with their joints, in the unit of the format. */
  readonly module: readonly [number, number];
  readonly unit: 'mm' | 'in';
  /** To the m2, or to the ft2 where the unit is inches; with how far its rounding takes it. */
  readonly printed: readonly [number, number];
}

const custom = (size: string, unit: string, joint: string, gauge: string) =>
  `size ${size} ${unit}\n  joint ${joint} ${unit}\n  gauge ${gauge} ${unit}`;

const FORMATS: readonly Format[] = [
  {
    // Designing Buildings, Brick sizes: 60, which is 59.26 rounded up.
    name: 'UK metric',
    brick: { of: 'standard' },
    use: 'uk',
    module: [225, 75],
    unit: 'mm',
    printed: [60, 0.0126],
  },
  {
    // Quoted table at diaridelsestudiants.com: 51.
    name: 'UK imperial, 73 mm high',
    brick: { of: 'imperial-73' },
    use: 'uk',
    module: [240, 83],
    unit: 'mm',
    printed: [51, 0.017],
  },
  {
    // BIA sizes at archtoolbox.com; 675 to 100 ft2 at constructionmentor.net.
    name: 'US modular',
    brick: { of: 'modular' },
    use: 'us',
    module: [8, 8 / 3],
    unit: 'in',
    printed: [6.75, 0],
  },
  {
    // engineeringtoolbox.com: 5.7; BIA, from memory, 5.63.
    name: 'US engineer modular',
    brick: { of: 'engineer-modular' },
    use: 'us',
    module: [8, 16 / 5],
    unit: 'in',
    printed: [5.7, 0.014],
  },
  {
    // engineeringtoolbox.com: 4.5.
    name: 'US economy 8',
    brick: { of: 'economy' },
    use: 'us',
    module: [8, 4],
    unit: 'in',
    printed: [4.5, 0],
  },
  {
    // engineeringtoolbox.com: 4.6; BIA, from memory, 4.50.
    name: 'US Norman',
    brick: { of: 'norman' },
    use: 'us',
    module: [12, 8 / 3],
    unit: 'in',
    printed: [4.6, 0.023],
  },
  {
    // BIA, from memory: 6.00.
    name: 'US Roman',
    brick: { of: 'roman' },
    use: 'us',
    module: [12, 2],
    unit: 'in',
    printed: [6, 0],
  },
  {
    // engineeringtoolbox.com: 3.1; BIA, from memory, 3.00.
    name: 'US utility',
    brick: { of: 'utility' },
    use: 'us',
    module: [12, 4],
    unit: 'in',
    printed: [3.1, 0.034],
  },
  {
    // Ziegelei Priller, Materialbedarf: 63.
    name: 'DE Dünnformat',
    brick: { of: 'df' },
    use: 'de',
    module: [250, 62.5],
    unit: 'mm',
    printed: [63, 0.016],
  },
  {
    // Ziegelei Priller, Materialbedarf: 49.
    name: 'DE Normalformat',
    brick: { of: 'nf' },
    use: 'de',
    module: [250, 1000 / 12],
    unit: 'mm',
    printed: [49, 0.021],
  },
  {
    // Ziegelei Priller, Materialbedarf: 32.
    name: 'DE 2DF',
    brick: { of: 'zwei-df' },
    use: 'de',
    module: [250, 125],
    unit: 'mm',
    printed: [32, 0],
  },
  {
    // Size: KNB, Frequently asked questions; 75 at mannetje.info.
    name: 'NL Waalformaat',
    brick: custom('210 x 100 x 50', 'mm', '10', '1 course 60'),
    use: 'uk',
    module: [220, 60],
    unit: 'mm',
    printed: [75, 0.0101],
  },
  {
    // Size: AS 4455 manual extract; 50 at jetcharm.com.au, "rounded".
    name: 'AU standard',
    brick: custom('230 x 110 x 76', 'mm', '10', '1 course 86'),
    use: 'uk',
    module: [240, 86],
    unit: 'mm',
    printed: [50, 0.033],
  },
];

/** Twenty bricks long, twenty-four courses high. */
function wallOf({ brick, use, module, unit }: Format) {
  const named = typeof brick === 'string' ? 'trial' : brick.of;
  const block = typeof brick === 'string' ? `brick trial\n  ${brick}\n\n` : '';
  const length = 20 * module[0];
  return jobOf(
    `use ${use}\n\n${block}wall w\n  brick ${named}\n  length ${length} ${unit}\n  height 24 courses\n  right butted\n`,
  );
}

describe.each(FORMATS)('$name', (format) => {
  const job = wallOf(format);
  const perUnit = figure(job, 'w.bricks') / figure(job, 'w.area');
  const [length, height] = format.module;
  const exact = (format.unit === 'in' ? 144 : 1e6) / (length * height);

  test('is one brick to each length and height with joints', () => {
    expect(perUnit / exact).toBeCloseTo(1, 7);
  });

  test('is what is printed, within its rounding', () => {
    const [printed, within] = format.printed;
    expect(Math.abs(printed - exact) / exact).toBeLessThanOrEqual(within + 1e-9);
    expect(Math.abs(printed - perUnit) / perUnit).toBeLessThanOrEqual(within + 1e-7);
  });

  test('works in whole bricks with no cut', () => {
    expect(job.findings.filter((f) => f.code.startsWith('fit'))).toEqual([]);
  });
});

test('IS 1077 modular brick: 500 to the cubic metre of 200 x 100 x 100 mm each (IIT Kanpur notes)', () => {
  const job = jobOf(
    'brick modular-is\n  size 190 x 90 x 90 mm\n  joint 10 mm\n\nwall w\n  brick modular-is\n  length 4 m\n  height 20 courses\n  right butted\n',
  );
  expect(figure(job, 'w.bricks') / (figure(job, 'w.area') * 0.1)).toBeCloseTo(500, 6);
});
