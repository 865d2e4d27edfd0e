import { describe, expect, test } from 'vitest';
import { findingsIn, silent, tells } from './tells';

const OUT = 'Take the line out';

describe('blank', () => {
  test('is told at each text of the firm that is still to be filled in', () => {
    const found = tells(
      `
        perpend 1
        use uk
        firm "? Your firm"
             ^^^^^^^^^^^^^ blank: Still to be filled in: firm (Your firm). Papers stand without a name
          address  "4 Kiln Row"
          address  "? Your village"
                   ^^^^^^^^^^^^^^^^ blank: Still to be filled in: address (Your village). Papers leave it out
          town     ?
                   ^ blank: Still to be filled in: town. Papers leave it out
          phone    "?"
                   ^^^ blank: Still to be filled in: phone. Papers leave it out
          email    "  ?  Your mail "
                   ^^^^^^^^^^^^^^^^^ blank: Still to be filled in: email (Your mail).
      `,
      { ways: [OUT, OUT, OUT, OUT] },
    );
    expect(new Set(found.map((each) => each.severity))).toEqual(new Set(['warning']));
  });

  test('of whoever is billed too', () => {
    tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
        bill-to "? The client’s firm"
                ^^^^^^^^^^^^^^^^^^^^^ blank: bill-to (The client’s firm)
          tax-number  "?"  # they will say
                      ^^^ blank: tax-number
        cost skip "Skip" 1 at £100
      `,
      { ways: [OUT] },
    );
  });

  test('of the client and the site in a job it is only information: it may be named when the quote is written', () => {
    const found = tells(
      `
        perpend 1
        use "firm.perp"
        job "A"
          client  ?
                  ^ blank: client
          client  "? Street"
                  ^^^^^^^^^^ blank: client (Street)
          site    "? Which of the gardens"
                  ^^^^^^^^^^^^^^^^^^^^^^^^ blank: site (Which of the gardens)
        cost skip "Skip" 1 at £100
      `,
      { ways: [OUT, OUT, OUT] },
    );
    expect(new Set(found.map((each) => each.severity))).toEqual(new Set(['information']));
  });

  test.each([
    ['a text', 'town "? Your town"', '? Your town'],
    ['a bare mark', 'town ?', '?'],
    ['signs of a snippet', 'town "? $1 } \\"x\\""', '? \\$1 \\} \\\\"x\\\\"'],
    ['curved quotation marks', 'town “? Your town”', '? Your town'],
  ])('it can be filled in where it stands, and stays marked until it is: %s', (_, line, mark) => {
    const [told] = findingsIn(`perpend 1\nuse uk\nfirm "A"\n  ${line}\n`);
    expect(told!.code).toBe('blank');
    expect(told!.fills!.map((way) => way.title)).toEqual(['Fill it in']);
    // A place to fill in, as editors write it.
    const wanted = ['"$', `{1:${mark}}"`].join('');
    expect(told!.fills![0]!.edits.map((edit) => edit.text)).toEqual([wanted]);
    expect(told!.fills![0]!.edits[0]!.place).toEqual(told!.place);
  });

  test.each([
    ['what is filled in', 'firm "A"\n  town "Saltmarsh End"\n  terms "Who asks? We do."\n'],
    [
      'a question for the client, which is a text like others',
      'job "? A"\n  note "? Which gate"\n',
    ],
    ['a title', 'wall a "? North"\n  length 1790 mm\n  height 4 courses\n'],
  ])('is not told of %s', (_, text) => {
    silent(`perpend 1\nuse "firm.perp"\n${text}`, 'blank');
  });

  test('a question mark where no text may wait is a fault as before', () => {
    const codes = findingsIn('perpend 1\nuse uk\njob "A"\n  note ?\n').map((each) => each.code);
    expect(codes).not.toContain('blank');
    expect(codes).not.toEqual([]);
  });
});
