import { describe, expect, test } from 'vitest';
import { hover } from '../../server/engine/ide/hover';
import { asked, spaced } from './ask';

const HEAD = 'perpend 1\njob "Orchard"\nuse "firm.perp"\n';
const WALL = 'wall north "North boundary"\n  brick red\n  length 1790 mm\n  height 8 courses\n';

function told(marked: string): string | undefined {
  const { job, at } = asked(marked);
  const found = hover(job, at, (text, place) => `<${place.file}:${place.line + 1} ${text}>`);
  return found && spaced(found.markdown);
}

describe('a heading under the pointer', () => {
  test('tells the figures of a wall, each with its sum', () => {
    const text = told(`${HEAD}w$0all north\n  brick red\n  length 1790 mm\n  height 8 courses`);
    expect(text).toContain('**wall north**');
    // 8 courses of 8 bricks: (1790 + 10) / 225 = 8 to a course.
    expect(text).toMatch(/\| Bricks \| \*\*64 bricks\*\*/);
    expect(text).toMatch(/\d\D*×\D*\d/);
  });

  test('reads out how the main figure came about, no deeper than a glance', () => {
    const text = told(HEAD + WALL.replace('wall', 'wal$0l'))!;
    expect(text).toContain('- Bricks: **64 bricks**');
    const list = text.split('\n').filter((line) => /^ *- /.test(line));
    expect(list.length).toBeLessThanOrEqual(17);
    expect(Math.max(...list.map((line) => line.search(/\S/)))).toBeLessThanOrEqual(6);
  });

  test('is answered on its name too, over the name’s own columns', () => {
    const { job, at } = asked(HEAD + WALL.replace('north', 'no$0rth'));
    const found = hover(job, at)!;
    expect(found.span).toEqual({ line: 3, start: 5, end: 10 });
    expect(found.markdown).toContain('**wall north** North boundary');
  });

  test('tells the price of a job with the steps to it', () => {
    const text = told(`perpend 1\njo$0b "Orchard"\nuse "firm.perp"\n${WALL}`)!;
    for (const label of ['Hours', 'Days on site', 'Cost', 'Price before tax', 'Tax', 'Price'])
      expect(text).toContain(`| ${label} |`);
    expect(text).toMatch(/- Price: \*\*£/);
  });

  test('tells what a brick comes to in this job', () => {
    const own = 'bri$0ck red\n  size 215 x 102.5 x 65 mm\n  price £1 each\n';
    const text = told(`${HEAD}${own}${WALL}`)!;
    expect(text).toMatch(/to buy \| \*\*64 bricks\*\*/);
    expect(text).toMatch(/\*\*£64\.00\*\*/);
  });

  test('tells where an opening stands', () => {
    const text = told(
      `${HEAD}wall n\n  brick red\n  length 3 m\n  height 8 courses\n  op$0ening gate\n    from left 1 m\n    width 910 mm`,
    );
    expect(text).toContain('From `1 m` to `1.91 m` of the wall.');
  });

  test('says what a heading means that has no figures', () => {
    expect(told('perpend 1\ndefau$0lts\n  lift 1500 mm')).toContain(
      'What holds where a job says nothing.',
    );
  });

  test('says that a figure is not complete', () => {
    expect(told(`${HEAD}wal$0l n\n  brick red\n  length ?\n  height 8 courses`)).toContain('…');
  });
});

describe('a line’s word under the pointer', () => {
  test('tells what it means, how it is written, and its default with line and source', () => {
    const text = told(HEAD + WALL.replace('brick red', 'bond stretcher\n  bric$0k red'))!;
    expect(text).toContain('`brick brick`');
    expect(text).toContain('The brick it is built of.');
    expect(text).toMatch(/Left out: `brick standard` <library:uk(?:\.perp)?:\d+ /);
    expect(text).toContain('Common practice');
  });

  test('gives the remark at the end of the default’s line as its source', () => {
    const text = told(`perpend 1\nuse uk\njob\n  ta$0x 0%`);
    expect(text).toContain('`tax 20% "VAT"`');
    expect(text).toContain('*(standard rate, GOV.UK VAT Notice 708)*');
  });

  test('says in words what holds when no line of the defaults does', () => {
    expect(told(HEAD + WALL.replace('height', 'dp$0c red 2 courses\n  height'))).toContain(
      'Left out: none.',
    );
  });

  test('leads from a default to no other default', () => {
    expect(told('perpend 1\nuse uk\ndefaults\n  li$0ft 1500 mm')).not.toContain('Left out');
  });
});

