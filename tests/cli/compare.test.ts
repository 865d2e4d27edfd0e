/** perpend compare on files: what it prints, its codes, its JSON, its drawing, and whatever anybody may give it. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { Decimal } from '../../shared/exact';
import { readXml } from '../documents/xml';
import { readJson } from '../tree';
import { inside } from './inside';
import { FILES, FIRM, JOB } from './jobs';
import { folderOf, perpend, useCommandLine } from './perpend';

useCommandLine();

const NEW = JOB.replace('length  5 m', 'length  5.3 m').replace('wall walsouth', 'wall south');

const folder = (more: Readonly<Record<string, string | Buffer>> = {}) =>
  folderOf({ ...FILES, 'new.perp': NEW, ...more });

const compare = (args: readonly string[], cwd = folder()) => inside(['compare', ...args], { cwd });

describe('two files', () => {
  test('line by line, figure by figure, and what moved the price', () => {
    const { code, out, err } = compare(['job.perp', 'new.perp']);
    expect([code, err]).toEqual([0, '']);
    for (const line of [
      'job.perp → new.perp',
      '  · wall walnorth “Wall along the lane”',
      '    · length 5 m → 5.3 m',
      '  · wall south, before: walsouth',
      'What moved it, the biggest first',
    ])
      expect(out.split('\n')).toContain(line);
    expect(out).toMatch(/to buy: secret-red +[\d,]+ bricks +[\d,]+ bricks +\+\d+ bricks/);
    expect(out).toMatch(/Drawing\n {2}· Wall along the lane: pieces \d+ new where they lie/);
    for (const line of out.split('\n')) expect(line.length).toBeLessThanOrEqual(80);
  });

  test('in another layout: nothing that counts', () => {
    const loose = `# a word\n${JOB.replaceAll('\n  ', '\n      ').replace('5 m', '5000 mm # five')}`;
    const cwd = folder({ 'loose.perp': loose });
    for (const args of [
      ['job.perp', 'loose.perp'],
      ['loose.perp', 'job.perp', '--check'],
    ]) {
      const { code, out } = compare(args, cwd);
      expect(code).toBe(0);
      expect(out.split('\n')[1]).toBe('Nothing that counts has changed.');
    }
  });

  test('exits with 0 whatever changed and whatever is wrong; with --check with 1', () => {
    expect(compare(['job.perp', 'wrong.perp']).code).toBe(0);
    expect(compare(['job.perp', 'wrong.perp', '--check']).code).toBe(1);
    expect(compare(['wrong.perp', 'wrong.perp', '--check']).code).toBe(0);
  });

  test('one may be piped in', () => {
    const { out } = perpend(['compare', 'job.perp', '-'], { cwd: folder(), input: NEW });
    expect(out).toContain('job.perp → <stdin>');
    expect(out).toContain('length 5 m → 5.3 m');
  });

  test("a firm's file is compared like a job", () => {
    const cwd = folder({ 'firm2.perp': FIRM.replace('£28.70', '£29.20') });
    const { code, out } = compare(['firm.perp', 'firm2.perp'], cwd);
    expect(code).toBe(0);
    expect(out).toContain('    · bricklayer £28.70 per h → £29.20 per h');
  });
});

interface Amount {
  readonly value: string;
}
interface Part {
  readonly difference: Amount;
}
interface Document {
  readonly nothing: boolean;
  readonly work: readonly {
    readonly change: string;
    readonly was?: string;
    readonly lines: readonly { readonly place: object }[];
  }[];
  readonly money: {
    readonly total: Part;
    readonly net: Part;
    readonly parts: readonly Part[];
    readonly works: readonly Part[];
  };
  readonly faces: readonly {
    readonly name: string;
    readonly new: number;
    readonly gone: number;
    readonly same: number;
  }[];
}

const validate = new Ajv2020({ allErrors: true, strict: true, strictRequired: false }).compile(
  readJson<object>('shared/json-schema/perpend-1.schema.json'),
);

describe('--json', () => {
  const documentOf = (args: readonly string[], cwd = folder()): Document => {
    const { out } = compare([...args, '--json'], cwd);
    const document = JSON.parse(out) as Document;
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    return document;
  };

  test('is valid against the schema, and its money adds up', () => {
    const { work, money, faces } = documentOf(['job.perp', 'new.perp']);
    const sum = (parts: readonly Part[]) =>
      parts.reduce((all, { difference }) => all.add(difference.value), new Decimal(0)).toFixed();
    expect(sum(money.parts)).toBe(money.total.difference.value);
    expect(sum(money.works)).toBe(money.net.difference.value);
    expect(work.map(({ change, was }) => [change, was])).toEqual([
      ['changed', undefined],
      ['renamed', 'walsouth'],
    ]);
    expect(work[0]!.lines[0]!.place).toMatchObject({ file: 'new.perp' });
    expect(faces[0]!.name).toBe('walnorth');
  });

  test.each(['half.perp', 'wrong.perp', 'ranged.perp', 'firm.perp'])('of %s', (file) => {
    expect(documentOf(['job.perp', file]).nothing).toBe(false);
    expect(documentOf([file, file]).nothing).toBe(true);
  });
});

describe('--json of what was sent', () => {
  test('is valid too where it is known by the record alone', () => {
    const sent = `${JOB}\nrecord\n  sent 2026-03-02 £10.00\n    was job.net £8.00\n`;
    const { out } = compare(['--sent', '--json', 'sent.perp'], folder({ 'sent.perp': sent }));
    const document = JSON.parse(out) as { before: object; figures: readonly { id: string }[] };
    expect(validate(document), JSON.stringify(validate.errors)).toBe(true);
    expect(document.before).toEqual({ file: 'sent.perp', sent: '2026-03-02' });
    expect(document.figures.map(({ id }) => id)).toEqual(['job.net', 'job.price']);
  });
});

describe('--drawing', () => {
  test('shows the face as it was and as it is, told by more than colour', () => {
    const cwd = folder();
    const { code, out, err } = compare(
      ['job.perp', 'new.perp', '--drawing', '--block', 'walnorth', '--out', 'x.svg'],
      cwd,
    );
    expect([code, out, err]).toEqual([0, '', '']);
    const svg = readFileSync(path.join(cwd, 'x.svg'), 'utf8');
    readXml(svg);
    expect(svg).toContain('Wall along the lane: as it was');
    expect(svg).toContain('Wall along the lane: as it is now');
    expect(svg).toMatch(/stroke-dasharray="1 0.6"/);
    expect(svg).toContain('url(#hatch-upright)');
    expect(svg).toContain('>gone from here</text>');
    expect(svg).not.toContain('walsouth');
  });

  test('counts what it shows', () => {
    const cwd = folder();
    const { faces } = JSON.parse(compare(['job.perp', 'new.perp', '--json'], cwd).out) as Document;
    const { out } = compare(['job.perp', 'new.perp', '--drawing'], cwd);
    expect(out).toContain(`>${faces[0]!.new} pieces new where they lie.</text>`);
    expect(out).toContain(`>${faces[0]!.gone} pieces gone from where they lay.</text>`);
    expect(faces[0]!.new + faces[0]!.same).toBeGreaterThan(faces[0]!.new);
  });

  test('as DXF, and of nothing', () => {
    const cwd = folder();
    expect(compare(['job.perp', 'new.perp', '--drawing', '--out', 'x.dxf'], cwd).code).toBe(0);
    expect(readFileSync(path.join(cwd, 'x.dxf'), 'utf8')).toContain('GONE-PIECE');
    expect(compare(['job.perp', 'job.perp', '--drawing'], cwd)).toEqual({
      code: 2,
      out: '',
      err: 'perpend: There is nothing to draw: every piece lies where it lay.\n',
    });
  });
});

describe('what cannot be compared is said, with 2', () => {
  const binary = Buffer.from([0xff, 0xfe, 0x00, 0x80]);
  const cases: [string[], string][] = [
    [[], 'perpend compare needs a file. See: perpend --help'],
    [
      ['job.perp'],
      'perpend compare needs two files, or one and --since or --sent. See: perpend --help',
    ],
    [
      ['a', 'b', 'c'],
      'perpend compare needs two files, or one and --since or --sent. See: perpend --help',
    ],
    [['-', '-'], 'What is piped in can be read only once: give - once. See: perpend --help'],
    [['job.perp', 'none.perp'], 'none.perp cannot be read: there is no such file.'],
    [['binary.perp', 'job.perp'], 'binary.perp cannot be read: it is not text in UTF-8.'],
    [['job.perp', 'big.perp'], 'big.perp cannot be read: it is larger than 16 MiB.'],
    [['--since', 'HEAD', 'job.perp'], 'The file is in no git repository.'],
    [['--since', '-x', 'job.perp'], '-x is no revision. See: perpend --help'],
    [
      ['--since', 'HEAD', '--sent', 'job.perp'],
      'Give --since or --sent, not both. See: perpend --help',
    ],
    [
      ['--since', 'HEAD', 'job.perp', 'new.perp'],
      'With --since or --sent give one file. See: perpend --help',
    ],
    [['--sent', '-'], 'What is piped in has no revisions: give a file. See: perpend --help'],
    [['--sent', 'job.perp'], 'job.perp has no record of a price that was sent.'],
    [
      ['job.perp', 'new.perp', '--block', 'x'],
      '--block NAME says what to draw: give --drawing with it. See: perpend --help',
    ],
    [
      ['job.perp', 'new.perp', '--drawing', '--block', 'x'],
      'Neither has a piece of work called x. See: perpend --help',
    ],
    [
      ['job.perp', 'new.perp', '--drawing', '--out', 'job.perp'],
      '--out job.perp is a file in the notation, and would be overwritten. See: perpend --help',
    ],
  ];
  test('each with what to do', () => {
    const cwd = folder({ 'binary.perp': binary, 'big.perp': Buffer.alloc(17 * 1024 * 1024, 32) });
    for (const [args, said] of cases)
      expect(compare(args, cwd), args.join(' ')).toEqual({
        code: 2,
        out: '',
        err: `perpend: ${said}\n`,
      });
  });

  test('a text too large for a job is compared as far as it is one: not at all', () => {
    const cwd = folder({ 'long.perp': `# ${'x'.repeat(5 * 1024 * 1024)}\n` });
    const { code, out } = compare(['job.perp', 'long.perp'], cwd);
    expect(code).toBe(0);
    expect(out).toContain('file-too-large');
  });

  test('a file that it uses is missing: its own lines are compared all the same', () => {
    const cwd = folderOf({ 'job.perp': JOB, 'new.perp': NEW });
    const { code, out } = compare(['job.perp', 'new.perp'], cwd);
    expect(code).toBe(0);
    expect(out).toContain('    · length 5 m → 5.3 m');
    expect(out).toContain('A price is incomplete');
  });
});
