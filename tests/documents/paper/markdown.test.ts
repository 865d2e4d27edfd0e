import fc from 'fast-check';
import MarkdownIt from 'markdown-it';
import { describe, expect, test } from 'vitest';
import { markdownOf } from '../../../server/documents/paper';
import { EACH, paperOf, rowOf, tableOf } from './samples';

/** A reader of CommonMark and of the tables of GFM that makes links of bare addresses, and takes HTML: the worst case. */
const reader = new MarkdownIt({ html: true, linkify: true }).enable(['table', 'strikethrough']);

const ENTITIES: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"' };

/** The words that are left of a page of HTML, and the elements they stood in. */
function readBack(markdown: string) {
  const html = reader.render(markdown);
  const tags = [...html.matchAll(/<([a-z0-9]+)/g)].map((found) => found[1]!);
  const words = html
    .replace(/<[^>]*>/g, '')
    .replace(/&(amp|lt|gt|quot);/g, (_, name: string) => ENTITIES[name]!);
  return { tags, words: words.trim() };
}

/** What is no sign of control, its spaces as one. */
const clean = (text: string) =>
  text
    .replace(/[^\t\n\r\x20-\x7e\xa0-\ud7ff\ue000-\ufffd\u{10000}-\u{10ffff}]/gu, '\ufffd')
    .replace(/[\u202a-\u202e\u2066-\u2069]/g, '\ufffd')
    .replace(/\s+/g, ' ')
    .trim();

const EVIL = [
  '# no heading',
  '- no list',
  '1. no list',
  '12) no list',
  '> no quotation',
  '---',
  '===',
  '***',
  '```',
  '    no code',
  '*a* _b_ __c__ `d` ~~e~~',
  '[a](http://b.example)',
  '![a](b)',
  '<http://b.example> <b>c</b> <!-- d -->',
  'www.b.example https://b.example mail@b.example',
  '&amp; &#65; &copy;',
  'a | b | c',
  'a\\b\\',
  ': + = - >',
  '[x]: http://b.example',
  'a  \nb',
];

describe('a text in Markdown reads as it stands', () => {
  const bare = (text: string) => markdownOf(paperOf([{ part: 'words', text }], { foot: '' }));

  test.each(EVIL)('%j', (text) => {
    const { tags, words } = readBack(bare(text));
    expect(words.replace(/\s+/g, ' ')).toBe(clean(text));
    expect(tags.filter((tag) => !['p', 'br'].includes(tag))).toEqual([]);
  });

  test('whatever it is', () => {
    const some = fc.array(
      fc.oneof(fc.constantFrom(...EVIL, ...'#-*_`[]()<>&|\\~:.!+=1 '), fc.string()),
      {
        maxLength: 6,
      },
    );
    fc.assert(
      fc.property(some, (pieces) => {
        const text = pieces.join('');
        const { tags, words } = readBack(bare(text));
        expect(words.replace(/\s+/g, ' ')).toBe(clean(text));
        expect(tags.filter((tag) => !['p', 'br'].includes(tag))).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  test.each(EVIL)('in a heading, a list, a table and a warning: %j', (text) => {
    const one = text.replace(/\s+/g, ' ');
    const { tags, words } = readBack(
      markdownOf(
        paperOf(
          [
            { part: 'heading', level: 2, text: one },
            { part: 'list', items: [[one, one]] },
            tableOf([rowOf(one, '3')]),
            { part: 'warning', strong: 'NO.', text: one },
          ],
          { foot: '' },
        ),
      ),
    );
    expect(words.split(clean(one))).toHaveLength(6);
    expect(tags).toEqual(
      [
        'h2',
        'ul',
        'li',
        'br',
        'table',
        'thead',
        'tr',
        'th',
        'th',
        'tbody',
        'tr',
        'td',
        'td',
      ].concat('blockquote', 'p', 'strong'),
    );
  });
});

test('a paper in Markdown', () => {
  expect(markdownOf({ ...EACH, parts: EACH.parts.slice(0, 6) })).toBe(`**Tamsin Reed**

4 Kiln Row\\
01632 960 144

> **NOT A QUOTE.** No amount is offered.

# Quote

Orchard wall

- For: Żaneta Wiśniewska\\
  Ελένη Παπαδοπούλου
- Site: Садовая улица, дом 4

## What will be done

### Wall

- Build ½ × ¾ → ≥ 3 m².
- Point it.\\
  By hand.

Rounded halves up.
`);
});
