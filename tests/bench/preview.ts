/** An edit of a wall of 10,000 bricks, from the text to the drawing on the screen, beside the whole drawing set anew. */
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { drawingToSvg } from '../../server/documents/svg';
import { faceOf } from '../../server/documents/work-sheets';
import type { Shown } from '../../shared/protocol/preview';
import { PAGE_WORDS } from '../../shared/protocol/preview-words';
import { Previewing } from '../preview/shown';
import { median, type Paired, paired } from './stats';

const PAGE = 'dist/preview/preview.js';

/** Some 10,000 bricks in the face. */
const text = (gate: number) => `perpend 1
use uk

wall long "Long wall"
  brick     standard
  bond      flemish
  thick     1 brick
  length    28115 mm
  height    60 courses
  dpc       engineering 2 courses

  opening gate "Garden gate"
    from    left ${gate} mm
    width   1022.5 mm
    height  26 courses
    head    soldier
`;

/** The gate goes half a brick to and fro: courses are laid otherwise from end to end. */
const GATES = [9000 - 10, 9112.5 - 10];

export interface Previewed {
  readonly bricks: number;
  /** Ms of each edit: worked out and told by the server, and drawn by the page. */
  readonly server: number;
  readonly page: number;
  /** Characters told: of the whole, and of an edit. */
  readonly whole: number;
  readonly edit: number;
  /** An edit worked out, told and drawn, beside the same worked out and set as one picture. */
  readonly beside: Paired;
}

/** Nothing where there is no browser, or the page is not built. */
export async function previewing(rounds: number): Promise<Previewed | undefined> {
  const browser = await started();
  if (!browser) return undefined;
  try {
    return await measured(await browser.newPage({ viewport: { width: 900, height: 800 } }), rounds);
  } finally {
    await browser.close();
  }
}

async function started(): Promise<Browser | undefined> {
  const program = process.env.CHROMIUM ?? onPath('chromium', 'chromium-browser', 'google-chrome');
  if (!program || !existsSync(PAGE)) return undefined;
  const { chromium } = await import('playwright-core');
  return chromium.launch({ executablePath: program, args: ['--no-sandbox', '--disable-gpu'] });
}

function onPath(...names: readonly string[]): string | undefined {
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  return names.flatMap((name) => folders.map((folder) => path.join(folder, name))).find(existsSync);
}

async function measured(page: Page, rounds: number): Promise<Previewed> {
  const of = new Previewing(text(GATES[0]!));
  await stand(page);
  const first = of.shown({ line: 4 });
  await told(page, first);
  let have = first.picture!.is;
  let edits = 0;
  const parts = { server: [] as number[], page: [] as number[], edit: 0 };
  const next = () => text(GATES[++edits % 2]!);
  const ours = async () => {
    const edit = next();
    const start = performance.now();
    of.edit(edit);
    const shown = of.shown({ line: 4, have });
    const message = JSON.stringify(shown);
    const server = performance.now() - start;
    const drawn = await told(page, shown);
    have = shown.picture!.is;
    parts.server.push(server);
    parts.page.push(drawn);
    parts.edit = message.length;
    return server + drawn;
  };
  const whole = async () => {
    const edit = next();
    const start = performance.now();
    of.edit(edit);
    const { job } = of;
    const svg = drawingToSvg(faceOf(job.works[0]!, job.env, 'front')!);
    const server = performance.now() - start;
    return server + (await set(page, naive(svg)));
  };
  for (let i = 0; i < 6; i++) {
    await ours();
    await whole();
  }
  parts.server.length = 0;
  parts.page.length = 0;
  const beside = await paired(rounds, ours, whole);
  const { bricks, length } = counted(first);
  return {
    bricks,
    whole: length,
    edit: parts.edit,
    server: median(parts.server),
    page: median(parts.page),
    beside,
  };
}

/** An element for each brick, as a page would have it that knows nothing of courses. */
function naive(svg: string): string {
  return svg.replace(/<path d="((?:M[^"M]+){2,})"/g, (_, all: string) =>
    all
      .split('M')
      .filter(Boolean)
      .map((d) => `<path d="M${d}" stroke="#000" stroke-width="0.1" fill="#eee"/>`)
      .join('')
      .concat('<path d="M0 0"'),
  );
}

function counted({ picture }: Shown): { bricks: number; length: number } {
  const parts = Object.values(picture!.parts);
  let bricks = 0;
  for (const part of parts) {
    const pattern = part.kind === 'row' ? picture!.parts[part.pattern] : undefined;
    if (pattern?.kind === 'pattern') bricks += pattern.pieces.length / 4;
  }
  return { bricks, length: JSON.stringify(picture).length };
}

/** The page of the preview as it ships, and beside it a place for pictures that are set whole. */
async function stand(page: Page): Promise<void> {
  const words = JSON.stringify(Object.fromEntries(PAGE_WORDS.map((word) => [word, word])));
  await page.setContent(
    `<style>${readFileSync(PAGE.replace('.js', '.css'), 'utf8')}</style><body class="vscode-light"><div id="whole"></div>`,
  );
  await page.evaluate(`
    document.body.dataset.words = ${JSON.stringify(words)};
    window.acquireVsCodeApi = () => ({ postMessage() {}, getState() {}, setState() {} });
  `);
  await page.addScriptTag({ content: readFileSync(PAGE, 'utf8') });
}

/** Ms from the message until it is laid out and painted: the frame after it has begun. */
const PAINTED = `
  window.painted = (work) => new Promise((done) => {
    requestAnimationFrame(() => {
      const start = performance.now();
      work();
      document.body.getBoundingClientRect();
      requestAnimationFrame(() => setTimeout(() => done(performance.now() - start)));
    });
  });
`;

/** The message is parsed on the page, as a copy of it would be made there. */
async function told(page: Page, shown: Shown): Promise<number> {
  const message = { say: 'shown', uri: 'file:///a', shown, line: 4, pinned: false, quiet: true };
  await page.evaluate(PAINTED);
  return (await page.evaluate(
    `painted(() => dispatchEvent(new MessageEvent('message', { data: JSON.parse(${JSON.stringify(JSON.stringify(message))}) })))`,
  )) as number;
}

async function set(page: Page, svg: string): Promise<number> {
  await page.evaluate(PAINTED);
  return (await page.evaluate(
    `painted(() => { document.getElementById('whole').innerHTML = ${JSON.stringify(svg)}; })`,
  )) as number;
}
