/** What a paper's file is called: two jobs of one folder must not write over one another's quotes. */
import { describe, expect, test } from 'vitest';
import { pageOf } from '../../server/documents/pages';
import { nameFrom, titleOf } from '../../server/lsp/own/file-name';
import type { PageKind, PageOptions } from '../../shared/protocol/pages';
import { jobOf } from '../engine/world';

const WALL = 'wall a\n  length 1790 mm\n  height 6 courses\n';
const CHARGED = 'cost skip "Skip" 1 at £1000\n';

function called(head: string, kind: PageKind, options?: PageOptions, file = 'orchard.perp') {
  const job = jobOf(`perpend 1\nuse uk\n${head}${WALL}${CHARGED}`);
  const made = pageOf(job, kind, { version: '0', options });
  if (typeof made === 'string') throw new Error(made);
  return nameFrom(titleOf(made.paper, job, file));
}

const TITLED = 'job "Orchard boundary wall"\n';

describe('the file of a paper is called', () => {
  test.each<[string, string, PageKind, PageOptions | undefined, string]>([
    ['by the reference', `${TITLED}  ref 26-041\n`, 'buying', undefined, 'Buying list 26-041'],
    ['without one by the title', TITLED, 'buying', undefined, 'Buying list Orchard boundary wall'],
    ['without a title by the job’s file', '', 'buying', undefined, 'Buying list orchard'],
    ['a draft of a quote too', TITLED, 'quote', undefined, 'Draft Orchard boundary wall'],
    ['the site sheet', TITLED, 'site', undefined, 'Site sheet Orchard boundary wall'],
    ['the cut list', TITLED, 'cuts', undefined, 'Cut list Orchard boundary wall'],
    [
      'an invoice by its number',
      TITLED,
      'invoice',
      { number: '26-041-1' },
      'Draft invoice 26-041-1',
    ],
    [
      'an invoice that has none by the job',
      `${TITLED}  ref 26-041\n`,
      'invoice',
      { amount: '100' },
      'Draft invoice 26-041',
    ],
  ])('%s', (_, head, kind, options, wanted) => {
    expect(called(head, kind, options)).toBe(wanted);
  });

  test.each([
    ['in a folder', 'jobs/lane.perp', 'Buying list lane'],
    ['in a folder of Windows', 'C:\\jobs\\lane.perp', 'Buying list lane'],
    ['not saved', 'untitled:Untitled-1', 'Buying list Untitled-1'],
    ['without a name', '', 'Buying list'],
  ])('by a file %s', (_, file, wanted) => {
    expect(called('', 'buying', undefined, file)).toBe(wanted);
  });

  test('in the language of the paper', () => {
    const job = 'job "Mauer am Weg"\n';
    const text = `perpend 1\nuse de\n${job}${WALL}`;
    const of = jobOf(text);
    const made = pageOf(of, 'quote', { version: '0' });
    expect(typeof made === 'object' && titleOf(made.paper, of, 'a.perp')).toBe(
      'Entwurf Mauer am Weg',
    );
  });
});

describe('a name holds nothing that a file system minds', () => {
  test.each([
    ['signs of folders and drives', 'Quote a/b\\c: "d" <e>|f?*', 'Quote a-b-c- -d- -e-f-'],
    ['a way up', '../../etc', '-..-etc'],
    ['points and spaces at its ends', ' .Quote. ', 'Quote'],
    ['lines and controls', 'a\nb\u0007c\u202Ed', 'a-b-c-d'],
    ['nothing at all', '...', 'job'],
  ])('%s', (_, title, wanted) => {
    expect(nameFrom(title)).toBe(wanted);
  });

  test('nor half a character where it is cut off', () => {
    expect(nameFrom(`${'a'.repeat(79)}🧱🧱`)).toBe(`${'a'.repeat(79)}🧱`);
  });
});
