/** Questions of a template in the editor: what may be asked for, what it means, and where it stands. */
import { expect, test } from 'vitest';
import { completion } from '../../server/engine/ide/completion';
import { definition } from '../../server/engine/ide/definition';
import { hover } from '../../server/engine/ide/hover';
import { asked } from './ask';

const WALL = `
use "firm.perp"
job "A"
wall north
  brick   red
  length  3590 mm
  height  8 courses
  opening gate
    from   left 1 m
    width  1010 mm
`;

const at = (line: string) => asked(`perpend 1\ntemplate "T"\n  ask ${line}\n${WALL}`);

function labels(line: string): string[] {
  const { job, at: place } = at(line);
  return (completion(job, place)?.items ?? []).map((item) => item.label);
}

test('names and lines are offered', () => {
  expect(labels('$0')).toEqual(expect.arrayContaining(['north', 'gate']));
  expect(labels('north $0')).toEqual(expect.arrayContaining(['brick', 'height', 'coping']));
  expect(labels('gate $0')).toEqual(expect.arrayContaining(['width', 'sill']));
  expect(labels('job $0')).toEqual(expect.arrayContaining(['client', 'site']));
});

test('a name leads to what it names, and the word says what it means', () => {
  const name = at('ga$0te width "How wide?"');
  expect(definition(name.job, name.at)?.targets.map((t) => t.place.line)).toEqual([10]);
  const word = at('gate wid$0th "How wide?"');
  expect(hover(word.job, word.at)?.markdown).toContain('width');
});
