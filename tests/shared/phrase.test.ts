import { afterEach, describe, expect, test } from 'vitest';
import { keyOf, later, phrase, speak, spoken } from '../../shared/phrase';

afterEach(() => speak(undefined));

describe('phrases', () => {
  test('are English as they are written', () => {
    expect(phrase`The wall ${'north'} is ${3} courses high.`).toBe(
      'The wall north is 3 courses high.',
    );
    expect(phrase`Brickwork`).toBe('Brickwork');
  });

  test('are what the bundle says, in its order', () => {
    speak({ 'The wall {0} is {1} courses high.': '{1} Schichten hoch ist die Mauer {0}.' });
    expect(phrase`The wall ${'north'} is ${3} courses high.`).toBe(
      '3 Schichten hoch ist die Mauer north.',
    );
  });

  test('stay English where the bundle has not got them, and where it asks for what is not there', () => {
    speak({ 'Cut {0}.': 'Schneide {0} und {1}.' });
    expect(phrase`Lay ${'a'}.`).toBe('Lay a.');
    expect(phrase`Cut ${'a'}.`).toBe('Schneide a und {1}.');
    expect(phrase`constructor`).toBe('constructor');
  });

  test('what is put in is not read again', () => {
    speak({ 'a {0} {1}': 'b {0} {1}' });
    expect(phrase`a ${'{1}'} ${'x'}`).toBe('b {1} x');
  });

  test('of a table that is made before the language is known are said where they are shown', () => {
    const table = [later`half bat`, later`queen closer`];
    speak({ 'half bat': 'Halbziegel' });
    expect(table.map(spoken)).toEqual(['Halbziegel', 'queen closer']);
    expect(spoken('constructor')).toBe('constructor');
  });

  test('are keyed by their English', () => {
    expect(keyOf(['', ' of ', ''])).toBe('{0} of {1}');
  });
});
