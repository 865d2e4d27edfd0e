import { expect, test } from 'vitest';
import { inRoot, workspaceOf } from '../engine/world';

const wall = (i: number) => `wall w${i}
  brick   face
  length  2240 mm
  height  8 courses
`;

/** A repair in the last of so many walls that it is kept in another group than they are. */
const MANY = `perpend 1

job "Many"

brick face
  size  215 x 102.5 x 65 mm

repair edge
  in       w99
  repoint  2 m2

${Array.from({ length: 100 }, (_, i) => wall(i)).join('\n')}`;

test('a name that goes is missed far from it, and found there again when it is back', () => {
  const file = inRoot('job.perp');
  const workspace = workspaceOf({});
  workspace.opened(file, MANY);
  const unknown = () =>
    workspace
      .job(file)!
      .findings.filter(({ code, message }) => code === 'name-unknown' && message.includes('w99'))
      .length;
  const rename = (to: string) => {
    const line = workspace.file(file)!.lines.findIndex((text) => /^wall [wv]99/.test(text));
    const at = { startLine: line, endLine: line, startColumn: 5, endColumn: 6 };
    workspace.edited(file, [{ ...at, text: to }]);
  };
  expect(unknown()).toBe(0);
  rename('v');
  expect(unknown()).toBe(1);
  rename('w');
  expect(unknown()).toBe(0);
});
