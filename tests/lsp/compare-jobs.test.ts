/** A job beside what it was, all jobs together, and what programs are told: over the protocol. */
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  CancellationTokenSource,
  LSPErrorCodes,
  ProgressType,
} from 'vscode-languageserver-protocol/node';
import { COMPARE, type Compared, type CompareParams, USED } from '../../shared/protocol/compare';
import { JOBS, type JobsMade } from '../../shared/protocol/jobs';
import type { Refused } from '../../shared/protocol/pages';
import { CHECK, EXPLAIN, PRICE, type Told } from '../../shared/protocol/tools';
import { FIRM, JOB } from '../cli/jobs';
import { openedJob } from './opened';

const SENT = `${JOB}\nrecord\n  sent  2026-02-01 £2184.00\n`;
const PAID = JOB.replace('26-107', '26-108').concat(
  '\nrecord\n  sent      2026-02-01 £2000.00\n  accepted  2026-02-02\n  invoiced  2026-02-20 £600.00 as 26-108-1\n  paid      2026-02-25 £500.00\n',
);

const at = openedJob((folder) => {
  mkdirSync(path.join(folder, 'old'));
  const moved = JOB.replace('"firm.perp"', '"../firm.perp"');
  writeFileSync(path.join(folder, 'old/longer.perp'), moved.replace('length  5 m', 'length  6 m'));
  writeFileSync(path.join(folder, 'paid.perp'), PAID);
});

const compare = (before: CompareParams['before']) =>
  at.peer.ask<Compared & Refused>(COMPARE, { uri: at.uri, before });
const LONGER = JOB.replace('length  5 m', 'length  6 m');
const spaced = (text: string) => text.replaceAll('\u00a0', ' ');
/** The number behind a label of one of the two texts. */
function amount(text: string, label: RegExp): number {
  const line = spaced(text)
    .split('\n')
    .find((each) => label.test(each.trim()))!;
  return Number(/£([\d,]+\.\d\d)/.exec(line)![1]!.replaceAll(',', ''));
}

describe('a comparison', () => {
  test('with the same text finds nothing, and both sides are alike', async () => {
    const made = await compare({ text: `# a comment\n${JOB}`, label: 'last commit' });
    expect(made.nothing).toBe(true);
    expect(made.left).toBe(made.right);
    expect(made.labels).toEqual({ left: 'job.perp, last commit', right: 'job.perp' });
    expect(made.page.markdown).toContain('Nothing that counts has changed');
  });

  test('has every piece of work, what is bought, hours and money, line beside line', async () => {
    const { left, right, nothing, page } = await compare({ text: LONGER });
    expect(nothing).toBe(false);
    const heads = (text: string) => text.split('\n').filter((line) => /^\S/.test(line));
    expect(heads(left)).toEqual(heads(right));
    expect(heads(left)).toEqual([
      'wall walnorth “Wall along the lane”',
      'wall walsouth',
      'To buy',
      'Hours',
      'From cost to price',
    ]);
    expect(left.split('\n')).toHaveLength(right.split('\n').length);
    // What moved the price is the difference of the two, to the penny.
    const by = amount(left, /^Price {2}/) - amount(right, /^Price {2}/);
    expect(by).toBeGreaterThan(0);
    expect(spaced(page.markdown)).toContain(`−£${by.toFixed(2)}`);
    expect(page.markdown).toContain('length 6 m → 5 m');
  });

  test('of a wall that is new or gone leaves its section out of the other side', async () => {
    const less = JOB.slice(0, JOB.indexOf('wall walsouth'));
    const { left, right } = await compare({ text: less });
    expect(left).not.toContain('walsouth');
    expect(right).toContain('\nwall walsouth\n');
  });

  test('takes files as they stood then, where the client has them', async () => {
    const firm = at.peer.uri('firm.perp');
    expect(await at.peer.ask(USED, { uri: at.uri })).toEqual([firm]);
    const files = { [firm]: FIRM.replace('£0.97', '£1.94') };
    const made = await compare({ text: JOB, files });
    expect(made.nothing).toBe(false);
    expect(amount(made.left, /^Materials/)).toBeGreaterThan(amount(made.right, /^Materials/));
  });

  test('is of another file too, open or not; of none it is refused', async () => {
    const made = await compare({ file: at.peer.uri('old/longer.perp') });
    expect(made.labels.left).toBe('longer.perp');
    expect(made.page.markdown).toContain('length 6 m → 5 m');
    expect((await compare({ file: at.peer.uri('none.perp') })).refused).toContain('none.perp');
  });

  test('with what was sent takes the text in which that was first written', async () => {
    await at.peer.edit(at.uri, `${SENT}  found  2026-02-03 "a drain"\n`);
    const sent = [
      { text: SENT.replace('length  5 m', 'length  7 m') },
      { text: SENT.replace('length  5 m', 'length  6 m'), label: '1 February' },
      { text: JOB.replace('length  5 m', 'length  8 m') },
      { text: SENT },
    ];
    const made = await compare({ sent });
    expect(made.took).toBe(1);
    expect(made.page.markdown).toContain('length 6 m → 5 m');
  });

  test('where no text holds it, what the record keeps is all there is', async () => {
    await at.peer.edit(at.uri, `${SENT}    was  job.cost £900.00\n`);
    const made = await compare({ sent: [{ text: JOB }] });
    expect([made.left, made.right]).toEqual(['', '']);
    expect(spaced(made.page.markdown)).toMatch(/sent at £2,184\.00/);
    expect(spaced(made.page.markdown)).toContain('£900.00');
    await at.peer.edit(at.uri, JOB);
    expect((await compare({ sent: [] })).refused).toContain('nothing that it was sent');
  });
});

