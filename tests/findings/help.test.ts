/** Every finding has a page that explains it, and what a page shows is so: the text before brings the finding up, the text after does not. */
import { describe, expect, test } from 'vitest';
import { files, read } from '../tree';
import { codesTold } from './codes';
import { findingsIn } from './tells';

const FOLDER = 'server/engine/findings/help';

/** What is told of files too large or too many for a page to show, or by what other files hold. Each has its own test beside. */
const NOT_SHOWN: ReadonlySet<string> = new Set([
  'caution',
  'caution-mortar',
  'file-encoding',
  'file-too-large',
  'not-computed',
  'options-many',
  'output-measured',
  'too-many',
  'use-encoding',
  'use-too-deep',
  'use-too-large',
]);

const pages = new Map(
  files()
    .filter((file) => file.startsWith(`${FOLDER}/`) && file.endsWith('.md'))
    .map((file) => [file.slice(FOLDER.length + 1, -3), read(file)] as const),
);

const codes = codesTold();

/** The text of a page under such a heading, as a file of its own. */
function example(page: string, heading: string): string | undefined {
  const found = new RegExp(`\\*\\*${heading}\\*\\*\n\n\`\`\`perpend\n([^]*?)\n\`\`\``).exec(
    page,
  )?.[1];
  if (found === undefined) return undefined;
  return /^(perpend|use|length) /.test(found)
    ? `${found}\n`
    : `perpend 1\nuse "firm.perp"\n${found}\n`;
}

const told = (text: string) => findingsIn(text).map((finding) => finding.code);

describe('the help page', () => {
  test('of every code is there, and none is of a code that nothing tells', () => {
    expect(codes.filter((code) => !pages.has(code))).toEqual([]);
    expect([...pages.keys()].filter((page) => !codes.includes(page))).toEqual(['caution']);
  });

  test.each([...pages])('of %s says what it is and what to do, shortly', (_, page) => {
    const lines = page.split('\n');
    expect(lines[0]).toMatch(/^# [A-Z].*[^.]$/);
    expect(page).toContain('\n**What to do.** ');
    expect(page.length).toBeLessThan(1600);
  });

  test('shows an example, but for those that no page can show', () => {
    const bare = [...pages].filter(([, page]) => !example(page, 'Before')).map(([code]) => code);
    expect(bare.sort()).toEqual([...NOT_SHOWN].sort());
  });

  test.each([...pages].filter(([code]) => !NOT_SHOWN.has(code)))(
    'of %s: the text before has the finding, the text after has neither it nor an error',
    (code, page) => {
      expect(told(example(page, 'Before')!)).toContain(code);
      const after = findingsIn(example(page, 'After')!);
      expect(after.filter((f) => f.code === code || f.severity === 'error')).toEqual([]);
    },
  );

  test('is small: all together under 120 KB', () => {
    expect([...pages.values()].join('').length).toBeLessThan(120_000);
  });
});
