/** Options at the command line: side by side, and taken. */
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { readJson } from '../tree';
import { FILES } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

const JOB = `${FILES['job.perp']}
option higher "Two courses more"
  change  walnorth height 20 courses
option lower
  change      walnorth height 16 courses
  instead-of  higher
`;
const cwd = () => folderOf({ ...FILES, 'job.perp': JOB });
const validate = new Ajv2020({ strict: true, strictRequired: false }).compile(
  readJson('shared/json-schema/perpend-1.schema.json'),
);

interface Options {
  readonly files: readonly {
    readonly figures: readonly { readonly id: string; readonly value: string }[];
    readonly taken?: readonly string[];
    readonly options?: readonly {
      readonly name: string;
      readonly notWith: readonly string[];
      readonly accepted: boolean;
      readonly more: { readonly total: { readonly value: string } };
      readonly price: { readonly total: { readonly value: string; readonly text: string } };
    }[];
  }[];
}

function json(args: readonly string[], folder: string) {
  const document = JSON.parse(perpend(args, { cwd: folder }).out) as Options;
  expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
  return document.files[0]!;
}

const priceOf = (file: Options['files'][number]) =>
  Number(file.figures.find((f) => f.id === 'job.price')!.value);

describe('perpend price', () => {
  test('shows options side by side', () => {
    const { out } = perpend(['price', 'job.perp'], { cwd: cwd() });
    const table = out.slice(out.indexOf('\nOptions\n'));
    expect(table).toMatch(/before tax +with tax +price with it/);
    expect(table).toMatch(
      /Two courses more\s+\(higher\) +\+£[\d.]+ +\+£[\d.]+ +£[\d,.]+ +not with lower/,
    );
    expect(table).toMatch(/lower +\+£[\d.]+ +\+£[\d.]+ +£[\d,.]+ +not with higher/);
    for (const line of table.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('--with prices the job with options taken, and says which', () => {
    const folder = cwd();
    const plain = json(['price', '--json', 'job.perp'], folder);
    const taken = json(['price', '--json', '--with', 'higher', 'job.perp'], folder);
    const higher = plain.options!.find((o) => o.name === 'higher')!;
    expect(priceOf(taken)).toBe(Number(higher.price.total.value));
    expect(priceOf(taken) - priceOf(plain)).toBeCloseTo(Number(higher.more.total.value), 6);
    expect(taken.taken).toEqual(['higher']);
    expect(taken.options).toBeUndefined();
    const { out } = perpend(['price', '--with=higher', 'job.perp'], { cwd: folder });
    expect(out).toContain('with the options taken: higher');
    expect(out).toContain(`Price             ${higher.price.total.text}`.split(' ').at(-1));
    expect(out).not.toContain('\nOptions\n');
  });

  test('names an option that there is not, and those that there are', () => {
    const { code, err } = perpend(['price', '--with', 'hihger', 'job.perp'], { cwd: cwd() });
    expect([code, err]).toEqual([
      2,
      expect.stringContaining('job.perp has no option hihger. It has higher, lower.'),
    ]);
  });

  test('tells what was accepted', () => {
    const folder = folderOf({
      ...FILES,
      'job.perp': `${JOB}record\n  accepted 2026-03-05 higher\n`,
    });
    const file = json(['price', '--json', 'job.perp'], folder);
    expect(file.options!.map((o) => [o.name, o.accepted, o.notWith])).toEqual([
      ['higher', true, ['lower']],
      ['lower', false, ['higher']],
    ]);
    const { out } = perpend(['price', 'job.perp'], { cwd: folder });
    expect(out).toMatch(/As accepted, with higher: £/);
  });

  test('an option has a working, as any figure', () => {
    const { out } = perpend(['why', 'job.perp', 'option.higher.more'], { cwd: cwd() });
    expect(out).toContain('Two courses more');
    expect(out).toContain('job.perp');
  });
});
