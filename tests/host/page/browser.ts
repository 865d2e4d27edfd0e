/** The page of the preview in a browser without a window, with a stand-in for the editor that it talks to. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { build } from 'esbuild';
import { type Browser, chromium, type Page } from 'playwright-core';
import { pageText } from '../../../client/preview/page-text';
import type { Shown } from '../../../shared/protocol/preview';
import type { FromPage, Kept, ToPage } from '../../../shared/protocol/preview-page';
import { PAGE_WORDS, type PageWords } from '../../../shared/protocol/preview-words';
import { root } from '../../tree';
import { findBrowser } from '../places.mjs';
import { THEMES, type Theme } from './themes';

/** Never asked for: whatever the page wants from it is answered here, and all else fails. */
const HOME = 'https://preview.invalid/';
const NONCE = 'n0nce';

/** The words by which things are found, and those of a sentence with its places. */
export const WORDS: PageWords = {
  ...(Object.fromEntries(PAGE_WORDS.map((word) => [word, word])) as PageWords),
  course: 'course {0}',
  piece: 'brick {0} of {1}',
  millimetres: '{0} mm',
  line: '{0}, line {1}',
  lineIn: '{0}, line {1} of another file',
};

export interface Files {
  readonly script: string;
  readonly style: string;
}

export async function bundled(): Promise<Files> {
  const entries = ['client/preview/page/main.ts', 'client/preview/page/page.css'];
  const made = await build({
    absWorkingDir: root,
    entryPoints: entries,
    outdir: 'out',
    bundle: true,
    write: false,
    platform: 'browser',
    format: 'iife',
    target: 'es2022',
    logLevel: 'error',
  });
  const of = (ending: string) => made.outputFiles.find(({ path }) => path.endsWith(ending))!.text;
  return { script: of('.js'), style: of('.css') };
}

/** @throws when this machine has no browser */
export function startBrowser(): Promise<Browser> {
  const executablePath = findBrowser();
  if (!executablePath)
    throw new Error('The page of the preview is tested in chromium: none is on the PATH.');
  return chromium.launch({
    executablePath,
    args: ['--no-sandbox', '--disable-gpu'],
    timeout: 100_000,
  });
}

export class OpenPage {
  readonly errors: string[] = [];

  constructor(readonly page: Page) {
    page.on('pageerror', (error) => this.errors.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') this.errors.push(message.text());
    });
  }

  async tell(message: ToPage | object): Promise<void> {
    // A message of our own after it: when that is there, it was heard.
    await this.page.evaluate(`new Promise((done) => {
      const heard = ({ data }) => {
        if (data !== 'after it') return;
        removeEventListener('message', heard);
        done();
      };
      addEventListener('message', heard);
      postMessage(${JSON.stringify(message)}, '*');
      postMessage('after it', '*');
    })`);
    await this.settled();
  }

  /** Two frames: what was told is drawn. */
  async settled(): Promise<void> {
    await this.page.evaluate(
      'new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))',
    );
  }

  show(
    shown: Shown,
    more: { line?: number; quiet?: boolean; pinned?: boolean } = {},
  ): Promise<void> {
    const { line = 0, quiet = false, pinned = false } = more;
    return this.tell({ say: 'shown', uri: 'file:///jobs/job.perp', shown, line, pinned, quiet });
  }

  said(): Promise<FromPage[]> {
    return this.page.evaluate('said');
  }

  /** What it said last of a kind. */
  async last(say: FromPage['say']): Promise<FromPage | undefined> {
    return (await this.said()).findLast((each) => each.say === say);
  }

  kept(): Promise<Kept | undefined> {
    return this.page.evaluate('kept');
  }

  /** What it has kept by itself since it was opened; nothing until then. */
  keptAnew(): Promise<Kept | undefined> {
    return this.page.evaluate('keptAnew');
  }

  async text(selector: string): Promise<string> {
    return (await this.page.locator(selector).textContent()) ?? '';
  }
}

const STAND_IN = `
  globalThis.said = [];
  globalThis.keptAnew = undefined;
  globalThis.acquireVsCodeApi = () => ({
    postMessage: (message) => said.push(message),
    getState: () => globalThis.kept,
    setState: (kept) => { globalThis.kept = kept; globalThis.keptAnew = kept; },
  });
`;

export interface Wanted {
  readonly theme?: Theme;
  readonly kept?: Kept;
  readonly size?: { width: number; height: number };
  readonly forced?: boolean;
}

/** As an editor shows it: our own page, its policy and all. */
export async function openPage(
  browser: Browser,
  files: Files,
  wanted: Wanted = {},
): Promise<OpenPage> {
  const { theme = 'light', kept, size = { width: 720, height: 760 }, forced } = wanted;
  const context = await browser.newContext({
    viewport: size,
    reducedMotion: 'reduce',
    forcedColors: forced ? 'active' : 'none',
  });
  const page = await context.newPage();
  await page.addInitScript(`${STAND_IN} globalThis.kept = ${JSON.stringify(kept) ?? 'undefined'};`);
  await page.route('**/*', (route) => {
    const url = route.request().url();
    const answer = answers(files, theme)[url];
    return answer ? route.fulfill(answer) : route.abort();
  });
  const opened = new OpenPage(page);
  await page.goto(`${HOME}page`);
  return opened;
}

function answers({ script, style }: Files, theme: Theme) {
  const { kind, colours } = THEMES[theme];
  const parts = { script: `${HOME}preview.js`, style: `${HOME}preview.css`, source: HOME };
  const text = pageText({ lang: 'en', title: 'Preview', words: WORDS, nonce: NONCE, ...parts });
  const root = Object.entries(colours).map(([name, value]) => `--vscode-${name}: ${value};`);
  return {
    [`${HOME}page`]: {
      contentType: 'text/html',
      body: text.replace('<body ', `<body class="${kind}" `),
    },
    [parts.script]: { contentType: 'text/javascript', body: script },
    // An editor puts the colours of its theme on the page by itself.
    [parts.style]: { contentType: 'text/css', body: `:root { ${root.join(' ')} }\n${style}` },
  } as Record<string, { contentType: string; body: string }>;
}

const axeFile = createRequire(import.meta.url).resolve('axe-core/axe.min.js');

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary: string }[];
}

/**
 * What axe has against the page as it stands, in words. Its script is let past the policy that the page has. It does not
 * look into drawings, which are hidden from whoever hears a page: what they are told is a test’s own business.
 */
export async function axe({ page }: OpenPage): Promise<string[]> {
  await page.evaluate(readFileSync(axeFile, 'utf8'));
  const found = (await page.evaluate('axe.run({ exclude: [["svg"]] })')) as {
    violations: Violation[];
  };
  return found.violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => `${id}: ${node.html.slice(0, 160)} ${node.failureSummary}`),
  );
}
