/** Rows of a page that stand for a line lead to it beside the job, and tell of no file in any form that goes out. */
import { expect, test } from 'vitest';
import { htmlOf, markdownOf } from '../../../server/documents/paper';
import { paperJson } from '../../../server/documents/paper/json';
import { previewOf } from '../../../server/documents/preview';
import { jobOf, ROOT } from '../../engine/world';
import { pageFor } from './read';

const TEXT = `perpend 1
use uk

wall a
  length ?
  height 6 courses

record
  found 2026-02-03 "a drain"
`;
const job = jobOf(TEXT);
const line = (text: string) => TEXT.split('\n').findIndex((each) => each.trim() === text);
const room = { width: 200, height: 150 };

test.each([
  ['measure', 'length ?'],
  ['record', 'found 2026-02-03 "a drain"'],
] as const)('%s: a row leads to its line', (show, text) => {
  const { paper, lines } = previewOf(job, { line: 0, show, room }, { version: '1' });
  const marks = [...paper!.html.matchAll(/<tr data-from="(\d+)"/g)].map(
    ([, at]) => lines[Number(at)],
  );
  expect(marks.map((at) => at?.line)).toContain(line(text));
});

test('no file of it says where a line stands', () => {
  const paper = pageFor(job, 'measure');
  for (const text of [htmlOf(paper), markdownOf(paper), paperJson(paper, 'job.perp')])
    expect(text).not.toMatch(new RegExp(`data-from|${ROOT}|"from"`));
});
