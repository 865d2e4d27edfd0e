import { describe, test } from 'vitest';
import { silent, tells } from './tells';

describe('what a caution is brought up by', () => {
  test('is a word of the reference or a material; what nothing is called is told of', () => {
    tells(
      `
      perpend 1
      use "firm.perp"
      caution ours "Ours"
        when cuttign
             ^^^^^^^ when-unknown: Is it cutting?
        when sand
        when height over 2 m, free-standing
        say "Look."
    `,
      { ways: ['Write cutting'] },
    );
  });

  test('has a limit only where it is measured, in what it is measured in', () => {
    tells(`
      perpend 1
      use "firm.perp"
      caution ours "Ours"
        when cutting over 2 m
                          ^^^ when-unknown: “cutting” is not measured
        when height over 20 kg
                         ^^^^^ when-unknown: “height” is a length
        when constructor over 20 kg
             ^^^^^^^^^^^ when-unknown: Nothing in a job is called “constructor”
        say "Look."
    `);
  });

  test('is not told of where it stands right', () => {
    const text = `perpend 1
use "firm.perp"
caution ours "Ours"
  when mass over 20 kg
  when footing, boundary unsaid
  when hydraulic-lime
  say "Look."
`;
    silent(text, 'when-unknown');
  });
});