describe('all jobs', () => {
  const jobs = (more: object = {}) => at.peer.ask<JobsMade>(JOBS, { day: '2026-03-01', ...more });

  test('stand with what is owed, an open text before the disk', async () => {
    const made = await jobs();
    const of = (ref: string) => made.jobs.filter((job) => job.ref === ref);
    expect(of('26-108')).toMatchObject([
      { uri: at.peer.uri('paid.perp'), state: 'in-hand', price: '£2,000.00', owed: '£100.00' },
    ]);
    expect(of('26-107').map(({ state }) => state)).toEqual(['not-sent', 'not-sent']);
    await at.peer.edit(at.uri, SENT);
    expect((await jobs()).jobs.find((job) => job.uri === at.uri)).toMatchObject({ state: 'out' });
    expect(spaced(made.page.markdown)).toContain('3 jobs, and 1 other file, as of 1 March 2026.');
  });

  test('are of one folder where it is asked', async () => {
    const made = await jobs({ folder: at.peer.uri('old') });
    expect(made.jobs.map(({ uri: at }) => at)).toEqual([at.peer.uri('old/longer.perp')]);
  });

  test('tell how far they are', async () => {
    const kinds: string[] = [];
    const told = at.peer.connection.onProgress(
      new ProgressType<{ kind: string }>(),
      'jobs-1',
      (p) => {
        kinds.push(p.kind);
      },
    );
    await jobs({ workDoneToken: 'jobs-1' });
    told.dispose();
    expect(kinds[0]).toBe('begin');
    expect(kinds).toContain('report');
    expect(kinds.at(-1)).toBe('end');
  });

  test('are given up when nobody wants them any more', async () => {
    const source = new CancellationTokenSource();
    const params = { day: '2026-03-01' };
    const asked = at.peer.connection.sendRequest(JOBS, params, source.token).then(
      () => 'answered',
      (error: { code: number }) => error.code,
    );
    source.cancel();
    expect(await asked).toBe(LSPErrorCodes.RequestCancelled);
  });
});

describe('programs', () => {
  const ask = (method: string, params: object) => at.peer.ask<Told & Refused>(method, params);

  test('are told the findings of a job, the gravest first', async () => {
    await at.peer.edit(at.uri, JOB.replace('length  5 m', 'length  fife m'));
    const { json, markdown } = await ask(CHECK, { uri: at.uri });
    const { files, counts } = JSON.parse(json);
    expect(files[0].file).toBe('job.perp');
    expect(files[0].findings[0]).toMatchObject({ severity: 'error', line: 16 });
    expect(counts.error).toBeGreaterThan(0);
    expect(markdown).toMatch(/^Errors: \d+; /);
    expect(markdown).toMatch(/^- job\.perp:16:\d+ error/m);
  });

  test('are told of every file of the folders, by the way to each', async () => {
    const { files } = JSON.parse((await ask(CHECK, {})).json);
    expect(files.map(({ file }: { file: string }) => file).sort()).toEqual([
      'firm.perp',
      'job.perp',
      'old/longer.perp',
      'paid.perp',
    ]);
  });

  test('are told names as they stand: shown as a page they are no elements, pictures or links', async () => {
    const name = 'b <img src=x> ![p](q) www.a.example.perp';
    writeFileSync(path.join(at.peer.folder, name), JOB.replace('length  5 m', 'length  fife m'));
    await at.peer.tell('workspace/didChangeWatchedFiles', {
      changes: [{ uri: `file://${encodeURI(path.join(at.peer.folder, name))}`, type: 1 }],
    });
    const { markdown } = await ask(CHECK, {});
    expect(markdown).toContain('- b \\<img src=x\\> \\!\\[p\\](q) www\\.a.example.perp:16:');
    expect(markdown).not.toMatch(/(?<!\\)<|(?<!\\)\[/);
  });

  test('are told a price that adds up, open or not', async () => {
    const told = JSON.parse((await ask(PRICE, { uri: at.uri })).json);
    const of = (step: string) =>
      Number(told.steps.find((each: { step: string }) => each.step === step).amount.value);
    expect(told.complete).toBe(true);
    expect(of('net') + of('tax')).toBeCloseTo(Number(told.price.value), 6);
    expect(of('total')).toBe(Number(told.price.value));
    const closed = JSON.parse((await ask(PRICE, { uri: at.peer.uri('paid.perp') })).json);
    expect(closed.price).toEqual(told.price);
    expect((await ask(PRICE, { uri: at.peer.uri('none.perp') })).refused).toContain(
      'cannot be read',
    );
  });

  test('are told how a figure came about, by its id or its words', async () => {
    const { markdown, json } = await ask(EXPLAIN, { uri: at.uri, figure: 'job.price' });
    expect(JSON.parse(json)).toMatchObject({ id: 'job.price' });
    expect(spaced(markdown)).toMatch(/^# Price: £2,184\.00/);
    const listed = JSON.parse((await ask(EXPLAIN, { uri: at.uri })).json);
    expect(listed.figures.length).toBe(listed.all);
    expect((await ask(EXPLAIN, { uri: at.uri, figure: 'bricks' })).refused).toContain(
      'walnorth.bricks',
    );
    expect((await ask(EXPLAIN, { uri: at.uri, figure: 'moon' })).refused).toContain(
      'no figure moon',
    );
  });

  test('read no file outside the open folders that nobody opened', async () => {
    const outside = at.peer.newFolder();
    writeFileSync(path.join(outside, 'secret.txt'), 'a');
    const far = `file://${outside}/secret.txt`;
    const told = await ask(CHECK, { uri: far });
    expect(told.refused ?? told.json).not.toContain('"a"');
  });
});
