/** What is honest to tell a client, from what is known and no more. */
import { describe, expect, test } from 'vitest';
import { candidatesOf } from './compared';

const honest = (lines: string, name: string, before = '') =>
  candidatesOf(`brick plain\nmix general\nrebuild 100 bricks\n${lines}`, before)(name).honest;

const EYE = /^Colour and texture are matched by eye, and no brick is an exact match/;

describe('the client is told', () => {
  test('how courses are kept level', () => {
    // 306 / 4 is 76.5: 9.5 mm with bricks of 67 mm, 2 mm higher than the work size of 65.
    expect(honest('gauge 4 courses 306 mm\ncandidates tall', 'tall')[0]).toBe(
      'New bricks are 2 mm higher than the old ones; courses are kept level with bed joints of 9.5 mm.',
    );
    expect(honest('candidates even', 'even')[0]).toBe(
      'New bricks are as high as the old ones; courses are kept level with bed joints of 10 mm.',
    );
    // 288 / 4 is 72: 5 mm. 260 / 4 is 65: nothing is left for a joint.
    expect(honest('gauge 4 courses 288 mm\ncandidates tall', 'tall')[0]).toBe(
      'New bricks are 2 mm higher than the old ones; courses keep level only with bed joints of 5 mm, thinner than is usual, and that shows.',
    );
    expect(honest('gauge 4 courses 260 mm\ncandidates tall', 'tall')[0]).toBe(
      'New bricks are too high for courses to keep level with the old ones.',
    );
  });

  test('of length and width what no class of tolerance covers', () => {
    // 228 and 108 beside 215 and 102.5 mm: 13 and 5.5 mm, where T1 allows 6 and 4.
    expect(honest('candidates inch', 'inch').slice(1, 3)).toEqual([
      'They are 13 mm longer than the old ones, and upright joints will not line up with theirs.',
      'They are 5.5 mm wider: one face is kept in line with the old work, not both.',
    ]);
    const all = honest('measured 214 x 102 x 66 mm\ncandidates even', 'even').join(' ');
    expect(all).not.toMatch(/longer|wider/);
  });

  test('how far bricks of one delivery may differ, by the class they are sold in', () => {
    // R1 of 67 mm: 0.60 times its root, 4.9 mm, from memory of EN 771-1.
    expect(honest('candidates tall', 'tall')).toContain(
      'Bricks of one delivery may be 5 mm apart in height.',
    );
  });

  test('how they look, in the words of the file, and never that they match', () => {
    const all = honest('candidates tall, inch', 'tall');
    expect(all).toContain('They are described as red multi, darker when weathered; sanded.');
    expect(all.at(-1)).toMatch(EYE);
    const old = honest('candidates tall, inch', 'inch');
    expect(old).toContain('Reclaimed bricks differ in size, shade and soundness.');
    expect(old).toContain('They are described as reclaimed.');
  });

  test('nothing of a size that is not known', () => {
    const odd = 'brick odd\n  price £1 each\n';
    expect(honest('candidates odd', 'odd', odd)).toEqual([expect.stringMatching(EYE)]);
  });

  test('in inches where the job is in inches', () => {
    const said = honest(
      'gauge 3 courses 8 1/4 in\ncandidates even',
      'even',
      'defaults\n  units imperial\n',
    )[0];
    // 8 1/4 in is 209.55 mm, a course 69.85: 4.85 mm over bricks of 65 mm, 3/16 in.
    expect(said).toContain('bed joints of 3/16 in, thinner than is usual');
  });
});
