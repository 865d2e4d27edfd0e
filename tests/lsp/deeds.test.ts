/** What changes a job or makes a new one, over the protocol: edits that are applied here, and texts. */
import { mkdirSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import {
  NEW,
  NEXT,
  type NewMade,
  type NextMade,
  TEMPLATES,
  type TemplateItem,
} from '../../shared/protocol/new';
import type { Refused } from '../../shared/protocol/pages';
import { SHARE, type SharedMade, TAKE, type TakeEdits } from '../../shared/protocol/partners';
import {
  RECORD,
  RECORD_KINDS,
  type RecordEdits,
  type RecordKind,
} from '../../shared/protocol/record';
import { JOB } from '../cli/jobs';
import { withEdits } from '../harness/edits';
import { openedJob } from './opened';

const at = openedJob();

/** The text that an answer makes of another. */
function applied(text: string, { edit }: RecordEdits | TakeEdits): string {
  const [change] = edit.documentChanges;
  if (!change) return text;
  expect(change.textDocument.uri).toBe(at.uri);
  const edits = change.edits.map(({ range: { start, end }, newText }) => ({
    startLine: start.line,
    startColumn: start.character,
    endLine: end.line,
    endColumn: end.character,
    text: newText,
  }));
  return withEdits(text, edits);
}

const record = (what: string, words?: string[], date = '2026-02-03') =>
  at.peer.ask<RecordEdits & Refused>(RECORD, { uri: at.uri, what, words, date });

describe('the record', () => {
  test('says what it can hold, with an example of each', async () => {
    const kinds = await at.peer.ask<RecordKind[]>(RECORD_KINDS, { uri: at.uri });
    expect(kinds.map(({ what }) => what)).toContain('worked');
    expect(kinds.find(({ what }) => what === 'sent')).toMatchObject({ alone: true });
    const worked = kinds.find(({ what }) => what === 'worked')!;
    const made = await record('worked', worked.example.split(' '));
    expect(made.refused).toBeUndefined();
  });

  test('of a price that is sent keeps what it is made of, and reads without an error', async () => {
    const made = await record('sent');
    expect(made.lines[0]).toMatch(/^sent +2026-02-03 £[\d.]+$/);
    expect(made.lines.length).toBeGreaterThan(5);
    const text = applied(JOB, made);
    expect(text.startsWith(JOB.trimEnd())).toBe(true);
    expect(text.split('\n')[made.line]!.trim()).toBe(made.lines[0]);
    await at.peer.edit(at.uri, text);
    const errors = (await at.peer.findings(at.uri)).filter(({ severity }) => severity === 1);
    expect(errors).toEqual([]);
  });

  test('takes a line as it is said, and puts it behind those that are there', async () => {
    const start = `${JOB}\nrecord\n  sent  2026-02-01 £2000.00\n\n# the end\n`;
    await at.peer.edit(at.uri, start);
    const made = await record('found', ['rotten footing under the gate']);
    const text = applied(start, made);
    expect(text).toContain('found     2026-02-03 "rotten footing under the gate"');
    expect(text.endsWith('\n\n# the end\n')).toBe(true);
  });

  test('keeps the ends of lines that a file has', async () => {
    const start = JOB.replaceAll('\n', '\r\n');
    at.uri = await at.peer.open('windows.perp', start);
    const text = applied(start, await record('found', ['a drain']));
    expect(text.replaceAll('\r\n', '')).not.toContain('\n');
  });

  test('warns of a price that is another than the client holds', async () => {
    await at.peer.edit(at.uri, `${JOB}\nrecord\n  sent  2026-02-01 £2000.00\n`);
    const { asides } = await record('accepted');
    expect(asides[0]).toMatch(/The client holds a price of £2,000\.00/);
  });

  test.each([
    ['danced', ['a lot'], 'Nothing of a record is called danced'],
    ['worked', ['much'], 'cannot be read'],
    ['accepted', ['caps'], 'no option caps'],
  ] as const)('%s is refused, and why', async (what, words, why) => {
    expect((await record(what, [...words])).refused).toContain(why);
  });

  test('never takes a second line in a word', async () => {
    const made = await record('found', ['a drain"\nfirm "Somebody else']);
    const text = made.refused ? JOB : applied(JOB, made);
    expect(text).not.toMatch(/^firm /m);
    expect((await record('sent', undefined, '2026-99-99\nfirm')).refused).toContain('is no date');
  });

  test('of a price that is not complete is not kept', async () => {
    await at.peer.edit(at.uri, JOB.replace('length  5 m', 'length  ?'));
    expect((await record('sent')).refused).toContain('is not complete');
  });
});

describe('the next job', () => {
  const next = (more: object) => at.peer.ask<NextMade & Refused>(NEXT, { uri: at.uri, ...more });

  test('keeps the work, clears the client, and reaches the firm’s file from where it will stand', async () => {
    mkdirSync(path.join(at.peer.folder, 'later'));
    const made = await next({
      to: at.peer.uri('later/next.perp'),
      client: 'Mrs Fen',
      date: '2026-05-01',
    });
    expect(made.text).toContain('use "../firm.perp"');
    expect(made.text).toContain('"Mrs Fen"');
    expect(made.text).not.toContain('T. Alder');
    expect(made.text).toContain('wall walnorth');
    expect(made.cleared.join(' ')).toContain('T. Alder');
    // The firm’s file is read from its new place: the price is the same.
    expect(made.after).toBe(made.before);
    expect(made.after).toMatch(/^£/);
  });

  test('is refused for what is no date', async () => {
    expect((await next({ date: 'soon' })).refused).toContain('soon');
  });
});

describe('a job from a template', () => {
  const make = (params: object) => at.peer.ask<NewMade & Refused>(NEW, { answers: [], ...params });

  test('templates say what they ask, and what holds without an answer', async () => {
    const templates = await at.peer.ask<TemplateItem[]>(TEMPLATES, {});
    expect(templates.map(({ name }) => name)).toEqual([
      'garden-wall',
      'gate-piers',
      'repoint-wall',
      'frost-damage',
      'knocked-pier',
    ]);
    for (const { title, asks } of templates) {
      expect(title).toMatch(/\S/);
      expect(asks.length).toBeGreaterThan(1);
    }
  });

  test('answers stand in it, the nearest firm’s file is used, and it has a price', async () => {
    mkdirSync(path.join(at.peer.folder, 'jobs/deep'), { recursive: true });
    const [{ asks }] = (await at.peer.ask<TemplateItem[]>(TEMPLATES, {})) as [TemplateItem];
    const length = asks.find(({ line }) => line === 'length')!;
    const made = await make({
      template: 'garden-wall',
      to: at.peer.uri('jobs/deep/new.perp'),
      answers: [{ what: length.what, line: 'length', answer: '7.4 m' }],
    });
    expect(made.firm).toBe('../../firm.perp');
    expect(made.text).toContain('use "../../firm.perp"');
    expect(made.text).toMatch(/length +7\.4 m/);
    expect(made.text).not.toMatch(/^template|^ask/m);
    expect(made.wrong).toEqual([]);
    expect(made.price).toMatch(/£/);
  });

  test('an answer that is none is told, and not in the text', async () => {
    const [{ asks }] = (await at.peer.ask<TemplateItem[]>(TEMPLATES, {})) as [TemplateItem];
    const { what } = asks.find(({ line }) => line === 'length')!;
    const answers = [
      { what, line: 'length', answer: 'very long' },
      { what: 'moon', line: 'length', answer: '1 m' },
      { what, line: 'length', answer: '3 m\nfirm "x"' },
    ];
    const made = await make({ template: 'garden-wall', answers });
    expect(made.wrong.map(({ message }) => message)).toHaveLength(3);
    expect(made.text).not.toMatch(/very long|^firm/m);
  });

  test('of a file of the firm’s own is made too; of none it is refused', async () => {
    const own = `template "Ours"\n  ask  wall length "How long?"\n${JOB.replace('walsouth', 'wall')}`;
    const file = await at.peer.open('ours.perp', own);
    const [first] = await at.peer.ask<TemplateItem[]>(TEMPLATES, { uri: file });
    expect(first).toMatchObject({ name: file, title: 'Ours' });
    const made = await make({ template: file, to: at.peer.uri('new.perp') });
    expect(made.text).toContain('wall walnorth');
    expect((await make({ template: 'castle' })).refused).toContain('castle');
    expect((await make({ template: at.uri })).refused).toBeDefined();
  });
});

describe('a copy for a partner', () => {
  const share = (more: object) =>
    at.peer.ask<SharedMade & Refused>(SHARE, {
      uri: at.uri,
      whom: 'Halden Brothers',
      without: 'money',
      client: false,
      ...more,
    });

  test('holds the work and neither rates nor client, and says what is not in it', async () => {
    const copy = await share({});
    expect(copy.name).toBe('job-for-halden-brothers.perp');
    expect(copy.text).toContain('A copy for Halden Brothers, without money.');
    expect(copy.text).toContain('wall walnorth');
    expect(copy.text).not.toMatch(/£|T\. Alder|28\.70|11\.7|use "firm/);
    expect(copy.left.map(({ what }) => what)).toContain('job client');
    expect(copy.asides[0]).toContain('Read it before you send it');
  });

  test('is refused where nobody is said, or what it would hide is not known', async () => {
    expect((await share({ whom: ' \n ' })).refused).toBe('Say whom the copy is for.');
    expect((await share({ without: 'everything' })).refused).toBeDefined();
    await at.peer.edit(at.uri, JOB.replace('  ref ', '  reff '));
    expect((await share({})).refused).toContain('job.perp:4 cannot be read');
  });

  test('comes back: what they say otherwise is taken, and what is ours stays', async () => {
    const { text } = await share({});
    const theirs = text.replace(/length( +)5 m/, 'length$15.4 m');
    expect(theirs).not.toBe(text);
    const take = (more: object = {}) =>
      at.peer.ask<TakeEdits & Refused>(TAKE, { uri: at.uri, theirs, ...more });
    const made = await take();
    expect(made.taken).toMatchObject([
      { block: 'wall walnorth', change: 'changed', after: 'length 5.4 m' },
    ]);
    expect(made.offered).toContain('walnorth');
    const after = applied(JOB, made);
    expect(after).toBe(JOB.replace('length  5 m', 'length  5.4 m'));
    expect((await take({ names: ['walsouth'] })).taken).toEqual([]);
    expect(((await take({ names: ['moon'] })) as unknown as { refused: string }).refused).toContain(
      'moon',
    );
  });
});
