/** Pages of help at a terminal. */
import { writeFileSync } from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { helpPages } from '../../.scripts/help.mjs';
import { pageFor } from '../../shared/protocol/help';
import { bundle, program as perpend, useCommandLine } from './perpend';

useCommandLine();
const pages = helpPages();

describe('perpend help CODE', () => {
  beforeAll(() => {
    writeFileSync(path.join(path.dirname(bundle()), 'help.json'), JSON.stringify(pages));
  });

  test('prints the page of a finding, as text', () => {
    expect(perpend(['help', 'fit-run'])).toEqual({
      code: 0,
      err: '',
      out: `A stretch does not work out in whole bricks

Between two fixed points whole bricks and their joints come out too short or
too long, and spread out the joints are wider or thinner than anyone accepts.

Why it matters. Found on the job, it costs an afternoon of cutting.

What to do. Take one of the ways out: other joints, a half bat or a cut, a
length that works, an opening moved. A \`fit\` line writes the decision down.

Before

    wall north
      brick   red
      length  1840 mm
      height  4 courses

After

    wall north
      brick   red
      length  1790 mm
      height  4 courses
`,
    });
  });

  test.each([
    ['caution-silica', /^Dust from cutting\n\nUnited Kingdom\. /],
    ['caution-ours', /^A caution\n/],
  ])('prints the page of a caution: %s', (code, says) => {
    expect(perpend(['help', code]).out).toMatch(says);
  });

  test('a command comes before a code, and what is neither is told', () => {
    expect(perpend(['help', 'price']).out).toMatch(/^perpend price: /);
    expect(perpend(['help', 'fit-rum'])).toMatchObject({ code: 2, out: '' });
  });
});

describe('pages', () => {
  test('are there for every caution of the libraries, each with its sources', () => {
    const cautions = Object.keys(pages).filter((code) => code.startsWith('caution-'));
    expect(cautions.length).toBeGreaterThan(25);
    for (const code of cautions.filter((each) => each !== 'caution-mortar'))
      expect(pages[code], code).toMatch(
        /\*\*(United Kingdom|Germany|United States)\.\*\* .+ _Source: .+\._/,
      );
  });

  test('hold what each library says, word for word', () => {
    expect(pages['caution-silica']).toContain(
      'Cut wet or with extraction, and wear a fitted mask (FFP3).',
    );
    expect(pages['caution-digging']).toContain('811');
  });

  test('are one small file', () => {
    expect(JSON.stringify(pages).length).toBeLessThan(120 * 1024);
  });

  test.each([['constructor'], ['__proto__'], [''], ['../secret']])(
    'there is none about %j',
    (code) => {
      expect(pageFor(pages, code)).toBeUndefined();
    },
  );
});
