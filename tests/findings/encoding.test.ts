/** A file in UTF-16 as it is met on a disk: read as UTF-8, which is all that any host of the engine does. */
import { describe, expect, test } from 'vitest';
import { textOf } from '../../server/lsp/client-files';
import { base64 } from '../../shared/base64';
import { inside } from '../cli/inside';
import { folderOf } from '../cli/perpend';
import { jobOf } from '../engine/world';
import { FIRM, findingsIn, tells } from './tells';

const LITTLE = Buffer.from(`\ufeff${FIRM}`, 'utf16le');
const BIG = Buffer.from(LITTLE).swap16();
const BARE = Buffer.from(FIRM, 'utf16le');
const UMLAUTS = Buffer.from(
  '\ufeffperpend 1\n\nfirm "Mauerwerk Müßig"\n  town "Köln"\n',
  'utf16le',
);
const asRead = (bytes: Uint8Array) => Buffer.from(bytes).toString('utf8');

describe('use-encoding', () => {
  test.each([
    ['little end first', LITTLE],
    ['big end first', BIG],
    ['without a mark at its beginning', BARE],
    ['with letters of other languages', UMLAUTS],
  ])('is told of a used file in UTF-16, %s, and nothing of its lines', (_, bytes) => {
    tells(
      `
        perpend 1
        use "firm.perp"
        use "ours.perp"
            ^^^^^^^^^^^ use-encoding: “ours.perp” is written in UTF-16, and is not read: files of a job are texts in UTF-8.
      `,
      { files: { 'ours.perp': asRead(bytes) } },
    );
  });

  test('where the client reads the file, too', () => {
    const text = textOf({ base64: base64(new Uint8Array(LITTLE)) } as never)!;
    const { findings } = jobOf('perpend 1\nuse uk\nuse "ours.perp"\n', { 'ours.perp': text });
    expect(findings.map(({ code }) => code)).toEqual(['use-encoding']);
  });

  test('of a partner’s file it is told there', () => {
    const [told] = findingsIn('perpend 1\nuse "firm.perp"\npartner a "A"\n  file "a.perp"\n', {
      'a.perp': asRead(LITTLE),
    }).filter(({ code }) => code === 'partner-file');
    expect(told!.message).toContain('written in UTF-16');
  });
});

describe('file-encoding', () => {
  test('is told once of a file in UTF-16 itself', () => {
    const told = jobOf(asRead(LITTLE)).findings;
    expect(told.map(({ code, severity }) => [code, severity])).toEqual([
      ['file-encoding', 'error'],
    ]);
  });

  test.each([
    ['a text', FIRM],
    ['an empty one', ''],
    ['a zero that somebody pasted', `${FIRM}# \0\n`],
    ['a byte that is no letter', `${FIRM.replace('£', '\ufffd')}`],
    ['with a mark of UTF-8 at its beginning', `\ufeff${FIRM}`],
  ])('is not told of %s', (_, text) => {
    expect(jobOf(text).findings.map(({ code }) => code)).not.toContain('file-encoding');
  });

  test('nor any more once it is saved as UTF-8', () => {
    const { file } = jobOf(asRead(LITTLE));
    file.replaceAll(FIRM);
    expect(file.refused).toBeUndefined();
    expect(file.blocks.length).toBeGreaterThan(5);
  });
});

describe('at a terminal', () => {
  const JOB = 'perpend 1\nuse "firm.perp"\njob "A"\ncost skip "Skip" 1 at £100\n';
  const cwd = folderOf({ 'firm.perp': LITTLE, 'job.perp': JOB, 'wide.perp': BIG });

  test('the job that uses one says so at its line', () => {
    const { out, code } = inside(['check', 'job.perp'], { cwd });
    expect(out).toMatch(/job\.perp:2:5.*“firm\.perp” is written in UTF-16/);
    expect(code).toBe(1);
  });

  test('one that is asked about is not read, and says what to do', () => {
    const { err, code } = inside(['check', 'wide.perp'], { cwd });
    expect(err).toContain(
      'wide.perp cannot be read: it is written in UTF-16, and a job is a text in UTF-8. Save it as UTF-8.',
    );
    expect(code).toBe(2);
  });
});
