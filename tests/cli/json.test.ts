import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { Decimal } from '../../shared/exact';
import { readJson } from '../tree';
import { FILES, FIRM } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

const schema = readJson<Schema>('shared/json-schema/perpend-1.schema.json');
const validate = new Ajv2020({ allErrors: true, strict: true, strictRequired: false }).compile(
  schema,
);

interface Schema {
  readonly description: string;
  readonly $defs: Record<string, { readonly required?: readonly string[] }>;
}

interface Step {
  readonly label: string;
  readonly value: string;
  readonly unit: string;
  readonly text: string;
  readonly sum?: string;
  readonly place?: Place;
  readonly line?: string;
  readonly parts: readonly number[];
}

interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endColumn: number;
}

interface Figure {
  readonly id: string;
  readonly value: string;
  readonly unit: string;
  readonly text: string;
  readonly complete: boolean;
  readonly missing: readonly string[];
  readonly working: number;
}

interface Priced {
  readonly file: string;
  readonly isJob: boolean;
  readonly complete: boolean;
  readonly range?: { readonly low: Figure; readonly high: Figure };
  readonly blocks: readonly { readonly name: string; readonly figures: readonly string[] }[];
  readonly figures: readonly Figure[];
  readonly steps: readonly Step[];
  readonly findings: readonly { readonly severity: string; readonly place: Place }[];
  readonly used: readonly { readonly file: string; readonly errors: number }[];
}

interface Charged {
  readonly figures: readonly { readonly id: string; readonly value: string }[];
  readonly taxes: readonly {
    readonly category: string;
    readonly base: { readonly value: string };
  }[];
  readonly roundings: readonly { readonly of: string }[];
}

function json(args: readonly string[], cwd: string) {
  const ran = perpend(args, { cwd });
  const document = JSON.parse(ran.out) as { files: Priced[]; unread: { file: string }[] };
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  return { ...ran, document };
}

describe('price --json', () => {
  test.each(Object.keys(FILES))('%s is valid against the schema', (file) => {
    const { document } = json(['price', '--json', file], folderOf(FILES));
    expect(document.files.map((each) => each.file)).toEqual([file]);
  });

  test('of every step of a price is valid, and its rows of tax add up to the price before tax', () => {
    const more =
      'cost permit "Permit" 1 at £77.77\n  tax none "Paid for the client"\ncost crane "Crane" 1 at £310\n  tax reverse-charge 20%\nprice\n  discount 2% "Second job"\n  stage "All" rest\n  retention 5% for 180 days\n  deducted cis\n';
    const cwd = folderOf({ ...FILES, 'more.perp': `${FILES['job.perp']}${more}` });
    const [job] = json(['price', '--json', 'more.perp'], cwd).document
      .files as unknown as Charged[];
    const pence = (text: string) => Math.round(Number(text) * 100);
    const net = job!.figures.find((f) => f.id === 'job.net')!.value;
    expect(job!.taxes.reduce((sum, tax) => sum + pence(tax.base.value), 0)).toBe(pence(net));
    expect(job!.taxes.map((tax) => tax.category).sort()).toEqual(['AE', 'E', 'S']);
    expect(job!.roundings.map((r) => r.of)).toEqual(
      expect.arrayContaining([
        'price',
        'discounts',
        'tax',
        'parts',
        'stages',
        'retention',
        'deductions',
      ]),
    );
  });

  test('gives every figure, exact, with a working that is whole', () => {
    const [job] = json(['price', '--json', 'job.perp'], folderOf(FILES)).document.files;
    const { figures, steps, blocks } = job!;
    expect(figures.length).toBeGreaterThan(20);
    for (const figure of figures) {
      const step = steps[figure.working]!;
      expect([step.value, step.unit, step.text]).toEqual([figure.value, figure.unit, figure.text]);
    }
    steps.forEach((step, i) => {
      for (const part of step.parts) expect(part).toBeLessThan(i);
    });
    const ids = figures.map((figure) => figure.id);
    for (const block of blocks) for (const id of block.figures) expect(ids).toContain(id);
  });

  test('its sums are the sums of their parts, exactly', () => {
    const [job] = json(['price', '--json', 'job.perp'], folderOf(FILES)).document.files;
    const sums = job!.steps.filter(
      (step) =>
        step.parts.length > 1 &&
        step.sum?.split(' + ').length === step.parts.length &&
        step.parts.every((part) => job!.steps[part]!.unit === step.unit),
    );
    expect(sums.length).toBeGreaterThan(8);
    for (const step of sums) {
      const total = step.parts.reduce(
        (sum, part) => sum.add(job!.steps[part]!.value),
        new Decimal(0),
      );
      expect(total.minus(step.value).abs().lt('1e-30'), step.label).toBe(true);
    }
  });

  test('a fact stands where it says it does', () => {
    const [job] = json(['price', '--json', 'job.perp'], folderOf(FILES)).document.files;
    const here = job!.steps.filter((step) => step.place && step.place.file in FILES);
    expect(here.length).toBeGreaterThan(15);
    for (const { place, line } of here) {
      const text = FILES[place!.file as keyof typeof FILES].split('\n')[place!.line - 1]!;
      expect(text.trim()).toBe(line);
      expect(text.slice(place!.column - 1, place!.endColumn - 1).trim()).not.toBe('');
    }
  });

  test('says what is incomplete, the range, and errors of used files', () => {
    const cwd = folderOf({ ...FILES, 'firm.perp': FIRM.replace('waste  6%', 'waste  six') });
    const { code, document } = json(['price', '--json', 'half.perp', 'ranged.perp'], cwd);
    const [half, ranged] = document.files;
    expect(code).toBe(1);
    expect(half!.complete).toBe(false);
    const total = half!.figures.find((figure) => figure.id === 'job.price')!;
    expect(total.complete).toBe(false);
    expect(total.missing.join()).toContain('walsouth');
    expect(half!.used).toEqual([{ file: 'firm.perp', errors: 1 }]);
    expect(half!.range).toBeUndefined();
    expect(Number(ranged!.range!.low.value)).toBeLessThan(Number(ranged!.range!.high.value));
  });

  test('files that cannot be read are named, and the others are there', () => {
    const { code, document } = json(['price', '--json', 'no.perp', 'job.perp'], folderOf(FILES));
    expect(code).toBe(2);
    expect(document.unread.map((each) => each.file)).toEqual(['no.perp']);
    expect(document.files.map((each) => each.file)).toEqual(['job.perp']);
  });

  test('grows with the job, and not with its square', () => {
    const walls = (count: number) =>
      FILES['job.perp'] +
      Array.from(
        { length: count },
        (_, i) => `\nwall w${i}\n  length ${i + 2} m\n  height 8 courses\n`,
      ).join('');
    const cwd = folderOf({ ...FILES, 'ten.perp': walls(10), 'forty.perp': walls(40) });
    const size = (file: string) => perpend(['price', '--json', file], { cwd }).out.length;
    expect(size('forty.perp') / size('ten.perp')).toBeLessThan(4);
  });
});

