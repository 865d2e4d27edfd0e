/** What becomes of work over many files when something changes while it is done. */

import { beforeEach, describe, expect, test } from 'vitest';
import { type CancellationToken, LSPErrorCodes, type ResponseError } from 'vscode-languageserver';
import { Answers } from '../../server/lsp/answers';

const URI = 'file:///jobs/a.perp';
const ASKED = { textDocument: { uri: URI } };
const GOES_ON = { isCancellationRequested: false } as CancellationToken;

/** A session of one open file; what happens in it while the work is done is `meanwhile`, each time it is begun. */
const file = { uri: URI, version: 1 };
const session = {
  edition: 0,
  file: (uri: string) => (uri === URI ? file : undefined),
  lent: { files: { coming: undefined }, patience: 0 },
};
const columns = { in: <T>(given: T) => given, out: <T>(given: T) => given };
const answers = new Answers(
  () => session as never,
  { error: () => undefined } as never,
  columns as never,
);

let begun = 0;

beforeEach(() => {
  Object.assign(session, { edition: 0 });
  Object.assign(file, { version: 1 });
  begun = 0;
});

/** @returns the answer of work during which that happens */
function during(kind: 'steadyOf' | 'longOf', meanwhile: (time: number) => void, token = GOES_ON) {
  const work = async (_: typeof ASKED, of: { version: number }, stretch: { rest(): unknown }) => {
    begun += 1;
    const { version } = of;
    meanwhile(begun);
    await stretch.rest();
    return version;
  };
  return answers[kind](work as never)(ASKED, token);
}

const elsewhere = () => {
  session.edition += 1;
};
const inItsText = () => {
  session.edition += 1;
  file.version += 1;
};
const codeOf = (answer: unknown) => (answer as ResponseError).code;

describe('work that nobody asks for again', () => {
  test('is done once where nothing changes', async () => {
    expect(await during('steadyOf', () => undefined)).toBe(1);
    expect(begun).toBe(1);
  });

  test('is done again when something else changes meanwhile', async () => {
    expect(await during('steadyOf', (time) => time < 4 && elsewhere())).toBe(1);
    expect(begun).toBe(4);
  });

  test('is given up when its own text changes', async () => {
    const answer = await during('steadyOf', inItsText);
    expect(codeOf(answer)).toBe(LSPErrorCodes.ContentModified);
    expect(begun).toBe(1);
  });

  test('is given up when something changes without end', async () => {
    const answer = await during('steadyOf', elsewhere);
    expect(codeOf(answer)).toBe(LSPErrorCodes.ContentModified);
    expect(begun).toBe(20);
  });

  test('is given up when it is cancelled', async () => {
    const token = { isCancellationRequested: false };
    const cancel = () => {
      token.isCancellationRequested = true;
    };
    const answer = await during('steadyOf', cancel, token as CancellationToken);
    expect(codeOf(answer)).toBe(LSPErrorCodes.RequestCancelled);
    expect(begun).toBe(1);
  });
});

test('what an editor asks for again is given up whatever changes', async () => {
  const answer = await during('longOf', elsewhere);
  expect(codeOf(answer)).toBe(LSPErrorCodes.ContentModified);
  expect(begun).toBe(1);
});

test('a file that is not open has no answer', async () => {
  const other = { textDocument: { uri: 'file:///jobs/b.perp' } };
  const work = async () => 1;
  expect(await answers.steadyOf(work)(other, GOES_ON)).toBeNull();
});
