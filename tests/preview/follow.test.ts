/** Text and preview beside each other: who leads, who follows, and what is asked for while something is worked out. */
import { describe, expect, test } from 'vitest';
import { Latest } from '../../client/latest';
import { Follow } from '../../client/preview/follow';

const JOB = 'file:///jobs/job.perp';
const FIRM = 'file:///jobs/firm.perp';

describe('following the cursor', () => {
  const at = (line: number, uri = JOB) => ({ uri, line });

  test('a move that nobody has led to is followed', () => {
    expect(new Follow().moved(at(3))).toBe(false);
  });

  test('a move that the page has led to is quiet, once', () => {
    const follow = new Follow();
    follow.leads(at(7));
    expect(follow.moved(at(7))).toBe(true);
    expect(follow.moved(at(7))).toBe(false);
  });

  test('a move elsewhere in the meantime is followed, and the old one forgotten', () => {
    const follow = new Follow();
    follow.leads(at(7));
    expect(follow.moved(at(8))).toBe(false);
    expect(follow.moved(at(7))).toBe(false);
  });

  test('a file that the page has brought to the front is known', () => {
    const follow = new Follow();
    follow.leads(at(2, FIRM));
    expect([follow.brought(FIRM), follow.brought(JOB)]).toEqual([true, false]);
    expect(follow.moved(at(2, FIRM))).toBe(true);
    expect(follow.brought(FIRM)).toBe(false);
  });
});

describe('only the last counts', () => {
  /** Work that ends when it is told to. */
  function worker() {
    const ends: (() => void)[] = [];
    const latest = new Latest(() => new Promise((resolve) => ends.push(resolve)));
    const end = async () => {
      ends.at(-1)!();
      await new Promise((resolve) => setTimeout(resolve));
    };
    return { latest, end, begun: () => ends.length };
  }

  test('what is asked for in the meantime is done once more, once', async () => {
    const { latest, end, begun } = worker();
    void latest.ask();
    expect(begun()).toBe(1);
    for (let i = 0; i < 5; i++) void latest.ask();
    expect(begun()).toBe(1);
    await end();
    expect(begun()).toBe(2);
    await end();
    expect(begun()).toBe(2);
    void latest.ask();
    expect(begun()).toBe(3);
    await end();
  });

  test('work that fails does not stop the next', async () => {
    let done = 0;
    const latest = new Latest(async () => {
      done += 1;
      if (done === 1) throw new Error('no');
    });
    await expect(latest.ask()).rejects.toThrow('no');
    await latest.ask();
    expect(done).toBe(2);
  });
});
