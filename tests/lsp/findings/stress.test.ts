/**
 * Many edits, questions of all kinds and cancellations at once, in an order that a seed decides. Whatever is answered fits the
 * text that it was asked of; whatever does not is refused as stale; nothing is left unanswered.
 */
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import {
  CancellationTokenSource,
  LSPErrorCodes,
  type ResponseError,
} from 'vscode-languageserver-protocol/node';
import { Editor, HEAD, JOB } from './editor';

let editor: Editor;
beforeEach(() => {
  editor = new Editor();
});
afterEach(() => editor.stop());

/** Numbers from 0 up to below so many, the same ones for the same seed (Park and Miller's). */
function dice(seed: number): (sides: number) => number {
  let at = seed * 7919 + 1;
  return (sides) => {
    at = (at * 48271) % 2147483647;
    return at % sides;
  };
}

/** So many walls, each of another name: an answer shows which text it is of. */
const text = (walls: number, mark: number) =>
  `${HEAD}${Array.from({ length: walls }, (_, i) => `wall w${i}-${mark}\n  brick rad\n  length 2240 mm\n  height 8 courses\n`).join('')}`;

const at = { line: 3, character: 8 };
const all = { start: { line: 0, character: 0 }, end: { line: 400, character: 0 } };

/** Each with what it is asked with, and what of the answer hangs on the text: names of walls or numbers of lines. */
const QUESTIONS: readonly [method: string, params: object][] = [
  ['textDocument/diagnostic', {}],
  ['textDocument/documentSymbol', {}],
  ['textDocument/foldingRange', {}],
  ['textDocument/semanticTokens/full', {}],
  ['textDocument/semanticTokens/range', { range: all }],
  ['textDocument/inlayHint', { range: all }],
  ['textDocument/codeLens', {}],
  ['textDocument/documentLink', {}],
  ['textDocument/selectionRange', { positions: [at] }],
  ['textDocument/hover', { position: at }],
  ['textDocument/completion', { position: at }],
  ['textDocument/definition', { position: at }],
  ['textDocument/references', { position: at, context: { includeDeclaration: true } }],
  ['textDocument/documentHighlight', { position: at }],
  ['textDocument/linkedEditingRange', { position: at }],
  ['textDocument/codeAction', { range: { start: at, end: at }, context: { diagnostics: [] } }],
  ['textDocument/formatting', { options: { tabSize: 2, insertSpaces: true } }],
  ['perpend/totals', {}],
  ['perpend/figures', {}],
];

/** Of what an answer may be refused for. */
const REFUSED: ReadonlySet<number> = new Set([
  LSPErrorCodes.ContentModified,
  LSPErrorCodes.RequestCancelled,
  LSPErrorCodes.ServerCancelled,
]);

interface Answered {
  readonly method: string;
  readonly version: number;
  /** In the text of that version. */
  readonly walls: number;
  readonly answer?: unknown;
  readonly code?: number;
}

/** How many walls an answer is of, where it shows that. */
function wallsIn({ method, answer }: Answered): number | undefined {
  if (method === 'textDocument/documentSymbol')
    return (answer as { name: string }[]).filter(({ name }) => /\bw\d+-/.test(name)).length;
  if (method === 'textDocument/foldingRange') return (answer as unknown[]).length;
  if (method !== 'textDocument/diagnostic') return undefined;
  const { items } = answer as { items?: { code: string }[] };
  return items?.filter(({ code }) => code === 'name-unknown').length;
}

async function storm(seed: number, steps: number): Promise<Answered[]> {
  const roll = dice(seed);
  let [walls, version] = [1 + roll(8), 1];
  const uri = await editor.open('storm.perp', text(walls, 0));
  const answers: Promise<Answered>[] = [];
  for (let step = 1; step <= steps; step += 1) {
    if (roll(3) === 0) {
      walls = 1 + roll(8);
      version += 1;
      await editor.edit(uri, text(walls, step));
    } else answers.push(ask(uri, roll, { version, walls }));
    if (roll(4) === 0) await new Promise((resolve) => setTimeout(resolve, roll(3)));
  }
  return Promise.all(answers);
}

