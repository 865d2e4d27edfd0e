import { describe, test } from 'vitest';
import { silent, tells } from './tells';

describe('the edition', () => {
  test('is asked for where the first line does not give it', () => {
    tells(
      `
        use "firm.perp"
        ^^^^^^^^^^^^^^^ edition-missing: Edition 1 is taken
        job "A"
      `,
      { ways: ['Add “perpend 1”'] },
    );
  });

  test('is asked for where it stands, but not first: one there already is not added again', () => {
    tells(`
      use "firm.perp"
      ^^^^^^^^^^^^^^^ edition-missing: Edition 1 is taken
      perpend 1
      job "A"
    `);
  });

  test('of another number is not known, and the file is read all the same', () => {
    tells(`
      perpend 2
              ^ edition-unknown: Edition 2 is not known
      use "firm.perp"
      job "A"
    `);
  });

  test('may stand under a comment, and a file of comments needs none', () => {
    silent('# Ours\n\nperpend 1\nuse "firm.perp"\n', 'edition-missing');
    silent('# Nothing yet\n', 'edition-missing');
    silent('', 'edition-missing');
  });
});
