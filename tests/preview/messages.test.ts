/** What page and extension say to each other: only what has the right shape is heard. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { fromPage, keptOf, toPage } from '../../shared/protocol/preview-page';
import { filled, PAGE_WORDS, pageWordsOf } from '../../shared/protocol/preview-words';

const room = { width: 120, height: 90 };

describe('from the page', () => {
  test.each([
    [{ say: 'ready', room }],
    [{ say: 'ready', room, have: '3' }],
    [{ say: 'room', room }],
    [{ say: 'line', from: 4, focus: true }],
    [{ say: 'show', show: 'quote' }],
    [{ say: 'work', work: 'wall north' }],
    [{ say: 'pin', pinned: false }],
    [{ say: 'again' }],
    [{ say: 'print' }],
  ])('%j is heard', (message) => {
    expect(fromPage(message)).toEqual(message);
  });

  test.each([
    [null],
    ['again'],
    [[]],
    [{}],
    [{ say: 'constructor' }],
    [{ say: '__proto__' }],
    [{ say: 'line', from: -1, focus: true }],
    [{ say: 'line', from: 1.5, focus: true }],
    [{ say: 'line', from: Number.NaN, focus: true }],
    [{ say: 'line', from: 1e12, focus: true }],
    [{ say: 'line', from: 1 }],
    [{ say: 'room', room: { width: -1, height: 4 } }],
    [{ say: 'room', room: { width: Number.POSITIVE_INFINITY, height: 4 } }],
    [{ say: 'room', room: { width: '90', height: 4 } }],
    [{ say: 'show', show: 4 }],
    [{ say: 'show', show: 'x'.repeat(9999) }],
    [{ say: 'pin', pinned: 'yes' }],
    [{ say: 'ready' }],
  ])('%j is passed by', (message) => {
    expect(fromPage(message)).toBeUndefined();
  });

  test('what it has besides is left behind', () => {
    const message = { say: 'room', room: { ...room, more: 1 }, uri: 'file:///etc' };
    expect(fromPage(message)).toEqual({ say: 'room', room });
  });

  test('nothing that can be said makes it stumble', () => {
    fc.assert(
      fc.property(fc.anything(), (message) => {
        fromPage(message);
        toPage(message);
        keptOf(message);
      }),
    );
  });
});

describe('to the page', () => {
  const shown = { show: 'front', title: '', described: '', choices: [], works: [], from: [] };
  const good = { say: 'shown', uri: 'file:///a', shown, line: 0, pinned: false, quiet: false };

  test('what is shown is heard', () => {
    expect(toPage(good)).toEqual(good);
    expect(toPage({ say: 'cursor', line: 3, quiet: true })).toEqual({
      say: 'cursor',
      line: 3,
      quiet: true,
    });
    expect(toPage({ say: 'nothing', why: 'gone' })).toEqual({ say: 'nothing', why: 'gone' });
  });

  test.each([
    [{ ...good, shown: { ...shown, title: 4 } }],
    [{ ...good, shown: { ...shown, choices: {} } }],
    [{ ...good, shown: null }],
    [{ ...good, pinned: 1 }],
    [{ ...good, uri: undefined }],
    [{ ...good, say: 'print' }],
    [{ say: 'nothing' }],
  ])('%j is passed by', (message) => {
    expect(toPage(message)).toBeUndefined();
  });
});

describe('what a page kept', () => {
  test('comes back as it was', () => {
    const kept = {
      uri: 'file:///a',
      show: 'plan',
      work: 'wall north',
      pinned: true,
      zoom: 2,
      left: 10,
      top: 4,
      paperLook: true,
    };
    expect(keptOf(kept)).toEqual(kept);
  });

  test('of another make is taken as far as it goes', () => {
    expect(keptOf({ uri: 'file:///a', zoom: 'x', left: -4, top: 1e99, pinned: 'yes' })).toEqual({
      uri: 'file:///a',
      show: '',
      pinned: false,
      zoom: 0,
      left: 0,
      top: 0,
      paperLook: false,
    });
    expect(keptOf({ show: 'front' })).toBeUndefined();
    expect(keptOf(undefined)).toBeUndefined();
  });
});

describe('words of the page', () => {
  test('what is missing is called by its name, and what is no text too', () => {
    const words = pageWordsOf({ zoomIn: 'Larger', zoomOut: 4 });
    expect([words.zoomIn, words.zoomOut, words.cut]).toEqual(['Larger', 'zoomOut', 'cut']);
    expect(Object.keys(pageWordsOf(null)).sort()).toEqual([...PAGE_WORDS].sort());
  });

  test('values go to their places', () => {
    expect(filled('{1} of {0}, {2}', 'a', 7)).toBe('7 of a, {2}');
  });
});