async function ask(
  uri: string,
  roll: (sides: number) => number,
  of: Pick<Answered, 'version' | 'walls'>,
): Promise<Answered> {
  const [method, params] = QUESTIONS[roll(QUESTIONS.length)]!;
  const source = new CancellationTokenSource();
  const about = method.startsWith('perpend/') ? { uri } : { textDocument: { uri } };
  const asked = editor.connection.sendRequest(method, { ...about, ...params }, source.token);
  const after = roll(6);
  if (after < 2) setTimeout(() => source.cancel(), after);
  try {
    return { method, ...of, answer: await asked };
  } catch (error) {
    return { method, ...of, code: (error as ResponseError<unknown>).code };
  }
}

describe('a storm of edits and questions', () => {
  test.each(Array.from({ length: 6 }, (_, i) => i + 1))(
    'of seed %i is answered throughout, and never with what is stale',
    async (seed) => {
      await editor.begin();
      const answers = await storm(seed, 60);
      for (const each of answers) {
        if (each.code !== undefined) {
          expect(REFUSED, each.method).toContain(each.code);
          continue;
        }
        const shown = wallsIn(each);
        if (shown !== undefined)
          expect(shown, `${each.method}, version ${each.version}`).toBe(each.walls);
      }
      expect(answers.some((each) => each.answer)).toBe(true);
    },
  );

  test('ends with what is asked last being right', async () => {
    await editor.begin();
    await storm(99, 60);
    const uri = editor.uri('storm.perp');
    await editor.edit(uri, text(5, 77));
    const items = await editor.findings(uri);
    expect(items.filter(({ code }) => code === 'name-unknown')).toHaveLength(5);
  });

  test('many cancelled questions cost the next one nothing', async () => {
    await editor.begin();
    const uri = await editor.open('job.perp', text(8, 1));
    await editor.findings(uri);
    const sources = Array.from({ length: 200 }, () => new CancellationTokenSource());
    const asked = sources.map((source) =>
      editor.connection
        .sendRequest('textDocument/documentSymbol', { textDocument: { uri } }, source.token)
        .then(
          () => 'answered',
          (error: ResponseError<unknown>) => error.code,
        ),
    );
    for (const source of sources) source.cancel();
    expect(await editor.findings(uri)).not.toEqual([]);
    expect(new Set(await Promise.all(asked))).toEqual(new Set([LSPErrorCodes.RequestCancelled]));
  });

  test('of files opened and closed leaves nothing behind', async () => {
    await editor.begin();
    for (let i = 0; i < 40; i += 1) {
      const uri = await editor.open(`f${i}.perp`, JOB);
      const asked = editor.about('diagnostic', uri).catch(() => null);
      if (i % 2) await asked;
      await editor.tell('textDocument/didClose', { textDocument: { uri } });
      await asked;
      expect(await editor.about('documentSymbol', uri)).toBeNull();
    }
  });

  test('of files opened, edited and closed takes no memory that stays', async () => {
    await editor.begin();
    const rounds = async (count: number) => {
      for (let i = 0; i < count; i += 1) {
        const uri = await editor.open(`g${i}.perp`, text(8, i));
        await editor.findings(uri);
        await editor.edit(uri, text(8, i + 1));
        await editor.about('semanticTokens/full', uri);
        await editor.hints(uri);
        await editor.tell('textDocument/didClose', { textDocument: { uri } });
      }
      await editor.about('documentSymbol', editor.uri('none.perp'));
      collect();
      return process.memoryUsage().heapUsed;
    };
    const before = await rounds(8);
    const after = await rounds(24);
    // One file of eight walls with its job takes about half a megabyte while it is open.
    expect((after - before) / 2 ** 20).toBeLessThan(4);
  });
});

/** Collects what nobody holds any more, at once. */
function collect(): void {
  setFlagsFromString('--expose-gc');
  (runInNewContext('gc') as () => void)();
}
