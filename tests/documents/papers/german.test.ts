/** A job of the German library has its papers in German, whatever language the reader of its findings speaks. */
import { afterEach, describe, expect, test } from 'vitest';
import { pageOf, pagesOf } from '../../../server/documents/pages';
import { htmlOf, markdownOf, type Paper } from '../../../server/documents/paper';
import type { Job } from '../../../server/engine/workspace/job';
import { language, speak } from '../../../shared/phrase';
import type { PageKind } from '../../../shared/protocol/pages';
import { EXAMPLES, exampleJob } from '../../engine/examples';
import { jobOf } from '../../engine/world';

afterEach(() => speak(undefined));

const HEAD = `perpend 1

job "Hofmauer"
  client  "Frau Deichgraf"
  date    2026-05-18

use "firm.perp"
`;

const WORK = {
  'ein Sturz und ein Pfeiler': `
wall hof "Hofmauer"
  length   5.99 m
  height   24 courses
  bond     blockverband
  thick    1 brick
  coping   brick-on-edge
  opening fenster "Fenster"
    from   left 1.99 m
    width  1.01 m
    sill   6 courses
    height 10 courses
    lintel 115 x 71 mm
  pier tor "Torpfeiler"
    at     right
    size   2 x 2 bricks
    height 20 courses
`,
  'eine Instandsetzung': `
wall alt "Alte Mauer"
  brick  moorsiel-rot
  length 8 m
  height 16 courses
  thick  1 brick
  bond   blockverband

repair schaden "Frostschaden"
  in      alt
  brick   moorsiel-rot
  rebuild 1.5 m x 5 courses
  salvage 60..75%
  cut-out 8..12 bricks
  repoint 2 m2 raked 20 mm
`,
  'ein freier Pfeiler': `
pier torpfeiler "Torpfeiler"
  size    2 x 2 bricks
  height  16 courses
  footing 600 x 600 x 300 mm
`,
};

const FIRM = { 'firm.perp': EXAMPLES['de/firm.perp']! };
const JOBS: Readonly<Record<string, () => Job>> = {
  'das Beispiel': () => exampleJob('de-mauer/job.perp'),
  ...Object.fromEntries(
    Object.entries(WORK).map(([name, text]) => [name, () => jobOf(HEAD + text, FIRM)]),
  ),
};

/** What stands between the words of a library’s sources is in the language of the source. */
function withoutSources(text: string): string {
  return text.replace(/Quelle: [^\n]*/g, '');
}

/** Words that no German sentence holds, and every English one of a paper would. */
const ENGLISH =
  /\b(the|of|and|with|each|from|course|courses|brick|bricks|wall|high|wide|deep|long|laying|lay|cut|cuts|in all|over|under|to buy|pier|piers|on plan|hours|days?|left|right)\b/i;

/** Papers that others read, and those of the firm itself. */
const KINDS: readonly PageKind[] = [
  'quote',
  'invoice',
  'buying',
  'site',
  'result',
  'price',
  'cuts',
  'day',
  'mortar',
];

function papersOf(job: Job): readonly (readonly [string, Paper])[] {
  const there = pagesOf(job).filter(({ why }) => why === undefined);
  const kinds = KINDS.filter((kind) => there.some((page) => page.kind === kind));
  return kinds.flatMap((kind) => {
    const made = pageOf(job, kind, { version: '1' });
    return typeof made === 'string' ? [] : [[kind, made.paper] as const];
  });
}

describe.each(Object.keys(JOBS))('papers of a German job: %s', (name) => {
  test('are German in each of their sentences', () => {
    const papers = papersOf(JOBS[name]!());
    expect(papers.length).toBeGreaterThan(5);
    for (const [kind, paper] of papers) {
      expect(paper.lang).toBe('de-DE');
      const lines = withoutSources(markdownOf(paper)).split('\n');
      expect({ kind, english: lines.filter((line) => ENGLISH.test(line)) }).toEqual({
        kind,
        english: [],
      });
    }
  });
});

describe('the language of a paper', () => {
  test('is no matter of the reader’s: a pseudo language is on no paper, and stays spoken', () => {
    const strange = new Proxy({}, { getOwnPropertyDescriptor: strangely, get: () => '§§' });
    speak(strange);
    const [german, english] = ['de-mauer/job.perp', 'garden-wall/job.perp'].map((name) =>
      papersOf(exampleJob(name)).map(([, paper]) => htmlOf(paper)),
    );
    for (const text of [...german!, ...english!]) expect(text).not.toContain('§§');
    expect(language()).toBe(strange);
  });

  test('is English for the other libraries', () => {
    for (const [, paper] of papersOf(exampleJob('garden-wall/job.perp')))
      expect(paper.lang).toMatch(/^en/);
  });
});

function strangely() {
  return { value: '§§', configurable: true, enumerable: true };
}
