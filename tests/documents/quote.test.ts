import { describe, expect, test } from 'vitest';
import { letterheadOf } from '../../server/documents/letterhead';
import { htmlOf, type Paper } from '../../server/documents/paper';
import { quotePaper, quoteView } from '../../server/documents/quote';
import { wordsFor } from '../../server/documents/words';
import { allFigures } from '../../server/engine/views/job-view';
import { showTerm } from '../../server/engine/views/show';
import { FIRM, HALF, JOB, WRONG } from '../cli/jobs';
import { jobOf } from '../engine/world';

const SMALL = `perpend 1

use uk

wall a "Low wall"
  length 3 m
  height 6 courses

brick standard
  price £0.80 each
material cement
  pack 25 kg bag at £6
material lime
  pack 25 kg bag at £9
material sand
  pack 850 kg bag at £50
labour
  bricklayer £25 per h
  gang 1 bricklayer
`;

function page(job: string, firm = FIRM): string {
  return htmlOf(paperOf(job, firm));
}

function paperOf(text: string, firm = FIRM): Paper {
  const job = jobOf(text, { 'firm.perp': firm });
  const view = quoteView(job);
  return quotePaper(view, letterheadOf(job, wordsFor(view.lang).quote, undefined), '9.8.7');
}

/** All that the page says, in its drawings too, as a reader or a search would find it. */
function wordsOf(html: string): string {
  const drawings = [...html.matchAll(/data:image\/svg\+xml,([^"]*)/g)].map((found) =>
    decodeURIComponent(found[1]!.replaceAll('&#39;', "'")),
  );
  const entities: Record<string, string> = { lt: '<', gt: '>', quot: '"', '#39': "'", amp: '&' };
  return [html.replace(/data:image\/svg\+xml,[^"]*/g, ''), ...drawings]
    .join('\n')
    .replace(/&(lt|gt|quot|#39|amp);/g, (_, name: string) => entities[name]!)
    .replaceAll('\u00a0', ' ');
}

describe('a quote', () => {
  const html = page(JOB);
  const words = wordsOf(html);

  test('says who, for whom, where, when and till when', () => {
    for (const text of [
      'Marl & Pike Brickwork',
      '7 Sluice Row, Oddmouth',
      '01632 960 555 · pike@marl-pike.example · VAT number GB 111 2222 33',
      'Long garden wall',
      'T. Alder',
      '4 Weir Lane',
      '26-107',
      '15 January 2026',
      '14 February 2026', // 30 days after 15 January: 16 left in January, and 14
      'Payment within 10 days.',
      'Made with Perpend 9.8.7.',
    ])
      expect(words).toContain(text);
  });

  test('says what will be done, under the title of each part', () => {
    expect(words).toContain('<h3>Wall along the lane</h3>');
    expect(words).toContain('<h3>Wall</h3>'); // one without a title is called by its kind
    expect(words).toMatch(/<li>Build a wall 5 m long/);
    expect(words).toContain('The hedge is cut back by the owner.');
    expect(words).toContain('Side gate');
  });

  test('gives price, tax by its name and rate, total, stages, and how they are rounded', () => {
    const amounts = [
      ...words.matchAll(/<th scope="row">([^<]*)<\/th><td class="number">£([\d,]+\.\d\d)<\/td>/g),
    ];
    const by = new Map(
      amounts.map(([, label, text]) => [label, Number(text!.replaceAll(/[,.]/g, ''))]),
    );
    expect([...by.keys()]).toEqual([
      'Price before tax',
      'VAT at 20%',
      'Total',
      'With the order',
      'On completion',
    ]);
    const pence = (label: string) => by.get(label)!;
    expect(pence('Price before tax') % 500).toBe(0); // round £5
    expect(pence('VAT at 20%')).toBe(pence('Price before tax') / 5);
    expect(pence('Total')).toBe(pence('Price before tax') + pence('VAT at 20%'));
    expect(pence('With the order')).toBe(Math.round(pence('Total') * 0.3));
    expect(pence('With the order') + pence('On completion')).toBe(pence('Total'));
    expect(words).toContain(
      'Rounded: the price before tax to the nearest £5.00, VAT and stages to the nearest £0.01, halves up.',
    );
  });

  test('shows each wall, in words too for whoever cannot see it', () => {
    expect(
      html.match(/<img src="data:image\/svg\+xml,[^"]+" alt="Elevation of a wall [^"]+">/g),
    ).toHaveLength(2);
    expect(words).toContain('in flemish bond, with Side gate');
  });
});

describe('what a client can hold the firm to', () => {
  const OWN = (lines: string) => page(`perpend 1\n\nuse "firm.perp"\n\n${lines}`);

  test('a wall: its height over its coping, openings, piers, damp course and footing, with their sizes', () => {
    const words = wordsOf(
      OWN(`wall w "Yard wall"
  brick secret-red
  bond flemish
  thick 1 brick
  length 6.07 m
  height 16 courses
  coping brick-on-edge
  dpc engineering 2 courses
  footing 450 x 225 mm
  opening hatch
    from left 1.12 m
    width 910 mm
    sill 4 courses
    height 6 courses
  pier one "End pier"
    at left
    size 1.5 x 1.5 bricks
    height 18 courses
    cap 420 x 420 mm
`),
    );
    // 16 x 75 + 10 + 102.5 = 1312.5 mm; one and a half bricks: 215 + 10 + 102.5 = 327.5 mm; 18 x 75 = 1350 mm.
    for (const said of [
      'Build a wall 6.07 m long and 1.31 m high over its coping, one brick thick, in Oddmouth red facing.',
      'Leave an opening 910 mm wide and 450 mm high, 300 mm above the ground for the hatch.',
      'Build a pier in the wall, about 328 mm square and 1.35 m high under a cap 420 mm square: End pier.',
      'Lay the lowest 2 courses in damp-proof bricks.',
      'Finish the top with bricks on edge.',
      'Dig and concrete the footing, 450 mm wide and 225 mm deep.',
      '>hatch</text>',
    ])
      expect(words).toContain(said);
  });

  test('a coping on a pier is not one on the wall', () => {
    const words = wordsOf(
      OWN(`wall w
  brick secret-red
  length 3.59 m
  height 8 courses
  pier one
    at left
    size 2 x 2 bricks
    height 10 courses
    coping brick-on-edge
`),
    );
    expect(words).toContain('0.6 m high, ');
    // 10 x 75 + 10 + 102.5 = 862.5 mm
    expect(words).toContain('440 mm square and 0.86 m high over its coping');
    expect(words).not.toContain('Finish the top');
  });

  test('piers that stand alone, and a drawing of one', () => {
    const html = OWN(`pier gate "Gate piers"
  number 2
  brick secret-red
  size 2 x 2 bricks
  height 26 courses
  dpc engineering 2 courses
  coping brick-on-edge
  footing 750 x 750 x 400 mm
`);
    const words = wordsOf(html);
    // 26 x 75 + 10 + 102.5 = 2062.5 mm
    for (const said of [
      'Build 2 piers, each 440 mm square and 2.06 m high over its coping, in Oddmouth red facing.',
      'Lay the lowest 2 courses of each in damp-proof bricks.',
      'Dig and concrete the footing of each, 750 mm by 750 mm, 400 mm deep.',
      '>2062.5</text>',
    ])
      expect(words).toContain(said);
    expect(html).toMatch(/alt="Elevation of a pier, Gate piers, 440 by 440 mm/);
  });

  test('a repair: how much of each, both ends of a range', () => {
    const words = wordsOf(
      OWN(`repair r "Frosted length"
  brick secret-red
  bond flemish
  thick 1 brick
  rebuild 1.35 m x 9 courses
  salvage 60%
  recope 1.2..1.5 m
  cut-out 3..5 bricks
  repoint 2.4 m2 raked 20 mm
`),
    );
    for (const said of [
      'Take down a part of the wall 1.35 m long and 9 courses high, and build it again, reusing the bricks that clean up.',
      'Take off 1.2 m to 1.5 m of the coping and lay it again, bricks on edge.',
      'Cut out and replace 3 to 5 single damaged bricks.',
      'Rake out perished joints 20 mm deep and repoint them, over 2.4 m² of the face.',
    ])
      expect(words).toContain(said);
  });

  test('nothing is promised of reuse that the file does not say', () => {
    const words = wordsOf(
      OWN('repair r\n  brick secret-red\n  bond flemish\n  thick 1 brick\n  rebuild 2 m x 0.9 m\n'),
    );
    expect(words).toContain(
      'Take down a part of the wall 2 m long and 0.9 m high, and build it again.',
    );
  });

  test('what else is in the price, by title and without its money', () => {
    const words = wordsOf(
      page(`${JOB}\ncost skip "Skip for the spoil" 1 at £241.07\ncost bare 1 at £77.03\n`),
    );
    expect(words).toMatch(/<h3>Also included<\/h3>\s*<ul>\s*<li>Skip for the spoil<\/li>\s*<\/ul>/);
    expect(words).not.toMatch(/241\.07|77\.03|<li>bare/);
    expect(wordsOf(page(JOB))).not.toContain('Also included');
  });

  test('notes under an opening, a pier in a wall and a cost, where they belong', () => {
    const words = wordsOf(
      page(`${JOB}
  note "Built first."
  opening hatch
    from left 1 m
    width 460 mm
    note "The hatch door is the owner’s."
  pier stub "End pier"
    at right
    size 1.5 x 1.5 bricks
    height 9 courses
    note "It takes the gate."

cost skip "Skip for the spoil" 1 at £241.07
  note "It stands on the drive."
`),
    );
    const own = words.slice(words.indexOf('<h3>Wall</h3>'));
    expect(own.slice(0, own.indexOf('<figure>'))).toMatch(
      /<p>Built first\.<\/p>\s*<p>The hatch door is the owner’s\.<\/p>\s*<p>End pier: It takes the gate\.<\/p>/,
    );
    expect(words).toMatch(/<li>Skip for the spoil<br>\s*It stands on the drive\.<\/li>/);
  });

  test('in feet and inches where the job is', () => {
    const words = wordsOf(
      page(`perpend 1

use us

wall w "Yard wall"
  bond running
  thick 0.5 bricks
  length 275 5/8 in
  height 12 courses
  opening gate "Garden gate"
    from left 95 5/8 in
    width 36 3/8 in
`),
    );
    // 275 5/8 in is 22 ft 11 5/8 in; 12 courses of 2 2/3 in are 32 in.
    expect(words).toContain('Build a wall 22 ft 11 5/8 in long and 2 ft 8 in high');
    expect(words).toContain('Leave an opening 3 ft 3/8 in wide: Garden gate.');
    expect(words).toContain('Not to scale. Sizes in feet and inches.');
    expect(words).not.toMatch(/\d mm\b|\d ft \d+\.\d/);
  });

  test('the drawing claims no scale at the size the page gives it', () => {
    const words = wordsOf(page(JOB));
    expect(words).toContain('Not to scale. Sizes in millimetres.');
    expect(words).not.toMatch(/Scale 1:/);
  });
});

describe('what a quote never says', () => {
  const job = jobOf(JOB, { 'firm.perp': FIRM });
  const words = wordsOf(page(JOB));
  const told = ['job.net', 'job.tax', 'job.price', 'stage.1', 'stage.2'];
  const texts = (keep: (key: string) => boolean) =>
    allFigures(job)
      .filter(({ key }) => keep(key))
      .map(({ term }) => showTerm(term, job.env).replaceAll('\u00a0', ' '));

  test('any sum of money but price, tax and stages: no cost, overhead or profit', () => {
    const inside = texts((key) => !told.includes(key)).filter((text) => text.startsWith('£'));
    expect(new Set(inside).size).toBeGreaterThan(12);
    expect(inside.filter((text) => words.includes(text))).toEqual([]);
    // The same search does find what is told.
    const outside = texts((key) => told.includes(key));
    expect(outside.filter((text) => words.includes(text))).toEqual(outside);
  });

  test('any amount of money beyond those five at all, but the steps of rounding', () => {
    const said = new Set(words.match(/£[\d,.]*\d/g));
    for (const text of texts((key) => told.includes(key))) said.delete(text);
    expect([...said].sort()).toEqual(['£0.01', '£5.00']);
  });

  test('quantities bought, hours, rates and shares', () => {
    const inside = texts((key) => /^(buy|mix)\.|\.(bricks|hours|mortar)$|^job\.days$/.test(key));
    expect(inside.length).toBeGreaterThan(8);
    const rates = ['11.7%', '23.3%', '28.70', '17.30', '0.97', '6.43', '239.83', '0.47', '6%'];
    expect([...inside, ...rates].filter((text) => words.includes(text))).toEqual([]);
    for (const rate of rates) expect(FIRM).toContain(rate);
  });

  test('names that the files use for themselves', () => {
    const names = [
      'walnorth',
      'walsouth',
      'gatehole',
      'secret-red',
      'hidden-skip',
      'Spoil away',
      '.perp',
    ];
    for (const name of names) expect(FIRM + JOB).toContain(name);
    expect(names.filter((name) => words.includes(name))).toEqual([]);
    const inside = /overhead|profit|margin|waste|labour|gang|bricklayer|travel|skip|merchant/i;
    expect(words.replace(/<style>[\s\S]*?<\/style>/, '').match(inside)).toBeNull();
    expect(FIRM).toMatch(inside);
  });
});

describe('what is not a quote', () => {
  test.each([
    ['a length still to be measured', HALF, 'Parts of the price are still to be worked out.'],
    [
      'a line that cannot be read',
      WRONG,
      'The job file still has errors, so the price may be wrong.',
    ],
    ['no work in it', JOB.slice(0, JOB.indexOf('wall walnorth')), 'No work is described yet.'],
  ])('with %s says so first, and names no amount', (_, job, why) => {
    const html = page(job);
    expect(html).toContain('<title>Draft');
    expect(html).not.toMatch(/<h1>Quote/);
    const main = html.slice(html.indexOf('<main>'));
    expect(main).toMatch(
      /^<main>\s*<p class="warning" role="alert"><strong>NOT A QUOTE\.<\/strong> /,
    );
    expect(html).toContain(why);
    expect(html.slice(0, html.indexOf('<footer>'))).not.toContain('£');
    expect(html).not.toContain('Valid until');
  });

  test('with errors in a used file', () => {
    const html = page(JOB, FIRM.replace('waste  6%', 'waste  six'));
    expect(html).toContain('A file that the job uses has errors, so the price may be wrong.');
  });

  test('a whole one does not', () => {
    expect(page(JOB)).not.toContain('NOT A QUOTE');
    expect(page(JOB)).toContain('<title>Quote');
  });
});

describe('the page', () => {
  const EVIL = `</title></style><script>alert(1)</script><img src=x onerror=alert(1)> ' & \u202eabc`;

  test('holds nothing of the job but as text', () => {
    const plain = page(JOB);
    const job = JOB.replace(/"[^"]*"/g, (text) => (text === '"firm.perp"' ? text : `"${EVIL}"`));
    const firm = FIRM.replace(/"[^"]*"/g, `"${EVIL}"`);
    const evil = page(job, firm);
    const tags = (html: string) =>
      [...html.matchAll(/<\/?[a-z][a-z0-9]*/gi)].map((tag) => tag[0]!.toLowerCase());
    expect([...new Set(tags(evil))].sort()).toEqual([...new Set(tags(plain))].sort());
    expect(evil).not.toMatch(/<script|onerror=alert\(1\)>/);
    expect(evil).toContain('&lt;script&gt;alert(1)&lt;/script&gt;');
    expect(evil).not.toMatch(/[\u202a-\u202e\u2066-\u2069]/);
    const names = [...evil.matchAll(/<[a-z][a-z0-9]*((?: [a-z-]+="[^"]*")*)\s*>/g)].flatMap((tag) =>
      [...tag[1]!.matchAll(/ ([a-z-]+)="[^"]*"/g)].map((attribute) => attribute[1]!),
    );
    expect(names).toContain('alt');
    expect(names.filter((name) => name.startsWith('on'))).toEqual([]);
  });

  test('needs nothing else and runs nothing', () => {
    const html = page(JOB);
    expect(html).toContain("default-src 'none'; style-src 'unsafe-inline'; img-src data:");
    const addresses = [
      ...wordsOf(html).matchAll(/(?:src|href|action|url)\s*[=(]\s*["']?([^"')\s>]*)/g),
    ].map((found) => found[1]!);
    // Pictures (cut out by wordsOf, and put at its end), and hatches within a picture.
    expect(
      addresses.filter((address) => address !== '' && !/^#hatch-[a-z]+$/.test(address)),
    ).toEqual([]);
    const pictures = [...html.matchAll(/<img src="([^"]*)"/g)].map((found) => found[1]!);
    expect(pictures.filter((address) => !address.startsWith('data:image/svg+xml,%3Csvg'))).toEqual(
      [],
    );
    expect(html).not.toMatch(/<(script|link|iframe|object|embed|form)\b|@import/);
  });

  test('has a language, a heading to each column and row, and no cell without one', () => {
    const html = page(JOB);
    expect(html).toContain('<html lang="en-GB">');
    for (const [table] of html.matchAll(/<table>[\s\S]*?<\/table>/g)) {
      expect(table).toMatch(/<th scope="col">/);
      for (const [row] of table.matchAll(/<tr[^>]*>(?:(?!<\/tr>)[\s\S])*<td[^>]*>[\s\S]*?<\/tr>/g))
        expect(row).toMatch(/^<tr[^>]*><th scope="row">/);
    }
    expect(html.match(/<h1/g)).toHaveLength(1);
  });

  test('opens and closes each of its elements', () => {
    const open: string[] = [];
    const bare = page(JOB).replace(/<!doctype html>/, '');
    for (const [, close, tag] of bare.matchAll(/<(\/?)([a-z0-9]+)[^>]*>/g)) {
      if (['meta', 'img', 'br'].includes(tag!)) continue;
      if (close) expect(open.pop()).toBe(tag);
      else open.push(tag!);
    }
    expect(open).toEqual([]);
  });

  test('is for the paper of the country', () => {
    expect(page(JOB)).toContain('@page { size: A4;');
    const american = JOB.replace(
      'use "firm.perp"',
      'use "firm.perp"\n\ndefaults\n  units imperial',
    );
    expect(page(american)).toContain('@page { size: Letter;');
  });

  test('without a firm, a client or a date leaves them out', () => {
    const html = page(SMALL);
    expect(html).not.toMatch(/<header>|<dt>|<dd>/);
    expect(html).toContain('<h1>Quote<span>Brickwork</span></h1>');
    expect(html).not.toContain('NOT A QUOTE');
  });

  test('without tax has one price', () => {
    const html = page(SMALL.replace('use uk', 'use uk\n\njob "A"\n  tax 0%'));
    expect(html).not.toContain('VAT');
    expect(html.match(/<th scope="row">[^<]*/g)).toEqual(['<th scope="row">Price']);
  });
});
