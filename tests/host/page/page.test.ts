/** The page itself, driven in a browser: light, dark, both high contrasts, and colours that the system forces. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type { FromPage } from '../../../shared/protocol/preview-page';
import { lineOf, Previewing, WALL } from '../../preview/shown';
import { root } from '../../tree';
import {
  axe,
  bundled,
  type Files,
  type OpenPage,
  openPage,
  startBrowser,
  type Wanted,
} from './browser';
import { THEMES, type Theme } from './themes';

let browser: Browser;
let files: Files;
beforeAll(async () => {
  [browser, files] = await Promise.all([startBrowser(), bundled()]);
});
afterAll(() => browser.close());

const north = lineOf(WALL, /^wall/);
const open = async (wanted?: Wanted) => openPage(browser, files, wanted);

/** The front of the wall, on a page. */
async function shown(
  wanted: Wanted = {},
  show = 'front',
): Promise<{ on: OpenPage; of: Previewing }> {
  const of = new Previewing(WALL);
  const on = await open(wanted);
  await on.show(of.shown({ line: north, show }), { line: north });
  return { on, of };
}

async function closed(on: OpenPage): Promise<void> {
  expect(on.errors).toEqual([]);
  await on.page.context().close();
}

const lineSaid = (said: FromPage | undefined, { from }: { from: readonly { line: number }[] }) =>
  said?.say === 'line' ? from[said.from]?.line : undefined;

describe('in every theme', () => {
  const shows = ['front', 'quote', 'site'];
  test.each(Object.keys(THEMES) as Theme[])('%s: axe finds nothing', async (theme) => {
    const { on, of } = await shown({ theme });
    for (const show of shows) {
      await on.show(of.shown({ line: north, show }), { line: north });
      expect(await axe(on), show).toEqual([]);
    }
    await closed(on);
  });

  test.each(Object.keys(THEMES) as Theme[])(
    '%s: words on a drawing are told from what is behind them',
    async (theme) => {
      const { on } = await shown({ theme });
      const least = theme.startsWith('high') ? 7 : 4.5;
      for (const pair of await inks(on))
        expect(contrast(...pair), pair.join(' on ')).toBeGreaterThan(least);
      await closed(on);
    },
  );

  test('forced colours: lines and words are the system’s, and nothing is tinted', async () => {
    const { on } = await shown({ forced: true });
    const fills = await on.page.evaluate(
      `[...new Set([...document.querySelectorAll('.board .i-stretcher')].map((e) => getComputedStyle(e).fill))]`,
    );
    const ground = await on.page.evaluate(`getComputedStyle(document.body).backgroundColor`);
    expect((fills as string[]).map(luminance)).toEqual([luminance(ground as string)]);
    await closed(on);
  });
});

/** Words over bricks have a ground of their own, which is the page’s. */
async function inks({ page }: OpenPage): Promise<[string, string][]> {
  const colours = (await page.evaluate(`
    [...document.querySelectorAll('.board text')].map((text) => {
      const own = getComputedStyle(text);
      return [own.fill, text.classList.contains('backed') ? own.stroke : getComputedStyle(document.body).backgroundColor];
    })
  `)) as [string, string][];
  return [...new Map(colours.map((pair) => [pair.join(), pair])).values()];
}

/** WCAG 2.2, relative luminance and contrast ratio. */
function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

