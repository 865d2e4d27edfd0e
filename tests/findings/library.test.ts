import { describe, test } from 'vitest';
import { silent, tells } from './tells';

describe('library-unknown', () => {
  test('proposes the nearest library', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        use ukk
            ^^^ library-unknown: There are uk, us and de
      `,
      { ways: ['Write uk'] },
    );
  });

  test.each(['constructor', '__proto__', 'toString', 'world-wide'])('is told of %s', (name) => {
    tells(`
      perpend 1
      use "firm.perp"
      use ${name}
          ${'^'.repeat(name.length)} library-unknown: No library is called “${name}”
    `);
  });

  test('is not told of those that there are', () => {
    for (const name of ['uk', 'us', 'de']) silent(`perpend 1\nuse ${name}\n`, 'library-unknown');
  });
});

describe('library-assumed', () => {
  test('is told where no file names a library', () => {
    tells(
      `
        perpend 1
        ^^^^^^^^^ library-assumed: the library “uk” is taken
        brick ours
      `,
      { ways: ['Add “use uk”'] },
    );
  });

  test('is not told where the job or a file that it uses names one', () => {
    silent('perpend 1\nuse de\n', 'library-assumed');
    silent('perpend 1\nuse "firm.perp"\n', 'library-assumed');
  });
});