describe('check --json', () => {
  test.each(Object.keys(FILES))('%s is valid, with the findings of price --json', (file) => {
    const cwd = folderOf(FILES);
    const check = json(['check', '--json', file], cwd).document.files[0]!;
    const price = json(['price', '--json', file], cwd).document.files[0]!;
    expect(check.findings).toEqual(price.findings);
  });

  test('counts lines and columns from one', () => {
    const [file] = json(['check', '--json', 'wrong.perp'], folderOf(FILES)).document.files;
    const errors = file!.findings.filter((finding) => finding.severity === 'error');
    const lines = FILES['wrong.perp'].split('\n');
    const { place } = errors[0]!;
    expect(lines[place.line - 1]!.slice(place.column - 1, place.endColumn - 1)).toContain('lenght');
  });
});

describe('the schema', () => {
  test('is what perpend schema prints', () => {
    const { code, out } = perpend(['schema']);
    expect([code, JSON.parse(out)]).toEqual([0, schema]);
  });

  test('says that it only grows, and lets it', () => {
    expect(schema.description).toContain('only ever added');
    const { document } = json(['check', '--json', 'job.perp'], folderOf(FILES));
    expect(validate({ ...document, more: 1 })).toBe(true);
  });

  test.each(['format', 'version', 'files', 'unread'])(
    'does not take a document without %s',
    (key) => {
      const { document } = json(['price', '--json', 'job.perp'], folderOf(FILES));
      expect(validate({ ...document, [key]: undefined })).toBe(false);
    },
  );

  test('does not take figures that are floating numbers, or a job without figures', () => {
    const { document } = json(['price', '--json', 'job.perp'], folderOf(FILES));
    const [file] = document.files;
    const wrong = { ...file!.figures[0]!, value: 0.1 };
    expect(validate({ ...document, files: [{ ...file, figures: [wrong] }] })).toBe(false);
    expect(validate({ ...document, files: [{ ...file, figures: undefined }] })).toBe(false);
  });
});
