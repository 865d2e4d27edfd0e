import { readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import type {
  CodeAction,
  CompletionList,
  DocumentDiagnosticReport,
  DocumentSymbol,
  FoldingRange,
  Hover,
  LocationLink,
  SemanticTokens,
  SemanticTokensDelta,
  TextEdit,
} from 'vscode-languageserver-protocol/node';
import { format } from '../../grammar/print';
import {
  FIGURES,
  type FigureItem,
  TOTALS,
  type Totals,
  WORKING,
  type Working,
} from '../../shared/protocol';
import { withEdits } from '../harness/edits';
import { FIRM, spaced } from '../ide/ask';
import { bundled, Peer } from './peer';

let server: string;
let peer: Peer;

beforeAll(async () => {
  server = await bundled();
});
beforeEach(() => {
  peer = new Peer(server);
});
afterEach(() => peer.stop());

const JOB = `perpend 1
job "Orchard"
use "firm.perp"
wall north
  brick   red
  length  1790 mm
  height  6 courses
  stands  held
`;

async function started(text = JOB): Promise<string> {
  writeFileSync(path.join(peer.folder, 'firm.perp'), FIRM);
  await peer.start();
  return peer.open('job.perp', text);
}

const edited = (text: string, edits: readonly TextEdit[]): string =>
  withEdits(
    text,
    edits.map(({ range: { start, end }, newText }) => ({
      startLine: start.line,
      startColumn: start.character,
      endLine: end.line,
      endColumn: end.character,
      text: newText,
    })),
  );

describe('the server over standard input and output', () => {
  test('says what it can do', async () => {
    const { capabilities } = await peer.start();
    expect(capabilities).toMatchObject({
      positionEncoding: 'utf-16',
      textDocumentSync: { openClose: true, change: 2 },
      diagnosticProvider: { interFileDependencies: true },
      hoverProvider: true,
    });
  });

  test('has nothing to tell of a good job but cautions, and then tells of a slip', async () => {
    const uri = await started();
    const told = (await peer.findings(uri)).filter((d) => !String(d.code).startsWith('caution-'));
    expect(told.map((d) => d.code)).toEqual([]);
    await peer.edit(uri, 'lenght', { line: 5, character: 2 }, { line: 5, character: 8 });
    const slip = (await peer.findings(uri)).find((d) => d.code === 'line-unknown')!;
    expect(slip).toMatchObject({
      source: 'perpend',
      severity: 1,
      range: { start: { line: 5, character: 2 }, end: { line: 5, character: 8 } },
    });
  });

  test('says so when nothing has changed since it was asked', async () => {
    const uri = await started();
    const first = await peer.about<DocumentDiagnosticReport>('diagnostic', uri);
    const again = await peer.about<DocumentDiagnosticReport>('diagnostic', uri, {
      previousResultId: first.resultId,
    });
    expect(again).toEqual({ kind: 'unchanged', resultId: first.resultId });
    await peer.edit(uri, 'x', { line: 4, character: 10 });
    const other = await peer.about<DocumentDiagnosticReport>('diagnostic', uri, {
      previousResultId: first.resultId,
    });
    expect(other.kind).toBe('full');
  });

  test('a way out clears its finding, and the text is as it was', async () => {
    const bad = JOB.replace('length', 'lenght');
    const uri = await started(bad);
    const [slip] = (await peer.findings(uri)).filter((d) => d.code === 'line-unknown');
    const [action] = await peer.about<CodeAction[]>('codeAction', uri, {
      range: slip!.range,
      context: { diagnostics: [slip] },
    });
    expect(action).toMatchObject({ kind: 'quickfix', isPreferred: true, diagnostics: [slip] });
    const text = edited(bad, action!.edit!.changes![uri]!);
    expect(text).toBe(JOB);
    await peer.edit(uri, text);
    expect((await peer.findings(uri)).some((d) => d.code === 'line-unknown')).toBe(false);
  });

  test('hints follow each edit', async () => {
    const uri = await started();
    const wall = async () =>
      spaced(String((await peer.hints(uri)).find((h) => h.position.line === 3)!.label));
    expect(await wall()).toContain('48 bricks');
    await peer.edit(uri, '9', { line: 6, character: 10 }, { line: 6, character: 11 });
    // 9 courses of 8 bricks.
    expect(await wall()).toContain('72 bricks');
  });

  test('answers a hover with markdown whose links lead to lines', async () => {
    const uri = await started();
    const found = await peer.about<Hover>('hover', uri, { position: { line: 4, character: 11 } });
    const { kind, value } = found.contents as { kind: string; value: string };
    expect(kind).toBe('markdown');
    expect(value).toContain(`(${peer.uri('firm.perp')}#L3)`);
  });

  test('completes names, and snippets only for a client that fills them in', async () => {
    const uri = await started(`${JOB}  bond \nw`);
    const bonds = await peer.about<CompletionList>('completion', uri, {
      position: { line: 8, character: 7 },
    });
    expect(bonds.items.map((i) => i.label)).toContain('flemish');
    const tops = await peer.about<CompletionList>('completion', uri, {
      position: { line: 9, character: 1 },
    });
    expect(tops.items.find((i) => i.label === 'wall …')).toMatchObject({ insertTextFormat: 2 });
  });

  test('leaves snippets out where they cannot be filled in, and indenting alone asks for nothing', async () => {
    await peer.start({ capabilities: {} });
    const uri = await peer.open('job.perp', 'perpend 1\nw\nwall n\n  ');
    const tops = await peer.about<CompletionList>('completion', uri, {
      position: { line: 1, character: 1 },
    });
    expect(tops.items.filter((i) => i.insertTextFormat === 2)).toEqual([]);
    const indent = await peer.about('completion', uri, {
      position: { line: 3, character: 2 },
      context: { triggerKind: 2, triggerCharacter: ' ' },
    });
    expect(indent).toBeNull();
  });

  test('formats as the printer does, with the line ends of the file', async () => {
    const untidy = 'perpend 1\r\n\r\nwall n\r\n brick    red\r\n    length 1 m\r\n';
    const uri = await started(untidy);
    const edits = await peer.about<TextEdit[]>('formatting', uri, {
      options: { tabSize: 2, insertSpaces: true },
    });
    const text = edited(untidy, edits);
    expect(text).toBe(format(untidy));
    expect(text).toMatch(/^perpend 1\r\n\r\nwall n\r\n {2}brick +red\r\n {2}length +1 m\r\n$/);
  });

  test('leads into a library, to a file that is there', async () => {
    const uri = await started(`${JOB}  bond    flemish\n`);
    const [link] = await peer.about<LocationLink[]>('definition', uri, {
      position: { line: 8, character: 12 },
    });
    const lines = readFileSync(fileURLToPath(link!.targetUri), 'utf8').split('\n');
    expect(lines[link!.targetSelectionRange.start.line]).toMatch(/^bond flemish\b/);
  });

  test('outlines, folds and colours', async () => {
    const uri = await started();
    const symbols = await peer.about<DocumentSymbol[]>('documentSymbol', uri);
    expect(symbols.map((s) => s.name)).toEqual(['job', 'wall north']);
    const folds = await peer.about<FoldingRange[]>('foldingRange', uri);
    expect(folds).toContainEqual({ startLine: 3, endLine: 7 });
    const full = await peer.about<SemanticTokens>('semanticTokens/full', uri);
    expect(full.data.length % 5).toBe(0);
    await peer.edit(uri, '\n', { line: 0, character: 9 });
    const delta = await peer.about<SemanticTokensDelta>('semanticTokens/full/delta', uri, {
      previousResultId: full.resultId,
    });
    const fresh = await peer.about<SemanticTokens>('semanticTokens/full', uri);
    const data = [...full.data];
    for (const { start, deleteCount, data: put = [] } of delta.edits)
      data.splice(start, deleteCount, ...put);
    expect(data).toEqual(fresh.data);
    expect(delta.edits[0]!.data!.length).toBeLessThan(fresh.data.length);
  });

  test('tells totals, figures and workings', async () => {
    const uri = await started();
    const totals = await peer.ask<Totals>(TOTALS, { uri });
    expect(totals.price).toMatch(/^£/);
    const figures = await peer.ask<FigureItem[]>(FIGURES, { uri });
    expect(figures[0]!.text).toBe(totals.price);
    const working = await peer.ask<Working>(WORKING, { uri, id: figures[0]!.id });
    expect(working.title).toBe(`Price: ${totals.price}`);
    expect(await peer.ask(WORKING, { uri, id: 'no.such' })).toBeNull();
    const firm = await peer.open('firm.perp', FIRM);
    expect(await peer.ask(TOTALS, { uri: firm })).toBeNull();
    expect(await peer.ask(FIGURES, { uri: firm })).toEqual([]);
  });

  test('ends when it is told to', async () => {
    await started();
    expect(await peer.ask('shutdown', undefined)).toBeNull();
    await peer.tell('exit', undefined);
    expect(await peer.ended()).toBe(0);
    expect(peer.stderr).toBe('');
  });
});
