/** A server that ends by itself is begun again, and not for ever. */
import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { Ends } from '../../client/ends';

vi.mock('vscode', () => import('./vscode'));
// The real one is a class over an editor: all that is asked of it are these numbers, which are those of its `client.js`.
vi.mock('vscode-languageclient', () => ({
  CloseAction: { DoNotRestart: 1, Restart: 2 },
  ErrorAction: { Continue: 1, Shutdown: 2 },
}));

beforeEach(() => void vi.useFakeTimers());
afterEach(() => void vi.useRealTimers());

const RESTART = 2;

test('four times it is begun again without a word; after the fifth the reader is told, once', () => {
  const told = vi.fn();
  const ends = new Ends(told);
  const ways = [1, 2, 3, 4].map(() => ends.closed());
  expect(ways.every(({ action, handled }) => action === RESTART && handled)).toBe(true);
  expect(told).not.toHaveBeenCalled();
  expect(ends.closed()).toMatchObject({ action: 1, handled: true });
  expect(told).toHaveBeenCalledTimes(1);
});

test('one that is ended by us is not begun again, and nobody is told', () => {
  const told = vi.fn();
  const ends = new Ends(told);
  ends.meant = true;
  expect(ends.closed()).toMatchObject({ action: 1, handled: true });
  expect(told).not.toHaveBeenCalled();
});

test('once an hour is chance', () => {
  const told = vi.fn();
  const ends = new Ends(told);
  for (let i = 0; i < 50; i++) {
    expect(ends.closed().action).toBe(RESTART);
    vi.advanceTimersByTime(3_600_000);
  }
  expect(told).not.toHaveBeenCalled();
});

test.each([
  [1, 1],
  [3, 1],
  [4, 2],
  [undefined, 2],
])('after %o errors in a row: %o', (count, action) => {
  const ends = new Ends(() => undefined);
  expect(ends.error(new Error('x'), undefined, count).action).toBe(action);
});