describe('a name under the pointer', () => {
  test('shows the thing it names, with its file and line', () => {
    const text = told(HEAD + WALL.replace('brick red', 'brick re$0d'))!;
    expect(text).toContain('**brick red** Harwick red');
    expect(text).toContain('size   215 x 102.5 x 65 mm');
    expect(text).toContain('</jobs/firm.perp:3 firm.perp:3>');
  });

  test('shows each place that says something of it, nearest first', () => {
    const text = told(HEAD + WALL.replace('brick red', 'dpc engin$0eering 2 courses'))!;
    expect(text).toContain('Class B engineering brick');
    const two = told(
      `${HEAD}brick engineering\n  price £2 each\n${WALL.replace('brick red', 'brick engin$0eering')}`,
    )!;
    expect(two.indexOf('price £2 each')).toBeLessThan(two.indexOf('215 x 102.5 x 65 mm'));
    expect(two).toContain('price £2 each');
  });

  test('knows trades, zones, openings and walls', () => {
    expect(told('perpend 1\nlabour\n  mason £30 per h\n  gang 2 mas$0ons')).toContain(
      'mason £30 per h',
    );
    expect(told('perpend 1\nuse uk\nwall w\n  exposure zon$0e-1')).toContain('zone');
    expect(
      told(
        'perpend 1\nuse uk\nwall w\n  opening gate\n    width 1 m\n  pier p\n    at ga$0te left',
      ),
    ).toContain('**opening gate**');
    expect(told(`${HEAD}${WALL}repair r\n  in no$0rth`)).toContain('64 bricks');
  });

  test('falls back to the line when nothing has the name', () => {
    expect(told('perpend 1\nuse uk\nwall w\n  brick nob$0ody')).toContain(
      'The brick it is built of.',
    );
  });
});

describe('a measure under the pointer', () => {
  // 1 in = 25.4 mm and 1 lb = 0.45359237 kg, exactly: International yard and pound agreement, 1959.
  test.each([
    ['  length 7.4$0 m', ['7,400 mm', '24.278 ft', '291 5/16 in']],
    ['  length 24$0 ft', ['7,315.2 mm', '7.315 m', '288 in']],
    ['  length 6 ft 8 $0in', ['2,032 mm', '2.032 m', '80 in']],
    ['  footing 450 x $0225 mm', ['17 11/16 in × 8 7/8 in']],
  ])('is told in the other units: %s', (line, wanted) => {
    const text = told(`perpend 1\nuse uk\nwall w\n${line}`);
    for (const each of wanted) expect(text).toContain(each);
  });

  test('tells both ends of a range', () => {
    expect(told('perpend 1\nuse uk\nrepair r\n  repoint 2..3$0 m2')).toBe('21.53 ft² to 32.29 ft²');
  });

  test('tells of a number of courses what its line means', () => {
    expect(told('perpend 1\nuse uk\nwall w\n  height 8$0 courses')).toContain('Height in courses');
  });
});

describe('a price under the pointer', () => {
  const BRICK =
    'brick own "Own"\n  source "Price list, 2026"\n  merchant "Harbour Merchants"\n  price £0.9$02 each\n';

  test('tells whom it is bought from, and where it comes from', () => {
    const text = told(`perpend 1\nuse uk\n${BRICK}`)!;
    expect(text).toContain('Bought from Harbour Merchants.');
    expect(text).toContain('Where it comes from: Price list, 2026.');
  });

  test('a remark at the end of its line is nearer than the source of its block', () => {
    const text = told(`perpend 1\nuse uk\n${BRICK.replace('each', 'each # by telephone')}`)!;
    expect(text).toContain('Where it comes from: by telephone.');
  });

  test('tells what its line comes to in this job', () => {
    expect(told(`${HEAD}${WALL}cost skip "Skip" 2 at £2$040`)).toContain('In this job: £480.00.');
    expect(told(`${HEAD}${WALL}cost skip "Skip" 1 at £2$040`)).not.toContain('In this job');
  });
});

describe('courses under the pointer', () => {
  // Four courses in 300 mm: Key skills resource sheet, Crown copyright 2000.
  test('are told as a height, at the gauge of their wall', () => {
    expect(told(HEAD + WALL.replace('8 courses', '1$06 courses'))).toContain(
      'At the gauge of this wall: 1.2 m.',
    );
  });

  test('both ends of a range are', () => {
    expect(told(HEAD + WALL.replace('8 courses', '1$06..20 courses'))).toContain('1.2 m to 1.5 m.');
  });

  test('not where nothing is set out', () => {
    expect(told('perpend 1\nuse uk\ndefaults\n  height 1$06 courses')).toBeUndefined();
  });
});