/** `rgb(0, 0, 0)` of 255, or `color(srgb 0 0 0)` of 1. */
function luminance(colour: string): number {
  const most = colour.startsWith('color') ? 1 : 255;
  const parts = colour.match(/[\d.]+/g) ?? [];
  const [red, green, blue] = parts.map((part) => {
    const share = Number(part) / most;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

describe('a drawing', () => {
  test('says when it stands how much room it has', async () => {
    const on = await open();
    const ready = await on.last('ready');
    expect(ready).toMatchObject({ say: 'ready', room: { width: expect.any(Number) } });
    await closed(on);
  });

  test('is gone through with the keys, and told', async () => {
    const { on, of } = await shown();
    await on.page.locator('.board').focus();
    const heard = async (...keys: string[]) => {
      for (const key of keys) await on.page.keyboard.press(key);
      return on.text('.readout');
    };
    const dpc = lineOf(WALL, /dpc/) + 1;
    expect(await heard('ArrowUp')).toBe(
      `course 1, brick 1 of ${bricksIn(of, 1)}, stretcher, 215 mm, dpc, line ${dpc}`,
    );
    expect(await heard('ArrowRight')).toMatch(/^course 1, brick 2 of /);
    expect(await heard('ArrowUp')).toMatch(/^course 2, brick [23] of /);
    expect(await heard('Home')).toMatch(/^course 2, brick 1 of /);
    expect(await on.page.locator('[aria-live]').first().textContent()).toMatch(
      /^course 2, brick 1/,
    );
    await heard('Enter');
    expect(await on.last('line')).toMatchObject({ focus: true });
    expect(lineSaid(await on.last('line'), of.shown())).toBe(dpc - 1);
    await closed(on);
  });

  test('leads past the bricks to every opening and figure', async () => {
    const { on } = await shown();
    const all = (await on.page.evaluate(`(() => {
      const board = document.querySelector('.board');
      const press = (key) => {
        board.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true }));
        return document.querySelector('.readout').textContent;
      };
      const told = new Set([press('ArrowUp')]);
      for (let down = 0; down < 60; down++) {
        told.add(press('ArrowDown'));
        for (let right = 0; right < 8; right++) told.add(press('ArrowRight'));
      }
      return [...told].join('\\n');
    })()`)) as string;
    for (const what of [
      'Garden gate',
      'Log hatch',
      '1010',
      '5390',
      '1347.5',
      'height, line',
      'soldier',
    ])
      expect(all).toContain(what);
    await closed(on);
  });

  test('a click on a brick, an opening or a dimension leads to its line', async () => {
    const { on, of } = await shown();
    const { from } = of.shown();
    const at = async (text: string) => {
      const box = (await on.page.locator('.board text', { hasText: text }).first().boundingBox())!;
      await on.page.mouse.click(box.x + box.width / 2, box.y + box.height / 2);
      return lineSaid(await on.last('line'), { from });
    };
    expect(await at('Garden gate')).toBe(lineOf(WALL, /opening gate/));
    expect(await at('685')).toBe(lineOf(WALL, /685 mm/));
    expect(await at('5390')).toBe(lineOf(WALL, /5.39 m/));
    expect(await on.last('line')).toMatchObject({ focus: false });
    // What it has led to is marked at once: nobody need be asked.
    expect(await on.page.locator('.board .over .marked').count()).toBe(1);
    await closed(on);
  });

  test('a drag moves it and leads nowhere', async () => {
    const { on } = await shown({ size: { width: 500, height: 420 } });
    for (let i = 0; i < 6; i++) await on.page.getByLabel('zoomIn').click();
    const board = (await on.page.locator('.board').boundingBox())!;
    await on.page.mouse.move(board.x + 200, board.y + 100);
    await on.page.mouse.down();
    await on.page.mouse.move(board.x + 80, board.y + 60, { steps: 4 });
    await on.page.mouse.up();
    await expect.poll(async () => (await on.kept())?.left).toBeGreaterThan(0);
    expect(await on.last('line')).toBeUndefined();
    await closed(on);
  });

  test('marks what belongs to the line that the cursor is in', async () => {
    const { on } = await shown();
    const marked = () => on.page.locator('.board .over .marked').count();
    expect(await marked()).toBe(0);
    await on.tell({ say: 'cursor', line: lineOf(WALL, /opening hatch/), quiet: false });
    expect(await marked()).toBe(1);
    await on.tell({ say: 'cursor', line: north, quiet: false });
    expect(await marked()).toBe(0);
    await closed(on);
  });

  test('moves to what the cursor is in when that is out of view, and not for its own click', async () => {
    const { on } = await shown({ size: { width: 420, height: 400 } });
    for (let i = 0; i < 8; i++) await on.page.getByLabel('zoomIn').click();
    const scrolled = () => on.page.evaluate(`document.querySelector('.board').scrollLeft`);
    await on.page.evaluate(`document.querySelector('.board').scrollTo(0, 0)`);
    await on.tell({ say: 'cursor', line: lineOf(WALL, /opening hatch/), quiet: true });
    expect(await scrolled()).toBe(0);
    await on.tell({ say: 'cursor', line: lineOf(WALL, /opening hatch/), quiet: false });
    expect(await scrolled()).toBeGreaterThan(100);
    await closed(on);
  });

  test('a change redraws only what has changed', async () => {
    const { on, of } = await shown();
    const first = of.shown({ line: north });
    await on.show(first, { line: north });
    await on.page.evaluate(
      `document.querySelectorAll('.board g g > path').forEach((path) => path.setAttribute('data-old', ''))`,
    );
    of.edit(WALL.replace('16 courses', '17 courses'));
    const next = of.shown({ line: north, have: first.picture!.is });
    expect(next.picture!.since).toBe(first.picture!.is);
    expect(JSON.stringify(next.picture).length).toBeLessThan(
      JSON.stringify(first.picture).length / 2,
    );
    await on.show(next, { line: north });
    const old = await on.page.locator('.board [data-old]').count();
    expect(old).toBeGreaterThan(20);
    const fresh = await shownAnew(of);
    expect(await paths(on)).toEqual(await paths(fresh));
    await closed(fresh);
    await closed(on);
  });

  test('asks for the whole when a change is of another drawing', async () => {
    const { on, of } = await shown();
    const whole = of.shown({ line: north }).picture!;
    await on.show({ ...of.shown({ line: north }), picture: { ...whole, since: 'another' } });
    expect(await on.last('again')).toEqual({ say: 'again' });
    await closed(on);
  });
});

/** The same job as it stands now, on a page that had nothing. */
async function shownAnew(of: Previewing): Promise<OpenPage> {
  const on = await open();
  await on.show(of.shown({ line: north }), { line: north });
  return on;
}

const paths = (on: OpenPage) =>
  on.page.evaluate(
    `[...document.querySelectorAll('.board svg > g:nth-of-type(1) path')].map((p) => p.parentElement.getAttribute('transform') + p.getAttribute('class') + p.getAttribute('d')).sort()`,
  );

function bricksIn(of: Previewing, course: number): number {
  const { parts } = of.shown().picture!;
  const rows = Object.values(parts).flatMap((part) =>
    part.kind === 'row' && part.course === course ? [part.pattern] : [],
  );
  const [pattern] = rows.map((key) => parts[key]);
  return pattern?.kind === 'pattern' ? pattern.pieces.length / 4 : 0;
}

describe('what is kept', () => {
  test('size, place and what is shown come back', async () => {
    const { on } = await shown({ size: { width: 500, height: 420 } });
    for (let i = 0; i < 5; i++) await on.page.getByLabel('zoomIn').click();
    await on.page.evaluate(`document.querySelector('.board').scrollTo(150, 40)`);
    const all = { show: 'front', left: 150, top: 40, work: 'wall north' };
    await expect.poll(() => on.kept()).toMatchObject(all);
    const kept = await on.kept();
    expect(kept!.zoom).toBeGreaterThan(1);
    await closed(on);

    const again = await shown({ size: { width: 500, height: 420 }, kept });
    await expect.poll(() => again.on.keptAnew()).toBeDefined();
    expect(await again.on.keptAnew()).toEqual(kept);
    await closed(again.on);
  });
});

describe('a paper', () => {
  test('leads from what stands on it to its line', async () => {
    const { on, of } = await shown({}, 'quote');
    const { from } = of.shown({ line: north, show: 'quote' });
    await on.page.locator('.sheet').getByText('North wall').first().click();
    expect(lineSaid(await on.last('line'), { from })).toBe(north);
    await on.page.getByText('T. Alder').click();
    expect(lineSaid(await on.last('line'), { from })).toBe(lineOf(WALL, /client/));
    await closed(on);
  });

  test('a figure leads to the line it hangs on most, and shows when the cursor is in another', async () => {
    const { on, of } = await shown({}, 'price');
    const { from } = of.shown({ line: north, show: 'price' });
    const row = (text: string) => on.page.locator('.sheet tr', { hasText: text }).first();
    const classOf = (text: string) => row(text).getAttribute('class');
    await row('Bricks, all kinds').click();
    expect(lineSaid(await on.last('line'), { from })).toBe(lineOf(WALL, /length {4}5\.39/));
    await on.tell({ say: 'cursor', line: lineOf(WALL, /height {4}16/), quiet: true });
    expect(await classOf('Courses')).toContain('marked');
    expect(await classOf('Bricks, all kinds')).toContain('touched');
    await on.tell({ say: 'cursor', line: lineOf(WALL, /client/), quiet: true });
    expect(await on.page.locator('.sheet tr.touched, .sheet tr.marked').count()).toBe(0);
    await closed(on);
  });

  test('a pointer is told what it is at', async () => {
    const { on } = await shown({}, 'quote');
    await on.page.getByText('T. Alder').hover();
    expect(await on.text('.readout')).toMatch(/^client, line \d+$/);
    await closed(on);
  });

  test('is gone through with the keys', async () => {
    const { on } = await shown({}, 'quote');
    await on.page.locator('.papers').focus();
    await on.page.keyboard.press('ArrowDown');
    await on.page.keyboard.press('ArrowDown');
    expect(await on.text('.readout')).toMatch(/line \d+$/);
    await on.page.keyboard.press('Enter');
    expect(await on.last('line')).toMatchObject({ focus: true });
    await closed(on);
  });

  test('dark papers are dark, and white only when asked to be', async () => {
    const { on } = await shown({ theme: 'dark' }, 'quote');
    const ground = () =>
      on.page.evaluate(`getComputedStyle(document.querySelector('.sheet')).backgroundColor`);
    expect(await ground()).toBe('rgba(0, 0, 0, 0)');
    await on.page.getByLabel('paperLook').click();
    expect(await ground()).toBe('rgb(255, 255, 255)');
    expect(await axe(on)).toEqual([]);
    await closed(on);
  });
});

test('the firm’s logo stands on its paper, and no other picture does', async () => {
  const of = new Previewing(`${WALL}\nfirm "Alder & Son"\n`);
  const bytes = new Uint8Array(readFileSync(path.join(root, 'client/media/icon.png')));
  of.around = { version: '1.0', logo: { bytes, type: 'png' } };
  const on = await open();
  const quote = of.shown({ line: north, show: 'quote' });
  const odd = [
    'https://a.invalid/b.png',
    'data:image/svg+xml,<svg/>',
    'data:text/html;base64,AA==',
  ];
  const html = quote.paper!.html + odd.map((src) => `<img src="${src}">`).join('');
  await on.show({ ...quote, paper: { ...quote.paper!, html } }, { line: north });
  const wide = () =>
    on.page.evaluate(`[...document.images].map((image) => image.complete && image.naturalWidth)`);
  await expect.poll(wide).toEqual([256]);
  expect(await axe(on)).toEqual([]);
  await closed(on);
});

describe('what nobody should write', () => {
  const EVIL = '<img src=x onerror=said.push(1)><script>said.push(1)</script>';
  test('names with tags are words, on a drawing and on papers', async () => {
    const text = WALL.replaceAll('North wall', EVIL)
      .replaceAll('Garden gate', EVIL)
      .replace('T. Alder', EVIL);
    const of = new Previewing(text);
    const on = await open();
    for (const show of ['front', 'quote', 'site', 'rod', 'plan']) {
      await on.show(of.shown({ line: north, show }), { line: north });
      expect(await on.page.locator('body :is(script[src=""], img, iframe, object)').count()).toBe(
        0,
      );
    }
    expect((await on.said()).every((each) => typeof each === 'object')).toBe(true);
    await closed(on);
  });

  test('HTML that is no paper’s does not come onto the page', async () => {
    const { on, of } = await shown({}, 'quote');
    const given = of.shown({ show: 'quote' });
    const html =
      '<p onclick="said.push(1)" style="color:red">good</p><script>said.push(1)</script><a href="https://x.invalid">a</a><img src="https://x.invalid/y"><iframe></iframe><form><input></form>';
    await on.show({ ...given, paper: { ...given.paper!, html } });
    expect(await on.page.evaluate(`document.querySelector('.sheet').innerHTML`)).toBe(
      '<p>good</p>',
    );
    // The policy was asked, and said no.
    await expect.poll(() => on.errors.join()).toMatch(/inline style violates/);
    on.errors.length = 0;
    await closed(on);
  });

  test('messages and drawings of other shapes are passed by', async () => {
    const { on, of } = await shown();
    const good = of.shown({ line: north });
    const odd: unknown[] = [
      null,
      'shown',
      { say: 'shown' },
      { say: 'cursor', line: -1, quiet: false },
      { say: 'cursor', line: 'x', quiet: false },
    ];
    for (const message of odd) await on.tell(message as object);
    const parts = { ...good.picture!.parts, px: { kind: 'pattern', pieces: [1, 2, 99, 0] } };
    const broken = { ...good, picture: { ...good.picture!, parts: parts as never } };
    await on.show(broken);
    expect(await on.last('again')).toEqual({ say: 'again' });
    // A whole that is broken too is not asked for again and again.
    for (let i = 0; i < 3; i++) await on.show(broken);
    const asked = (await on.said()) as FromPage[];
    expect(asked.filter(({ say }) => say === 'again')).toHaveLength(1);
    await closed(on);
  });
});