describe('a way to the whole working', () => {
  const linked = (marked: string, working?: (text: string, figure: string) => string) => {
    const { job, at } = asked(marked);
    return hover(
      job,
      at,
      Object.assign((text: string) => text, { working }),
    )!.markdown;
  };
  const way = (text: string, figure: string) => `[${text}](command:${figure})`;

  test('stands under a heading with figures, for an editor that has one', () => {
    expect(linked(HEAD + WALL.replace('wall', 'wal$0l'), way)).toContain(
      '[The whole working](command:north.bricks)',
    );
  });

  test('leads to the price of a job', () => {
    expect(linked(`perpend 1\njo$0b "A"\nuse "firm.perp"\n${WALL}`, way)).toContain(
      '(command:job.price)',
    );
  });

  test('and to nothing where there is none, or no figure', () => {
    expect(linked(HEAD + WALL.replace('wall', 'wal$0l'))).not.toContain('whole working');
    expect(linked('perpend 1\ndefau$0lts\n  lift 1 m', way)).not.toContain('command:');
  });
});

test('a line’s word comes with an example, where it is not written just so', () => {
  expect(told('perpend 1\nuse uk\nwall w\n  leng$0th 3 m')).toContain('length 7.4 m');
  expect(told('perpend 1\nuse uk\nwall w\n  bri$0ck harwick-red')).not.toContain('```');
});

test('hours are told in minutes', () => {
  expect(told('perpend 1\nmix m\n  life 1.5$0 h')).toContain('90 min');
});

describe('nothing is told', () => {
  test.each([
    ['in a comment', 'perpend 1\n# wa$0ll'],
    ['in a comment at a line’s end', 'perpend 1\nwall n # wa$0ll'],
    ['on a line at fault', 'perpend 1\nwall n\n  len$0ght 3 m'],
    ['in an empty line', 'perpend 1\n$0\nwall n'],
    ['between words', 'perpend 1\nwall n\n  length    $0   3 m'],
  ])('%s', (_, marked) => {
    expect(told(marked)).toBeUndefined();
  });
});

describe('a range under the pointer', () => {
  const COSTS = (first: string, second: string) =>
    `perpend 1\nuse uk\nlabour\n  mate £20 per h\n  gang 1 mate\ncost a "A" 1 at ${first}\ncost b "B" ${second} at £100..£160\n`;

  test('tells how much of the spread hangs on it, and between what the price lies', () => {
    // Variances go with the squares: 20² and 60².
    const text = told(COSTS('£100..£12$00', '1'))!;
    expect(text).toMatch(/10% of what the price may move by hangs on this range alone\. In eight/);
    expect(text).toMatch(/the price is £2\d\d\.\d\d to £\d{3}\.\d\d\.$/);
  });

  test('says which to measure first', () => {
    const text = told(COSTS('£100..£120', '1').replace('£100..£160', '£100..£1$060'))!;
    expect(text).toContain('Nothing else counts as much: measure it first.');
  });

  test('says when nothing hangs on it', () => {
    const text = told(COSTS('£100..£120', '0').replace('£100..£160', '£100..£1$060'))!;
    expect(text).toContain('The price does not hang on this range.');
  });
});

test('text of the job cannot become markup', () => {
  const { job, at } = asked(
    'perpend 1\nuse uk\nwa$0ll n "[x](command:evil) <b> | ``"\n  length 1 m',
  );
  const text = hover(job, at)!.markdown;
  expect(text).toContain('``` wall n');
  const outside = text.replace(/\\./g, '').replace(/(`+)(?!`).*?[^`]\1(?!`)/gs, '');
  expect(outside).not.toMatch(/[[<`]/);
});

test.each([
  ['https://a.example/b', 'https\\://a.example/b'],
  ['see www.a.example', 'see www\\.a.example'],
  ['office@a.example', 'office\\@a.example'],
  ['[go](command:x) ![p](y)', '\\[go\\](command:x) \\!\\[p\\](y)'],
])('words of a job are no links: %s', (words, said) => {
  const { job, at } = asked(`perpend 1\nuse uk\nwa$0ll n "${words}"\n  length 1 m`);
  expect(hover(job, at)!.markdown).toContain(said);
});
